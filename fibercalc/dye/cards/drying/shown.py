"""The water left in it, hour by hour."""

from __future__ import annotations

from ....core.answer import Picture
from ....core.outcome import Outcome
from ...pictures.drying import drying_picture
from .asked import Drying


def picture(out: Outcome[Drying]) -> Picture | None:
    case = out.case
    if case.ready >= case.wet:
        return None
    weighed = (case.after / 60, case.now) if case.weighed == "yes" else None
    return drying_picture(case.wet, case.rest, case.ready, case.paces, case.falls, weighed)
