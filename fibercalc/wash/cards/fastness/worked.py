"""The grade, from the difference of two colors or from the step that it looks like."""

from __future__ import annotations

from typing import Any

from ....core.steps import looked_up
from ...gray_scale import change_grade, distance, staining_difference, staining_grade
from .asked import EYE, STAINING, Fastness

# CIELAB, in the difference of two colors in one photo beside a gray card; an instrument errs less
# (common practice).
PAIR_ERROR = 2.0
# Grade either way, by a described step without a gray scale in the hand (common practice).
EYE_ERROR = 1.0


def answer(case: Fastness) -> None:
    if case.by == EYE:
        seen = case.stain_seen if case.judged == STAINING else case.change_seen
        case.grade = looked_up("wash", "gray-scale-steps", "step", _key(seen), "grade")
        case.band(
            Fastness.grade, min(case.grade + EYE_ERROR, 5.0), max(case.grade - EYE_ERROR, 1.0)
        )
        return
    _differ(case)
    ends = (max(case.difference - PAIR_ERROR, 0.0), case.difference + PAIR_ERROR)
    case.band(Fastness.difference, *ends)
    if case.judged == STAINING:
        case.weighted = staining_difference(case.difference, case.lightness)
        case.grade = staining_grade(case.weighted)
        share = case.weighted / case.difference if case.difference else 1.0
        case.band(Fastness.grade, *(staining_grade(share * end) for end in ends))
    else:
        case.grade = change_grade(case.difference)
        case.band(Fastness.grade, *(change_grade(end) for end in ends))


def _differ(case: Fastness) -> None:
    """How far apart the two colors are."""
    staining = case.judged == STAINING
    one, other = (case.white, case.stained) if staining else (case.before, case.after)
    for color, into in ((one, case.color_before), (other, case.color_after)):
        into["L*"], into["a*"], into["b*"] = color.lightness, color.a, color.b
    case.lightness = case.color_before["L*"] - case.color_after["L*"]
    case.redness = case.color_before["a*"] - case.color_after["a*"]
    case.yellowness = case.color_before["b*"] - case.color_after["b*"]
    case.difference = distance(case.lightness, case.redness, case.yellowness)
    case.on_screen = (one.hex, other.hex)


def _key(step: str) -> Any:
    """A row's key as the table has it: whole steps are numbers there."""
    return float(step) if "-" not in step else step
