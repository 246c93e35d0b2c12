"""A skein's length each way, and what several skeins of a delivery allow to be printed."""

from __future__ import annotations

from ....core.steps import solved
from ....core.traced import named
from ...sample import lower_limit_of_mean, lower_limit_of_next, mean, standard_deviation
from ...skein import length_by_turns, length_by_weighing, relaxed_circumference
from ...student_t import quantile, share_below
from .asked import BOTH, BY_SAMPLE, BY_TURNS, SkeinLength

SHARE_BELOW = named("share below", share_below)


def answer(case: SkeinLength) -> None:
    if case.way in (BY_TURNS, BOTH):
        case.turn = relaxed_circumference(case.circumference, case.stretch)
        case.by_turns = length_by_turns(case.turns, case.turn)
    if case.way in (BY_SAMPLE, BOTH):
        case.by_sample = length_by_weighing(case.skein_mass, case.sample_length, case.sample_mass)
        case.grist = 1000 * case.sample_mass / case.sample_length
    if case.several == "yes":
        _of_several(case)


def _of_several(case: SkeinLength) -> None:
    lengths = [skein.length for skein in case.skeins]
    case.average = mean(lengths)
    case.scatter = standard_deviation(lengths)
    case.number = len(lengths)
    found = quantile(95.0, len(lengths) - 1)
    case.students_t = solved(found, lambda t: SHARE_BELOW(t, case.number - 1) - 95)
    case.printable = lower_limit_of_mean(case.average, case.scatter, case.number, t=case.students_t)
    case.next_skein = lower_limit_of_next(
        case.average, case.scatter, case.number, t=case.students_t
    )
