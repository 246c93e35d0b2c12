"""A row or round of stitches with the places of its increases or decreases."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, MADDER, SOFT, Drawing, Scale

LEFT, RIGHT = 46, 352
MOST_SHOWN = 1200
INCREASE, DECREASE = 1, -1


def shaped_row(gaps: Sequence[int], closed: bool, step: int, taken: int) -> Picture:
    """The stitches as they come off the left needle, wrapped in lines, each change marked.

    A plain stitch is a small v; an increase is a triangle pointing up, a decrease one pointing
    down over the stitches it takes.
    gaps    plain stitches before each change (see shaping.even_gaps)
    closed  a round; a flat row has one gap more than changes
    step    stitches one change adds; below 0 for a decrease
    taken   stitches one change is worked on
    Raises nothing. More than 1,200 stitches are drawn as far as that, and said so.
    """
    width = max(taken, 1)
    marks, at = [], 0
    for gap in gaps if closed else gaps[:-1]:
        at += gap
        marks.append(at)
        at += width
    cells = at + (0 if closed else gaps[-1])
    shown = min(cells, MOST_SHOWN)
    across = 20 if shown <= 200 else 40 if shown <= 600 else 60
    size = (RIGHT - LEFT) / across
    high = max(min(size, 12.0), 7.0) + 12
    lines = -(-shown // across)
    drawing = Drawing(16 + lines * high + 46)
    places = {mark + k: k for mark in marks for k in range(width)}

    def spot(cell: int) -> tuple[float, float]:
        return LEFT + cell % across * size, 10 + cell // across * high

    plain = [
        [(x + size * 0.15, y), (x + size / 2, y + high - 13), (x + size * 0.85, y)]
        for x, y in (spot(cell) for cell in range(shown) if cell not in places)
    ]
    drawing.strokes(plain, stroke=SOFT, width=1.2)
    for line in range(lines):
        drawing.text(
            LEFT - 6, 10 + line * high + 9, f"{line * across + 1}", anchor="end", size=12, fill=SOFT
        )
        drawing.line(
            LEFT, 10 + line * high + high - 6, RIGHT, 10 + line * high + high - 6, stroke=LINE
        )
    color, body = (INDIGO, high - 11) if step > 0 else (MADDER, high - 11)
    for mark in marks:
        for cell in range(mark, mark + width):
            if cell >= shown:
                break
            x, y = spot(cell)
            points = (
                [(x, y + body), (x + size / 2, y - 1), (x + size, y + body)]
                if step > 0
                else [(x, y - 1), (x + size / 2, y + body), (x + size, y - 1)]
            )
            drawing.path(points, fill=color, stroke=INK, width=0.8, closed=True)
    y = 10 + lines * high + 22
    sign = (
        [(LEFT, y), (LEFT + 6, y - 11), (LEFT + 12, y)]
        if step > 0
        else [(LEFT, y - 11), (LEFT + 6, y), (LEFT + 12, y - 11)]
    )
    drawing.path(sign, fill=color, stroke=INK, width=0.8, closed=True)
    kind = "increase" if step > 0 else "decrease"
    drawing.text(
        LEFT + 20,
        y,
        f"{kind}"
        + (
            f", on {taken} stitches"
            if taken > 1
            else " in one stitch"
            if taken == 1
            else " between stitches"
        ),
        size=13,
    )
    # A make 1 is a stitch only once it is made; every other change is worked on stitches that are
    # there.
    rest = (
        f"The first {shown:,} of {cells:,} are drawn."
        if shown < cells
        else (
            f"Numbers count the stitches {'before' if taken else 'after'} this"
            f" {'round' if closed else 'row'}."
        )
    )
    drawing.text(LEFT, y + 18, rest, size=12, fill=SOFT)
    where = "round" if closed else "row"
    return drawing.picture(
        f"The {where}, with each {kind}",
        f"A {where} with {len(marks)} {kind}s; plain stitches before each: {_few(gaps)}.",
    )


def _few(gaps: Sequence[int]) -> str:
    return ", ".join(map(str, gaps[:12])) + (" and so on" if len(gaps) > 12 else "")


def shaping_rows(takes: Sequence[int], rows: int) -> Picture:
    """The edge that shaping over rows makes: a stair, rows from the bottom up, each shaping row
    with its number at the step.

    takes  rows each change takes (see shaping.even_rows)
    rows   rows in all
    Raises nothing. With more than 24 changes only the first, the last and every so many are
    numbered.
    """
    high = max(150.0, min(14.0 * len(takes), 320.0)) + 20
    drawing = Drawing(high + 44)
    up = Scale(0, rows, high, 14)
    across = Scale(0, len(takes), 96, 300)
    points, row, numbered = [(across(0), up(0))], 0, max(1, -(-len(takes) // 24))
    for place, take in enumerate(takes):
        row += take
        points += [(across(place), up(row)), (across(place + 1), up(row))]
        if place % numbered == 0 or place == len(takes) - 1:
            drawing.line(88, up(row), across(place), up(row), stroke=LINE)
            if place % (2 * numbered) == 0 or place == len(takes) - 1 or high / len(takes) > 15:
                drawing.text(84, up(row) + 5, f"row {row}", anchor="end", size=13)
    points.append((across(len(takes)), up(rows)))
    drawing.path(
        [*points, (330, up(rows)), (330, up(0))],
        fill=INDIGO_WASH,
        stroke=INK,
        width=1.5,
        closed=True,
    )
    drawing.text(318, up(0) + 20, f"{len(takes)} shaping rows in {rows}", anchor="end", fill=SOFT)
    return drawing.picture(
        "The edge, row by row",
        "Shaping rows: "
        + ", ".join(str(sum(takes[: place + 1])) for place in range(len(takes)))[:400]
        + f" of {rows}.",
    )
