"""How much color is left, and how the rinses fall."""

from __future__ import annotations

from ....core.problem import Refused
from ...bleed import (
    YES,
    carry_over_of_water,
    dye_left,
    exhaustion,
    fit_carry_over,
    ladder_range,
    left_from_ladder,
    rinses_needed,
    slope_of_fall,
    yarn_gives_off,
)
from .asked import SYMPTOMS, BleedCheck

READING_ERROR = 40.0  # %: one match with a ladder of jars, half a jar either way


def answer(case: BleedCheck) -> None:
    case.signs = {symptom: getattr(case, symptom) for symptom in SYMPTOMS}
    case.left = left_from_ladder(case.jar)
    case.exhausted = exhaustion(case.left)
    case.grams = dye_left(case.mass, case.depth, case.left)
    ends = ladder_range(case.jar)
    case.band(BleedCheck.left, *ends)
    case.band(BleedCheck.exhausted, *(exhaustion(end) for end in ends))
    case.band(BleedCheck.grams, *(dye_left(case.mass, case.depth, end) for end in ends))
    case.by_water = carry_over_of_water(case.held, case.rinse)
    if case.rinsed == YES:
        _fit_rinses(case)


def _fit_rinses(case: BleedCheck) -> None:
    if len(case.rinses) < 2:
        raise Refused(
            "Rinses: give the color of at least two, or say that none were compared.",
            BleedCheck.rinsed,
        )
    for rinse in case.rinses:
        rinse.color = left_from_ladder(rinse.jar)
    case.readings = [(number, rinse.color) for number, rinse in enumerate(case.rinses, 1)]
    case.slope = slope_of_fall(case.readings)
    case.fit = fit = fit_carry_over(case.readings, READING_ERROR, case.slope)
    case.gives_off = yarn_gives_off(fit.low, case.by_water)
    case.share, case.last = fit.share, fit.last
    case.band(BleedCheck.share, fit.low, fit.high)
    if case.last <= case.wanted:
        case.more = 0.0
    elif case.share < 100:  # else they do not get paler, and no number of them is enough
        case.more = rinses_needed(case.last, case.wanted, case.share)
        quick = rinses_needed(case.last, case.wanted, max(min(fit.low, 99.9), 0.01))
        slow = rinses_needed(case.last, case.wanted, min(fit.high, 99.0))
        case.band(BleedCheck.more, min(quick, case.more), max(slow, case.more))
