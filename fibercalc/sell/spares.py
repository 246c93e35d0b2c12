"""Faulty skeins and lost parcels: how many more to make so that enough are good, by counting
chances.
"""

from collections.abc import Callable
from math import exp, lgamma, log, log1p

from ..core.problem import OutOfRange, require

MOST = 20_000


def chance_at_most(most: int, count: int, share: float) -> float:
    """The chance, 0 to 1, that at most so many of count go wrong, each by itself.

    most   0 or more
    count  0 to 20,000
    share  chance of each, 0 to 1
    Raises OutOfRange outside these.
    Source: definition of the binomial distribution.
    """
    require("most", most, 0)
    require("count", count, 0, MOST)
    require("share", share, 0.0, 1.0)
    if most >= count or share == 0.0:
        return 1.0
    if share == 1.0:
        return 0.0
    return min(
        sum(
            exp(
                lgamma(count + 1)
                - lgamma(bad + 1)
                - lgamma(count - bad + 1)
                + bad * log(share)
                + (count - bad) * log1p(-share)
            )
            for bad in range(int(most) + 1)
        ),
        1.0,
    )


def spares_for(count: int, share: float, sure: float) -> int:
    """Spares that replace what is lost of count, with a wished chance that they suffice.

    count  sent, 0 to 20,000
    share  chance that one is lost or faulty, 0 to 0.9
    sure   the wished chance, above 0 to 0.9999
    Raises OutOfRange outside these.
    Source: definition of the binomial distribution.
    """
    require("share", share, 0.0, 0.9)
    require("sure", sure, 0.0, 0.9999, above=0.0)
    require("count", count, 0, MOST)
    return _first(lambda spare: chance_at_most(spare, count, share) >= sure, 0, count)


def made_for(good: int, share: float, sure: float) -> int:
    """How many to make so that, with a wished chance, at least so many are good.

    good   wanted, 0 to 10,000
    share  chance that one comes out as a second, 0 to 0.45
    sure   the wished chance, above 0 to 0.9999
    Raises OutOfRange outside these.
    Source: definition of the binomial distribution.
    """
    require("good", good, 0, MOST / 2)
    require("share", share, 0.0, 0.45)
    require("sure", sure, 0.0, 0.9999, above=0.0)
    return _first(lambda made: chance_at_most(made - good, made, share) >= sure, good, MOST)


def places_for(made: int, seconds: float, lost: float, sure: float) -> int:
    """Places of a club that so many skeins serve: with a wished chance both good ones and
    replacements suffice.

    made     skeins dyed, 0 to 10,000
    seconds  chance that one comes out as a second, 0 to 0.45
    lost     chance that a parcel is lost or faulty, 0 to 0.9
    sure     the wished chance of each, above 0 to 0.9999
    Raises OutOfRange outside these, and where not one place is served.
    Source: definition of the binomial distribution.
    """
    require("made", made, 0, MOST / 2)
    low, high = 0, int(made)
    while low < high:
        middle = (low + high + 1) // 2
        if made_for(middle + spares_for(middle, lost, sure), seconds, sure) <= made:
            low = middle
        else:
            high = middle - 1
    if made and not low:
        raise OutOfRange(
            "made", made, reason="too few to promise one place of a club as surely as that"
        )
    return low


def _first(holds: Callable[[int], bool], low: int, high: int) -> int:
    """The first whole number from low on for which it holds, which then holds for all after it."""
    step = 1
    while low + step <= high and not holds(low + step - 1):
        step *= 2
    low, high = low + step // 2 if step > 1 else low, min(low + step, high)
    while low < high:
        middle = (low + high) // 2
        low, high = (low, middle) if holds(middle) else (middle + 1, high)
    return low
