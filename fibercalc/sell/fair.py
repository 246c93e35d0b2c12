"""A weekend at a fair: what has to sell, what fits into the car, and the change to bring."""

from math import ceil

from ..core.problem import require

CLOSE = 1e-9


def crates_needed(skeins: int, each: int) -> int:
    """Crates for some skeins.

    skeins  1 or more
    each    skeins that one crate holds, 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("skeins", skeins, 1)
    require("each", each, 1)
    return ceil(skeins / each)


def skeins_in_crate(
    skein_volume: float, skein_mass: float, crate_volume: float, crate_mass: float
) -> int:
    """Skeins that go into one crate, by room and by weight.

    skein_volume  L, above 0
    skein_mass    kg, above 0
    crate_volume  L, at least one skein's
    crate_mass    kg, at least one skein's
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("skein_volume", skein_volume, above=0.0)
    require("skein_mass", skein_mass, above=0.0)
    require("crate_volume", crate_volume, skein_volume)
    require("crate_mass", crate_mass, skein_mass)
    return int(min(crate_volume / skein_volume, crate_mass / skein_mass) + CLOSE)


def notes_handed(price: float, note: float) -> float:
    """The largest notes that are taken, for one sale: as many as pay it.

    price  whole cents, 1 or more
    note   whole cents, 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("price", price, 1)
    require("note", note, 1)
    return ceil(price / note)


def change_due(price: float, note: float, handed: float) -> float:
    """Change for one sale paid with the largest notes that are taken, in cents.

    price   whole cents, 1 or more
    note    whole cents, 1 or more
    handed  how many of them are handed over, 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("price", price, 1)
    require("note", note, 1)
    require("handed", handed, 1)
    return handed * note - price
