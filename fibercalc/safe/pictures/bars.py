"""Bars against a line that stands for a published limit."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, MADDER, MADDER_WASH, SOFT, Drawing, Scale

LEFT, RIGHT, TOP, ROW = 8, 346, 30, 40


def shares_of_limit(
    title: str,
    rows: Sequence[tuple[str, float, float, float]],
    limit_words: str,
    at_limit: float = 1.0,
    most: float = 2.0,
) -> Picture:
    """Each row's share of its limit as a bar with its range, the limit as a line; what lies
    beyond the sheet is cut and says so.

    title        the picture's title
    rows         label, share of the limit, low and high; up to four
    limit_words  what the line is called
    at_limit     the share at the line
    most         the share at the right edge
    """
    rows = list(rows)[:4]
    scale = Scale(0.0, most, LEFT, RIGHT)
    drawing = Drawing(TOP + ROW * len(rows) + 6)
    for place, (label, share, low, high) in enumerate(rows):
        y, over = TOP + ROW * place, share > at_limit
        drawing.text(LEFT, y + 12, label, size=13)
        drawing.rect(
            LEFT,
            y + 17,
            scale(share) - LEFT,
            13,
            fill=MADDER_WASH if over else INDIGO_WASH,
            stroke=MADDER if over else INDIGO,
        )
        if over:
            drawing.hatch(LEFT, y + 17, scale(share) - LEFT, 13, stroke=MADDER)
        if high > low:
            drawing.line(scale(low), y + 23.5, scale(high), y + 23.5, stroke=INK, width=2)
            for end in (low, high):
                drawing.line(scale(end), y + 20, scale(end), y + 27, stroke=INK, width=2)
    drawing.line(
        scale(at_limit),
        18,
        scale(at_limit),
        TOP + ROW * len(rows),
        stroke=MADDER,
        width=2,
        dash="6 3",
    )
    drawing.text(scale(at_limit), 13, limit_words, anchor="middle", size=13, fill=MADDER)
    if any(high > most for *_, high in rows):
        drawing.text(
            RIGHT, TOP + ROW * len(rows) + 2, "cut at the edge", anchor="end", size=12, fill=SOFT
        )
    said = "; ".join(
        (
            f"{label}: {share:.2g} of it, {low:.2g} to {high:.2g}"
            if high > low
            else f"{label}: {share:.2g} of it"
        )
        for label, share, low, high in rows
    )
    return drawing.picture(title, f"Bars against {limit_words}. {said}.")
