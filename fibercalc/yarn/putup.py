"""What may be printed on a label: whole units, rounded so that they never promise more than there
is.

100 g / 420 m is 459 yd and not 460: 459.3 yards are there. Each unit is rounded down from the
exact length, not from another rounded figure.
"""

from math import ceil, floor

from ..core.problem import require
from ..core.units import GRAMS_PER_OUNCE, METERS_PER_YARD

FLOAT_NOISE = 1e-9  # relative; 210 yards turned into meters and back must still print as 210


def whole_below(amount: float) -> int:
    """Largest whole number that is not above an amount.

    amount  any number from 0
    Raises OutOfRange below 0.
    Source: common practice (what is promised to a buyer rounds down).
    """
    require("amount", amount, 0.0)
    return floor(amount * (1 + FLOAT_NOISE))


def whole_above(amount: float) -> int:
    """Smallest whole number that is not below an amount.

    amount  any number from 0
    Raises OutOfRange below 0.
    Source: common practice (what must be bought or wound rounds up).
    """
    require("amount", amount, 0.0)
    return ceil(amount * (1 - FLOAT_NOISE))


def printed_meters(length: float) -> int:
    """Whole meters that may be printed for a length.

    length  m, 0 or more
    Raises OutOfRange below 0.
    Source: common practice (rounds down).
    """
    return whole_below(length)


def printed_yards(length: float) -> int:
    """Whole yards that may be printed for a length.

    length  m, 0 or more
    Raises OutOfRange below 0.
    Source: common practice (rounds down); exact yard.
    """
    return whole_below(length / METERS_PER_YARD)


def printed_grams(mass: float) -> int:
    """Whole grams that may be printed for a weight.

    mass  g, 0 or more
    Raises OutOfRange below 0.
    Source: common practice (rounds down).
    """
    return whole_below(mass)


def printed_ounces(mass: float) -> float:
    """Ounces to one decimal that may be printed for a weight.

    mass  g, 0 or more
    Raises OutOfRange below 0.
    Source: common practice (rounds down); exact ounce.
    """
    return whole_below(10 * mass / GRAMS_PER_OUNCE) / 10
