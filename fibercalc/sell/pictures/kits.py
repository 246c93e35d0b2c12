"""A kit's colors: the skeins given as boxes, what the pattern takes as a bar through them, and how far that may stray."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, MADDER, SOFT, Drawing, Scale, short

LEFT, RIGHT, ROW = 8, 352, 60


def kit_picture(colors: Sequence[tuple[str, int, float, float, float, str]]) -> Picture:
    """A row for each color: (name, skeins given, need, its low and high end, all in skeins, and the words about it).

    Raises nothing.
    """
    most = max(max(given, high) for _, given, _, _, high, _ in colors)
    across = Scale(0.0, most, LEFT, RIGHT)
    drawing = Drawing(ROW * len(colors) + 24)
    said = []
    for place, (name, given, need, low, high, words) in enumerate(colors):
        top = ROW * place
        drawing.text(LEFT, top + 16, f"{short(name, 12)}: {words}", size=13, bold=high > given)
        for number in range(given):
            drawing.rect(across(number), top + 23, across(number + 1) - across(number), 22, fill=INDIGO_WASH, stroke=INDIGO, stroke_width=1.2)
        drawing.rect(LEFT, top + 29, across(need) - LEFT, 10, fill=INDIGO, stroke=INDIGO)
        ends = [across(low), across(high)]
        drawing.strokes([[(ends[0], top + 34), (ends[1], top + 34)], *([(x, top + 26), (x, top + 42)] for x in ends)], stroke=MADDER if high > given else INK, width=1.6)
        said.append(f"{name} takes {need:.2f} skeins, {low:.2f} to {high:.2f}; {given} given")
    drawing.text(LEFT, ROW * len(colors) + 14, "boxes: skeins given; bar: taken, with its range", size=13, fill=SOFT)
    return drawing.picture("Given and taken, color by color", "; ".join(said) + ".")
