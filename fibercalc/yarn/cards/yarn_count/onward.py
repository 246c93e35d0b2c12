"""Where a yarn's count goes on to."""

from __future__ import annotations

from ....core.card import Carry
from .asked import YarnCount

CARRY = (
    Carry("yarn-diameter", "How thick is it?", {"count": YarnCount.linear_density}),
    Carry("reel-turns", "How many turns of the reel?", {"count": YarnCount.linear_density}),
)
