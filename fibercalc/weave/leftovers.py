"""What is left on a shuttle or a ball as picks and cloth, and leftovers dealt into stripes that
come out even across the pieces.

A pick takes the width in the heddle, and what it bends around the warp: take-up is a percent of
the weft, so it is divided out.
"""

from collections.abc import Sequence
from math import floor

from ..core.problem import OutOfRange, require

MOST_PIECES, MOST_STRIPES = 100, 100
TINY = 1e-9
# Picks: a stripe of pairs begins and ends at the same edge, so its yarn need not be cut to wait
PAIR = 2


def pick_length(width: float, take_up: float) -> float:
    """Weft in one pick, in the unit of width.

    width    in the heddle, any length, above 0
    take_up  % of the weft that goes into its bends, 0 to 60
    Raises OutOfRange outside these.
    Source: arithmetic (width / (1 - take-up)); the allowance is common practice.
    """
    require("width", width, above=0.0)
    require("take_up", take_up, 0.0, 60.0)
    return width / (1 - take_up / 100)


def yarn_length(mass: float, tare: float, tex: float) -> float:
    """Yarn on a ball or shuttle, m, from its weight; 0 where it weighs no more than its core.

    mass  g, with its core or shuttle, 0 or more
    tare  g of the empty core or shuttle, 0 or more
    tex   g in 1,000 m, above 0
    Raises OutOfRange outside these.
    Source: arithmetic from the definition of tex (g in 1,000 m).
    """
    require("mass", mass, 0.0)
    require("tare", tare, 0.0)
    require("tex", tex, above=0.0)
    return 1000 * max(mass - tare, 0.0) / tex


def picks_from(length: float, each: float, stripes: int = 0, tail: float = 0.0) -> float:
    """Picks that a length of weft weaves, with the part of one; 0 when its stripes' tails use it
    up.

    length   m, 0 or more
    each     m in a pick, above 0 (see pick_length)
    stripes  it is cut into, 0 or more
    tail     m woven in or lost with each stripe, both its ends together, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("length", length, 0.0)
    require("each", each, above=0.0)
    require("stripes", stripes, 0)
    require("tail", tail, 0.0)
    return max(length - stripes * tail, 0.0) / each


def stripe_picks(picks: float, pieces: int, stripes: int) -> int:
    """Picks of each stripe when one color is to come out even: every stripe of every piece alike,
    and a pair of picks or more pairs.

    picks    that the color weaves, tails taken off, 0 or more
    pieces   1 to 100
    stripes  of this color in each piece, 1 to 100
    Raises OutOfRange outside these.
    Source: arithmetic (rounded down to whole pairs of picks).
    """
    require("picks", picks, 0.0)
    require("pieces", pieces, 1, MOST_PIECES)
    require("stripes", stripes, 1, MOST_STRIPES)
    return PAIR * floor(picks / (pieces * stripes) / PAIR + TINY)


def stripes_that_fit(picks: Sequence[int], stripes: int, room: int) -> list[int]:
    """Picks of each color's stripe, all made smaller in proportion where they do not fit a piece.

    picks    of one stripe of each color, each 0 or more
    stripes  of each color in a piece, 1 to 100
    room     picks that the piece has for them, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic (rounded down to whole pairs of picks).
    """
    require("stripes", stripes, 1, MOST_STRIPES)
    require("room", room, 0)
    for each in picks:
        require("picks", each, 0)
    wanted = stripes * sum(picks)
    if wanted <= room:
        return list(picks)
    return [PAIR * (each * room // wanted // PAIR) for each in picks]


def laid_out(picks: Sequence[int], stripes: int, room: int) -> list[tuple[int, int]]:
    """A piece laid out: stripes (color, picks) with the main yarn (color -1) before, between and
    after them. The colors follow each other in turn; gaps are whole pairs of picks, as equal
    as can be, what is over lies in the first and the last.

    picks    of one stripe of each color, each 0 or more; a color with 0 is left out
    stripes  of each color in a piece, 1 to 100
    room     picks of the piece between its hems, as many as the stripes take or more
    Raises OutOfRange where the stripes do not fit, or outside these.
    Source: arithmetic.
    """
    require("stripes", stripes, 1, MOST_STRIPES)
    require("room", room, 0)
    if stripes * sum(picks) > room:
        raise OutOfRange("picks", stripes * sum(picks), 0, room)
    turn = [(color, each) for color, each in enumerate(picks) if each] * stripes
    main = int(room - sum(each for _, each in turn))
    gap = PAIR * (main // (len(turn) + 1) // PAIR)
    over = main - gap * (len(turn) + 1)
    gaps = [gap] * (len(turn) + 1)
    gaps[0] += over // 2
    gaps[-1] += over - over // 2
    found = [run for between, stripe in zip(gaps, turn) for run in ((-1, between), stripe)] + [
        (-1, gaps[-1])
    ]
    return [(color, count) for color, count in found if count]
