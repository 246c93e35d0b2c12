"""Heddles and reeds: what their numbers mean in inches and centimeters, and which sett a denting
order gives.
"""

from collections.abc import Sequence

from ..core.problem import require
from ..core.table import SourcedTable, read_table
from ..core.units import METERS_PER_INCH

INCH_IN_10_CM = 10 * METERS_PER_INCH  # an inch as a part of 10 cm

# Ends to a dent, dent after dent, before the order begins again. Zero leaves a dent empty.
DENTING_ORDERS = ((1, 0), (1,), (1, 1, 2), (1, 2), (1, 2, 2), (2,), (2, 3), (3,), (4,))


def heddle_list() -> SourcedTable:
    """Heddles and reeds that are sold, by the number on them.

    Source: trade pages (trade-pages-reeds) for metric reeds and the inch names sold for them; the
    rest from memory.
    """
    return read_table("weave", "heddles")


def dents_per_inch(per_10_cm: float) -> float:
    """Dents in an inch of a metric heddle or reed: its number in 10 cm x 0.254.

    per_10_cm  dents, or holes and slots together, in 10 cm, above 0
    Raises OutOfRange outside this.
    Source: definition (exact inch).
    """
    require("per_10_cm", per_10_cm, above=0.0)
    return per_10_cm * INCH_IN_10_CM


def dents_per_10_cm(per_inch: float) -> float:
    """Dents in 10 cm of an inch heddle or reed.

    per_inch  dents, or holes and slots together, in an inch, above 0
    Raises OutOfRange outside this.
    Source: definition (exact inch).
    """
    require("per_inch", per_inch, above=0.0)
    return per_inch / INCH_IN_10_CM


def ends_in_a_dent(order: Sequence[int]) -> float:
    """Mean number of ends in a dent of a denting order.

    order  ends in each dent, one dent after another, at least one dent; 0 leaves a dent empty,
           not all of them
    Raises OutOfRange for no dent, a number below 0, or nothing but empty dents.
    Source: arithmetic (the mean).
    """
    require("order", len(order), 1)
    for ends in order:
        require("order", ends, 0)
    require("order", sum(order), 1)
    return sum(order) / len(order)
