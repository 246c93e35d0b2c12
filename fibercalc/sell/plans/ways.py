"""What planning cards hand on: a kit's skeins to the dye room and the packing table, closed days, the first dye day.

Each function takes the outcome of the card named in it and gives canonical texts, one dict for each row.
"""

NAME = 40  # letters of a name on the cards that get it


def _text(r, name: str) -> str:
    return r.readings[name].text


def nobody(r, number: int = 0) -> list[dict]:
    """An empty list: the example's rows are not the user's."""
    return []


def kit_recipes(r) -> list[dict]:
    """kit-yarn to pots: each color's skeins in all kits."""
    return [
        {"name": color.name[:NAME], "skeins": str(min(r.case.packed * color.skeins, 400))}
        for color in r.case.colors
    ]


def kit_colors(r) -> list[dict] | None:
    """kit-yarn to parcels: what one kit holds."""
    return [{"color": color.name[:NAME], "each": str(color.skeins)} for color in r.case.colors][:8]


def kit_color_lots(r) -> list[dict]:
    """kit-yarn to parcels: one lot a color, until the user lists the real ones."""
    return [
        {
            "color": color.name[:NAME],
            "lot": "all",
            "good": str(min(r.case.packed * color.skeins, 2000)),
        }
        for color in r.case.colors
    ][:8]


def closed_days(r) -> list[dict]:
    """back-plan and base-order to one another: the closed days."""
    return [
        {"first": _text(r, f"closed.{number}.first"), "last": _text(r, f"closed.{number}.last")}
        for number in range(1, len(r.given["closed"]) + 1)
    ]


def first_dye_day(r) -> str:
    """back-plan to base-order: the day on which base is wanted."""
    return r.value("dye_from").isoformat()
