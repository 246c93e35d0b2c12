"""Where a grade goes on to: to the care label, and to the dye lot that was rubbed."""

from __future__ import annotations

from ....core.card import Carry, Save
from ....core.outcome import Outcome
from ....held import RECORD
from .asked import STAINING, WASHING, Fastness


def _on_the_label(out: Outcome[Fastness]) -> str | None:
    """A wash test's staining, as the label asks: the side of the range that promises less."""
    if out.case.test != WASHING or out.case.judged != STAINING:
        return None
    return "slight" if out.low(Fastness.grade) >= 3.75 else "stains"


CARRY = (
    Carry("shedding", "Is it dye, or loose fiber?", {}),
    Carry("care-label", "What goes on the label?", {"stains": _on_the_label}),
)
SAVES = (
    Save(
        RECORD.dye_lot,
        "A dye lot: its rub test",
        {RECORD.dye_lot.rub: Fastness.grade},
        when={Fastness.test: ("dry rubbing", "wet rubbing")},
    ),
)
