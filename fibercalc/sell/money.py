"""Money in whole cents: rounding said once, and splitting so that no cent is lost.

Sums are kept as floats like every other amount; where an amount is *paid out in parts* the parts
are whole cents and add up to the whole exactly. Whole numbers do that; a decimal type would cost
the browser its start.
"""

from collections.abc import Sequence
from math import ceil, floor

from ..core.problem import OutOfRange, require

MOST = 1e9  # beyond it a float no longer holds cents in every sum made here
TIE = (
    1e-7  # of a cent: 1.005 is typed as a hundred and a half cents, and its float is a little less
)


def cents(amount: float) -> int:
    """An amount of money in whole cents; half a cent rounds away from zero.

    amount  in the money's main unit, -1e9 to 1e9
    Raises OutOfRange outside these.
    Source: common practice (half up).
    """
    require("amount", amount, -MOST, MOST)
    size = floor(abs(amount) * 100 + 0.5 + TIE)
    return size if amount >= 0 else -size


def cents_up(amount: float) -> int:
    """An amount of money in whole cents, never less than it: a price that must bring so much.

    amount  in the money's main unit, 0 to 1e9
    Raises OutOfRange outside these.
    Source: common practice (rounded up).
    """
    require("amount", amount, 0.0, MOST)
    return ceil(amount * 100 - TIE)


def split(total: int, parts: Sequence[float]) -> list[int]:
    """A total in whole cents shared out in proportion to parts, each in whole cents, together
    exactly the total.

    total  cents, any whole number up to 1e11 either way
    parts  numbers of the same sign as their sum, which is not 0
    Every part is within a cent of its exact share: whoever lost most by rounding down gets a cent
    more (largest remainder).
    Raises OutOfRange for no parts, for parts of both signs or a sum of 0.
    Source: common practice (largest remainder).
    """
    require("total", total, -100 * MOST, 100 * MOST)
    whole = sum(parts)
    if not parts or not abs(whole) > 0 or any(part * whole < 0 for part in parts):
        raise OutOfRange("parts", len(parts), 1, None, "give parts of one sign, not all of them 0")
    return in_whole([total * part / whole for part in parts], total)


def in_whole(exact: Sequence[float], total: int) -> list[int]:
    """Exact amounts, in cents or in percent, as whole numbers that add up to a whole total: the
    ones with the largest remainders are rounded up.

    exact  amounts of either sign, together within one of the total for each of them
    total  what they add up to, a whole number
    Raises OutOfRange where they are too far from it, or for none.
    Source: common practice (largest remainder).
    """
    require("total", total, -100 * MOST, 100 * MOST)
    for each in exact:
        require("exact", each, -100 * MOST, 100 * MOST)
    down = [floor(each + TIE) for each in exact]
    left = int(total) - sum(down)
    if not 0 <= left <= len(exact) or not exact:
        raise OutOfRange("total", total, None, None, "the parts do not add up to the total")
    order = sorted(
        range(len(exact)), key=lambda place: (-(exact[place] - down[place]), -exact[place], place)
    )
    for place in order[:left]:
        down[place] += 1
    return down


def change(due: int) -> dict[int, int]:
    """The fewest notes and coins that make an amount, in steps of 1, 2 and 5, as cents and how
    many of each.

    due  cents, 0 to 1e9
    Taking the largest first gives the fewest in a 1-2-5 row; money with other steps needs its own.
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("due", due, 0, MOST)
    found = {}
    for power in range(6, -1, -1):
        for first in (5, 2, 1):
            coin = first * 10**power
            if due >= coin:
                found[coin], due = divmod(due, coin)
    return found
