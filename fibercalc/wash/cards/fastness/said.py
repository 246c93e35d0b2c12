"""The grade in words: as reported, and for who buys it."""

from __future__ import annotations

from typing import Any

from ....core.outcome import Outcome
from ...gray_scale import grade_words, half_grade
from .asked import CHANGE, EYE, STAINING, STEPS, TESTS, WASHING, Fastness
from .worked import PAIR_ERROR


def say(out: Outcome[Fastness]) -> tuple[str, ...]:
    kind = "Staining" if out.case.judged == STAINING else "Change of color"
    grade = out.value(Fastness.grade)
    words, span = grade_words(grade), _span(out)
    near = f", from {span}" if span != words else ""
    often = "" if out.case.times == 1 else f" done {out.case.times} times"
    buyer = _step(grade)["buyer"]
    return (
        f"{kind} about grade {words}{near}, in {TESTS[out.case.test]}{often}.",
        f"5 is best, 1 worst. For who buys it: {buyer[0].lower()}{buyer[1:]}.",
    )


def _step(grade: float) -> dict[str, Any]:
    """The row of the nearest half grade."""
    return next(row for row in STEPS if row["grade"] == half_grade(grade))


def _span(out: Outcome[Fastness]) -> str:
    """The grades that the answer leaves open, best last: "3 to 4"."""
    ends = (out.low(Fastness.grade), out.high(Fastness.grade))
    low, high = (grade_words(min(max(end, 1.0), 5.0)) for end in ends)
    return low if low == high else f"{low} to {high}"


def notes(out: Outcome[Fastness]) -> list[str]:
    said = []
    if out.case.by == EYE:
        said.append(
            "By a described step, without a gray scale in the hand, the eye is taken to be a whole"
            " grade either way."
        )
    else:
        said.append(
            f"The difference is taken as right to ± {PAIR_ERROR:g}: both colors in one photo beside"
            " a gray card. An instrument errs less, colors picked on a screen far more."
        )
        if out.case.judged == CHANGE:
            said.append(
                "Approximate where the hue or its strength changed: the standard weighs those less,"
                " and its weights were not trusted to memory."
            )
    if out.case.test == WASHING and out.case.times == 1:
        said.append(
            "One wash shows the loose dye of the first one; the standard’s longer test stands for"
            " five."
        )
    said.append(
        "Say what was tested, how and how often; another fiber beside it, hotter water or more"
        " rubbing is another test. No grade covers all of them."
    )
    return said
