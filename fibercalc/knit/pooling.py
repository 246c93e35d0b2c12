"""Where the colors of a hand-painted skein fall in the fabric: the yarn walked stitch by stitch,
and what the walk will look like.

The skein's colors come round again every turn of the skein: a repeat of so many stitches. What
matters is how far the repeat has moved when the knitting comes back to the same place: after one
round, or after two rows of a flat piece (there and back). That distance is the shift, in
stitches, to the nearest whole repeat. With a small shift a color stands above itself row after
row. Tension wobbles, so a picture is one likely outcome, never a promise.
"""

from bisect import bisect_right
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from itertools import accumulate, product
from math import ceil, floor, sqrt
from typing import cast

from ..core.arithmetic import total
from ..core.problem import OutOfRange, require
from ..core.traced import named

MOST_COLORS, MOST_STITCHES, MOST_DRAWN = 40, 2000, 20_000
MOST_IN_TURN = 4  # skeins, and times that one of them comes in a short order
# What the words mean; our own edges, no source. Rows for which a color stays above itself:
# From here on it is a column to the eye, about 6 cm of sock; less leans so much that it wanders
STACKED_ROWS = 24
LEANING_ROWS = 2  # from here on it touches itself, so that a slanting line is seen
SEEN = (
    120  # stitches of a row that are drawn and that the eye takes in at once, about 40 cm of sock
)
# Of the width that is seen: a column at least this wide is a pool, a dash a block; narrower ones
# are flashes and flecks.
BROAD_SHARE = 1 / 8
STRIPES, POOLS, FLASHES, SPIRALS, BLOCKS, FLECKS = (
    "stripes",
    "pools",
    "flashes",
    "spirals",
    "blocks",
    "flecks",
)


@dataclass(frozen=True)
class Judged:
    """A stitch count: the shift, the rows for which the longest color stays above itself, and the
    word for it.
    """

    stitches: int
    shift: float
    stacked: float
    kind: str


def turn_length(lengths: Sequence[float]) -> float:
    """One turn of the skein, m: its color lengths added.

    lengths  m of each color in order around the skein, 1 to 40 of them, each 0.001 to 1,000
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    if not 1 <= len(lengths) <= MOST_COLORS:
        raise OutOfRange(
            "lengths",
            len(lengths),
            1,
            MOST_COLORS,
            f"{len(lengths)} color lengths given; give 1 to {MOST_COLORS}",
        )
    for length in lengths:
        require("lengths", length, 0.001, 1000.0)
    return total(lengths)


def stitches_of(length: float, loop: float) -> float:
    """Stitches, with the part of one, that a length of yarn makes: a repeat from one turn, a
    patch from one color.

    length  m, 0.001 to 1,000
    loop    m of yarn in a stitch, 0.001 to 0.1
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("length", length, 0.001, 1000.0)
    require("loop", loop, 0.001, 0.1)
    return length / loop


def shift(stitches: float, repeat: float, flat: bool = False) -> float:
    """How far the colors have moved when the knitting is back at the same place, stitches to the
    nearest whole repeat.

    Above 0 the colors come earlier each time, below 0 later; from -repeat / 2 to repeat / 2.
    stitches  in a round or row, 1 to 2,000
    repeat    stitches of one turn of the skein, above 0 (see stitches_of)
    flat      worked back and forth (two rows until it is back) instead of in the round
    Raises OutOfRange outside these.
    Source: arithmetic (remainder).
    """
    require("stitches", stitches, 1.0, MOST_STITCHES)
    require("repeat", repeat, above=0.0)
    knit = 2 * stitches if flat else stitches
    return knit - repeat * floor(knit / repeat + 0.5)


def rows_stacked(patch: float, moved: float, flat: bool = False, strayed: float = 0.0) -> float:
    """Rows for which a color stays above itself before it has moved off, at most 9,999.

    patch    stitches of the color, above 0
    moved    the shift, stitches (see shift)
    flat     worked back and forth: two rows for each shift
    strayed  how far tension alone likely moves the colors in the time of one shift, stitches, 0
             or more (see drift)
    Raises OutOfRange outside these.
    Source: arithmetic (shifts add up, what tension does adds as squares).
    """
    require("patch", patch, above=0.0)
    require("moved", moved)
    require("strayed", strayed, 0.0)
    # n shifts are n x moved and sqrt(n) x strayed: together they are the patch at the root of a
    # quadratic, in the form that stays exact.
    tension, step = strayed * strayed, max(abs(moved), 1e-9)
    shifts = (
        2 * patch * patch / (tension + sqrt(tension * tension + 4 * step * step * patch * patch))
    )
    return min((2 if flat else 1) * shifts, 9999.0)


