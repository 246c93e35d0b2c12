"""Where a yarn's thickness goes on to."""

from __future__ import annotations

from ....core.card import Carry
from .asked import YarnDiameter

CARRY = (Carry("yarn-count", "This yarn in every count", {"count": YarnDiameter.count}),)
