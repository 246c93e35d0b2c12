"""Increases or decreases spread evenly, over a round, a flat row, or over rows; as counts and
as instructions in words.

The counts between two changes differ by at most one (or by one pair of rows). In a round each
change follows its gap, so the last ends the round; in a flat row the first and the last gap are
half ones, so that the row looks the same from both edges.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from ..core.problem import OutOfRange, require

MOST = 5000
LONGEST_CYCLE = 8  # gaps in a repeat; a longer one is harder to follow than to write out


@dataclass(frozen=True)
class Repeat:
    """Some gaps worked one after another, so many times."""

    gaps: tuple[int, ...]
    times: int


def plain_stitches(stitches: int, changes: int, taken: int) -> int:
    """Stitches that stay plain: all, less those the changes are worked on.

    stitches  in the row or round before it, 1 to 5,000
    changes   increases or decreases, 0 to 5,000
    taken     stitches one change is worked on, 0 to 3 (make 1: 0; knit front and
              back: 1; knit 2 together: 2)
    Raises OutOfRange outside these, and when the changes take more stitches than there are.
    Source: arithmetic.
    """
    require("stitches", stitches, 1.0, MOST)
    require("changes", changes, 0.0, MOST)
    require("taken", taken, 0.0, 3.0)
    if changes * taken > stitches:
        raise OutOfRange(
            "changes",
            changes,
            0,
            stitches // taken,
            f"{changes} changes on {taken} stitches each do not fit in {stitches} stitches;"
            f" {stitches // taken} do",
        )
    return stitches - changes * taken


def stitches_after(stitches: int, changes: int, step: int) -> int:
    """Stitches after the row or round.

    stitches  before it, 1 to 5,000
    changes   increases or decreases, 0 to 5,000
    step      stitches one change adds, -2 to 2 (below 0 for a decrease)
    Raises OutOfRange outside these, and when no stitch would be left.
    Source: arithmetic.
    """
    require("stitches", stitches, 1.0, MOST)
    require("changes", changes, 0.0, MOST)
    require("step", step, -2.0, 2.0)
    after = stitches + changes * step if step > 0 else stitches - changes * -step
    if after < 1:
        raise OutOfRange(
            "changes",
            changes,
            reason=f"{changes} decreases would leave none of {stitches} stitches",
        )
    return after


def even_gaps(plain: int, changes: int, closed: bool, edge: int = 0) -> list[int]:
    """Plain stitches before each change; flat, and after the last one too. They add up to plain.

    plain    plain stitches to share out, 0 to 5,000 (see plain_stitches)
    changes  increases or decreases, 1 to 5,000
    closed   a round (as many gaps as changes), or a flat row (one gap more, the
             first and last about half)
    edge     stitches kept plain at both ends of a flat row, 0 to 20
    Raises OutOfRange outside these, and when the edges are more than there is.
    Source: arithmetic (each change at the whole stitch below its exact place).
    """
    require("plain", plain, 0.0, MOST)
    require("changes", changes, 1.0, MOST)
    require("edge", edge, 0.0, 20.0)
    if closed:
        places = [(number + 1) * plain // changes for number in range(changes)]
        return [place - before for place, before in zip(places, [0, *places])]
    inner = plain - 2 * edge
    if inner < 0:
        raise OutOfRange(
            "edge",
            edge,
            0,
            plain // 2,
            f"{edge} plain stitches at each edge are more than the {plain} there are",
        )
    places = [(2 * number + 1) * inner // (2 * changes) for number in range(changes)]
    gaps = [place - before for place, before in zip([*places, inner], [0, *places])]
    return [gaps[0] + edge, *gaps[1:-1], gaps[-1] + edge]


def even_rows(rows: int, changes: int, every: int = 1) -> list[int]:
    """How many rows each change takes, its own row the last of them: the shorter ones first. They
    add up to rows, less what is over.

    rows     in which to shape, 1 to 5,000
    changes  shaping rows, 1 to rows / every
    every    1: on any row; 2: on right-side rows only, so each takes an even number
    Raises OutOfRange outside these. With every 2 an odd row is left plain at the end.
    Source: arithmetic; shorter gaps first is common practice.
    """
    require("rows", rows, 1.0, MOST)
    require("every", every, 1.0, 10.0)
    require("changes", changes, 1.0, rows // every)
    return [every * gap for gap in sorted(even_gaps(rows // every, changes, closed=True))]


def in_repeats(gaps: Sequence[int]) -> list[Repeat]:
    """Gaps as repeats, of cycles of up to eight gaps, so that there is the least to write.

    gaps  any number of whole numbers
    Raises nothing.
    Source: arithmetic (shortest writing, found from the last gap backward).
    """
    alike = [
        [0] * (len(gaps) + 1) for _ in range(LONGEST_CYCLE + 1)
    ]  # how far from here each gap is as the one a cycle later
    cost: list[float] = [0.0] * (len(gaps) + 1)
    best: list[tuple[int, int]] = [(1, 1)] * len(gaps)
    for at in reversed(range(len(gaps))):
        cost[at] = float("inf")
        for size in range(1, min(LONGEST_CYCLE, len(gaps) - at) + 1):
            if at + size < len(gaps) and gaps[at] == gaps[at + size]:
                alike[size][at] = alike[size][at + 1] + 1
            times = alike[size][at] // size + 1
            written = (
                size + 0.5 * (times > 1) + cost[at + size * times]
            )  # brackets are worth half a gap
            if written < cost[at]:
                cost[at], best[at] = written, (size, times)
    repeats, at = [], 0
    while at < len(gaps):
        size, times = best[at]
        repeats.append(Repeat(tuple(gaps[at : at + size]), times))
        at += size * times
    return repeats


def row_words(gaps: Sequence[int], closed: bool, change: str) -> str:
    """The row or round in words: "Knit 7, make 1; [knit 8, make 1] 5 times; knit 7."

    gaps    plain stitches before each change, one at least (see even_gaps)
    closed  a round; a flat row ends with its last gap knit plain
    change  what is done ("make 1", "knit 2 together")
    Raises OutOfRange without a gap.
    Source: common practice (how patterns are written).
    """
    require("gaps", len(gaps), 1.0)
    worked, end = (gaps, 0) if closed else (gaps[:-1], gaps[-1])
    parts = [_repeat_words(repeat, change) for repeat in in_repeats(worked)]
    text = "; ".join([*parts, *([f"knit {end}"] if end else [])]) + "."
    return text[:1].upper() + text[1:] if text[0] != "[" else "[" + text[1:2].upper() + text[2:]


def rows_words(takes: Sequence[int], rows: int, change: str) -> str:
    """Shaping over rows in words: "Increase on every 6th row 8 times, then
    on every 7th row 4 times."

    takes   rows each change takes (see even_rows)
    rows    rows in all; what is over is knit plain at the end
    change  what is done on a shaping row ("increase", "decrease 1 at each end")
    Raises nothing.
    Source: common practice (how patterns are written).
    """
    parts: list[str] = []
    for repeat in in_repeats(takes):
        for gap in repeat.gaps:
            which = (
                "every row"
                if gap == 1
                else (
                    f"every {_ordinal(gap)} row"
                    if repeat.times > 1
                    else (
                        f"the {_ordinal(gap)} row after that"
                        if parts
                        else f"the {_ordinal(gap)} row"
                    )
                )
            )
            parts.append(
                f"on {which} {repeat.times} times"
                if repeat.times > 1
                else f"on {'the next row' if gap == 1 else which}"
            )
    over = rows - sum(takes)
    text = f"{change} {', then '.join(parts)}" + (
        f"; then knit {over} {'row' if over == 1 else 'rows'} plain." if over > 0 else "."
    )
    return text[:1].upper() + text[1:]


def _repeat_words(repeat: Repeat, change: str) -> str:
    words = ", ".join(f"knit {gap}, {change}" if gap else change for gap in repeat.gaps)
    return f"[{words}] {repeat.times} times" if repeat.times > 1 else words


def _ordinal(number: int) -> str:
    ending = (
        "th" if number % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    )
    return f"{number}{ending}"
