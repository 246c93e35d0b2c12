"""Where the small skeins go on to, and what is kept of them."""

from __future__ import annotations

from ....core.card import Carry, Save
from .asked import SkeinSplit

CARRY = (
    Carry(
        "reel-turns",
        "Turns of my reel for another length",
        {"turn": SkeinSplit.reel, "count": SkeinSplit.yarn_count},
    ),
)

SAVES = (
    Save(
        "skein",
        "Small skeins: weight and length of each",
        {"size": "'small'", "mass": SkeinSplit.small_mass, "length": SkeinSplit.small_length},
    ),
)
