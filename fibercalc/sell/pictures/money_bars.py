"""Money in bars: where the price of one skein goes, and what moves what is left of it."""

from collections.abc import Callable, Sequence

from ...core.answer import Picture
from ...core.picture import (
    INDIGO,
    INDIGO_WASH,
    INK,
    LINE,
    MADDER,
    MADDER_WASH,
    SOFT,
    Drawing,
    Scale,
)

ROW, TOP, NAMES, AMOUNTS = 25, 6, 118, 292


def where_it_goes(parts: Sequence[tuple[str, int]], written: Callable[[int], str]) -> Picture:
    """The parts of what a buyer pays, one bar each, in the order they are taken.

    parts    (name, cents), the last one what is left, which may be below 0
    written  writes cents as money
    Raises nothing.
    """
    shown = [(name, amount) for name, amount in parts if amount] or list(parts[-1:])
    scale = Scale(0, max(abs(amount) for _, amount in shown), NAMES, AMOUNTS)
    drawing = Drawing(TOP + ROW * len(shown) + 8)
    for place, (name, amount) in enumerate(shown):
        y, last = TOP + ROW * place, (name, amount) == parts[-1]
        drawing.text(NAMES - 8, y + 17, name, anchor="end", size=13, bold=last)
        wide = max(scale(abs(amount)) - NAMES, 1.0)
        fill, stroke = (
            (MADDER_WASH, MADDER)
            if amount < 0
            else (INDIGO, INDIGO)
            if last
            else (INDIGO_WASH, INDIGO)
        )
        drawing.rect(NAMES, y + 4, wide, ROW - 8, fill=fill, stroke=stroke)
        if amount < 0:
            drawing.hatch(NAMES, y + 4, wide, ROW - 8, stroke=MADDER)
        drawing.text(354, y + 17, written(amount), anchor="end", size=13, bold=last)
    return drawing.picture(
        "Where the price of one skein goes",
        "Bars: " + "; ".join(f"{name} {written(amount)}" for name, amount in shown) + ".",
    )


def what_moves_it(
    rows: Sequence[tuple[str, float, float]], left: float, written: Callable[[float], str]
) -> Picture:
    """What is left of one skein when one thing after another is a tenth less, and a tenth more:
    widest first.

    rows     (name, left with a tenth less of it, left with a tenth more), in the order shown
    left     as things are
    written  writes an amount as money
    Raises nothing.
    """
    ends = [end for _, less, more in rows for end in (less, more)] + [left]
    scale = Scale(min(ends), max(ends), NAMES + 4, 352)
    bottom = TOP + ROW * len(rows)
    drawing = Drawing(bottom + 58)
    for place, (name, less, more) in enumerate(rows):
        y = TOP + ROW * place
        drawing.text(NAMES - 8, y + 17, name, anchor="end", size=13)
        for value, fill in ((less, INDIGO_WASH), (more, INDIGO)):
            start, end = sorted((scale(left), scale(value)))
            drawing.rect(start, y + 4, max(end - start, 0.8), ROW - 8, fill=fill, stroke=INDIGO)
    if scale.low < 0 < scale.high:
        drawing.line(scale(0), TOP, scale(0), bottom + 2, stroke=MADDER, dash="4 3")
    drawing.line(scale(left), TOP - 2, scale(left), bottom + 6, stroke=INK, width=1.5)
    for x, value, anchor in (
        (NAMES + 4, scale.low, "start"),
        (scale(left), left, "middle"),
        (352, scale.high, "end"),
    ):
        if anchor == "middle" or abs(x - scale(left)) > 70:
            drawing.text(
                x,
                bottom + 21,
                written(value),
                anchor=anchor,
                size=13,
                fill=INK if anchor == "middle" else SOFT,
            )
    drawing.line(8, bottom + 30, 352, bottom + 30, stroke=LINE)
    drawing.rect(12, bottom + 39, 16, 11, fill=INDIGO_WASH, stroke=INDIGO)
    drawing.text(34, bottom + 49, "10 % less of it", size=13)
    drawing.rect(182, bottom + 39, 16, 11, fill=INDIGO, stroke=INDIGO)
    drawing.text(204, bottom + 49, "10 % more of it", size=13)
    said = "; ".join(
        f"{name}: {written(less)} with a tenth less, {written(more)} with a tenth more"
        for name, less, more in rows
    )
    return drawing.picture("What moves what is left most", f"Left now {written(left)}. {said}.")
