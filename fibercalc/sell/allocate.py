"""Good skeins shared out by lot: kits with each color from one lot, the club, and the shop; and
parcels against bands of weight.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from ..core.problem import require

MOST = 20_000


@dataclass(frozen=True)
class Share:
    """What one lot gives: its color, its name, good skeins, kits served from it and the skeins
    that takes, club skeins, and the rest.
    """

    color: str
    lot: str
    good: int
    kits: int
    in_kits: int
    club: int

    @property
    def shop(self) -> int:
        return self.good - self.in_kits - self.club


def kits_possible(lots: Sequence[tuple[str, int]], kit: Sequence[tuple[str, int]]) -> float:
    """Kits that can be packed with all skeins of one color from one lot; 0 for an empty kit.

    lots  (color, good skeins) of each lot, each 0 or more
    kit   (color, skeins) of one kit, each 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    return min(
        (
            sum(kits_from(good, each) for name, good in lots if name == color)
            for color, each in _wanted(kit).items()
        ),
        default=0,
    )


def kits_from(good: float, each: float) -> float:
    """Kits that one lot serves, with all skeins of its color in a kit from it.

    good  good skeins of the lot, 0 or more
    each  skeins of its color in one kit, 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("good", good, 0, MOST)
    require("each", each, 1, MOST)
    return good // each


def allocate(
    lots: Sequence[tuple[str, str, int]],
    kit: Sequence[tuple[str, int]],
    kits: int,
    club: Sequence[tuple[str, int]],
) -> list[Share]:
    """Kits first, small lots first, so that what is left lies in few lots; then the club, all of
    a color from one lot where one holds it; the rest is the shop's.

    lots  (color, lot, good skeins) each, good 0 or more
    kit   (color, skeins) of one kit, each 1 or more
    kits  to pack, 0 to what kits_possible gives
    club  (color, skeins) promised, each 0 or more; more than there is gets what there is
    Raises OutOfRange outside these.
    Source: common practice.
    """
    require(
        "kits",
        kits,
        0,
        kits_possible([(color, good) for color, _, good in lots], kit) if kits else 0,
    )
    served, clubbed = [0] * len(lots), [0] * len(lots)
    wanted = _wanted(kit)
    for color, each in wanted.items():
        left = kits
        # A lot that kits use up to the last skein comes first, then the smaller ones.
        for place in sorted(
            (place for place, lot in enumerate(lots) if lot[0] == color),
            key=lambda place: (lots[place][2] % each, lots[place][2]),
        ):
            served[place] = min(left, lots[place][2] // each)
            left -= served[place]
    rest = [
        good - served[place] * wanted.get(color, 0) for place, (color, _, good) in enumerate(lots)
    ]
    for color, count in club:
        require("club", count, 0, MOST)
        own = [place for place, lot in enumerate(lots) if lot[0] == color]
        whole = [place for place in own if rest[place] - clubbed[place] >= count]
        order = sorted(whole, key=lambda place: rest[place])[:1] or sorted(
            own, key=lambda place: -rest[place]
        )
        left = count
        for place in order:
            taken = min(left, rest[place] - clubbed[place])
            clubbed[place] += taken
            left -= taken
    return [
        Share(color, lot, good, served[place], served[place] * wanted.get(color, 0), clubbed[place])
        for place, (color, lot, good) in enumerate(lots)
    ]


def band_of(mass: float, bands: Sequence[float]) -> int | None:
    """The place, from 0, of the first band that a parcel may weigh up to; None where it is over
    all of them.

    mass   g, 0 or more
    bands  g that each goes up to, rising, each above 0
    Raises OutOfRange outside these.
    Source: arithmetic; the bands are the user's own.
    """
    require("mass", mass, 0.0)
    for low, high in zip(bands, bands[1:]):
        require("bands", high, above=low)
    return next((place for place, most in enumerate(bands) if mass <= most + 1e-9), None)


def _wanted(kit: Sequence[tuple[str, int]]) -> dict[str, int]:
    wanted: dict[str, int] = {}
    for color, each in kit:
        require("kit", each, 1, MOST)
        wanted[color] = wanted.get(color, 0) + each
    return wanted
