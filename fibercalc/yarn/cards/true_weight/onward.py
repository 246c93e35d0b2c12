"""Where the true weight goes on to."""

from __future__ import annotations

from ....core.card import Carry
from .asked import TrueWeight

CARRY = (Carry("yarn-count", "What count is it at that weight?", {"mass": TrueWeight.conditioned}),)
