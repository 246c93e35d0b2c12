"""The fabric, the turn of the skein, and the stitch counts nearby."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ...pictures.pooling import fabric_picture, skein_bar
from ...pooling import SEEN, fabric, judge_near
from .asked import FLAT, PoolPicture


def _colors(case: PoolPicture) -> tuple[list[float], list[str], list[str]]:
    patches = case.colors
    return (
        [patch.length for patch in patches],
        [patch.name for patch in patches],
        [patch.color.hex for patch in patches],
    )


def cloth(out: Outcome[PoolPicture]) -> Picture | None:
    case = out.case
    lengths, names, colors = _colors(case)
    walk = fabric(
        lengths,
        case.loop,
        case.count,
        case.drawn,
        case.worked == FLAT,
        case.wobble,
        min(case.count, SEEN),
        [case.turn * number / case.alternate for number in range(case.alternate)],
        order=case.maybe(PoolPicture.order) or (),
    )
    return fabric_picture(walk, names, colors, case.stitches, case.rows, case.count)


def turn(out: Outcome[PoolPicture]) -> Picture | None:
    return skein_bar(*_colors(out.case), out.both(PoolPicture.turn))


def counts(out: Outcome[PoolPicture]) -> Table | None:
    case = out.case
    near = judge_near(
        case.count, 8, case.repeat, case.patch, case.worked == FLAT, wobble=case.wobble
    )
    rows = tuple(
        (
            str(each.stitches),
            f"{round(each.shift, 1) + 0:+.1f}".replace("-", "−"),
            each.kind,
            "over 99" if each.stacked > 99 else f"{each.stacked:.0f}",
        )
        for each in near
    )
    return Table(
        "Stitch counts near it",
        ("Stitches", "Shift", "Likely", "Rows a color stays above itself"),
        rows,
    )
