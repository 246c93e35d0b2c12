"""A cloth in several sizes, laid corner on corner in true proportion: before and after a wash, or
as made and as wanted.
"""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, SHEET, SOFT, Drawing

LEFT, TOP, WIDE, HIGH, KEY = 6, 6, 206, 106, 224
LOOKS = (
    (SHEET, INK, "5 4"),
    (INDIGO_WASH, INDIGO, ""),
    ("none", INK, ""),
)  # the largest dashed, then filled, then a line alone


def cloth_sizes(
    title: str, sizes: Sequence[tuple[str, float, float]], written: Sequence[str]
) -> Picture:
    """Up to three sizes of one cloth, its length lying across the picture.

    title    of the picture
    sizes    (what it is, length, width) each, in one unit, above 0
    written  each size as it is to be read, up to seventeen characters
    Raises nothing.
    """
    longest, widest = max(size[1] for size in sizes), max(size[2] for size in sizes)
    scale = min(WIDE / longest, HIGH / widest)
    bottom = TOP + HIGH
    drawing = Drawing(bottom + 22)
    order = sorted(range(len(sizes)), key=lambda at: -sizes[at][1] * sizes[at][2])
    for at in order:  # the larger first, or its paper would cover the smaller
        fill, _, _ = LOOKS[at]
        drawing.rect(
            LEFT,
            bottom - sizes[at][2] * scale,
            sizes[at][1] * scale,
            sizes[at][2] * scale,
            fill=fill,
            stroke="none",
        )
    for at, (name, length, width) in enumerate(sizes):
        fill, stroke, dash = LOOKS[at]
        left, top, right = LEFT, bottom - width * scale, LEFT + length * scale
        drawing.path(
            [(left, top), (right, top), (right, bottom), (left, bottom)],
            stroke=stroke,
            width=1.6,
            closed=True,
            dash=dash,
        )
        y = TOP + 4 + 39 * at
        drawing.rect(KEY, y - 4, 16, 12, fill=fill, stroke="none")
        drawing.path(
            [(KEY, y - 4), (KEY + 16, y - 4), (KEY + 16, y + 8), (KEY, y + 8)],
            stroke=stroke,
            width=1.6,
            closed=True,
            dash=dash,
        )
        drawing.text(KEY + 22, y + 7, name, size=13, bold=True)
        drawing.text(KEY, y + 23, written[at], size=13)
    drawing.text(LEFT, bottom + 16, "length lies across; true proportions", size=12, fill=SOFT)
    return drawing.picture(
        title,
        "; ".join(f"{name}: {said}" for (name, _, _), said in zip(sizes, written))
        + "; length first, then width.",
    )
