"""The table of a bath beside its limits, and its pH on a scale."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ...pictures.range import ph_on_scale
from .asked import DrainCheck
from .said import verdicts


def checked(out: Outcome[DrainCheck]) -> Table:
    return Table(
        "This bath against the limits",
        ("What", "This bath", "Limit", "So"),
        tuple(verdicts(out)),
        "Above or below a published limit, nothing more.",
    )


def picture(out: Outcome[DrainCheck]) -> Picture:
    case = out.case
    target = case.target if out.has(DrainCheck.dose) else None
    return ph_on_scale(case.ph, out.readings["ph"].rough, case.low, case.high, target)
