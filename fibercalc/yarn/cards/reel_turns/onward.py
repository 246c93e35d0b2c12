"""Where the turns and what they hold go on to."""

from __future__ import annotations

from ....core.card import Carry
from .asked import ReelTurns

CARRY = (
    Carry(
        "skein-length",
        "How much is really in it?",
        {"circumference": ReelTurns.turn, "stretch": ReelTurns.stretch, "turns": ReelTurns.turns},
    ),
    Carry(
        "skein-split",
        "Cut full skeins into such small ones",
        {"reel": ReelTurns.rested_turn, "wanted_mass": ReelTurns.mass},
    ),
    Carry(
        "yarn-count", "This yarn in every count", {"count": ReelTurns.count, "mass": ReelTurns.mass}
    ),
)
