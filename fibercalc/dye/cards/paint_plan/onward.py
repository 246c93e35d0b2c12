"""Where painted skeins go on to."""

from __future__ import annotations

from ....core.card import Carry
from ....core.outcome import Outcome
from .asked import PaintPlan, Section


def _stock_of_section(out: Outcome[PaintPlan], number: int) -> str | None:
    """All that the run takes of one section's stock; None where it takes none."""
    volume = out.case.sections[number - 1].run_stock
    return f"{volume:.6g}mL" if volume else None


CARRY = (
    Carry(
        "stock-solution",
        "Make up the stock for {}",
        {
            "name": PaintPlan.sections.each(Section.name),
            "wanted": PaintPlan.stock,
            "volume": _stock_of_section,
        },
        each=PaintPlan.sections,
    ),
    Carry("scald", "How hot is too hot to touch?", {}),
    Carry("pool-picture", "What will the colors do when knitted?", {}),
)
