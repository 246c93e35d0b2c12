"""What each color of a kit takes, and how far cut skeins would go."""

from __future__ import annotations

from dataclasses import dataclass

from ....core.outcome import Outcome
from ....knit.needs import BUFFERS
from ....yarn.reel import whole_turns_for_length
from ....yarn.split import full_skeins_for, small_skeins, usable_amount
from ...kits import skeins_for_chance
from .asked import Color, KitYarn, packed_colors


def answer(case: KitYarn) -> None:
    holds, _ = BUFFERS[case.buffer]
    for color in case.colors:
        color.bare = color.needed / holds
        color.taken = color.bare / case.skein_length
    case.packed = case.kits + case.spare


@dataclass(frozen=True)
class Cut:
    """A color packed as whole skeins and a part of one, wound in whole turns.

    whole, turns, length  in a kit;  per  parts that one skein gives, 0 where there is no part
    skeins  for all kits;  saved  of them against whole ones alone
    """

    color: Color
    whole: int
    turns: int
    length: float
    per: int
    skeins: int
    saved: int


def cuts(out: Outcome[KitYarn]) -> list[Cut]:
    """Each color as it would be packed if skeins were cut to what is wanted."""
    case = out.case
    usable = usable_amount(case.skein_length, case.loss_share)
    return [_cut(case, color, usable) for color in packed_colors(out)]


def _cut(case: KitYarn, color: Color, usable: float) -> Cut:
    full, kits = case.skein_length, case.packed
    wanted = full * (
        color.skeins
        if color.give
        else skeins_for_chance(color.in_skeins, color.spread, float(case.sure) / 100)
    )
    whole = int(wanted / full + 1e-9)
    rest = wanted - whole * full
    turns = whole_turns_for_length(rest, case.reel) if rest > 1e-6 else 0
    per = small_skeins(usable, turns * case.reel) if turns else 0
    for_parts = full_skeins_for(kits, per) if per else kits if turns else 0
    skeins = kits * whole + for_parts
    return Cut(color, whole, turns, turns * case.reel, per, skeins, kits * color.skeins - skeins)
