"""How a length becomes skeins of another yarn, and how tight the cloth is with both."""

from __future__ import annotations

from ....core.steps import looked_up
from ...loop import stitch_length
from ...swap import grist_ratio, tightness
from .asked import SKEINS, YarnInstead


def answer(case: YarnInstead) -> None:
    if case.need_by == SKEINS:
        case.need = case.theirs_skeins * case.theirs_length
    else:
        case.need = case.need_length
    case.skeins = case.need / case.mine_length
    case.mass = case.need * case.mine_mass / case.mine_length
    case.theirs_tex = 1000 * case.theirs_mass / case.theirs_length
    case.mine_tex = 1000 * case.mine_mass / case.mine_length
    ratio = grist_ratio(case.mine_length, case.mine_mass, case.theirs_length, case.theirs_mass)
    case.finer = 100 * (ratio - 1)
    if case.has(YarnInstead.stitches) and case.has(YarnInstead.rows):
        case.loop_constant = looked_up("wash", "munden-constants", "state", "wet", "Ks")
        case.stitch = stitch_length(case.stitches, case.rows, case.loop_constant)
        case.theirs_tight = tightness(case.theirs_tex, case.stitch)
        case.mine_tight = tightness(case.mine_tex, case.stitch)
