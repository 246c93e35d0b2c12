"""A release from products to what it takes: skeins and yarn of a colorway, its loads, packs of
base.

A bill of materials: every skein in a product is dyed, and every skein dyed is of a base.
"""

from collections.abc import Sequence
from functools import lru_cache
from math import ceil

from ..core.problem import require
from ..dye.pot_loads import even_loads
from ..yarn.putup import whole_above
from .lots import loads_kept_whole, too_large
from .sets import MOST_SHADES

SKEIN, KIT, SET_WHOLE, SET_CUT = "skein", "kit", "set-whole", "set-cut"
Held = tuple[
    str, int, int, int
]  # kind of product, how many are made, skeins in one, small ones from a full one


def skeins_taken(kind: str, made: int, each: int, shades: int, small: int = 1) -> int:
    """Full skeins of a colorway that a product takes.

    For a set dyed whole each shade rounds up by itself, for one cut first all at once.

    kind    one of SKEIN, KIT, SET_WHOLE, SET_CUT
    made    products, spares and all, 0 or more
    each    skeins of the colorway in one product; for a set small ones, of each shade; 1 or more
    shades  of the colorway, 1 or more
    small   small skeins out of one full one, for a set, 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    _require(made, each, shades, small)
    if kind == SET_WHOLE:
        return shades * ceil(made * each / small)
    if kind == SET_CUT:
        return ceil(made * each * shades / small)
    return made * (each * shades)


def skeins_dyed(kind: str, made: int, each: int, shades: int, small: int = 1) -> float:
    """Yarn of a colorway that is dyed for a product, in full skeins.

    Of a set cut first it is no more than its small skeins hold.

    kind    one of SKEIN, KIT, SET_WHOLE, SET_CUT
    made    products, spares and all, 0 or more
    each    skeins of the colorway in one product; for a set small ones, of each shade; 1 or more
    shades  of the colorway, 1 or more
    small   small skeins out of one full one, for a set, 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic (a small skein is its share of a full one).
    """
    _require(made, each, shades, small)
    if kind == SET_CUT:
        return made * each * shades / small
    return skeins_taken(kind, made, each, shades, small)


def loads_of_color(held: Sequence[Held], shades: int, largest: int) -> tuple[tuple[int, ...], int]:
    """The loads of a colorway, and how much that belongs together is parted all the same.

    A load is its skeins, small ones where they are cut first.

    held     what each product that has it holds of it
    shades   of the colorway, 1 to 60: no two in a pot
    largest  full skeins that a load takes, 1 to 500
    Raises OutOfRange for counts no room can hold.
    Source: common practice (what goes into one kit in one color comes out of one pot).
    """
    require("shades", shades, 1, MOST_SHADES)
    blocks = [(each, made) for kind, made, each, _ in held if kind in (SKEIN, KIT)]
    singles = sum(
        ceil(made * each / small) for kind, made, each, small in held if kind == SET_WHOLE
    )
    if singles:
        blocks.append((1, singles))
    loads = _loads(tuple(blocks), largest) * shades
    for kind, made, each, small in held:
        if kind == SET_CUT:
            loads += tuple(even_loads(made * each, largest * small)) * shades
    return loads, too_large(blocks, largest) * shades


def packs_for(needed: float, on_hand: float, pack: float) -> int:
    """Packs to order: the fewest that cover what is needed over what is on hand; 0 where that is
    enough.

    needed   0 or more, in one unit
    on_hand  0 or more, in the same
    pack     what a pack holds, in the same, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("needed", needed, 0.0)
    require("on_hand", on_hand, 0.0)
    require("pack", pack, above=0.0)
    return whole_above(max(needed - on_hand, 0.0) / pack)


def _require(made: int, each: int, shades: int, small: int) -> None:
    require("made", made, 0)
    require("each", each, 1)
    require("shades", shades, 1)
    require("small", small, 1)


@lru_cache(
    maxsize=256
)  # carrying roughness and trying other quantities ask for the same loads again
def _loads(blocks: tuple[tuple[int, int], ...], largest: int) -> tuple[int, ...]:
    """Loads of one shade; alike where nothing belongs together."""
    if not blocks:
        return ()
    if all(size == 1 for size, _ in blocks):
        return tuple(even_loads(sum(many for _, many in blocks), largest))
    return tuple(loads_kept_whole(blocks, largest))
