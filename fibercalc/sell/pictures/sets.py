"""The full skeins of a set in their shades: cut first beside dyed whole, with what is over
hatched.
"""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INK, SOFT, Drawing

LEFT, RIGHT = 6, 354
MOST_ROWS = 30


def set_picture(
    shades: Sequence[str], cut_first: float, cut_over: float, each: int, each_over: float
) -> Picture:
    """Two blocks of skeins, a column for each shade. Left blocks round up once, right ones shade
    by shade.

    shades     screen colors of the shades, in order, 1 to 60
    cut_first  full skeins when cut first;  cut_over  of them, what is left as a share of one
               shade's column in skeins
    each       full skeins of one shade when dyed whole;  each_over  of them, left over, in skeins
    Raises nothing.
    """
    tall = max(cut_first / len(shades), each, 1)
    unit = min(14.0, 150 / tall)
    high = unit * tall
    gap = 44
    drawing = Drawing(20 + high + gap + high + 30)
    wide = (RIGHT - LEFT) / len(shades)
    used = (cut_first - cut_over) / len(shades)
    drawing.text(LEFT, 14, f"Cut first: {cut_first:g} skeins, over {cut_over:.1f}", bold=True)
    drawing.text(
        LEFT,
        20 + high + gap - 8,
        f"Dyed whole: {each * len(shades)} skeins, over {each_over * len(shades):.1f}",
        bold=True,
    )
    for at, color in enumerate(shades):
        x = LEFT + wide * at
        for top, full in ((20, used), (20 + high + gap, each - each_over)):
            drawing.rect(
                x,
                top + high - unit * full,
                wide - 2,
                unit * full,
                fill=color,
                stroke=INK,
                stroke_width=0.8,
            )
        if each_over > 0:
            top = 20 + high + gap + high - unit * each
            drawing.hatch(x, top, wide - 2, unit * each_over, gap=4)
            drawing.rect(x, top, wide - 2, unit * each_over, stroke_width=0.8)
        lines = [
            [(x, y), (x + wide - 2, y)]
            for y in (20 + high + gap + high - unit * number for number in range(1, each))
        ]
        drawing.strokes(lines, stroke=SOFT, width=0.5)
        if len(shades) <= 16 or at % 5 == 4:
            drawing.text(
                x + wide / 2 - 1, 20 + high + 14, str(at + 1), anchor="middle", size=12, fill=SOFT
            )
    drawing.text(
        LEFT,
        20 + high + gap + high + 20,
        "one column a shade; hatched: left over in each",
        size=13,
        fill=SOFT,
    )
    return drawing.picture(
        "Skeins of the set, both ways",
        f"Cut first the set takes {cut_first:g} full skeins with {cut_over:.1f} over. Dyed whole it"
        f" takes {each} for each of {len(shades)} shades, {each * len(shades)} in all, with"
        f" {each_over:.1f} over in every shade.",
    )
