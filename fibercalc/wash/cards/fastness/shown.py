"""What the grades look like, in words and as pairs of grays."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ...gray_scale import grade_words
from ...pictures.gray_pairs import gray_pairs
from .asked import STAINING, STEPS, Fastness


def steps(out: Outcome[Fastness]) -> Table:
    seen = "see_staining" if out.case.judged == STAINING else "see_change"
    shown = [row for row in STEPS if row["grade"] == int(row["grade"])]
    return Table(
        "What the grades look like",
        ("Grade", "Seen", "For who buys it"),
        tuple((grade_words(row["grade"]), row[seen], row["buyer"]) for row in shown),
        "Our own words; half grades lie between.",
    )


def picture(out: Outcome[Fastness]) -> Picture:
    staining = out.case.judged == STAINING
    pairs = [
        (grade_words(row["grade"]), row["staining" if staining else "change"]) for row in STEPS
    ]
    ends = (out.low(Fastness.grade), out.high(Fastness.grade))
    low, high = (min(max(end, 1.0), 5.0) for end in ends)
    return gray_pairs(pairs, low, high, staining, out.case.maybe(Fastness.on_screen))
