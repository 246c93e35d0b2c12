"""How wraps, and the band of yards per pound that goes with them, follow."""

from __future__ import annotations

from ....core.problem import Refused
from ....core.steps import looked_up
from ...count import tex_from_count
from ...sample import half_width_of_mean, mean, standard_deviation
from ...wrapping import wraps_per_inch, yards_per_pound_from_wraps
from .asked import PER_CM, Try, Wraps

FEWEST, MOST = 0.5, 150.0  # wraps per inch: from a rope of roving to sewing thread


def answer(case: Wraps) -> None:
    counts = [each.turns for each in case.tries]
    case.turns = mean(counts)
    case.wraps = wraps_per_inch(case.turns, case.width)
    if not FEWEST <= case.wraps <= MOST:
        raise Refused(
            f"Turns counted: over that width they make {case.wraps:.3g} wraps per inch; yarn has"
            f" {FEWEST:g} to {MOST:g}. See that width and turns belong together.",
            Wraps.tries.each(Try.turns, row=1),
        )
    if len(counts) > 1:
        scatter = half_width_of_mean(standard_deviation(counts), len(counts)) / case.width
        case.error(Wraps.wraps, scatter * PER_CM)
    case.k_middle, case.k_low, case.k_high = (
        looked_up("yarn", "wrap-conventions", "name", case.convention, place)
        for place in ("middle", "low", "high")
    )
    case.by_wraps = yards_per_pound_from_wraps(case.wraps, case.k_middle)
    case.finest = yards_per_pound_from_wraps(case.wraps, case.k_low)
    case.coarsest = yards_per_pound_from_wraps(case.wraps, case.k_high)
    case.band(
        Wraps.by_wraps, *(tex_from_count(end, "yd/lb") for end in (case.finest, case.coarsest))
    )
    if case.grist is not None:
        case.by_label = case.grist
