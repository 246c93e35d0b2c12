"""How the count, and the length in the put-up, follow from what is known."""

from __future__ import annotations

from ....core.problem import Refused
from ...count import (
    COARSEST_TEX,
    COTTON_HANK,
    FINEST_TEX,
    WORSTED_HANK,
    count_from_tex,
    hanks_per_pound,
    linear_density,
    yards_per_pound_from_metric,
)
from ...plied import plied_count, plied_tex
from .asked import BY_NUMBER, BY_PUTUP, BY_SINGLES, YarnCount

LAST_GIVEN = {BY_PUTUP: "mass", BY_SINGLES: "singles.1.count"}  # where a refusal is shown


def answer(case: YarnCount) -> None:
    tex = _linear_density(case)
    if not FINEST_TEX <= tex <= COARSEST_TEX:
        raise Refused(
            f"These together make a yarn of {tex:.3g} tex; look at weight and length again, the"
            " units too.",
            LAST_GIVEN[case.known],
        )
    metric_count = _metric_count(case, tex)
    case.yards_per_pound = yards_per_pound_from_metric(metric_count)
    case.cotton_count = hanks_per_pound(case.yards_per_pound, COTTON_HANK)
    case.worsted_count = hanks_per_pound(case.yards_per_pound, WORSTED_HANK)
    case.putup_length = case.mass * metric_count


def _linear_density(case: YarnCount) -> float:
    if case.known == BY_NUMBER:
        case.linear_density = case.count
        return case.count
    if case.known == BY_PUTUP:
        case.linear_density = linear_density(case.mass, case.length)
    else:
        for single in case.singles:
            single.together = single.strands * single.count
        case.linear_density = plied_tex([each.together for each in case.singles], case.take_up)
    return case.linear_density


def _metric_count(case: YarnCount, tex: float) -> float:
    """Meters in a gram: of a plied yarn by indirect counts, which most yarn is sold by."""
    if case.known != BY_SINGLES:
        case.metric_count = count_from_tex(tex, "Nm")
        return case.metric_count
    for single in case.singles:
        single.metric_count = count_from_tex(single.together, "Nm")
    case.by_metric_counts = plied_count([each.metric_count for each in case.singles], case.take_up)
    return case.by_metric_counts
