"""How the yarn goes, row by row, with the rows that matter marked."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, MADDER, SOFT, Drawing, Scale, nice_ticks
from ..left import share_used

TOP, BOTTOM, LEFT, RIGHT = 14, 190, 46, 346
POINTS = 60


def yarn_used_by_row(
    rows: int,
    first: float,
    grow: float,
    end_rows: float,
    marks: Sequence[tuple[str, float]],
    stop: float = 0.0,
) -> Picture:
    """Share of the yarn used against rows, with up to five marked rows listed below it.

    rows, first, grow, end_rows  the piece, as in left.share_used
    marks                        what each marked row is and the row ("weighed", 120); drawn as
                                 numbered dots
    stop                         the row at which the yarn is likely gone, where that is before
                                 the end; 0 for none
    Raises OutOfRange as left.share_used does.
    """
    marks = list(marks)[:5]
    drawing = Drawing(BOTTOM + 44 + 20 * len(marks))
    across, up = Scale(0, rows, LEFT, RIGHT), Scale(0, 1, BOTTOM, TOP)
    for tick in (0, 0.25, 0.5, 0.75, 1):
        drawing.line(LEFT, up(tick), RIGHT, up(tick), stroke=LINE)
        drawing.text(
            LEFT - 6, up(tick) + 5, f"{100 * tick:.0f} %", anchor="end", size=13, fill=SOFT
        )
    for tick in nice_ticks(0, rows, 5):
        drawing.text(across(tick), BOTTOM + 17, f"{tick:g}", anchor="middle", size=13, fill=SOFT)
    drawing.text((LEFT + RIGHT) / 2, BOTTOM + 35, "rows", anchor="middle", size=13, fill=SOFT)
    at_end = share_used(rows, rows, first, grow, end_rows)
    curve = [
        (across(rows * k / POINTS), up(share_used(rows * k / POINTS, rows, first, grow, end_rows)))
        for k in range(POINTS + 1)
    ]
    drawing.path(
        [(LEFT, BOTTOM), *curve, (RIGHT, BOTTOM)], fill=INDIGO_WASH, stroke="none", closed=True
    )
    drawing.path(curve, stroke=INDIGO, width=2.5)
    if end_rows:  # the edging and bind-off, on the last row's width
        drawing.path([(RIGHT, up(at_end)), (RIGHT, up(1))], stroke=INDIGO, width=2.5, dash="3 3")
    if 0 < stop < rows:
        drawing.line(across(stop), TOP, across(stop), BOTTOM, stroke=MADDER, width=2, dash="6 4")
        drawing.text(
            across(stop),
            TOP + 10,
            "yarn gone",
            anchor="end" if stop > rows / 2 else "start",
            size=13,
            fill=MADDER,
            halo=True,
        )
    said = []
    for number, (words, row) in enumerate(marks, 1):
        held = min(max(row, 0), rows)
        x, y = across(held), up(share_used(held, rows, first, grow, end_rows))
        drawing.line(x, y, x, BOTTOM, stroke=INK, dash="2 3")
        drawing.circle(x, y, 9, fill="var(--sheet, #fffdf8)", stroke=INK, width=1.5)
        drawing.text(x, y + 4.5, str(number), anchor="middle", size=13, bold=True)
        line = f"{words}: row {row:.0f}"
        drawing.text(12, BOTTOM + 36 + 20 * number, f"{number}  {line}")
        said.append(line)
    return drawing.picture(
        "How the yarn goes, row by row",
        f"Share of the yarn used over {rows} rows" + (": " + "; ".join(said) if said else "") + ".",
    )
