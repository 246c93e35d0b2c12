"""Charts of depth of shade: the words for it, and what a depth on a weight takes from the stock."""

from ...core.answer import Table
from ...core.marks import meaning
from ...core.number import write_number
from ...core.table import read_table
from ...core.units import GRAMS_PER_OUNCE
from ..recipe import dye_mass, stock_volume
from .cells import between, named_sources

WEIGHTS = tuple(range(50, 601, 50))  # g of dry fiber
EVERYDAY, WEAK = 1.0, 0.1  # stocks, g in 100 mL
DEPTHS = {
    EVERYDAY: (0.1, 0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0, 4.0),
    WEAK: (0.01, 0.02, 0.04, 0.06, 0.08, 0.1, 0.15, 0.2, 0.25),
}
FINEST_DOSE = 3.0  # mL: below it the syringe's mark shows (common practice)


def depth_words() -> list[Table]:
    """What is called pale, medium, deep and black, in % of dry fiber.

    Source: trade pages (trade-page-small-lots, trade-page-reactive); black from memory.
    """
    table = read_table("dye", "depth-words")
    rows = tuple(
        (row["dyes"].capitalize(), row["word"], between(row["low"], row["high"], row["status"]))
        for row in table.rows
    )
    return [
        Table(
            "Depth of shade in words",
            ("Dyes", "Word", "% of dry fiber"),
            rows,
            f"{table.note} {meaning(*(row['status'] for row in table.rows))}",
            named_sources(table),
        )
    ]


def depth_to_volume() -> list[Table]:
    """Milliliters of stock for a depth of shade on 50 to 600 g, from an everyday and from a weak
    stock.

    Source: textile-pages-recipe (volume = weight x depth / strength).
    """
    made = []
    for strength, depths in DEPTHS.items():
        rows = tuple(
            (
                f"{weight} g ({weight / GRAMS_PER_OUNCE:.1f} oz)",
                *(_volume(weight, depth, strength) for depth in depths),
            )
            for weight in WEIGHTS
        )
        made.append(
            Table(
                f"mL of {strength:g} % stock for a depth of shade",
                ("Dry fiber", *(f"{depth:g} %" for depth in depths)),
                rows,
                f"mL = weight x depth / strength. {_other_stocks(strength)} A dose under"
                f" {FINEST_DOSE:g} mL wants a weaker stock (common practice). Computed here.",
                ("textile-pages-recipe",),
            )
        )
    return made


def _other_stocks(strength: float) -> str:
    if strength == EVERYDAY:
        return "With 0.5 % stock take twice as much, with 2 % half."
    return f"Ten times the mL of {EVERYDAY:g} % stock, so pale shades can be measured."


def _volume(weight: float, depth: float, strength: float) -> str:
    volume = round(
        stock_volume(dye_mass(weight, depth), strength), 1
    )  # half a milliliter is the syringe's finest mark
    return write_number(volume, 0 if volume.is_integer() else 1)
