"""Weight classes: every published class that a reading fits.

The published ranges overlap, and a reading has a spread of its own, so the answer is a list and
never one winner. A class is matched when its range and the low..high of the reading have any value
in common. A printed whole number stands for half a unit on either side (8.5 wraps lie in "6-8" and
in "9-12"), so a reading never falls between two printed neighbors by rounding alone.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from ..core.problem import require
from ..core.table import read_table
from .count import COARSEST_TEX, FINEST_TEX, count_from_tex

COUNCIL, PLY_TERMS = "craft-yarn-council-weights", "trade-page-ply-terms"
LISTS = (COUNCIL, PLY_TERMS)
HALF_A_PRINTED_UNIT = 0.5


@dataclass(frozen=True)
class WeightClass:
    """One published class: its name, wraps per inch and grist as ranges (None where the range is
    open or not listed).
    """

    name: str
    wraps_low: float | None
    wraps_high: float | None
    grist_low: float | None
    grist_high: float | None
    grist_unit: str


def weight_classes(published_list: str) -> tuple[WeightClass, ...]:
    """Every class of one published list, finest first.

    published_list  COUNCIL or PLY_TERMS
    Raises FileNotFoundError for a list that is not there.
    Source: Craft Yarn Council (craft-yarn-council); trade page (trade-page-ply-terms).
    """
    return tuple(
        WeightClass(
            row["name"],
            _edge(row["wraps_low"]),
            _edge(row["wraps_high"]),
            _edge(row["grist_low"]),
            _edge(row["grist_high"]),
            row["grist_unit"],
        )
        for row in read_table("yarn", published_list).rows
    )


def classes_by_wraps(published_list: str, low: float, high: float) -> tuple[str, ...]:
    """Names of all classes whose wraps per inch overlap the reading.

    published_list  COUNCIL or PLY_TERMS
    low             wraps per inch, low end of the reading, above 0
    high            wraps per inch, high end of the reading, not below low
    Raises OutOfRange for ends out of order or not above 0.
    Source: Craft Yarn Council (craft-yarn-council); trade page (trade-page-ply-terms).
    """
    require("low", low, above=0.0)
    require("high", high, low)
    return tuple(
        one.name
        for one in weight_classes(published_list)
        if _overlap(one.wraps_low, one.wraps_high, low, high)
    )


def classes_by_grist(published_list: str, low: float, high: float) -> tuple[str, ...]:
    """Names of all classes whose typical grist overlaps a yarn's linear density.

    published_list  COUNCIL or PLY_TERMS
    low             tex, finer end of the reading, 0.001 and up
    high            tex, coarser end of the reading, not below low
    Raises OutOfRange for ends out of order or outside 0.001 to 10,000,000 tex.
    Source: trade pages (trade-page-spinners for the council's list, trade-page-ply-terms).
    """
    require("low", low, FINEST_TEX, COARSEST_TEX)
    require("high", high, low, COARSEST_TEX)
    found = []
    for one in weight_classes(published_list):
        finest, coarsest = count_from_tex(low, one.grist_unit), count_from_tex(high, one.grist_unit)
        if _overlap(one.grist_low, one.grist_high, coarsest, finest):
            found.append(one.name)
    return tuple(found)


def agreed_classes(by_wraps: Sequence[str], by_grist: Sequence[str]) -> tuple[str, ...]:
    """Classes that both ways of measuring agree on, in the order of the wraps.

    by_wraps  names from classes_by_wraps
    by_grist  names from classes_by_grist
    Source: arithmetic (what two lists have in common).
    """
    return tuple(name for name in by_wraps if name in by_grist)


def _edge(cell: str | float) -> float | None:
    return cell if isinstance(cell, float) else None


def _overlap(class_low: float | None, class_high: float | None, low: float, high: float) -> bool:
    if class_low is None and class_high is None:
        return False
    return (class_low is None or high >= class_low - HALF_A_PRINTED_UNIT) and (
        class_high is None or low <= class_high + HALF_A_PRINTED_UNIT
    )
