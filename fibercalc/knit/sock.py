"""A tube sock from a sock machine: rounds, short-row pockets, stitches, mock rib, and whether the
tube goes over the heel.

Counts come from the needles of the cylinder and the relaxed, washed gauge; fresh off the machine
the tube is stretched lengthwise. A short-row heel or toe is worked on half the needles. Before
each row but the first one needle more is put out of work, until about a third of the half is
left; then one comes back after each row. With 30 needles and 10 left that is 20 rows of 30, 29,
... 11 stitches and 20 of 10, 11, ... 29: in all 30² - 10² = 800 stitches and 40 rows, folded in
the middle, so 20 rows deep.
"""

from collections.abc import Callable, Sequence
from math import floor
from typing import cast

from ..core.problem import OutOfRange, require
from ..core.traced import named

MOST_NEEDLES = 400
# Common practice, from memory, unverified: how far plain knitting stretches in width, %. Below the
# first it goes over the heel with ease, above the second it will not; in between only a worked
# sample tells.
PLAIN_STRETCH = (40.0, 80.0)
# Common practice: rounds of waste yarn that the sock hangs on before it, between the two and after
# them.
WASTE_ROUNDS = (10, 20)


def rounds_for_length(length: float, rows_per_cm: float) -> float:
    """Rounds, with the part of one, in a length of tube.

    length       m, 0 to 5
    rows_per_cm  relaxed and washed, 0.5 to 30
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("length", length, 0.0, 5.0)
    require("rows_per_cm", rows_per_cm, 0.5, 30.0)
    return 100 * length * rows_per_cm


def length_of_rounds(rounds: float, rows_per_cm: float) -> float:
    """Length, m, of a number of rounds.

    rounds       0 or more
    rows_per_cm  relaxed and washed, 0.5 to 30
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("rounds", rounds, 0.0)
    require("rows_per_cm", rows_per_cm, 0.5, 30.0)
    return rounds / (100 * rows_per_cm)


def whole_rounds(rounds: float) -> int:
    """The nearest whole number of rounds; a half rounds up.

    rounds  0 or more
    Raises OutOfRange below 0.
    Source: common practice.
    """
    require("rounds", rounds, 0.0)
    return floor(rounds + 0.5 + 1e-9)


# Both give counts; in a formula they are not taken apart.
rounded = cast("Callable[[float], int]", named("rounded", whole_rounds))


def hem_rounds(depth: float, rows_per_cm: float) -> int:
    """Rounds to knit for a folded hem of a wanted depth: twice its rounds, so always an even
    number.

    depth        m, folded, 0 to 1
    rows_per_cm  relaxed and washed, 0.5 to 30
    Raises OutOfRange outside these.
    Source: common practice (folded gives half).
    """
    require("depth", depth, 0.0, 1.0)
    return 2 * rounded(rounds_for_length(depth, rows_per_cm))


def sock_foot_length(foot_length: float, shorter: float = 0.0) -> float:
    """Length, m, to knit for a foot: the sock is a stated share shorter, because it stretches.

    foot_length  m, heel to longest toe, 0.05 to 0.45
    shorter      %, 0 to 25 (up to 10 from memory)
    Raises OutOfRange outside these.
    Source: common practice (knitted length 0.9 to 1 of the foot, from memory, trade-memory).
    """
    require("foot_length", foot_length, 0.05, 0.45)
    require("shorter", shorter, 0.0, 25.0)
    return foot_length * (1 - shorter / 100)


def foot_rounds(
    knitted_length: float, heel_depth: float, toe_depth: float, rows_per_cm: float
) -> float:
    """Plain rounds between heel and toe, with the part of one: the knitted length less the depth
    of both pockets.

    knitted_length  m, 0.05 to 0.45 (see sock_foot_length)
    heel_depth      m, 0 or more (see short_row_depth)
    toe_depth       m, 0 or more
    rows_per_cm     relaxed and washed, 0.5 to 30
    Raises OutOfRange outside these, and when heel and toe are longer than the foot.
    Source: arithmetic.
    """
    require("knitted_length", knitted_length, 0.05, 0.45)
    require("heel_depth", heel_depth, 0.0)
    require("toe_depth", toe_depth, 0.0)
    if heel_depth + toe_depth > knitted_length:
        raise OutOfRange(
            "knitted_length",
            knitted_length,
            heel_depth + toe_depth,
            0.45,
            "the heel and toe together are longer than the foot: put fewer needles out of work",
        )
    return rounds_for_length(knitted_length - heel_depth - toe_depth, rows_per_cm)


