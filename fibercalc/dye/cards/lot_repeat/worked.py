"""How far the lots lie apart, and the change of recipe that brings them nearer."""

from __future__ import annotations

from ....core.arithmetic import hypot
from ....core.color import Color
from ....core.traced import named
from ...color.asked import corrected, mixer
from ...color.difference import ciede2000
from ...color.kubelka_munk import ERROR_OF_A_MIXTURE, ERROR_OF_ONE_DYE
from ...color.match import gentlest_nudge
from ...color.seeing import half_width_between, likely_seen
from ...pot_loads import skeins_found
from .asked import LotRepeat

CIEDE2000 = named("CIEDE2000", lambda *lab: ciede2000(lab[:3], lab[3:]))


def answer(case: LotRepeat) -> None:
    case.colors = old, new = _corrected(case)
    case.old_lightness, case.old_a, case.old_b = old.lightness, old.a, old.b
    case.new_lightness, case.new_a, case.new_b = new.lightness, new.a, new.b
    was = case.old_lightness, case.old_a, case.old_b
    case.before = CIEDE2000(case.new_lightness, case.new_a, case.new_b, *was)
    case.seen_as = likely_seen(case.before)
    case.error(LotRepeat.before, half_width_between(case.seen))
    _nudge(case)
    after = case.next_color
    case.next_lightness, case.next_a, case.next_b = after.lightness, after.a, after.b
    case.after = CIEDE2000(case.next_lightness, case.next_a, case.next_b, *was)
    of_model = ERROR_OF_ONE_DYE if len(case.dyes) == 1 else ERROR_OF_A_MIXTURE
    case.error(LotRepeat.after, hypot(half_width_between(case.seen), of_model / 2))
    case.pieces = skeins_found(case.fiber)
    case.skein_mass = case.fiber / case.pieces


def _corrected(case: LotRepeat) -> tuple[Color, Color]:
    old, new = corrected((case.old, case.new), case.maybe(LotRepeat.gray))
    return old, new


def _nudge(case: LotRepeat) -> None:
    """The change of each dye: found by trying every choice of dyes to change."""
    samples = [(dye.sample, float(dye.percent)) for dye in case.dyes]
    found = gentlest_nudge(
        mixer(case.undyed, samples),
        [float(dye.depth) for dye in case.dyes],
        *case.colors,
        case.only_add == "yes",
    )
    case.next_color = found.color
    for dye, change in zip(case.dyes, found.changes):
        dye.change = change
        dye.next_depth = dye.depth + dye.change
        dye.change_mass = case.fiber * dye.change / 100
