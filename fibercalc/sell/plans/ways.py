"""What planning cards hand on: a kit's skeins to the dye room and the packing table, closed days,
the first dye day.

Each function takes the outcome of the card named in it and gives canonical texts, one dict for
each row.
"""

from datetime import date
from typing import Any

from ...core.outcome import Outcome

NAME = 40  # letters of a name on the cards that get it


def _text(out: Outcome[Any], name: str) -> str:
    return out.readings[name].text


def nobody(out: Outcome[Any], number: int = 0) -> list[dict[str, str]]:
    """An empty list: the example's rows are not the user's."""
    return []


def kit_recipes(out: Outcome[Any]) -> list[dict[str, str]]:
    """kit-yarn to pots: each color's skeins in all kits."""
    return [
        {"name": color.name[:NAME], "skeins": str(min(out.case.packed * color.skeins, 400))}
        for color in out.case.colors
    ]


def kit_colors(out: Outcome[Any]) -> list[dict[str, str]] | None:
    """kit-yarn to parcels: what one kit holds."""
    return [{"color": color.name[:NAME], "each": str(color.skeins)} for color in out.case.colors][
        :8
    ]


def kit_color_lots(out: Outcome[Any]) -> list[dict[str, str]]:
    """kit-yarn to parcels: one lot a color, until the user lists the real ones."""
    return [
        {
            "color": color.name[:NAME],
            "lot": "all",
            "good": str(min(out.case.packed * color.skeins, 2000)),
        }
        for color in out.case.colors
    ][:8]


def closed_days(out: Outcome[Any]) -> list[dict[str, str]]:
    """back-plan and base-order to one another: the closed days."""
    return [
        {"first": _text(out, f"closed.{number}.first"), "last": _text(out, f"closed.{number}.last")}
        for number in range(1, len(out.case.closed) + 1)
    ]


def first_dye_day(out: Outcome[Any]) -> str:
    """back-plan to base-order: the day on which base is wanted."""
    day: date = out.value("dye_from")
    return day.isoformat()
