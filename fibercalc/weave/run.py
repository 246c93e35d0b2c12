"""A run of pieces along one warp: how far each reaches, which is lost when the warp is short, and
by how much to change what.
"""

from collections.abc import Sequence

from ..core.problem import require

NOISE = 1e-9


def reached(warp_each: Sequence[float], divider: float, before: float) -> list[float]:
    """Warp used, from the first pick, when each piece is off, in the unit given; the divider
    after it is not counted yet.

    warp_each  warp that each piece takes in the order of weaving, its fringes with it, each above 0
    divider    warp that each divider takes; one stands before the first piece and one after each,
               0 or more
    before     warp for what is woven before them, a sample, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic (a running sum).
    """
    require("divider", divider, 0.0)
    require("before", before, 0.0)
    used, found = before, []
    for warp in warp_each:
        require("warp_each", warp, above=0.0)
        used += divider + warp
        found.append(used)
    return found


def whole_pieces(ends_at: Sequence[float], available: float) -> int:
    """How many pieces come off whole, from the first one on.

    ends_at    warp used when each piece is off, rising, as reached gives it
    available  warp that can be woven, loom waste taken off already, in the same unit
    Raises OutOfRange where available is no number.
    Source: arithmetic.
    """
    require("available", available)
    return sum(1 for end in ends_at if end <= available * (1 + NOISE))
