"""A fair's money against skeins sold: where it begins to pay, with and without a wage, and what
past fairs sold.
"""

from collections.abc import Callable, Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, MADDER, SOFT, Drawing, Scale, nice_ticks

LEFT, RIGHT, TOP, HIGH = 70, 346, 12, 122


def fair_line(
    costs: float,
    wage: float,
    each: float,
    bring: int,
    past: Sequence[tuple[float, bool]],
    written: Callable[[float], str],
) -> Picture:
    """What is over after costs, as it grows with each skein sold; marks below for past fairs.

    costs    of the fair without a wage
    wage     for the days
    each     left by one skein, above 0
    bring    skeins to bring
    past     (sold, whether it sold out) of past fairs
    written  writes an amount as money
    Raises nothing.
    """
    paid, free = (costs + wage) / each, costs / each
    most = max(paid, bring, *(sold for sold, _ in past)) * 1.08
    across, down = (
        Scale(0, most, LEFT, RIGHT),
        Scale(-costs - wage, max(most * each - costs - wage, 1.0), TOP + HIGH, TOP),
    )
    bottom = TOP + HIGH
    drawing = Drawing(bottom + 84)
    for tick in nice_ticks(down.low, down.high, 5):
        drawing.line(LEFT, down(tick), RIGHT, down(tick), stroke=INK if abs(tick) < 1e-9 else LINE)
        drawing.text(LEFT - 6, down(tick) + 5, written(tick), anchor="end", size=13, fill=SOFT)
    for tick in nice_ticks(0, most, 6):
        drawing.text(across(tick), bottom + 17, f"{tick:g}", anchor="middle", size=13, fill=SOFT)
    drawing.path(
        [(across(0), down(-costs - wage)), (across(most), down(most * each - costs - wage))],
        stroke=INDIGO,
        width=2.5,
    )
    if wage:
        end = min(
            most, (down.high + costs) / each
        )  # the line without a wage is cut off at the frame
        drawing.path(
            [(across(0), down(-costs)), (across(end), down(end * each - costs))],
            stroke=INDIGO,
            width=1.5,
            dash="5 4",
        )
        drawing.circle(across(free), down(0), 4, fill=INDIGO_WASH, stroke=INDIGO, width=1.5)
    drawing.circle(across(paid), down(0), 4.5, fill=INDIGO, stroke=INDIGO)
    drawing.line(across(bring), TOP, across(bring), bottom, stroke=MADDER, width=1.6, dash="3 3")
    for sold, out in past:
        x = across(sold)
        if out:
            drawing.path(
                [(x - 4, bottom + 22), (x + 5, bottom + 27), (x - 4, bottom + 32)],
                fill=INK,
                closed=True,
            )
        else:
            drawing.circle(x, bottom + 27, 4, fill=INK)
    drawing.text(LEFT - 6, bottom + 32, "sold", anchor="end", size=13, fill=SOFT)
    drawing.line(8, bottom + 52, 32, bottom + 52, stroke=INDIGO, width=2.5)
    drawing.text(38, bottom + 57, "with your wage", size=13)
    drawing.line(150, bottom + 52, 174, bottom + 52, stroke=INDIGO, width=1.5, dash="5 4")
    drawing.text(180, bottom + 57, "without", size=13)
    drawing.line(254, bottom + 52, 278, bottom + 52, stroke=MADDER, width=1.6, dash="3 3")
    drawing.text(284, bottom + 57, "bring", size=13)
    drawing.circle(20, bottom + 73, 4, fill=INK)
    drawing.text(38, bottom + 78, "a past fair", size=13)
    drawing.path(
        [(158, bottom + 68), (167, bottom + 73), (158, bottom + 78)], fill=INK, closed=True
    )
    drawing.text(180, bottom + 78, "sold out: at least that", size=13)
    said = "; ".join(f"{'at least ' if out else ''}{sold:g}" for sold, out in past)
    return drawing.picture(
        "What is over, by skeins sold",
        f"Costs are paid at {free:.0f} skeins, a wage as well at {paid:.0f}; bring {bring}. Past"
        f" fairs sold {said}.",
    )
