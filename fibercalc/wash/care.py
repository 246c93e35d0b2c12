"""Care of a piece: what its most delicate part bears.

Fiber, dye and finish each allow a treatment up to a level; the lowest holds.
"""

from collections.abc import Mapping, Sequence

from ..core.arithmetic import smallest
from ..core.problem import require
from ..core.table import read_table

TREATMENTS = ("wash", "bleach", "tumble", "dry", "iron", "clean")
MOST = 9.0


def strictest(levels: Sequence[float]) -> float:
    """The gentlest of several allowed levels: a blend is cared for as its most delicate part.

    levels  one or more, each 0 (not at all) to 9
    Raises OutOfRange outside these.
    Source: common practice (what is not known is read as the stricter).
    """
    require("levels", len(levels), 1)
    for level in levels:
        require("levels", level, 0.0, MOST)
    return smallest(levels)


def care_words(levels: Mapping[str, float]) -> list[str]:
    """Label words for allowed levels, in the order of a label, which is that of TREATMENTS.

    levels  level by treatment, each of TREATMENTS; one left out is left off the label
    Raises KeyError for a level that is not in the table of care words.
    Source: common practice for the wording; the order of ISO 3758 (iso-3758, as quoted by others).
    """
    table = read_table("wash", "care-words")
    return [
        table.row("key", f"{name} {levels[name]:g}")["words"]
        for name in TREATMENTS
        if name in levels
    ]
