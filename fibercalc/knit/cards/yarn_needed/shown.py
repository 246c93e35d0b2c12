"""The odds of each number of skeins, and the outline of what is made."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.units import LENGTH, MASS
from ...odds import each_count
from ...pictures.odds import odds_picture
from ...pictures.schematic import schematic
from ...projects.measure import PATTERN
from .asked import YarnNeeded, by_color, spread_of, wished


def odds_table(out: Outcome[YarnNeeded]) -> Table | None:
    """The chance for each whole number of skeins, or for each color what to buy."""
    length, mass = out.case.skein_length, out.case.skein_mass
    if out.case.many == "yes":
        rows = tuple(
            (
                color.name,
                out.amount(color.needed * length, LENGTH, "yd"),
                out.amount(color.needed * length, LENGTH, "m"),
                str(color.count),
                out.in_100(color.chance),
                f"{100 * (color.count / color.needed - 1):.0f} %",
            )
            for color in by_color(out)
        )
        return Table(
            "Color by color",
            ("Color", "Yards", "Meters", "Buy", "Enough for", "Spare, usually"),
            rows,
        )
    counts = tuple(
        (
            str(count),
            out.amount(count * length, LENGTH, "yd"),
            out.amount(count * length, LENGTH, "m"),
            out.amount(count * mass, MASS, "g"),
            out.in_100(chance),
        )
        for count, chance in _counts(out)
    )
    return Table(
        "How many skeins, and for how many knitters they are enough",
        ("Skeins", "Yards", "Meters", "Grams", "Enough for"),
        counts,
    )


def _counts(out: Outcome[YarnNeeded]) -> list[tuple[int, float]]:
    return each_count(out.case.skeins, spread_of(out))


def odds(out: Outcome[YarnNeeded]) -> Picture | None:
    if out.case.many == "yes":
        return None
    return odds_picture(_counts(out), wished(out.case), out)


def outline(out: Outcome[YarnNeeded]) -> Picture | None:
    return None if out.case.known == PATTERN else schematic(out.case.make, out.case, out)
