"""Past releases as bars, those that sold out open to the right, with the count to have as a line through them."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, MADDER, SHEET, SOFT, Drawing, Scale, nice_ticks, short

LEFT, RIGHT, ROW, TOP = 104, 346, 24, 30
MOST = 16


def demand_picture(releases: Sequence[tuple[str, float, float]], mean: float, low: float, high: float, count: float) -> Picture:
    """A bar for each release (name, offered, sold), then one for the demand to expect with its range, and a line at the count.

    Raises nothing. More than sixteen releases: the last ones are drawn.
    """
    shown = list(releases)[-MOST:]
    across = Scale(0, 1.08 * max([offered for _, offered, _ in shown] + [high, count]), LEFT, RIGHT)
    bottom = TOP + ROW * (len(shown) + 1) + 6
    drawing = Drawing(bottom + (64 if len(shown) == len(releases) else 84))
    for tick in nice_ticks(0, across.high, 5):
        drawing.line(across(tick), TOP - 4, across(tick), bottom, stroke=LINE)
        drawing.text(across(tick), bottom + 16, f"{tick:g}", anchor="middle", size=13, fill=SOFT)
    said = []
    for place, (name, offered, sold) in enumerate(shown):
        y, out = TOP + ROW * place, sold >= offered
        drawing.text(4, y + 14, short(name, 12), size=13)
        drawing.rect(LEFT, y + 3, across(offered) - LEFT, 14, fill=SHEET, stroke=SOFT)
        drawing.rect(LEFT, y + 3, across(sold) - LEFT, 14, fill=INDIGO_WASH, stroke=INDIGO)
        if out:
            x = across(sold)
            drawing.path([(x + 2, y + 4), (x + 11, y + 10), (x + 2, y + 16)], fill=MADDER, stroke=MADDER, closed=True)
        said.append(f"{name}: {sold:.0f} of {offered:.0f} sold" + (", sold out" if out else ""))
    y = TOP + ROW * len(shown) + 4
    drawing.text(4, y + 14, "to expect", size=13, bold=True)
    drawing.rect(LEFT, y + 3, across(mean) - LEFT, 14, fill=INDIGO, stroke=INDIGO)
    drawing.strokes([[(across(low), y + 10), (across(high), y + 10)], [(across(low), y + 5), (across(low), y + 15)], [(across(high), y + 5), (across(high), y + 15)]], stroke=MADDER, width=1.8)
    drawing.line(across(count), 18, across(count), bottom, stroke=INK, width=1.6, dash="4 3")
    drawing.text(across(count), 13, f"have {count:.0f}", anchor="middle", size=13, bold=True)
    y = bottom + 36
    drawing.rect(6, y - 10, 14, 11, fill=INDIGO_WASH, stroke=INDIGO)
    drawing.text(25, y, "sold", size=12)
    drawing.rect(72, y - 10, 14, 11, fill=SHEET, stroke=SOFT)
    drawing.text(91, y, "offered", size=12)
    drawing.path([(160, y - 10), (169, y - 4), (160, y + 2)], fill=MADDER, stroke=MADDER, closed=True)
    drawing.text(175, y, "sold out: at least", size=12)
    drawing.text(6, y + 20, "last bar: mean demand, and where nine in ten lie", size=12, fill=SOFT)
    if len(shown) < len(releases):
        drawing.text(6, y + 40, f"the last {len(shown)} of {len(releases)} are drawn", size=12, fill=SOFT)
    return drawing.picture("What was sold, and what to have", "; ".join(said) + f". To expect: {mean:.0f}, nine releases in ten between {low:.0f} and {high:.0f}. Have {count:.0f}.")
