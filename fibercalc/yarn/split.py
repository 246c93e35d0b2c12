"""Full skeins into small ones: how many, what is left, and whether the last one is short.

The same arithmetic holds by length and by weight, so these functions take any one unit
throughout. A loss share (knots, a weak place, what sticks to the swift) comes off the skein
first; each small skein then takes what is wanted and its own loss (ties, ends).
"""

from ..core.problem import require
from .putup import whole_above, whole_below


def usable_amount(skein: float, loss_share: float = 0.0) -> float:
    """What of a skein can be wound, in the skein's own unit.

    skein       m or g, above 0
    loss_share  % of the skein lost in re-winding, 0 to 50
    Raises OutOfRange outside these.
    Source: common practice.
    """
    require("skein", skein, above=0.0)
    require("loss_share", loss_share, 0.0, 50.0)
    return skein * (1 - loss_share / 100)


def small_skeins(usable: float, wanted: float, loss_per_cut: float = 0.0) -> int:
    """How many full small skeins come out of one skein.

    usable        what can be wound, m or g, 0 or more (see usable_amount)
    wanted        one small skein, same unit, above 0
    loss_per_cut  lost with each small skein, same unit, 0 or more
    Raises OutOfRange outside these.
    Source: common practice (whole skeins only, rounded down).
    """
    require("usable", usable, 0.0)
    require("wanted", wanted, above=0.0)
    require("loss_per_cut", loss_per_cut, 0.0)
    return whole_below(usable / (wanted + loss_per_cut))


def left_over(usable: float, count: int, wanted: float, loss_per_cut: float = 0.0) -> float:
    """What is left after count small skeins, in the same unit. Below 0 when there is not enough
    for them.

    usable        what can be wound, m or g, 0 or more
    count         small skeins wound, 0 or more
    wanted        one small skein, same unit, above 0
    loss_per_cut  lost with each small skein, same unit, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic (what goes in comes out).
    """
    require("usable", usable, 0.0)
    require("count", count, 0.0)
    require("wanted", wanted, above=0.0)
    require("loss_per_cut", loss_per_cut, 0.0)
    return usable - count * (wanted + loss_per_cut)


def margin_of_last(usable: float, count: int, wanted: float, loss_per_cut: float = 0.0) -> float:
    """How much more than wanted is there for the last of count small skeins; below 0, the last
    one is short by that much.

    usable        what can be wound, m or g, 0 or more
    count         small skeins planned, 1 or more
    wanted        one small skein, same unit, above 0
    loss_per_cut  lost with each small skein before the last, same unit, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic (what goes in comes out).
    """
    require("count", count, 1.0)
    return left_over(usable, count - 1, wanted, loss_per_cut) - wanted


def most_turns_for_count(
    usable_length: float, count: int, turn_length: float, loss_per_cut: float = 0.0
) -> int:
    """Most whole turns that each small skein can have when count of them must come out of one
    skein; 0 when not one turn fits.

    usable_length  m, 0 or more
    count          small skeins wanted, 1 or more
    turn_length    m, 0.05 to 10; one turn of the reel, rested
    loss_per_cut   m lost with each small skein, 0 or more
    Raises OutOfRange outside these.
    Source: common practice (whole turns only, rounded down).
    """
    require("usable_length", usable_length, 0.0)
    require("count", count, 1.0)
    require("turn_length", turn_length, 0.05, 10.0)
    require("loss_per_cut", loss_per_cut, 0.0)
    return whole_below(max(usable_length / count - loss_per_cut, 0.0) / turn_length)


def full_skeins_for(count: int, per_skein: int) -> int:
    """Full skeins to cut for a wanted number of small ones.

    count      small skeins wanted, 0 or more
    per_skein  small skeins out of one full skein, 1 or more
    Raises OutOfRange outside these.
    Source: common practice (rounded up). When shades are dyed whole, ask for each shade by itself
    and add.
    """
    require("count", count, 0.0)
    require("per_skein", per_skein, 1.0)
    return whole_above(count / per_skein)
