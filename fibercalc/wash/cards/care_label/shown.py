"""What decides each line of the label."""

from __future__ import annotations

from ....core.answer import Table
from ....core.outcome import Outcome
from ...care import TREATMENTS
from .asked import LABELS, CareLabel


def table(out: Outcome[CareLabel]) -> Table:
    rows = tuple(
        (LABELS[treatment], out.value(treatment), out.case.reasons[treatment])
        for treatment in TREATMENTS
    )
    return Table(
        "What decides each line",
        ("Treatment", "Label", "Held there by"),
        rows,
        "In the order of the symbols of ISO 3758, as quoted by others.",
    )
