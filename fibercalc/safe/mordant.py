"""Metal of a mordant: how much is put in, and what stays in the bath."""

from ..core.problem import require


def metal_in(salt: float, metal_percent: float) -> float:
    """Metal in some weight of a salt, g.

    salt           weight of the crystals, g, 0 or more
    metal_percent  metal in their weight, %, 0 to 100
    Raises OutOfRange outside these.
    Source: arithmetic (share of weight, from the formula of the crystals).
    """
    require("salt", salt, 0.0)
    require("metal_percent", metal_percent, 0.0, 100.0)
    return salt * metal_percent / 100.0


def metal_on(metal: float, taken_up: float, fiber: float) -> float:
    """Metal on the fiber, g for each kg of it.

    metal     put in, g, 0 or more
    taken_up  by the fiber, %, 0 to 100
    fiber     dry, g, above 0
    Raises OutOfRange outside these.
    Source: arithmetic (mass balance).
    """
    require("metal", metal, 0.0)
    require("taken_up", taken_up, 0.0, 100.0)
    require("fiber", fiber, above=0.0)
    return metal * taken_up / 100.0 / (fiber / 1000.0)


def metal_left(metal: float, taken_up: float, liters: float) -> float:
    """Metal that stays in the bath, mg/L.

    metal     put in, g, 0 or more
    taken_up  by the fiber, %, 0 to 100
    liters    of bath left, above 0
    Raises OutOfRange outside these.
    Source: arithmetic (mass balance).
    """
    require("metal", metal, 0.0)
    require("taken_up", taken_up, 0.0, 100.0)
    require("liters", liters, above=0.0)
    return 1000.0 * metal * (1.0 - taken_up / 100.0) / liters
