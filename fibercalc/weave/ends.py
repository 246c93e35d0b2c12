"""Ends: how many for a width, how many a loom holds, and how many of each color an order of
stripes gives.
"""

from collections.abc import Sequence
from math import ceil, floor

from ..core.problem import require

NOISE = 1e-9  # 40 cm at 4 ends a centimeter are 160 ends, not 161


def ends_for_width(heddle_width: float, sett: float, multiple: int) -> int:
    """Fewest ends that fill a width, in whole multiples.

    heddle_width  width of the ends in the heddle, above 0
    sett          ends in one unit of that width, above 0
    multiple      ends that belong together (a repeat of the pattern), 1 or more
    Raises OutOfRange outside these.
    Source: common practice (rounded up, or the cloth comes out narrow).
    """
    require("heddle_width", heddle_width, above=0.0)
    require("sett", sett, above=0.0)
    require("multiple", multiple, 1)
    return multiple * ceil(heddle_width * sett / multiple * (1 - NOISE))


def ends_that_fit(loom_width: float, sett: float, multiple: int) -> int:
    """Most ends that a loom's width holds, in whole multiples; 0 where not one multiple fits.

    loom_width  width of the heddle or reed, above 0
    sett        ends in one unit of that width, above 0
    multiple    ends that belong together, 1 or more
    Raises OutOfRange outside these.
    Source: common practice (rounded down).
    """
    require("loom_width", loom_width, above=0.0)
    require("sett", sett, above=0.0)
    require("multiple", multiple, 1)
    return multiple * floor(loom_width * sett / multiple * (1 + NOISE))


def ends_by_color(order: Sequence[tuple[str, int]], ends: int) -> dict[str, int]:
    """Ends of each color when an order of stripes is laid again and again from the first end to
    the last.

    order  (color, ends of that stripe) one after another, at least one, each stripe 1 or more
    ends   ends in all, 0 or more; the last repeat may be cut short
    Raises OutOfRange for no stripe, an empty stripe, or ends below 0.
    Source: arithmetic (whole repeats, and what is left).
    """
    require("order", len(order), 1)
    require("ends", ends, 0)
    for _, stripe in order:
        require("order", stripe, 1)
    repeats, rest = divmod(ends, sum(stripe for _, stripe in order))
    found: dict[str, int] = {}
    for color, stripe in order:
        taken = min(stripe, rest)
        rest -= taken
        found[color] = found.get(color, 0) + repeats * stripe + taken
    return {color: count for color, count in found.items() if count}
