"""The load beside its limit."""

from __future__ import annotations

from ....core.answer import Picture
from ....core.outcome import Outcome
from ...pictures.bars import shares_of_limit
from .asked import Lift


def picture(out: Outcome[Lift]) -> Picture | None:
    index = Lift.index
    if not out.has(index):
        return None
    return shares_of_limit(
        "Load against the limit",
        [("This load", out.value(index), out.low(index), out.high(index))],
        "recommended weight limit",
        most=3.0,
    )
