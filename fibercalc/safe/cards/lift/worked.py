"""The six multipliers of a lift, or the jugs that a hot pot is bailed out with."""

from __future__ import annotations

from math import ceil

from ....core.arithmetic import smallest
from ....core.steps import at_least, looked_up, searched
from ...lifting import (
    LOAD,
    LOW_HANDS,
    frequency_row,
    horizontal,
    travel,
    twist,
    vertical,
    weight_limit,
)
from ...limits import published
from .asked import HOT, Lift


def answer(case: Lift) -> None:
    if case.load == HOT:
        case.jugs = searched(
            ceil(case.volume / case.jug - 1e-9),
            lambda jugs: (at_least(jugs * case.jug, case.volume),),
            lambda: case.volume / case.jug,
        )
        case.limit = published("a hot or open load is outside the equation", "niosh-94-110")
        return
    case.limit = published(f"{LOAD:g} kg at best, less by six multipliers", "niosh-rwl-text")
    side = "low" if min(case.start, case.end) < LOW_HANDS else "high"
    row = frequency_row(case.often)
    case.horizontal = horizontal(case.reach)
    case.vertical = smallest(vertical(case.start), vertical(case.end))
    case.travel = travel(abs(case.end - case.start))
    case.twist = twist(case.angle)
    case.frequency = looked_up("safe", "lift-frequency", "key", row, f"{case.lasting}_{side}")
    case.coupling = looked_up("safe", "lift-grip", "key", case.grip, side)
    case.rwl = weight_limit(
        case.horizontal, case.vertical, case.travel, case.twist, case.frequency, case.coupling
    )
    if case.rwl > 0:
        case.index = case.mass / case.rwl
