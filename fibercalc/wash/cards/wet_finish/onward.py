"""Where a washed swatch goes on to: the size to knit, more samples, and an own measurement."""

from __future__ import annotations

from collections.abc import Callable

from ....core.card import Carry, Constant, Save
from ....core.onward import spread_text
from ....core.outcome import Outcome
from ....held import RECORD
from .asked import LIKELY, NO, OWN, YES, WetFinish


def _lost(way: str) -> Callable[[Outcome[WetFinish]], str]:
    """What a side loses, by the own swatch where there is one; one that grew loses less than 0."""

    def lost(out: Outcome[WetFinish]) -> str:
        change = OWN[way] if out.has(OWN[way]) else LIKELY[way]
        return spread_text(-out.value(change), -out.high(change), -out.low(change), "%")

    return lost


def _sample(out: Outcome[WetFinish]) -> list[dict[str, str]] | None:
    """The swatch as one sample, once it has been measured again."""
    if out.case.measured != YES:
        return None
    return [
        {
            "length": out.readings["tall"].text,
            "length_after": out.readings["tall_after"].text,
            "width": out.readings["wide"].text,
            "width_after": out.readings["wide_after"].text,
        }
    ]


def _washed_again(out: Outcome[WetFinish]) -> str | None:
    return NO if out.case.measured == YES else None


CARRY = (
    Carry(
        "make-size",
        "What size to knit?",
        {"length_percent": _lost("height"), "width_percent": _lost("width")},
    ),
    Carry(
        "shrinkage", "Several samples, several washes", {"samples": _sample, "again": _washed_again}
    ),
)
SAVES = (
    Save(
        RECORD.measurement,
        "An own measurement: the gauge after the wash",
        {
            RECORD.measurement.what: Constant("gauge"),
            RECORD.measurement.stitches: WetFinish.stitches_after,
            RECORD.measurement.rows: WetFinish.rows_after,
            RECORD.measurement.state: WetFinish.after,
        },
    ),
)
