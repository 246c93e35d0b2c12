"""Water left in drying yarn against hours: likely, quick and slow."""

from ...core.answer import Picture
from ...core.picture import (
    INDIGO,
    INDIGO_WASH,
    INK,
    LINE,
    MADDER,
    SHEET,
    SOFT,
    Drawing,
    Scale,
    nice_ticks,
)
from ..drying_pace import drying_hours, regain_after

TOP, BOTTOM, LEFT, RIGHT = 16, 190, 50, 346
POINTS = 40


def drying_picture(
    wet: float,
    rest: float,
    ready: float,
    paces: tuple[float, float, float],
    falls: float,
    weighed: tuple[float, float] | None = None,
) -> Picture:
    """Water as % of the dry weight, from wet to rest, with the range that the pace leaves.

    wet      regain at the start, %
    rest     regain at rest in the room, %
    ready    regain at which it may be weighed for sale, %, above rest
    paces    points of regain an hour: slow, middle, quick
    falls    regain below which the pace falls, %
    weighed  (hours, regain) of a weighing on the way
    Raises OutOfRange as drying_hours does.
    """
    hours = [drying_hours(wet, ready, rest, pace, falls) for pace in paces]
    across, up = Scale(0, hours[0] * 1.05, LEFT, RIGHT), Scale(0, wet * 1.05, BOTTOM, TOP)
    drawing = Drawing(BOTTOM + 62 + (22 if weighed else 0))
    for tick in nice_ticks(0, up.high, 6):
        drawing.line(LEFT, up(tick), RIGHT, up(tick), stroke=LINE)
        drawing.text(LEFT - 6, up(tick) + 5, f"{tick:.0f} %", anchor="end", size=13, fill=SOFT)
    for tick in nice_ticks(0, across.high, 6):
        drawing.text(across(tick), BOTTOM + 17, f"{tick:g}", anchor="middle", size=13, fill=SOFT)
    drawing.text(
        (LEFT + RIGHT) / 2, BOTTOM + 35, "hours on the rail", anchor="middle", size=13, fill=SOFT
    )
    slow, middle, quick = (
        [
            (
                across(across.high * k / POINTS),
                up(regain_after(wet, rest, pace, across.high * k / POINTS, falls)),
            )
            for k in range(POINTS + 1)
        ]
        for pace in paces
    )
    drawing.path([*slow, *reversed(quick)], fill=INDIGO_WASH, stroke=INDIGO, width=1, closed=True)
    drawing.path(middle, stroke=INDIGO, width=2.5)
    drawing.line(LEFT, up(ready), RIGHT, up(ready), stroke=MADDER, width=1.5, dash="6 4")
    drawing.text(
        RIGHT, up(ready) - 5, "may be weighed", anchor="end", size=13, fill=MADDER, halo=True
    )
    said = f"{hours[1]:.0f} hours are likely, {hours[2]:.0f} if quick, {hours[0]:.0f} if slow"
    drawing.text(12, BOTTOM + 56, said, size=13)
    if weighed:
        x, y = across(weighed[0]), up(weighed[1])
        drawing.circle(x, y, 6, fill=SHEET, stroke=INK, width=2)
        drawing.circle(20, BOTTOM + 73, 6, fill=SHEET, stroke=INK, width=2)
        drawing.text(
            34, BOTTOM + 78, f"weighed after {weighed[0]:.1f} hours: {weighed[1]:.0f} % water"
        )
    return drawing.picture(
        "Water left, by the hour", f"From {wet:.0f} % of water to {ready:.0f} %: {said}."
    )
