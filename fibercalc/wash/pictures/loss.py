"""What was lost in a wash beside what can be dye: grams, with what the scale leaves open."""

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, SOFT, Drawing, Scale, nice_ticks

LEFT, RIGHT, TOP, ROW = 96, 340, 12, 44


def loss_bars(lost: float, low: float, high: float, dye: float) -> Picture:
    """The loss with its range, and all the dye there is.

    lost  g, any number
    low   least it may be, g
    high  most it may be, g
    dye   g of dye in the piece at most, 0 or more
    Raises nothing.
    """
    scale = Scale(min(low, 0.0), max(high, dye, 0.1) * 1.06, LEFT, RIGHT)
    bottom = TOP + 2 * ROW
    drawing = Drawing(bottom + 44)
    for tick in nice_ticks(scale.low, scale.high, 6):
        drawing.line(
            scale(tick), TOP - 4, scale(tick), bottom, stroke=INK if abs(tick) < 1e-9 else LINE
        )
        drawing.text(
            scale(tick),
            bottom + 17,
            f"{tick:g}".replace("-", "−"),
            anchor="middle",
            size=13,
            fill=SOFT,
        )
    for place, (name, value, fill) in enumerate(
        (("Lost", lost, INDIGO), ("All the dye", dye, INDIGO_WASH))
    ):
        y = TOP + ROW * place
        drawing.text(LEFT - 8, y + 23, name, anchor="end", size=13, bold=True)
        left, right = sorted((scale(0.0), scale(value)))
        drawing.rect(left, y + 8, right - left, 22, fill=fill, stroke=INDIGO)
    drawing.strokes(
        [
            [(scale(low), TOP + 19), (scale(high), TOP + 19)],
            [(scale(low), TOP + 12), (scale(low), TOP + 26)],
            [(scale(high), TOP + 12), (scale(high), TOP + 26)],
        ],
        width=2,
    )
    drawing.text((LEFT + RIGHT) / 2, bottom + 36, "grams", anchor="middle", size=13, fill=SOFT)
    return drawing.picture(
        "What was lost, beside all the dye there is",
        f"Lost {lost:.2f} g, {low:.2f} to {high:.2f}; all the dye is {dye:.2f} g.",
    )
