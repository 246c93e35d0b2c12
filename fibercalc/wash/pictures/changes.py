"""Changes in percent on one scale: what was to be expected as a band, what was measured as a
mark.
"""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, MADDER, SOFT, Drawing, Scale, nice_ticks

LEFT, RIGHT, TOP, ROW = 64, 344, 10, 34


def change_bars(title: str, rows: Sequence[tuple[str, float, float, float | None]]) -> Picture:
    """One row for each direction: the expected range as a bar, the own change as a mark; zero as
    a line.

    title  of the picture
    rows   (direction, lowest and highest expected change in %, own change in % or None)
    Raises nothing.
    """
    ends = [
        end
        for _, low, high, own in rows
        for end in (low, high, *([own] if own is not None else []))
    ]
    scale = Scale(min(*ends, -2.0) - 1, max(*ends, 2.0) + 1, LEFT, RIGHT)
    bottom = TOP + ROW * len(rows)
    drawing = Drawing(bottom + 52)
    for tick in nice_ticks(scale.low, scale.high, 6):
        drawing.line(
            scale(tick), TOP - 6, scale(tick), bottom, stroke=INK if abs(tick) < 1e-9 else LINE
        )
        drawing.text(
            scale(tick),
            bottom + 17,
            f"{tick:+.0f} %".replace("+0", "0").replace("-", "−"),
            anchor="middle",
            size=13,
            fill=SOFT,
        )
    for place, (name, low, high, own) in enumerate(rows):
        y = TOP + ROW * place
        drawing.text(LEFT - 8, y + 20, name, anchor="end", size=13, bold=True)
        drawing.rect(
            scale(low), y + 5, max(scale(high) - scale(low), 2), 20, fill=INDIGO_WASH, stroke=INDIGO
        )
        if own is not None:
            drawing.line(scale(own), y + 1, scale(own), y + 29, stroke=MADDER, width=4)
    drawing.rect(LEFT, bottom + 28, 16, 12, fill=INDIGO_WASH, stroke=INDIGO)
    drawing.text(LEFT + 22, bottom + 39, "by the constants", size=13)
    if any(own is not None for *_, own in rows):
        drawing.line(LEFT + 164, bottom + 26, LEFT + 164, bottom + 42, stroke=MADDER, width=4)
        drawing.text(LEFT + 174, bottom + 39, "yours", size=13)
    said = "; ".join(
        f"{name}: {low:+.1f} to {high:+.1f} %" + ("" if own is None else f", yours {own:+.1f} %")
        for name, low, high, own in rows
    )
    return drawing.picture(title, f"Expected by the constants, {said}.")
