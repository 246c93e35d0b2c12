"""Turns of a reel for a wanted length, and what one turn more or less weighs."""

from ..core.problem import require
from .putup import whole_above


def turns_for_length(length: float, turn_length: float) -> float:
    """Turns, with the part turn, that hold a wanted length.

    length       m, above 0
    turn_length  m, 0.05 to 10; one turn, rested (see skein.relaxed_circumference)
    Raises OutOfRange outside these.
    Source: common practice.
    """
    require("length", length, above=0.0)
    require("turn_length", turn_length, 0.05, 10.0)
    return length / turn_length


def whole_turns_for_length(length: float, turn_length: float) -> int:
    """Whole turns that hold at least the wanted length.

    length       m, above 0
    turn_length  m, 0.05 to 10; one turn, rested
    Raises OutOfRange outside these.
    Source: common practice (rounded up, so that no skein is short).
    """
    return whole_above(turns_for_length(length, turn_length))


def mass_of_turns(turns: float, turn_length: float, tex: float) -> float:
    """Weight, g, of some turns of a yarn; of one turn, what one more or less weighs.

    turns        number of turns, 0 or more
    turn_length  m, 0.05 to 10; one turn, rested
    tex          g per 1,000 m, above 0
    Raises OutOfRange outside these.
    Source: common practice (weight and length are proportional).
    """
    require("turns", turns, 0.0)
    require("turn_length", turn_length, 0.05, 10.0)
    require("tex", tex, above=0.0)
    return turns * turn_length * tex / 1000
