"""A repeat as text: checked, spread over a cloth, and its columns read out."""

from collections.abc import Sequence
from functools import cache
from math import lcm

from ...core.problem import OutOfRange, require

WARP, WEFT = "1", "0"  # on top, as the face is seen
MOST_ENDS, MOST_PICKS = 2000, 4000
LARGEST = 64  # ends or picks of a repeat


@cache
def checked(repeat: tuple[str, ...]) -> tuple[str, ...]:
    """The repeat itself, once it is known to be one.

    repeat  1 to 64 texts of equal length, 1 to 64 signs of "1" (warp on top) and "0" (weft on top)
    Raises OutOfRange for anything else.
    Source: definition of a draw-down, common practice.
    """
    if (
        not isinstance(repeat, tuple)
        or not 1 <= len(repeat) <= LARGEST
        or not 1 <= len(repeat[0]) <= LARGEST
    ):
        raise OutOfRange("repeat", len(repeat) if isinstance(repeat, tuple) else 0, 1, LARGEST)
    if any(len(row) != len(repeat[0]) or set(row) - {WARP, WEFT} for row in repeat):
        raise OutOfRange(
            "repeat",
            len(repeat),
            reason="every pick has the same ends, each with the warp or the weft on top",
        )
    return repeat


def filled(text: str, count: int, first: int = 0) -> str:
    """A text over and over until it has count signs.

    text   one repeat of it, not empty
    count  signs wanted, 0 to 4,000
    first  where in the repeat it begins, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("text", len(text), 1)
    require("count", count, 0, MOST_PICKS)
    require("first", first, 0)
    first %= len(text)
    return (text * ((first + count) // len(text) + 1))[first : first + count]


def rows_of(repeat: tuple[str, ...], ends: int, picks: int, first: int = 0) -> list[str]:
    """The draw-down of a cloth: one text for each pick, the first woven first.

    repeat  the weave (see checked)
    ends    1 to 2,000
    picks   0 to 4,000
    first   pick of the repeat with which it begins, 0 or more
    Raises OutOfRange outside these.
    Source: definition of a draw-down, common practice.
    """
    require("ends", ends, 1, MOST_ENDS)
    require("picks", picks, 0, MOST_PICKS)
    require("first", first, 0)
    wide = [filled(row, int(ends)) for row in checked(repeat)]
    return [wide[(first + pick) % len(wide)] for pick in range(int(picks))]


def columns_of(rows: Sequence[str]) -> list[str]:
    """Each end of a draw-down as one text, from the first pick to the last.

    rows  texts of equal length, as rows_of gives them
    Raises nothing.
    Source: definition of a draw-down, common practice.
    """
    return ["".join(column) for column in zip(*rows)]


def width_of(repeats: Sequence[tuple[str, ...]]) -> int:
    """Ends after which all of some repeats are back at their first.

    repeats  one or more weaves (see checked)
    Raises OutOfRange outside these.
    Source: arithmetic (the lowest common multiple).
    """
    return lcm(*(len(checked(repeat)[0]) for repeat in repeats))
