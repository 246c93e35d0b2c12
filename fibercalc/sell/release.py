"""A release from products to what it takes: skeins by colorway and base, loads with nothing parted, dye, packs, labels, boxes, money.

A bill of materials: every skein in a product is dyed, and every skein dyed is of a base that is ordered or on hand.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import ceil

from ..core.problem import require
from ..dye.pots import days_at_rounds, even_loads
from ..dye.recipe import dye_mass
from ..yarn.putup import whole_above
from ..yarn.split import full_skeins_for
from .lots import loads_kept_whole, too_large

SKEIN, KIT, SET_WHOLE, SET_CUT = "skein", "kit", "set-whole", "set-cut"
DAY = 1440.0  # min
NOISE = 1e-9


@dataclass(frozen=True)
class Product:
    """What is sold: its kind, how many to sell and to spare, and the skeins of each colorway in one (small ones for a set: of each shade).

    small  small skeins out of one full one, for a set
    price  without tax;  other  what one costs besides yarn, dye and energy: labels, box, pattern
    """

    name: str
    kind: str
    wanted: int
    spare: int
    parts: tuple[tuple[str, int], ...]
    small: int = 1
    price: float = 0.0
    other: float = 0.0

    @property
    def made(self) -> int:
        return self.wanted + self.spare


@dataclass(frozen=True)
class Base:
    """Undyed yarn: what a skein weighs, skeins in a pack, what a pack costs, skeins on hand."""

    name: str
    mass: float
    pack: int
    pack_price: float
    on_hand: int


@dataclass(frozen=True)
class Colorway:
    """A recipe on a base: (dye, depth %) each; shades above one for a numbered set, whose depths are the mean of its shades."""

    name: str
    base: str
    recipe: tuple[tuple[str, float], ...]
    shades: int = 1


@dataclass(frozen=True)
class Room:
    """Skeins in a load, loads in a day, skeins that hang at once, minutes that they hang."""

    load: int
    a_day: int
    rail: int
    drying: float


@dataclass(frozen=True)
class ColorNeed:
    """One colorway in a release: full skeins that it takes, g of yarn dyed, its loads in skeins (small ones where cut first), by product, and what had to be parted."""

    colorway: Colorway
    skeins: int
    mass: float
    loads: tuple[int, ...]
    by_product: dict[str, int]
    parted: int


@dataclass(frozen=True)
class Bill:
    """All that a release takes."""

    products: tuple[Product, ...]
    colors: tuple[ColorNeed, ...]
    bases: dict[str, int]  # skeins needed
    packs: dict[str, int]  # to order
    dyes: dict[str, float]  # g
    loads: int
    dye_days: int
    drying_days: int

    @property
    def skeins(self) -> int:
        return sum(need.skeins for need in self.colors)

    @property
    def mass(self) -> float:
        return sum(need.mass for need in self.colors)

    @property
    def bands(self) -> int:
        """Labels for full skeins: one on each that is sold as it is or packed in a kit."""
        return sum(
            product.made * sum(each for _, each in product.parts)
            for product in self.products
            if product.kind in (SKEIN, KIT)
        )

    def small_labels(self, shades: dict[str, int]) -> int:
        """Labels, and day stickers, for small skeins: one on each in a set."""
        return sum(
            product.made * sum(each * shades[color] for color, each in product.parts)
            for product in self.products
            if product.kind in (SET_WHOLE, SET_CUT)
        )

    @property
    def boxes(self) -> int:
        return sum(product.made for product in self.products if product.kind != SKEIN)

    @property
    def takings(self) -> float:
        return sum(product.wanted * product.price for product in self.products)

    @property
    def other(self) -> float:
        return sum(product.made * product.other for product in self.products)


def bill_of(
    products: Sequence[Product], colorways: Sequence[Colorway], bases: Sequence[Base], room: Room
) -> Bill:
    """What a release takes.

    products   each part names a colorway
    colorways  each names a base
    bases      each once
    room       pots, rounds and rail
    Raises OutOfRange for counts no room can hold, KeyError for a name that is not there.
    Source: arithmetic (a bill of materials).
    """
    known = {base.name: base for base in bases}
    colors = tuple(
        need
        for colorway in colorways
        if (need := _color_need(colorway, products, known[colorway.base], room)).skeins
    )
    unknown = {name for product in products for name, _ in product.parts} - {
        colorway.name for colorway in colorways
    }
    if unknown:
        raise KeyError(min(unknown))
    skeins = {
        base.name: sum(need.skeins for need in colors if need.colorway.base == base.name)
        for base in bases
    }
    packs = {base.name: packs_for(skeins[base.name], base.on_hand, base.pack) for base in bases}
    dyes: dict[str, float] = {}
    for need in colors:
        for dye, depth in need.colorway.recipe:
            dyes[dye] = dyes.get(dye, 0.0) + dye_mass(need.mass, depth)
    loads = sum(len(need.loads) for need in colors)
    by_rail = (
        ceil(sum(need.skeins for need in colors) * room.drying / DAY / room.rail - NOISE)
        if room.rail
        else 0
    )
    return Bill(
        tuple(products),
        colors,
        skeins,
        packs,
        dyes,
        loads,
        max(days_at_rounds(loads, 1, room.a_day), by_rail),
        ceil(room.drying / DAY - NOISE),
    )


def packs_for(needed: float, on_hand: float, pack: float) -> int:
    """Packs to order: the fewest that cover what is needed over what is on hand; 0 where that is enough.

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


def _color_need(
    colorway: Colorway, products: Sequence[Product], base: Base, room: Room
) -> ColorNeed:
    blocks, singles_of_shade, pieces_of_shade = [], 0, []
    by_product, mass = {}, 0.0
    for product in products:
        each = sum(count for name, count in product.parts if name == colorway.name)
        if not each or not product.made:
            continue
        if product.kind == SET_WHOLE:
            count = full_skeins_for(product.made * each, product.small)
            singles_of_shade += count
            taken = count * colorway.shades
        elif product.kind == SET_CUT:
            taken = full_skeins_for(product.made * each * colorway.shades, product.small)
            pieces_of_shade.append((product.made * each, product.small))
            mass += product.made * each * colorway.shades * base.mass / product.small
        else:
            blocks.append((each, product.made))
            taken = product.made * each * colorway.shades
        by_product[product.name] = by_product.get(product.name, 0) + taken
        mass += 0.0 if product.kind == SET_CUT else taken * base.mass
    if singles_of_shade:
        blocks.append((1, singles_of_shade))
    loads = _loads(tuple(blocks), room.load) * colorway.shades
    for pieces, small in pieces_of_shade:
        loads += tuple(even_loads(pieces, room.load * small)) * colorway.shades
    return ColorNeed(
        colorway,
        sum(by_product.values()),
        mass,
        loads,
        by_product,
        too_large(blocks, room.load) * colorway.shades,
    )


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
