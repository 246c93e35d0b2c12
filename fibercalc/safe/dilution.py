"""Weaker acid from stronger: how much acid and how much water."""

from ..core.problem import require

WATER_DENSITY = 0.998  # g/mL at 20 °C


def acid_for_mass(total: float, wanted: float, have: float) -> float:
    """Strong acid that holds as much pure acid as some weight of the weak one, g.

    total   weight of the weak acid wanted, g, 0 or more
    wanted  its strength, % by weight, 0 or more, at most have
    have    strength of the strong acid, % by weight, above 0, up to 100
    Raises OutOfRange outside these.
    Source: arithmetic (the pure acid stays the same).
    """
    require("total", total, 0.0)
    require("have", have, 0.0, 100.0, above=0.0)
    require("wanted", wanted, 0.0, have)
    return total * wanted / have


def mass_of_volume(volume: float, density: float) -> float:
    """Weight of some volume of acid, g.

    volume   mL, 0 or more
    density  g/mL, above 0
    Raises OutOfRange outside these.
    Source: arithmetic (volume x density).
    """
    require("volume", volume, 0.0)
    require("density", density, above=0.0)
    return volume * density


def water_volume(grams: float) -> float:
    """Volume of water at 20 °C, mL.

    grams  weight of the water, 0 or more
    Raises OutOfRange for a negative weight.
    Source: arithmetic (weight over density, 0.998 g/mL).
    """
    require("grams", grams, 0.0)
    return grams / WATER_DENSITY
