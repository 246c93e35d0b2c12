"""Where the nudged recipe goes on to."""

from __future__ import annotations

from ....core.card import Carry
from ....core.outcome import Outcome
from .asked import LotRepeat


def _nudged(out: Outcome[LotRepeat]) -> list[dict[str, str]]:
    return [{"name": dye.name, "depth": f"{dye.next_depth:.4g}%"} for dye in out.case.dyes]


CARRY = (
    Carry(
        "dye-recipe",
        "The nudged recipe for a pot",
        {"dyes": _nudged, "skeins": LotRepeat.pieces, "skein_mass": LotRepeat.skein_mass},
    ),
)