def needles_left(half: int, share: float = 1 / 3) -> int:
    """Needles left in work at the narrowest row of a short-row heel or toe: the nearest whole
    number, at least 2.

    half   needles worked for heel or toe, half the cylinder, 4 to 200
    share  of them left, 0.1 to 0.9 (about a third is usual)
    Raises OutOfRange outside these.
    Source: common practice.
    """
    require("half", half, 4.0, MOST_NEEDLES / 2)
    require("share", share, 0.1, 0.9)
    return max(2, rounded(half * share))


about_a_third = cast("Callable[[int], int]", named("about a third of", needles_left))


def short_rows(half: int, left: int) -> int:
    """Rows of a short-row heel or toe: one for each needle put out of work, and one for each that
    comes back.

    half  needles worked for heel or toe, 4 to 200
    left  needles left at the narrowest row, 1 to half (see needles_left)
    Raises OutOfRange outside these.
    Source: common practice.
    """
    _require_pocket(half, left)
    return 2 * (half - left)


def short_row_stitches(half: int, left: int) -> int:
    """Stitches of a short-row heel or toe: rows of half, half - 1, ... left + 1 and back of left,
    ... half - 1, in all half² - left².

    half  needles worked for heel or toe, 4 to 200
    left  needles left at the narrowest row, 1 to half
    Raises OutOfRange outside these.
    Source: common practice (sums of the rows).
    """
    _require_pocket(half, left)
    return half**2 - left**2


def short_row_depth(half: int, left: int, rows_per_cm: float) -> float:
    """How much foot, m, a short-row heel or toe adds: half of its rows, because it is folded
    along its narrowest row.

    half         needles worked for heel or toe, 4 to 200
    left         needles left at the narrowest row, 1 to half
    rows_per_cm  relaxed and washed, 0.5 to 30
    Raises OutOfRange outside these.
    Source: common practice.
    """
    return length_of_rounds(short_rows(half, left) / 2, rows_per_cm)


def sock_stitches(needles: int, rounds: int, pockets: int) -> int:
    """Stitches of one sock.

    needles  of the cylinder, 8 to 400
    rounds   hem, leg and foot rounds together, 0 or more
    pockets  stitches of heel and toe together, 0 or more (see short_row_stitches)
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    _require_needles(needles)
    require("rounds", rounds, 0.0)
    require("pockets", pockets, 0.0)
    return needles * rounds + pockets


def pair_length(stitches: float, loop: float) -> float:
    """Yarn, m, for a pair of socks, without ends and waste.

    stitches  of one sock, 0 or more
    loop      m of yarn in a stitch, 0.001 to 0.1
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("stitches", stitches, 0.0)
    require("loop", loop, 0.001, 0.1)
    return 2 * stitches * loop


def waste_rounds_of_pair(between: int, at_ends: int) -> int:
    """Rounds of waste yarn when both socks are cranked as one tube: before, between and after them.

    between  rounds between the two socks, 0 to 200
    at_ends  rounds before the first and again after the second, 0 to 200
    Raises OutOfRange outside these.
    Source: common practice.
    """
    require("between", between, 0.0, 200.0)
    require("at_ends", at_ends, 0.0, 200.0)
    return between + 2 * at_ends


