"""What is said of pools."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import MASS
from ...pooling import BLOCKS, FLASHES, FLECKS, POOLS, SPIRALS, STRIPES, drift, stacking_counts
from .asked import FLAT, IN_ROUND, PoolPicture

MEANING = {
    STRIPES: "a color fills a whole round",
    POOLS: "colors stand above themselves in broad pools",
    FLASHES: "colors stand above themselves in narrow columns",
    SPIRALS: "colors lean and wander",
    BLOCKS: "broad blocks, each row’s set off from the last",
    FLECKS: "short dashes lie scattered",
}


def say(out: Outcome[PoolPicture]) -> str | tuple[str, ...]:
    case = out.case
    where = "in the round" if case.worked == IN_ROUND else "back and forth"
    first = (
        f"On {case.count} stitches {where} it will likely make {case.kind}: {MEANING[case.kind]}."
    )
    if case.alternate > 1:
        first = (
            f"One skein alone on {case.count} stitches {where} would likely make {case.kind};"
            f" {case.alternate} in turn, two rows each, break that up."
        )
    side = "earlier" if case.shift > 0 else "later"
    return (
        first,
        f"One turn of the skein is about {out.text(PoolPicture.repeat)} stitches; each time"
        f" around, the colors come {abs(case.shift):.1f} stitches {side}.",
    )


def notes(out: Outcome[PoolPicture]) -> list[str]:
    return [*_stacking(out.case), *_wander(out.case), *_broken_up(out)]


def _stacking(case: PoolPicture) -> list[str]:
    flat, count = case.worked == FLAT, case.count
    stacks = stacking_counts(max(case.repeat, 1.0), max(1, count // 2), min(2000, 2 * count), flat)
    if not stacks:
        return []
    nearest = sorted(sorted(stacks, key=lambda each: abs(each - count))[:6])
    return [
        "Colors stack where "
        + ("twice the stitches are" if flat else "the stitches are")
        + " a whole number of repeats: near "
        + ", ".join(f"{each:.0f}" for each in nearest)
        + " stitches. Go there for columns, keep away from there for a mixed cloth."
    ]


def _wander(case: PoolPicture) -> list[str]:
    wander = drift(case.count, case.wobble, 20)
    if wander < 0.5:
        return []
    return [
        f"Your tension moves the colors too: after 20 rows likely by about {wander:.0f}"
        f" {'stitch' if wander < 1.5 else 'stitches'} either way, so the picture is one likely"
        " outcome."
    ]


def _broken_up(out: Outcome[PoolPicture]) -> list[str]:
    case = out.case
    if case.alternate == 1:
        return [
            "To break pools up, knit from two skeins in turn, two rows each: set the number of"
            " skeins to 2 and look."
        ]
    over = ", ".join(
        f"{out.amount(left, MASS, 'g', 2)} of skein {number}"
        for number, left in enumerate(case.over, 1)
    )
    return [
        f"Two rows each from skein {case.in_turn}, and so over again, {case.times:.0f} times"
        f" through: {case.lasts:.0f} rows. Over is then {over}.",
        "Begin each skein at another place of its turn. Carry the resting yarn up the edge, not"
        " tight.",
    ]
