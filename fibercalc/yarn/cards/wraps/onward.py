"""Where a wrapped yarn goes on to."""

from __future__ import annotations

from ....core.card import Carry
from .asked import Wraps

CARRY = (Carry("yarn-count", "This yarn in other count systems", {"count": Wraps.by_label}),)
