"""Gauge to size: what a pattern's size measures at one's own gauge, and what a needle would have
to be for the pattern's gauge.
"""

from ..core.problem import require


def gauge_of(count: float, across: float) -> float:
    """Stitches or rows per cm, from a count over a measured width or height.

    count   stitches or rows counted, above 0
    across  cm, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("count", count, above=0.0)
    require("across", across, above=0.0)
    return count / across


def girth_at_gauge(girth: float, pattern_gauge: float, own_gauge: float) -> float:
    """Girth that a pattern's size comes out at, when its stitches are worked at one's own gauge.

    girth          of the size, as the pattern gives it, above 0 (any unit of length)
    pattern_gauge  stitches per length, above 0
    own_gauge  in the same unit, washed, above 0
    Raises OutOfRange outside these.
    Source: arithmetic (the stitches stay, their width changes).
    """
    require("girth", girth, above=0.0)
    require("pattern_gauge", pattern_gauge, above=0.0)
    require("own_gauge", own_gauge, above=0.0)
    return girth * pattern_gauge / own_gauge


def needle_for_gauge(needle: float, own_gauge: float, pattern_gauge: float) -> float:
    """Needle, mm, that would likely give the pattern's gauge: stitch width goes with needle, as a
    first try.

    needle         mm, 1 to 60, with which the own gauge was made
    own_gauge      stitches per length, above 0
    pattern_gauge  in the same unit, above 0
    Raises OutOfRange outside these.
    Source: common practice (proportional; good for a step or two of needle sizes).
    """
    require("needle", needle, 1.0, 60.0)
    require("own_gauge", own_gauge, above=0.0)
    require("pattern_gauge", pattern_gauge, above=0.0)
    return needle * own_gauge / pattern_gauge


def growth(before: float, after: float) -> float:
    """Change of a measure in the wash, %; below 0 it shrank.

    before  a length of cloth, or what one stitch or row measures; above 0, in one unit
    after  a length of cloth, or what one stitch or row measures; above 0, in one unit
    Raises OutOfRange outside these.
    Source: arithmetic, 100 (after - before) / before.
    """
    require("before", before, above=0.0)
    require("after", after, above=0.0)
    return 100 * (after - before) / before
