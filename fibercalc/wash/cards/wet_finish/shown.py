"""What was to be expected of each direction beside what the own swatch did."""

from __future__ import annotations

from ....core.answer import Picture
from ....core.outcome import Outcome
from ...pictures.changes import change_bars
from .asked import WetFinish


def picture(out: Outcome[WetFinish]) -> Picture:
    case = out.case
    rows = [
        ("Width", *case.width_band, case.maybe(WetFinish.width_own)),
        ("Height", *case.height_band, case.maybe(WetFinish.height_own)),
    ]
    return change_bars("What the wash does to the swatch", rows)
