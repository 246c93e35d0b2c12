"""A set of numbered small skeins: how many full skeins it takes, by whether they are cut or dyed first."""

from collections.abc import Sequence

from ..core.problem import require
from ..dye.pots import even_loads
from ..dye.recipe import dye_mass
from ..yarn.split import full_skeins_for

MOST_SHADES, MOST_SETS = 60, 2000


def skeins_cut_first(shades: int, sets: int, per_skein: int) -> int:
    """Full skeins when small skeins are wound first and dyed after: all are counted together, and round up once.

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
    return shades * len(even_loads(pieces, largest))


def dye_in_set(mass: float, percents: Sequence[float]) -> float:
    """Dye, g, in all shades of a set, each dyed on the same weight of yarn.

    mass      g of each shade, above 0
    percents  depth of each shade, % of the yarn, each 0 to 20
    Raises OutOfRange outside these.
    Source: textile-pages-recipe (dye = weight x depth), added up.
    """
    return sum(dye_mass(mass, percent) for percent in percents)


def _require(shades: int, sets: int) -> None:
    require("shades", shades, 1, MOST_SHADES)
    require("sets", sets, 1, MOST_SETS)