def judge(
    stitches: int, repeat: float, patch: float, flat: bool = False, wobble: float = 0.0
) -> Judged:
    """What the colors will likely do at a stitch count, by what the drawn fabric shows: at most
    120 stitches of its width.

    stripes: the longest color fills a whole round or row. pools and flashes: a color stays above
    itself for 24 rows or more; a pool is at least an eighth of the width that is seen. spirals:
    it touches itself for 2 rows or more, so that it leans (flat, in zigzags). blocks and flecks:
    it does not touch itself; a block is at least an eighth of the width that is seen.
    stitches  in a round or row, 1 to 2,000
    repeat    stitches of one turn of the skein, above 0
    patch     stitches of the longest color, above 0 to repeat
    flat      worked back and forth
    wobble    % by which a row's yarn may differ either way, 0 to 30
    Raises OutOfRange outside these.
    Source: common practice (the words; their edges are our own).
    """
    require("patch", patch, 0.0, repeat * (1 + 1e-9), above=0.0)
    moved = shift(stitches, repeat, flat)
    stacked = rows_stacked(patch, moved, flat, drift(stitches, wobble, 2 if flat else 1))
    broad = patch >= BROAD_SHARE * min(stitches, SEEN)
    if patch >= min(stitches, repeat * (1 - 1e-9)):  # a skein of one color fills every row
        kind = STRIPES
    elif stacked >= STACKED_ROWS:
        kind = POOLS if broad else FLASHES
    elif stacked >= LEANING_ROWS:
        kind = SPIRALS
    else:
        kind = BLOCKS if broad else FLECKS
    return Judged(stitches, moved, stacked, kind)


def judge_near(
    stitches: int,
    span: int,
    repeat: float,
    patch: float,
    flat: bool = False,
    step: int = 1,
    wobble: float = 0.0,
) -> list[Judged]:
    """The same for the stitch counts around a wanted one, to avoid or to seek.

    stitches  wanted, 1 to 2,000
    span      how many stitches to look either way, 0 to 200
    repeat    stitches of one turn of the skein, above 0
    patch     stitches of the longest color, above 0 to repeat
    flat      worked back and forth
    step      the stitch pattern's multiple, 1 to 100: only counts that differ by it
    wobble    % by which a row's yarn may differ either way, 0 to 30
    Raises OutOfRange outside these.
    Source: common practice (see judge).
    """
    require("stitches", stitches, 1, MOST_STITCHES)
    require("span", span, 0.0, 200.0)
    require("step", step, 1.0, 100.0)
    ways = span // step
    return [
        judge(count, repeat, patch, flat, wobble)
        for count in range(stitches - ways * step, stitches + ways * step + 1, step)
        if 1 <= count <= MOST_STITCHES
    ]


def stacking_counts(repeat: float, low: int, high: int, flat: bool = False) -> list[float]:
    """Stitch counts, with their part, between two at which the shift is nothing: colors stack
    there.

    repeat  stitches of one turn of the skein, 1 or more
    low     1 or more
    high    low to 2,000
    flat    worked back and forth: half a repeat does it too
    Raises OutOfRange outside these.
    Source: arithmetic (multiples of the repeat).
    """
    require("repeat", repeat, 1.0)
    require("low", low, 1.0)
    require("high", high, low, MOST_STITCHES)
    unit = repeat / 2 if flat else repeat
    return [
        number * unit for number in range(ceil(low / unit - 1e-9), floor(high / unit + 1e-9) + 1)
    ]


def drift(stitches: float, wobble: float, rows: float) -> float:
    """How far tension that varies from row to row has likely moved the colors, stitches (one
    standard deviation).

    stitches  in a round or row, 1 to 2,000
    wobble    % by which a row's yarn may differ either way, 0 to 30
    rows      1 or more
    Raises OutOfRange outside these.
    Source: arithmetic (uniform errors of independent rows add as squares).
    """
    require("stitches", stitches, 1.0, MOST_STITCHES)
    require("wobble", wobble, 0.0, 30.0)
    require("rows", rows, 1.0)
    return stitches * wobble / 100 / sqrt(3) * sqrt(rows)


