"""Dimensional change in washing, as ISO 5077 states it: percent of the size before.

A loss is divided out, never added. A change carries its sign (minus is shrinkage); a shrink is the
same number the other way round (plus is shrinkage), as makers say it.
"""

from collections.abc import Sequence
from functools import reduce
from operator import mul

from ..core.problem import require

MOST_SHRINK, MOST_GROWTH = 90.0, 100.0  # %: beyond these lies a slip of the pen


def change_percent(before: float, after: float) -> float:
    """Dimensional change in one direction, %: minus is shrinkage, plus is growth.

    before  distance between two marks before washing, any length unit, above 0
    after   the same distance after, in the same unit, above 0
    Raises OutOfRange outside these.
    Source: ISO 5077 (iso-5077, read in a summary), 100 x (after - before) / before.
    """
    require("before", before, above=0.0)
    require("after", after, above=0.0)
    return 100 * (after - before) / before


def area_change(length_change: float, width_change: float) -> float:
    """Change of the area, %, from the changes in both directions.

    The factors multiply, the percents do not add.

    length_change  %, minus is shrinkage, -90 to 100
    width_change   %, minus is shrinkage, -90 to 100
    Raises OutOfRange outside these.
    Source: arithmetic, 1 + a = (1 + l)(1 + w).
    """
    require("length_change", length_change, -MOST_SHRINK, MOST_GROWTH)
    require("width_change", width_change, -MOST_SHRINK, MOST_GROWTH)
    return 100 * ((1 + length_change / 100) * (1 + width_change / 100) - 1)


def compounded(changes: Sequence[float]) -> float:
    """Change, %, after several washes in a row, each a percent of the size before that wash.

    changes  one or more, %, minus is shrinkage, each -90 to 100
    Raises OutOfRange for none, or outside these.
    Source: arithmetic, the product of (1 + change).
    """
    require("changes", len(changes), 1)
    for change in changes:
        require("changes", change, -MOST_SHRINK, MOST_GROWTH)
    return 100 * (reduce(mul, (1 + change / 100 for change in changes)) - 1)


def size_before(finished: float, shrink: float) -> float:
    """The size to make so that washing leaves the size wanted.

    It is finished / (1 - shrink / 100), never finished x (1 + shrink / 100).
    finished  size wanted after washing, any unit, above 0
    shrink    %, plus is shrinkage, minus growth, -100 to 90
    Raises OutOfRange outside these.
    Source: arithmetic from ISO 5077 (iso-5077), its formula solved for the size before.
    """
    require("finished", finished, above=0.0)
    require("shrink", shrink, -MOST_GROWTH, MOST_SHRINK)
    return finished / (1 - shrink / 100)


def size_after(made: float, shrink: float) -> float:
    """The size that washing leaves of a size made: the other way round from size_before.

    made    size before washing, any unit, above 0
    shrink  %, plus is shrinkage, minus growth, -100 to 90
    Raises OutOfRange outside these.
    Source: arithmetic from ISO 5077 (iso-5077).
    """
    require("made", made, above=0.0)
    require("shrink", shrink, -MOST_GROWTH, MOST_SHRINK)
    return made * (1 - shrink / 100)
