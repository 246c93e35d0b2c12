"""Where a skein of known length goes on, and what is kept of it."""

from __future__ import annotations

from ....core.card import Carry, Save
from ....held import RECORD
from .asked import SkeinLength

CARRY = (
    Carry(
        "skein-split",
        "Split this skein into small ones",
        {
            "skein_length": SkeinLength.length,
            "skein_mass": SkeinLength.skein_mass,
            "reel": SkeinLength.turn,
        },
    ),
)

SAVES = (
    Save(
        RECORD.base,
        "A base: weight and length of a skein",
        {RECORD.base.mass: SkeinLength.skein_mass, RECORD.base.length: SkeinLength.length},
    ),
    Save(
        RECORD.mill_lot,
        "A mill lot: what a skein of it weighs and holds",
        {RECORD.mill_lot.mass: SkeinLength.skein_mass, RECORD.mill_lot.length: SkeinLength.length},
    ),
)
