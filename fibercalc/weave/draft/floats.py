"""How far a thread lies over others without being bound: along the warp, along the weft, on both
faces, and around the edges.

The weft is one thread that goes to and fro. Where the outermost end lies on the same side in two
picks that meet at that edge, the weft turns without catching it: its float runs on around the
edge, and the end hangs loose there.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from ...core.problem import OutOfRange
from .repeat import WARP, WEFT, columns_of


@dataclass(frozen=True)
class Floats:
    """Longest floats in threads passed over, of warp and of weft on the face and on the back; the
    longest weft float around an edge (0: every turn is bound); turns in all, and those that
    miss the outermost end.
    """

    warp_face: int
    warp_back: int
    weft_face: int
    weft_back: int
    edge: int
    turns: int
    missed: int

    @property
    def warp(self) -> int:
        return max(self.warp_face, self.warp_back)

    @property
    def weft(self) -> int:
        return max(self.weft_face, self.weft_back)

    @property
    def longest(self) -> int:
        return max(self.warp, self.weft, self.edge)


def longest_run(text: str, sign: str) -> int:
    """The longest run of one sign in a text.

    text  of the signs "1" and "0"
    sign  one of them
    Raises nothing.
    Source: arithmetic (counting).
    """
    return max(map(len, text.split(WEFT if sign == WARP else WARP)))


def floats_of(rows: Sequence[str], period: int = 0, from_left: bool = True) -> Floats:
    """The longest floats of a cloth as it is: cut at its edges, at its first and its last pick.

    rows       its draw-down, as repeat.rows_of gives it; at least one pick
    period     ends after which the columns come again: no more of them are read; 0 reads all
    from_left  whether pick 1 is thrown from the left
    Raises OutOfRange for no pick.
    Source: arithmetic (counting runs in the draw-down).
    """
    if not rows:
        raise OutOfRange("rows", 0, 1)
    columns = columns_of([row[:period] for row in rows] if period else rows)
    distinct = set(rows)
    edge, missed = _turns(rows, from_left)
    return Floats(
        max(longest_run(column, WARP) for column in columns),
        max(longest_run(column, WEFT) for column in columns),
        max(longest_run(row, WEFT) for row in distinct),
        max(longest_run(row, WARP) for row in distinct),
        edge,
        len(rows) - 1,
        missed,
    )


def _turns(rows: Sequence[str], from_left: bool) -> tuple[int, int]:
    """The longest float around an edge, and how many turns miss the outermost end."""
    longest = missed = 0
    known: dict[tuple[str, str, bool], int] = {}
    for place in range(len(rows) - 1):
        turn = (rows[place], rows[place + 1], (place % 2 == 0) == from_left)
        if turn not in known:
            known[turn] = _around(*turn)
        longest = max(longest, known[turn])
        missed += known[turn] > 0
    return longest, missed


def _around(one: str, next_one: str, right: bool) -> int:
    """Ends that the weft passes without a crossing while it turns; 0 when it catches the
    outermost one.
    """
    if right:
        one, next_one = one[::-1], next_one[::-1]
    if one[0] != next_one[0]:
        return 0
    other = WEFT if one[0] == WARP else WARP
    return sum(len(row.partition(other)[0]) for row in (one, next_one))
