"""What is said of a set."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import MASS
from ....dye.recipe import dye_mass
from ....yarn.putup import printed_grams
from .asked import EVEN, SetPlan

SURE_ENOUGH = 5  # % of full skeins whose last small one may be short without a word
UNEVEN = 1.3  # the largest step between shades against the smallest
ROUGH_DOSE = 0.05  # half a step of the scale as a share of a dose


def say(out: Outcome[SetPlan]) -> tuple[str, ...]:
    case = out.case
    when = (
        f"{_days(case.days_cut)} of dyeing either way"
        if case.days_cut == case.days_whole
        else f"{_days(case.days_cut)} of dyeing or {case.days_whole}"
    )
    length = " ".join(
        (out.text(SetPlan.small_length, "m"), f"({out.text(SetPlan.small_length, 'yd')})")
    )
    dye = f"{out.text(SetPlan.dye_cut, 'g')} of dye or {out.text(SetPlan.dye_whole, 'g')}"
    return (
        (
            f"Cut first: order {case.cut_first} skeins. Dyed whole and then cut: order"
            f" {case.dyed_whole}."
        ),
        (
            f"A skein gives {case.per} of {case.turns} turns, {length}, label"
            f" {out.number(printed_grams(case.small_mass))} g; {dye}; {when}."
        ),
    )


def _days(count: int) -> str:
    return f"{count} {'day' if count == 1 else 'days'}"


def notes(out: Outcome[SetPlan]) -> list[str]:
    case = out.case
    said = [
        (
            f"Dyed whole, {case.over_whole} small skeins are over, {case.over_each} of each shade:"
            " sell them by the piece, or make so many more sets."
        )
    ]
    if out.value(SetPlan.last_short) > SURE_ENOUGH:
        said.append(
            "The last small skein of a full one is short in"
            f" {out.text(SetPlan.last_short)}: take a turn off each, or measure the full skeins"
            " better."
        )
    low, high = case.ladder.smallest, case.ladder.largest
    if case.steps != EVEN and high > UNEVEN * low:
        said.append(
            f"These steps do not look even: neighbors differ by {low:.1f} to {high:.1f}"
            " (CIEDE2000). Choose “even to the eye” to see what that takes."
        )
    palest = dye_mass(case.shade_cut, min(case.depth.values()))
    if palest and case.scale_step / 2 / palest > ROUGH_DOSE:
        said.append(
            f"The palest shade takes {out.measured(palest, MASS, 'g', 0.001)} of dye in all, too"
            " little for this scale: dose it from a stock."
        )
    said.append(
        "A shade that takes two loads is two lots that must look like one: share each dye bath's"
        " stock over both pots, and dye them in one round. Every set takes one small skein of each"
        " shade."
    )
    return said
