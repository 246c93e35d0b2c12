"""How the hours of a run follow from what a stretch of each kind of work took."""

from __future__ import annotations

from ....core.problem import Refused
from ...pace import minutes_at_pace, weaving_minutes, winding_minutes
from .asked import WeavePace

SLOW = 0.15  # 95 %: how far a whole run strays from what a timed stretch says


def answer(case: WeavePace) -> None:
    if case.settling >= case.sitting:
        raise Refused(
            f"Settling down takes {case.settling:g} min of a sitting of {case.sitting:g} min,"
            " which leaves nothing; give less.",
            WeavePace.settling,
        )
    case.winding = winding_minutes(case.ends, case.warp, case.wind_length, case.wind_minutes)
    case.threading = minutes_at_pace(case.ends, case.thread_ends, case.thread_minutes)
    case.setup = case.winding + case.threading + case.beam
    _weaving(case)
    case.changing = case.pieces * case.changes * case.change_minutes
    case.hemming = case.pieces * case.hems * case.hem_minutes
    case.finishing = case.pieces * case.finish
    case.ending = case.hemming + case.finishing
    case.total = case.setup + case.weaving + case.changing + case.ending
    case.each = case.total / case.pieces
    case.one_more = (case.weaving + case.changing + case.ending) / case.pieces
    case.setup_share = 100 * case.setup / case.total
    case.error(WeavePace.total, SLOW * case.total)
    case.error(WeavePace.each, SLOW * case.each)
    case.error(WeavePace.one_more, SLOW * case.one_more)


def _weaving(case: WeavePace) -> None:
    picks = case.pieces * case.piece_picks
    case.weaving = weaving_minutes(
        picks, case.weave_picks, case.weave_minutes, case.stick_share, case.stick_times
    )
    if case.stick_share and case.stick_times > 1:
        plain = minutes_at_pace(picks, case.weave_picks, case.weave_minutes)
        case.stick = case.weaving - plain
