"""Shares of the fibers as bars, with what a test may find."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, SOFT, Drawing, Scale

ROW, TOP, LEFT, RIGHT = 46, 4, 12, 348


def fiber_bars(rows: Sequence[tuple[str, float, float, float]]) -> Picture:
    """One bar for each fiber, largest first; a bracket shows the tolerance.

    rows  (name, share on the label, lowest and highest that a test may find), in %
    Raises nothing.
    """
    scale, bottom = Scale(0, 100, LEFT, RIGHT), TOP + ROW * len(rows)
    drawing = Drawing(bottom + 24)
    for tick in range(0, 101, 25):
        drawing.line(scale(tick), TOP, scale(tick), bottom, stroke=LINE)
        drawing.text(scale(tick), bottom + 17, f"{tick} %", anchor="middle", size=13, fill=SOFT)
    for place, (name, share, low, high) in enumerate(rows):
        y = TOP + ROW * place
        drawing.text(LEFT, y + 15, f"{share:g} % {name}", bold=True, halo=True)
        drawing.rect(
            LEFT,
            y + 22,
            scale(share) - LEFT,
            14,
            fill=INDIGO_WASH if place % 2 else INDIGO,
            stroke=INDIGO,
        )
        if high > low:
            drawing.strokes(
                [
                    [(scale(low), y + 19), (scale(low), y + 39)],
                    [(scale(high), y + 19), (scale(high), y + 39)],
                    [(scale(low), y + 39), (scale(high), y + 39)],
                ],
                stroke=INK,
                width=1.5,
            )
    said = "; ".join(
        f"{name} {share:g} %" + (f", a test may find {low:g} to {high:g} %" if high > low else "")
        for name, share, low, high in rows
    )
    return drawing.picture("Fiber content, with what a test may find", f"Bars: {said}.")
