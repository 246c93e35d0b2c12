"""How a gauge is worked out, and the size that it leads to."""

from __future__ import annotations

from ...fit import gauge_of, girth_at_gauge, growth, needle_for_gauge
from .asked import GaugeCheck, Size


def answer(case: GaugeCheck) -> None:
    case.own_stitches = gauge_of(case.counted, case.across)
    case.own_rows = gauge_of(case.counted_rows, case.tall)
    places = [abs(_at_gauge(case, size) - case.wanted) for size in case.sizes]
    case.best = places.index(min(places))
    case.girth = _at_gauge(case, case.sizes[case.best])
    case.off = case.girth - case.wanted
    case.row_share = case.own_rows / case.pattern_rows
    case.needle_to_try = needle_for_gauge(case.needle, case.own_stitches, case.pattern_stitches)
    if case.washed == "yes":
        case.wider = growth(case.wide_before, case.across)
        case.longer = growth(case.tall_before, case.tall)


def _at_gauge(case: GaugeCheck, size: Size) -> float:
    """A size's girth at the own gauge, cm."""
    return girth_at_gauge(size.girth, case.pattern_stitches, case.own_stitches)
