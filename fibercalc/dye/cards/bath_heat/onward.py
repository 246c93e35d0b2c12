"""What of a heated bath goes on to the next card."""

from __future__ import annotations

from ....core.outcome import Outcome
from .asked import BathHeat


def until_hold(out: Outcome[BathHeat]) -> str:
    """As few digits as a step of a plan needs."""
    return f"{out.case.until_hold:.4g}min"