def worked_needles(needles: int, in_work: int, out: int) -> int:
    """Needles that knit in mock rib.

    needles  over which the rib runs, 8 to 400; the pattern must fit in whole repeats
    in_work  needles in work in a repeat, 1 to 50
    out      needles out of work in a repeat, 0 to 10
    Raises OutOfRange outside these, and when the repeats do not fit.
    Source: common practice.
    """
    _require_needles(needles)
    require("in_work", in_work, 1.0, 50.0)
    require("out", out, 0.0, 10.0)
    repeat = in_work + out
    if needles % repeat:
        below = needles - needles % repeat
        raise OutOfRange(
            "needles",
            needles,
            reason=(
                f"{in_work} in and {out} out repeats over {repeat} needles: {needles} is no"
                f" multiple of it ({below} and {below + repeat} are)"
            ),
        )
    return needles * in_work // repeat


def mock_rib_share(in_work: int, out: int, stitch_widths: float) -> float:
    """Yarn of a mock-rib round over that of a plain one, at the least: floats lie flat and
    straight. Plain (1) is the most.

    in_work        needles in work in a repeat, 1 to 50
    out            needles out of work in a repeat, 0 to 10
    stitch_widths  yarn of a stitch over its width, 2 to 8 (loop length x stitches per length)
    Raises OutOfRange outside these.
    Source: arithmetic (a float is at least as long as the gap it crosses).
    """
    require("in_work", in_work, 1.0, 50.0)
    require("out", out, 0.0, 10.0)
    require("stitch_widths", stitch_widths, 2.0, 8.0)
    return (in_work + out / stitch_widths) / (in_work + out)


def tube_girth(needles: int, stitches_per_cm: float) -> float:
    """Girth, m, of the tube at rest.

    needles          that knit, 8 to 400
    stitches_per_cm  relaxed and washed, 0.5 to 30
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    _require_needles(needles)
    require("stitches_per_cm", stitches_per_cm, 0.5, 30.0)
    return needles / (100 * stitches_per_cm)


def stretch_needed(girth: float, tube: float) -> float:
    """How far the tube must stretch in width to go around a girth, %; below 0 it is loose.

    girth  m, around the foot, or over heel and instep in one slanting turn, 0.05 to 1
    tube   m, girth of the tube at rest, 0.02 to 2
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("girth", girth, 0.05, 1.0)
    require("tube", tube, 0.02, 2.0)
    return 100 * (girth / tube - 1)


def stretch_word(stretch: float) -> str:
    """What a needed stretch says of plain knitting: "loose", "easy", "tight" (work a sample) or
    "too tight".

    stretch  %, -100 to 1,000 (see stretch_needed)
    Raises OutOfRange outside these.
    Source: common practice (plain knitting stretches 40 to 80 % in width, from memory, unverified).
    """
    require("stretch", stretch, -100.0, 1000.0)
    easy, most = PLAIN_STRETCH
    return (
        "loose"
        if stretch < 0
        else "easy"
        if stretch <= easy
        else "tight"
        if stretch <= most
        else "too tight"
    )


def foot_rounds_by_length(
    foot_lengths: Sequence[float], half: int, left: int, rows_per_cm: float, shorter: float = 0.0
) -> list[tuple[float, int]]:
    """Foot length and whole foot rounds, for a chart; feet too short for the heel and toe are
    left out.

    foot_lengths  m, each 0.05 to 0.45
    half          needles worked for heel or toe, 4 to 200
    left          needles left at the narrowest row, 1 to half
    rows_per_cm   relaxed and washed, 0.5 to 30
    shorter       % by which the sock is shorter than the foot, 0 to 25
    Raises OutOfRange outside these.
    Source: arithmetic (see foot_rounds).
    """
    depth = short_row_depth(half, left, rows_per_cm)
    knitted = [(length, sock_foot_length(length, shorter)) for length in foot_lengths]
    return [
        (length, whole_rounds(foot_rounds(short, depth, depth, rows_per_cm)))
        for length, short in knitted
        if short >= 2 * depth
    ]


def _require_needles(needles: int) -> None:
    require("needles", needles, 8.0, MOST_NEEDLES)


def _require_pocket(half: int, left: int) -> None:
    require("half", half, 4.0, MOST_NEEDLES / 2)
    require("left", left, 1.0, half)