def fabric(
    lengths: Sequence[float],
    loop: float,
    stitches: int,
    rows: int,
    flat: bool = False,
    wobble: float = 0.0,
    columns: int = 0,
    starts: Sequence[float] = (0.0,),
    change_every: int = 2,
    order: Sequence[int] = (),
) -> list[list[int]]:
    """The color (place in lengths, from 0) of each stitch, row 1 first, each row from its left as
    the right side is seen.

    In the round and on right-side rows the knitting runs from right to left, so the first stitch
    of row 1 is its last entry.
    lengths       m of each color in order around the skein (see turn_length)
    loop          m of yarn in a stitch, 0.001 to 0.1
    stitches      in a round or row, 1 to 2,000
    rows          1 to 500; with columns, at most 20,000 stitches in all
    flat          worked back and forth
    wobble        % by which the yarn in a row may differ either way, 0 to 30; a fixed sequence,
                  the same every time
    columns       stitches of each row to give, from the right edge; 0 gives all
    starts        m into its turn at which each skein begins; more than one skein alternates
    change_every  rows or rounds from one skein to the next, 1 to 100
    order         the skeins (from 0) in the order they are knitted over and over; empty: each in
                  turn
    Raises OutOfRange outside these.
    Source: arithmetic (the walk along the yarn, modulo one turn).
    """
    turn = turn_length(lengths)
    require("loop", loop, 0.001, 0.1)
    require("stitches", stitches, 1.0, MOST_STITCHES)
    require("rows", rows, 1.0, 500.0)
    require("wobble", wobble, 0.0, 30.0)
    require("columns", columns, 0.0, MOST_STITCHES)
    require("change_every", change_every, 1.0, 100.0)
    require("starts", len(starts), 1.0, 10.0)
    shown = min(columns or stitches, stitches)
    if rows * shown > MOST_DRAWN:
        raise OutOfRange("rows", rows, 1, MOST_DRAWN // shown, "fewer rows or columns are drawn")
    edges = list(accumulate(lengths))[:-1]
    at, found = [*starts], []
    noise = _noise()
    for row in range(rows):
        skein = (
            order[row // change_every % len(order)] if order else row // change_every % len(starts)
        )
        step = loop * (1 + wobble / 100 * next(noise))
        back = flat and row % 2 == 1
        # A row back runs from left to right, so its last stitches are those at the right edge.
        begin = at[skein] + (step * (stitches - shown) if back else 0.0) + step / 2
        walk = [bisect_right(edges, (begin + step * number) % turn) for number in range(shown)]
        found.append(walk if back else walk[::-1])
        at[skein] = (at[skein] + step * stitches) % turn
    return found


def alternating_order(bands: Sequence[int]) -> list[int]:
    """Which skein (from 0) each band of rows is knit from, so that every skein is spread evenly
    from end to end.

    bands  bands (of two rows, say) that each skein can give, 1 to 10 skeins, each 0 to 1,000
    Raises OutOfRange outside these.
    Source: arithmetic (the skein that is furthest behind its share is next).
    """
    if not 1 <= len(bands) <= 10:
        raise OutOfRange("bands", len(bands), 1, 10, f"{len(bands)} skeins given; give 1 to 10")
    for count in bands:
        require("bands", count, 0.0, 1000.0)
    whole, used, order = sum(bands), [0] * len(bands), []
    for place in range(1, whole + 1):
        open_skeins = [skein for skein, count in enumerate(bands) if used[skein] < count]
        order.append(
            max(open_skeins, key=lambda skein: (bands[skein] * place / whole - used[skein], -skein))
        )
        used[order[-1]] += 1
    return order


def order_in_turn(bands: Sequence[int]) -> tuple[list[int], int]:
    """A short order of skeins (from 0) to knit over and over, and how many times they last for
    it. Skeins of unequal weight are used up nearly together: of all orders with each skein one
    to four times, the shortest that uses within 5 % of what the best one uses.

    bands  bands that each skein can give, 1 to 4 skeins, each 1 to 1,000
    Raises OutOfRange outside these.
    Source: arithmetic (every such order is tried).
    """
    if not 1 <= len(bands) <= MOST_IN_TURN:
        raise OutOfRange(
            "bands",
            len(bands),
            1,
            MOST_IN_TURN,
            f"{len(bands)} skeins given; give 1 to {MOST_IN_TURN}",
        )
    for count in bands:
        require("bands", count, 1.0, 1000.0)
    tried = []
    for shares in product(range(1, MOST_IN_TURN + 1), repeat=len(bands)):
        times = min(count // share for count, share in zip(bands, shares))
        tried.append((sum(shares), -sum(shares) * times, shares, times))
    enough = 0.95 * -min(used for _, used, _, _ in tried)
    _, _, shares, times = min(each for each in tried if -each[1] >= enough)
    return alternating_order(shares), times


def bands_in(mass: float, mass_per_band: float) -> int:
    """Whole bands of rows that a skein can give.

    mass           g of the skein, 0 or more
    mass_per_band  g of one band (rows in it x stitches x grams in a stitch), above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("mass", mass, 0.0)
    require("mass_per_band", mass_per_band, above=0.0)
    return _whole_part(mass / mass_per_band)


def _floor(value: float) -> int:
    return floor(value + 1e-9)


_whole_part = cast("Callable[[float], int]", named("whole part", _floor))


def _noise() -> Iterator[float]:
    """An endless fixed sequence from -1 to 1, evenly spread: a linear congruential generator
    (constants from memory, Numerical Recipes).
    """
    state = 20_250_101
    while True:
        state = (1_664_525 * state + 1_013_904_223) % 2**32
        yield state / 2**31 - 1
