"""The likely causes, and the fall of the rinses."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ...bleed import likely_causes
from ...pictures.rinses import rinses_picture
from .asked import BleedCheck
from .said import CAUSES


def causes(out: Outcome[BleedCheck]) -> Table | None:
    found = likely_causes(out.case.signs)
    if not found:
        return None
    return Table(
        "Likely causes, the likeliest first",
        ("Cause", "What to try"),
        tuple((CAUSES[cause]["label"], CAUSES[cause]["try"]) for cause, _ in found),
        "Ordered by our own points for each sign; they are no odds. Change one thing at a time.",
    )


def picture(out: Outcome[BleedCheck]) -> Picture | None:
    if not out.case.has(BleedCheck.fit):
        return None
    return rinses_picture(out.case.readings, out.case.fit, out.case.wanted)
