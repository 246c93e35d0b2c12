"""A weekend at a fair: what has to sell, what fits into the car, and the change to bring."""

from math import ceil

from ..core.problem import require

CLOSE = 1e-9


def crates_needed(
    skeins: int, skein_volume: float, skein_mass: float, crate_volume: float, crate_mass: float
) -> int:
    """Crates for some skeins, by whichever runs out first in a crate, room or weight.

    skeins        1 or more
    skein_volume  L that one takes up, packed, above 0
    skein_mass    kg, above 0
    crate_volume  L, at least one skein's
    crate_mass    kg a crate may hold, at least one skein's
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("skeins", skeins, 1)
    return ceil(
        skeins / skeins_in_crate(skein_volume, skein_mass, crate_volume, crate_mass) - CLOSE
    )


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


def change_due(price: int, note: int) -> int:
    """Change for one sale paid with the largest note that is taken, in cents.

    price  cents, 1 or more
    note   cents, 1 or more
    A price above the note is paid with several notes.
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("price", price, 1)
    require("note", note, 1)
    return -(-int(price) // int(note)) * int(note) - int(price)
