"""Painting skeins by hand: what each section drinks, what is in it, and how long the lot steams.

Yarn holds so much liquid, as % of its dry weight, and painted yarn is damp already: only the
difference goes on. More runs down and mixes; less leaves undyed cores. Two weighings give either:
the change from dry to wet (base_factor.change_percent).
"""

from collections.abc import Sequence
from math import ceil

from ..core.arithmetic import total
from ..core.problem import OutOfRange, require
from .recipe import STRONGEST

MOST_PICK_UP = 1000.0  # %; a wet skein before it is let drip


def paint_volume(mass: float, full: float, damp: float) -> float:
    """Dye liquor, mL, that a section drinks: W (full - damp) / 100.

    mass  g of dry fiber in the section, above 0 to 100,000
    full  pick-up when it holds all it can without dripping, % of dry weight, damp to 1,000
    damp  pick-up before painting, %, 0 and more
    Raises OutOfRange outside these; yarn as wet as it can be is refused with what to change.
    Source: definition of pick-up.
    """
    require("mass", mass, 0.0, 1e5, above=0.0)
    return mass * _taken_up(full, damp) / 100


def section_masses(mass: float, shares: Sequence[float]) -> list[float]:
    """Weight, g, of each section of a skein by its share of the length; shares need not add up to
    anything.

    mass    g of the skein, above 0 to 100,000
    shares  one for each section, 0 or more, at least one above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("mass", mass, 0.0, 1e5, above=0.0)
    for share in shares:
        require("shares", share, 0.0)
    whole = total(shares)
    require("shares", whole, above=0.0)
    return [mass * share / whole for share in shares]


def paint_strength(depth: float, full: float, damp: float) -> float:
    """Strength, g in 100 mL, of the liquor that brings a depth of shade with what the section
    drinks: 100 P / (full - damp).

    depth  % of the fiber's weight, 0 to 20
    full   pick-up after painting, %, damp to 1,000
    damp   pick-up before painting, %, 0 and more
    Raises OutOfRange outside these, and above 40 g in 100 mL.
    Source: arithmetic from the definitions of depth and pick-up.
    """
    require("depth", depth, 0.0, 20.0)
    strength = 100 * depth / _taken_up(full, damp)
    if strength > STRONGEST:
        raise OutOfRange(
            "depth",
            depth,
            0.0,
            None,
            "no liquor is as strong as that: squeeze the yarn drier before painting, or paint"
            " twice",
        )
    return strength


def stock_in_paint(volume: float, paint: float, stock: float) -> float:
    """Stock, mL, in a volume of painting liquor; the rest is water, acid and thickener.

    volume  mL of liquor, above 0
    paint   g in 100 mL that it is to have, 0 to stock
    stock   g in 100 mL of the stock, above 0 to 40
    Raises OutOfRange outside these; too weak a stock is refused with what to change.
    Source: definition of strength (the dye stays the same).
    """
    require("volume", volume, above=0.0)
    require("stock", stock, 0.0, STRONGEST, above=0.0)
    require("paint", paint, 0.0)
    if paint > stock:
        raise OutOfRange(
            "paint",
            paint,
            0.0,
            stock,
            f"the liquor must hold {paint:.2g} g in 100 mL and the stock holds {stock:.2g}: use a"
            " stronger stock or squeeze the yarn drier",
        )
    return volume * paint / stock


def steaming_rounds(skeins: int, at_once: int) -> int:
    """Loads that it takes to steam a lot.

    skeins   1 or more
    at_once  skeins that lie in the steamer without touching its water, 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("skeins", skeins, 1)
    require("at_once", at_once, 1)
    return ceil(skeins / at_once)


def steaming_time(rounds: int, minutes: float, between: float = 0.0) -> float:
    """Time, min, to steam a lot in so many loads.

    rounds   1 or more (see steaming_rounds)
    minutes  of steam for each load, as the dye's maker gives it, 0 to 1,440
    between  minutes to change loads and come to steam again, 0 to 240
    Raises OutOfRange outside these.
    Source: arithmetic; the minutes of steam are the caller's.
    """
    require("rounds", rounds, 1)
    require("minutes", minutes, 0.0, 1440.0)
    require("between", between, 0.0, 240.0)
    steamed = rounds * minutes
    return steamed + (rounds - 1) * between if between else steamed


def _taken_up(full: float, damp: float) -> float:
    """What damp yarn takes up until it is wet through, % of its dry weight."""
    require("damp", damp, 0.0, MOST_PICK_UP)
    require("full", full, 0.0, MOST_PICK_UP)
    if full <= damp:
        raise OutOfRange(
            "full",
            full,
            damp,
            MOST_PICK_UP,
            "the yarn is already as wet as it can be: squeeze or spin it before painting",
        )
    return full - damp
