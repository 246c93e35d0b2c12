"""What the colors will do, and how far skeins in turn go."""

from __future__ import annotations

from collections.abc import Sequence

from ....core.arithmetic import smallest
from ....core.problem import Refused
from ....core.steps import Comparison, at_most, looked_up, searched
from ...loop import stitch_length
from ...pooling import bands_in, judge, order_in_turn, stitches_of, turn_length
from .asked import FLAT, PoolPicture


def answer(case: PoolPicture) -> None:
    lengths = [patch.length for patch in case.colors]
    case.turn = turn_length(lengths)
    case.loop_constant = looked_up("wash", "munden-constants", "state", case.state, "Ks")
    case.loop = stitch_length(case.stitches, case.rows, case.loop_constant)
    case.repeat = stitches_of(case.turn, case.loop)
    case.patch = stitches_of(max(lengths), case.loop)
    judged = judge(case.count, case.repeat, case.patch, case.worked == FLAT, case.wobble)
    case.shift, case.kind = judged.shift, judged.kind
    asked = (PoolPicture.skein_1, PoolPicture.skein_2, PoolPicture.skein_3, PoolPicture.skein_4)
    masses = [mass for each in asked if (mass := case.maybe(each)) is not None]
    if masses:
        _in_turn(case, masses)


def _in_turn(case: PoolPicture, masses: Sequence[float]) -> None:
    """In which order skeins of these weights are knitted, two rows each, and how far they go."""
    case.two_rows = 2 * case.count * case.loop * 100 / case.per_100
    found = [bands_in(mass, case.two_rows) for mass in masses]
    case.whole_bands = [int(each) for each in found]
    fewest = min(case.whole_bands)
    if fewest < 1:
        raise Refused(
            "This skein is not enough for two rows; leave it out, or give its whole weight.",
            f"skein_{case.whole_bands.index(fewest) + 1}",
        )
    for number, each in enumerate(found, 1):
        case.bands[f"skein {number}"] = each
    case.order, times = order_in_turn(case.whole_bands)
    shares = [case.order.count(skein) for skein in range(len(masses))]
    kept = list(zip(case.bands.values(), shares))

    def none_runs_out(times: float) -> tuple[Comparison, ...]:
        return tuple(at_most(times * share, bands) for bands, share in kept)

    case.times = searched(
        times, none_runs_out, lambda: smallest(bands / share for bands, share in kept)
    )
    case.lasts = 2 * len(case.order) * case.times
    case.in_turn = ", ".join(str(skein + 1) for skein in case.order)
    case.over = [mass - share * times * case.two_rows for mass, share in zip(masses, shares)]
