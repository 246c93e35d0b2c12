"""Chances of not running out: from the range of what is needed, never from a padding percentage."""

from ..core.problem import require
from ..core.spread import Parts

# More skeins than this are never asked for: the widest answer of a card is a tenth of it
MOST = 1_000_000


def smallest_enough(needed: float, parts: Parts, sure: float) -> int:
    """The smallest whole number of skeins that is enough with a wished chance.

    needed  skeins needed, 0 or more
    parts  its spread
    sure    the wished chance, above 0 and below 1
    Raises OutOfRange outside these.
    Source: the definition of a chance, by the same distributions as every range in the book
    (core.spread).
    """
    require("needed", needed, 0.0, MOST)
    require("sure", sure, 0.0, 1.0, above=0.0)
    low, high = 0, 1
    while parts.chance_below(high - needed) < sure and high < MOST:
        low, high = high, 2 * high
    while high - low > 1:
        middle = (low + high) // 2
        if parts.chance_below(middle - needed) < sure:
            low = middle
        else:
            high = middle
    return high


def share_of(needed: float, parts: Parts, share: float, rough: float) -> tuple[float, Parts]:
    """One color's part of what is needed, and its spread: that of the whole, and that of the
    share itself.

    needed  skeins needed in all, 0 or more
    parts  its spread
    share   of the whole, 0 to 1
    rough  half-width of the share's uniform distribution, 0 to 1
    Raises OutOfRange outside these.
    Source: first-order propagation, as everywhere in the book (core.spread).
    """
    require("needed", needed, 0.0, MOST)
    require("share", share, 0.0, 1.0)
    require("rough", rough, 0.0, 1.0)
    own = [needed * rough] if rough else []
    scaled = Parts(
        [share * width for width in parts.down] + own,
        [share * width for width in parts.up] + own,
        [share * width for width in parts.normal],
    )
    return needed * share, scaled


def each_count(needed: float, parts: Parts, most: int = 5) -> list[tuple[int, float]]:
    """Whole numbers of skeins with the chance that each is enough, from the first that could be
    to the first that surely is.

    needed  skeins needed, 0 or more
    parts  its spread
    most  how many at most, 2 or more
    Raises OutOfRange outside these.
    Source: as smallest_enough.
    """
    require("most", most, 2)
    surest = smallest_enough(needed, parts, 0.995)
    first = max(1, surest - most + 1, smallest_enough(needed, parts, 0.005) - 1)
    return [
        (count, parts.chance_below(count - needed))
        for count in range(first, max(surest, first + 1) + 1)
    ]
