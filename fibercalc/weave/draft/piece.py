"""One piece of cloth: a plain-woven hem at each end and the weave between, with its weft order,
its size, and its picks as a short list.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache, lru_cache

from ...core.problem import OutOfRange, require
from ...wash.shrink import size_after
from .floats import Floats, floats_of
from .order import repeats
from .repeat import MOST_PICKS, checked, rows_of, width_of
from .sheds import DOWN, UP, Lift, lifts_of

PLAIN_UP, PLAIN_DOWN = (
    ("01", "10"),
    ("10", "01"),
)  # plain weave that begins with the heddle up, or down
HEM = -1  # the place of a hem in a weft order


@dataclass(frozen=True)
class Section:
    """Some picks of one weave, from pick first (from 0) of its repeat."""

    repeat: tuple[str, ...]
    picks: int
    first: int = 0
    hem: bool = False


@dataclass(frozen=True)
class Block:
    """Stripes of weft (place in the order, picks) woven so many times over; the place of a hem is
    HEM.
    """

    times: int
    runs: tuple[tuple[int, int], ...]

    @property
    def picks(self) -> int:
        return self.times * sum(count for _, count in self.runs)


@lru_cache(256)
def sections_of(repeat: tuple[str, ...], picks: int, hem: int = 0) -> tuple[Section, ...]:
    """A piece in sections: hem, weave, hem. A hem begins or ends so that it meets the weave in
    another shed, or the weft would come out again at the edge.

    repeat  the weave (see repeat.checked)
    picks   of the whole piece, 1 to 4,000
    hem     picks of each hem, 0 or more; both together fewer than picks
    Raises OutOfRange outside these.
    Source: common practice (hems in plain weave).
    """
    require("picks", picks, 1, MOST_PICKS)
    require("hem", hem, 0)
    body = int(picks - 2 * hem)
    if body < 1:
        raise OutOfRange(
            "hem",
            hem,
            0,
            (picks - 1) // 2,
            f"two hems of {hem:.0f} picks leave nothing of {picks:.0f} for the weave",
        )
    main = Section(checked(repeat), body)
    if not hem:
        return (main,)
    wide = width_of((repeat, PLAIN_UP))
    begins, ends = rows_of(repeat, wide, 1)[0], rows_of(repeat, wide, 1, body - 1)[0]
    opening = PLAIN_UP if rows_of(PLAIN_UP, wide, 1, int(hem) - 1)[0] != begins else PLAIN_DOWN
    closing = PLAIN_UP if rows_of(PLAIN_UP, wide, 1)[0] != ends else PLAIN_DOWN
    return Section(opening, int(hem), hem=True), main, Section(closing, int(hem), hem=True)


def rows_of_piece(sections: Sequence[Section], ends: int) -> list[str]:
    """The draw-down of a whole piece, the first pick first.

    sections  as sections_of gives them; one or more
    ends      1 to 2,000
    Raises OutOfRange outside these.
    Source: definition of a draw-down, common practice.
    """
    require("sections", len(sections), 1)
    return [
        row
        for section in sections
        for row in rows_of(section.repeat, ends, section.picks, section.first)
    ]


def lifts_in_turn(repeat: tuple[str, ...], picks: int, first: int = 0) -> list[Lift]:
    """What the heddle and the stick do, pick by pick, in a section of one weave.

    repeat  the weave (see repeat.checked)
    picks   0 to 4,000
    first   pick of the repeat with which it begins, 0 or more
    Raises OutOfRange outside these.
    Source: common practice (the rigid heddle itself).
    """
    lifts = lifts_of(repeat).picks
    require("picks", picks, 0, MOST_PICKS)
    require("first", first, 0)
    return [lifts[(first + pick) % len(lifts)] for pick in range(int(picks))]


@lru_cache(256)
def stick_picks(repeat: tuple[str, ...], picks: int, hem: int) -> int:
    """Picks of a piece that use the stick, or are picked up by hand.

    repeat  the weave (see repeat.checked)
    picks   of the whole piece, 1 to 4,000
    hem     picks of each hem, 0 or more; both together fewer than picks
    Raises OutOfRange outside these.
    Source: common practice (the rigid heddle itself).
    """
    return sum(
        lift.shed not in (UP, DOWN)
        for section in sections_of(repeat, picks, hem)
        for lift in lifts_in_turn(section.repeat, section.picks, section.first)
    )


@cache
def floats_of_piece(
    repeat: tuple[str, ...], picks: int, hem: int, ends: int
) -> tuple[Floats, bool]:
    """The longest floats of a piece, and whether its first pick is better thrown from the left
    (fewer turns that miss the edge).

    repeat  the weave (see repeat.checked)
    picks   of the whole piece, 1 to 4,000
    hem     picks of each hem, 0 or more; both together fewer than picks
    ends    1 to 2,000
    Raises OutOfRange outside these.
    Source: arithmetic (counting runs in the draw-down).
    """
    rows = rows_of_piece(sections_of(repeat, picks, hem), ends)
    period = min(width_of((repeat, PLAIN_UP)), int(ends))
    left, right = (floats_of(rows, period, from_left) for from_left in (True, False))
    better = (left.missed, left.edge) <= (right.missed, right.edge)
    return (left if better else right), better


def pick_list(counts: Sequence[int], picks: int, hem: int = 0) -> list[Block]:
    """A piece's weft as a short list: a hem, the whole order so many times, what is left of it, a
    hem.

    counts  picks of each stripe of the weft order, one or more, each 1 to 4,000
    picks   of the whole piece, 1 to 4,000
    hem     picks of each hem, 0 or more; both together fewer than picks
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("picks", picks, 1, MOST_PICKS)
    require("hem", hem, 0, (picks - 1) // 2)
    times, rest = repeats(counts, int(picks - 2 * hem))
    middle = [Block(times, tuple(enumerate(counts)))] if times else []
    middle += [Block(1, tuple(rest))] if rest else []
    edge = [Block(1, ((HEM, int(hem)),))] if hem else []
    return [*edge, *middle, *edge]


def weft_of(blocks: Sequence[Block]) -> list[tuple[int, int]]:
    """A short list written out again: stripes (place, picks) from the first pick to the last.

    blocks  as pick_list gives them
    Raises nothing.
    Source: arithmetic.
    """
    return [run for block in blocks for run in block.runs * block.times]


def width_on_loom(ends: float, sett: float, draw_in: float) -> float:
    """Width of the cloth on the loom, where it is drawn in, in cm.

    ends     1 or more
    sett     ends per cm in the heddle, above 0
    draw_in  %, of the width in the heddle, 0 to 60
    Raises OutOfRange outside these.
    Source: arithmetic (ends / sett x (1 - draw-in)); the allowance is common practice.
    """
    require("ends", ends, 1)
    require("sett", sett, above=0.0)
    require("draw_in", draw_in, 0.0, 60.0)
    return ends / sett * (1 - draw_in / 100)


def length_on_loom(picks: float, beat: float, hem: float = 0.0, hem_beat: float = 0.0) -> float:
    """Length of a piece on the loom, in cm; its hems may be beaten closer.

    picks     of the whole piece, 1 or more
    beat      picks per cm of the weave, above 0
    hem       picks of each hem, 0 or more; both together fewer than picks
    hem_beat  picks per cm of the hems; 0 as the weave
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("picks", picks, 1)
    require("beat", beat, above=0.0)
    require("hem", hem, 0.0, picks / 2)
    require("hem_beat", hem_beat, 0.0)
    if not hem:
        return picks / beat
    return (picks - 2 * hem) / beat + 2 * hem / (hem_beat or beat)


def washed(size: float, shrink: float) -> float:
    """What the wash leaves of a size, same unit.

    size    on the loom, above 0
    shrink  %, of the size on the loom; below 0 it grows
    Raises OutOfRange outside -100 to 90 %.
    Source: arithmetic from ISO 5077 (iso-5077), as wash.shrink has it.
    """
    return size_after(size, shrink)


def float_span(threads: float, across: float) -> float:
    """How long a float lies free, in cm: over n threads it spans n + 1 spaces between the two
    threads that bind it.

    threads  passed over, 0 or more
    across   of the threads passed over, per cm, above 0
    Raises OutOfRange outside these.
    Source: geometry (threads evenly apart).
    """
    require("threads", threads, 0.0)
    require("across", across, above=0.0)
    return (threads + 1) / across if threads else 0.0
