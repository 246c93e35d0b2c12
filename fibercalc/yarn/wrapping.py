"""Wraps per inch, and the wide band of yards per pound that a wrap count allows.

Three wrapping conventions differ by a factor of two, so a count means nothing without its
convention. Wraps go with the square root of the grist: wraps = k x square root of yards per pound.
A relaxed hand wrap must never be used as a sett.
"""

from ..core.problem import require
from ..core.table import SourcedTable, read_table


def wrap_conventions() -> SourcedTable:
    """The three wrapping conventions with the low, middle and high k of each.

    Source: trade pages (trade-page-spinners, trade-page-weavers); each row says more.
    """
    return read_table("yarn", "wrap-conventions")


def wraps_per_inch(turns: float, width: float) -> float:
    """Wraps per inch, from turns laid side by side over a measured width.

    turns  number of turns counted, above 0 to 1,000
    width  in, 0.19 to 40 (narrower than 5 mm a turn more or less decides the answer)
    Raises OutOfRange outside these.
    Source: common practice (definition of wraps per inch).
    """
    require("turns", turns, 0.0, 1000.0, above=0.0)
    require("width", width, 0.19, 40.0)
    return turns / width


def yards_per_pound_from_wraps(wraps: float, ratio: float) -> float:
    """Grist, yd/lb, that goes with a wrap count under one convention. A wide band: ask it for the
    low and high ratio too.

    wraps  wraps per inch, above 0 to 200
    ratio  k, wraps per inch over square root of yd/lb, 0.2 to 1.2; see wrap_conventions
    Raises OutOfRange outside these.
    Source: trade pages (trade-page-spinners); the published pair of skeins in the table's note
    shows how wide the band is.
    """
    require("wraps", wraps, 0.0, 200.0, above=0.0)
    require("ratio", ratio, 0.2, 1.2)
    return (wraps / ratio) ** 2


def wraps_from_yards_per_pound(yards_per_pound: float, ratio: float) -> float:
    """Wraps per inch to expect of a known grist under one convention.

    yards_per_pound  yd/lb, above 0 to 100,000
    ratio            k, wraps per inch over square root of yd/lb, 0.2 to 1.2; see wrap_conventions
    Raises OutOfRange outside these.
    Source: trade pages (trade-page-spinners, trade-page-weavers).
    """
    require("yards_per_pound", yards_per_pound, 0.0, 100_000.0, above=0.0)
    require("ratio", ratio, 0.2, 1.2)
    wraps: float = ratio * yards_per_pound**0.5
    return wraps
