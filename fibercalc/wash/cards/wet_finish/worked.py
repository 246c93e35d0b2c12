"""Each direction by the constants of plain knitting, and how far the own swatch lies from them."""

from __future__ import annotations

from ....core.card import Result
from ....core.steps import looked_up
from ...relaxed import gauge_after, relaxed_change, relaxed_range
from ...shrink import change_percent
from .asked import DRY, YES, WetFinish


def answer(case: WetFinish) -> None:
    _width(case)
    _height(case)
    if case.stitches is not None and case.rows is not None:
        case.proportion = (case.rows / case.tall) / (case.stitches / case.wide)


def _width(case: WetFinish) -> None:
    case.width_dry = _constant(DRY, "Kw")
    case.width_wet = _constant(case.after, "Kw")
    case.width_likely = relaxed_change(case.width_dry, case.width_wet)
    case.width_after = case.wide * (1 + case.width_likely / 100)
    band = case.width_band = relaxed_range(case.width_dry, case.width_wet)
    case.band(WetFinish.width_likely, *band)
    _band_of_size(case, WetFinish.width_after, case.wide, band)
    if case.stitches is not None:
        gauge = case.stitches / case.wide
        case.stitches_after = gauge_after(gauge, case.width_likely)
        case.band(WetFinish.stitches_after, *(gauge_after(gauge, end) for end in band))
    if case.measured == YES:
        case.width_own = change_percent(case.wide, case.wide_after)
        case.width_off = case.width_own - case.width_likely
        case.band(WetFinish.width_off, *(case.width_own - end for end in band))


def _height(case: WetFinish) -> None:
    case.height_dry = _constant(DRY, "Kc")
    case.height_wet = _constant(case.after, "Kc")
    case.height_likely = relaxed_change(case.height_dry, case.height_wet)
    case.height_after = case.tall * (1 + case.height_likely / 100)
    band = case.height_band = relaxed_range(case.height_dry, case.height_wet)
    case.band(WetFinish.height_likely, *band)
    _band_of_size(case, WetFinish.height_after, case.tall, band)
    if case.rows is not None:
        gauge = case.rows / case.tall
        case.rows_after = gauge_after(gauge, case.height_likely)
        case.band(WetFinish.rows_after, *(gauge_after(gauge, end) for end in band))
    if case.measured == YES:
        case.height_own = change_percent(case.tall, case.tall_after)
        case.height_off = case.height_own - case.height_likely
        case.band(WetFinish.height_off, *(case.height_own - end for end in band))


def _constant(state: str, column: str) -> float:
    return looked_up("wash", "munden-constants", "state", state, column)


def _band_of_size(
    case: WetFinish, size: Result[float], before: float, band: tuple[float, float]
) -> None:
    case.band(size, *(size.work_unit.to_base(before * (1 + end / 100)) for end in band))
