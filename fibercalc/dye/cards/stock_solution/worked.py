"""What a stock is made of, how far off it may be, and what is left of its strength."""

from __future__ import annotations

from ....core.problem import Refused
from ....core.steps import looked_up
from ...stock import (
    powder_for_stock,
    powder_of_jar,
    powder_to_extend,
    stock_error,
    stock_to_dilute,
    strength_if_added,
    strength_kept,
    volume_for_powder,
)
from .asked import DILUTE, EXTEND, KEEPING, USE_UP, YES, StockSolution


def answer(case: StockSolution) -> None:
    if case.do == USE_UP:
        _use_up(case)
    elif case.do == DILUTE:
        _dilute(case)
    elif case.do == EXTEND:
        _extend(case)
    else:
        _make(case)
    case.most_loss = looked_up("dye", KEEPING, "kind", case.kind, "high")
    case.weakest = strength_kept(case.wanted, case.weeks, case.most_loss)
    case.least_loss = looked_up("dye", KEEPING, "kind", case.kind, "low")
    case.strongest = strength_kept(case.wanted, case.weeks, case.least_loss)


def _make(case: StockSolution) -> None:
    case.final = case.volume
    _weigh(case, powder_for_stock(case.volume, case.wanted))
    _state_error(case, case.powder_to_weigh, case.volume)
    added = strength_if_added(case.powder_to_weigh, case.volume)
    if case.jar == YES:
        case.if_added = added * (case.new_jar / case.old_jar)
        case.holds = 100 * case.powder_to_weigh / case.volume
    else:
        case.if_added = added


def _use_up(case: StockSolution) -> None:
    case.powder_to_weigh = case.powder
    if case.jar == YES:
        case.active = powder_of_jar(case.powder, case.new_jar, case.old_jar)
        case.final = volume_for_powder(case.active, case.wanted)
        case.holds = 100 * case.powder / case.final
    else:
        case.final = volume_for_powder(case.powder, case.wanted)
    _state_error(case, case.powder, case.final)


def _dilute(case: StockSolution) -> None:
    if case.wanted > case.have:
        raise Refused(
            "Strength wanted: water cannot make a stock stronger; give less than what you have,"
            " or extend it with powder.",
            StockSolution.wanted,
        )
    case.final = case.volume
    case.stock = stock_to_dilute(case.volume, case.wanted, case.have)
    case.water = case.volume - case.stock


def _extend(case: StockSolution) -> None:
    if case.left > case.volume:
        raise Refused(
            "Stock left: there is more of it than you want to have; give a larger volume.",
            StockSolution.left,
        )
    holding = case.left * case.strength_left
    if holding > case.volume * case.wanted * (1 + 1e-9):
        raise Refused(
            "Stock left: it already holds more dye than that; make it up to"
            f" {holding / case.wanted:.0f} mL or more.",
            StockSolution.left,
        )
    case.final = case.volume
    _weigh(case, powder_to_extend(case.volume, case.wanted, case.left, case.strength_left))
    if case.powder_to_weigh > 0:
        _state_error(case, _all_dye(case), case.volume)
    if case.jar == YES:
        case.holds = (100 * case.powder_to_weigh + holding) / case.volume


def _weigh(case: StockSolution, grams: float) -> None:
    """So many grams of the usual jar, or what of this jar does the same."""
    if case.jar == YES and grams > 0:
        case.plain_powder = grams
        case.powder_to_weigh = powder_of_jar(case.plain_powder, case.old_jar, case.new_jar)
    else:
        case.powder_to_weigh = grams


def _all_dye(case: StockSolution) -> float:
    """All dye of an extended stock, in this jar's grams: the scale errs on a part of it."""
    dye = powder_for_stock(case.volume, case.wanted)
    return powder_of_jar(dye, case.old_jar, case.new_jar) if case.jar == YES else dye


def _state_error(case: StockSolution, powder: float, volume: float) -> None:
    if powder > 0:
        case.may_be_off = stock_error(powder, volume, case.scale_error, case.jug_error)
