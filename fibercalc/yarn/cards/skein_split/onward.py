"""Where the small skeins go on to, and what is kept of them."""

from __future__ import annotations

from ....core.card import Carry, Constant, Save
from ....held import RECORD
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
        RECORD.skein,
        "Small skeins: weight and length of each",
        {
            RECORD.skein.size: Constant("small"),
            RECORD.skein.mass: SkeinSplit.small_mass,
            RECORD.skein.length: SkeinSplit.small_length,
        },
    ),
)
