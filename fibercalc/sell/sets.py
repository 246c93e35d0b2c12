"""A set of numbered small skeins: how many full skeins it takes, by whether they are cut or dyed
first.
"""

from collections.abc import Sequence
from math import ceil

from ..core.arithmetic import total
from ..core.problem import require
from ..dye.recipe import DEEPEST, HEAVIEST
from ..yarn.split import full_skeins_for

MOST_SHADES, MOST_SETS = 60, 2000


def skeins_cut_first(shades: int, sets: int, per_skein: int) -> int:
    """Full skeins when small skeins are wound first and dyed after: all are counted together, and
    round up once.

    shades     in the set, 1 to 60
    sets       with spares, 1 to 2,000
    per_skein  small skeins out of one full one, 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    _require(shades, sets)
    return full_skeins_for(shades * sets, per_skein)


def skeins_dyed_whole(shades: int, sets: int, per_skein: int) -> int:
    """Full skeins when whole skeins are dyed and cut after: each shade rounds up by itself.

    shades     in the set, 1 to 60
    sets       with spares, 1 to 2,000
    per_skein  small skeins out of one full one, 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    _require(shades, sets)
    return shades * full_skeins_for(sets, per_skein)


def loads_of_set(shades: int, pieces: int, largest: int) -> int:
    """Loads in all when no two shades share a pot.

    shades   in the set, 1 to 60
    pieces   skeins or small skeins of one shade, 1 to 2,000
    largest  of them that one load takes, 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    _require(shades, pieces)
    require("largest", largest, 1)
    return shades * ceil(pieces / largest)


def depths_added(percents: Sequence[float]) -> float:
    """Depths of all shades of a set added, %.

    percents  depth of each shade, % of the yarn, each 0 to 20
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    for percent in percents:
        require("depth", percent, 0.0, DEEPEST)
    return total(percents)


def dye_in_set(mass: float, depths: float) -> float:
    """Dye, g, in all shades of a set, each dyed on the same weight of yarn.

    mass    g of each shade, above 0 to 100,000
    depths  % of the yarn, of all shades added (see depths_added), 0 to 1,200
    Raises OutOfRange outside these.
    Source: textile-pages-recipe (dye = weight x depth), added up.
    """
    require("mass", mass, 0.0, HEAVIEST, above=0.0)
    require("depths", depths, 0.0, MOST_SHADES * DEEPEST)
    return mass * depths / 100


def _require(shades: int, sets: int) -> None:
    require("shades", shades, 1, MOST_SHADES)
    require("sets", sets, 1, MOST_SETS)
