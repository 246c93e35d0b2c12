"""Each skein with its doses, and the ways of stepping beside each other."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.units import MASS, PERCENT, VOLUME
from ...pictures.strip import Strip, strip_picture, strips_compared
from .asked import POWDER, ShadeSteps


def skeins(out: Outcome[ShadeSteps]) -> Table:
    """Each skein: depth and dose of each dye, and how far to the next."""
    real, names = out.case.real, [dye.name for dye in out.case.dyes]
    gaps = [*(f"{gap:.1f}" for gap in real.differences), "–"]
    return Table(
        "Skein by skein, as it can be weighed",
        (
            "Skein",
            *(f"{name}, depth" for name in names),
            *(f"{name}, dose" for name in names),
            "To the next",
        ),
        tuple(
            (
                str(number),
                *(out.measured(depth, PERCENT, "%", 0.001) for depth in recipe),
                *(_dose(out, depth) for depth in recipe),
                gap,
            )
            for number, (recipe, gap) in enumerate(zip(real.recipes, gaps), 1)
        ),
    )


def _dose(out: Outcome[ShadeSteps], depth: float) -> str:
    """Grams of one dye in one shade, or milliliters where a stock is used."""
    case = out.case
    mass = case.fiber * depth / 100
    if case.dose_by == POWDER:
        return out.measured(mass, MASS, "g", case.scale_step)
    return out.measured(100 * mass / case.strength, VOLUME, "mL", case.syringe_step)


def strip(out: Outcome[ShadeSteps]) -> Picture:
    real = out.case.real
    doses = [f"{sum(recipe):.2f}" for recipe in real.recipes]
    return strip_picture(real.colors, doses, "dye, % of dry fiber")


def compared(out: Outcome[ShadeSteps]) -> Picture:
    case = out.case
    ladders = {"Even to the eye": case.even}
    if case.has(ShadeSteps.by_ratio):
        ladders["Geometric ladder"] = case.by_ratio
    ladders["Equal percents"] = case.by_percent
    return strips_compared(
        [Strip(words, ladder.colors, ladder.differences) for words, ladder in ladders.items()]
    )
