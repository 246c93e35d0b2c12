"""The weaves of the book: those of one rigid heddle with its stick, told by their sheds, and
those that ask for more, by their draw-down.

Twills are drawn by their definition: each pick moves one end to the right. The point waffle is
the draft on four shafts, threaded 1 2 3 4 3 2 and lifted 1, 2, 1+3, 1+2+4 and back. Sheds of the
pick-up weaves are common practice.
"""

from dataclasses import dataclass

from .repeat import WARP, WEFT
from .sheds import DOWN, EDGE, FLAT, UP, Lift, repeat_of_sheds

OWN = "own"


@dataclass(frozen=True)
class Structure:
    """One weave: its key and name, its repeat, what is seen of it, and how its draft is known (a
    status of the tables).
    """

    key: str
    label: str
    repeat: tuple[str, ...]
    said: str
    status: str = "practice"


def _by_sheds(*sheds: str, settings: tuple[str, ...] = ("10",)) -> tuple[str, ...]:
    """A repeat from sheds; "edge 2" is on edge with the stick's second setting."""
    lifts = []
    for text in sheds:
        shed, _, setting = text.partition(" ")
        lifts.append(Lift(shed, int(setting or 1) if shed in (EDGE, FLAT) else 0))
    return repeat_of_sheds(tuple(lifts), settings)


def _twill(over: int, under: int, order: tuple[int, ...] = ()) -> tuple[str, ...]:
    """A twill: on pick j the warp lies over for ends j, j + 1 ... (over of them), then under;
    order tells which end of the plain twill stands at each place.
    """
    size = over + under
    return tuple(
        "".join(WARP if (end - pick) % size < over else WEFT for end in order or range(size))
        for pick in range(size)
    )


def _by_shafts(threading: str, *lifts: str) -> tuple[str, ...]:
    return tuple("".join(WARP if shaft in lift else WEFT for shaft in threading) for lift in lifts)


ALL = (
    Structure(
        "plain",
        "Plain weave",
        _by_sheds(UP, DOWN, settings=()),
        "Over one, under one: the firmest, and the one that draws in most",
    ),
    Structure(
        "weft-floats",
        "Weft floats",
        _by_sheds(UP, EDGE, UP, DOWN),
        "Short bars of weft in columns, on a plain ground",
    ),
    Structure(
        "warp-floats",
        "Warp floats",
        _by_sheds(DOWN, FLAT, DOWN, UP),
        "Upright bars of warp in columns, on a plain ground",
    ),
    Structure(
        "offset-floats",
        "Offset floats",
        _by_sheds(UP, "edge 1", UP, DOWN, UP, "edge 2", UP, DOWN, settings=("10", "01")),
        "Bars like bricks; the stick is set anew for every second row of them",
    ),
    Structure(
        "waffle",
        "Waffle, 1 stick",
        _by_sheds(EDGE, UP, EDGE, DOWN, FLAT, DOWN),
        "Warp floats and weft floats around cells; flat on the loom, deep once washed",
    ),
    Structure(
        "lace",
        "Lace-like skips",
        _by_sheds(UP, EDGE, UP, EDGE, UP, DOWN, settings=("100",)),
        "Skips of weft on the face and of warp on the back gather the threads into windows",
    ),
    Structure(
        "hopsack",
        "Hopsack 2/2",
        ("1100", "1100", "0011", "0011"),
        "Plain weave in pairs of ends and picks",
    ),
    Structure("twill-2-1", "Twill 2/1", _twill(2, 1), "Lines to the right, more warp on the face"),
    Structure("twill-2-2", "Twill 2/2", _twill(2, 2), "Lines to the right, both faces alike"),
    Structure(
        "twill-3-1", "Twill 3/1", _twill(3, 1), "Lines to the right, nearly all warp on the face"
    ),
    Structure(
        "herringbone",
        "Herringbone 2/2",
        _twill(2, 2, (0, 1, 2, 3, 1, 0, 3, 2)),
        "The lines turn with a clean cut every four ends",
    ),
    Structure(
        "waffle-point",
        "Waffle, 4 shafts",
        _by_shafts("123432", "1", "2", "13", "124", "13", "2"),
        "A plain-woven middle, floats longer and longer up to the ridges",
        "memory",
    ),
)
BY_KEY = {structure.key: structure for structure in ALL}


def structure(key: str) -> Structure:
    """The weave with this key.

    key  one of the keys of ALL
    Raises KeyError when there is none.
    Source: definition of each weave, common practice.
    """
    return BY_KEY[key]
