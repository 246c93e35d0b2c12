"""A bath's temperature against time, with a clock time at each point."""

from collections.abc import Sequence

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
from ..ramp import clock_time
from .parts import moved_apart

TOP, BOTTOM, LEFT, RIGHT = 16, 190, 46, 346


def heat_picture(
    points: Sequence[tuple[float, float]],
    words: Sequence[str],
    begin: float,
    boiling: float,
    sign: str = "°C",
    cooling: Sequence[tuple[float, float]] = (),
) -> Picture:
    """Temperature against time: ramps and holds as a line, cooling dashed, each point numbered
    and listed below with its clock time.

    points   (minutes from the beginning, temperature) as ramp.program_points gives them
    words    what happens at each point ("into the bath", "hold ends")
    begin    minutes after midnight
    boiling  temperature at which the bath boils here
    sign     of the temperatures, all in one unit
    cooling  points after the last one
    Raises OutOfRange for a beginning beyond a day.
    """
    points, cooling = list(points), list(cooling)
    end = max((cooling or points)[-1][0], 1.0)
    temperatures = [temperature for _, temperature in [*points, *cooling]]
    low = min(0.0 if sign == "°C" else 32.0, *temperatures)
    across, up = (
        Scale(0, end, LEFT, RIGHT),
        Scale(low, low + (max(boiling, *temperatures) - low) * 1.12, BOTTOM, TOP),
    )
    drawing = Drawing(BOTTOM + 26 + 20 * (len(points) + bool(cooling)))
    for tick in nice_ticks(low, up.high, 6):
        drawing.line(LEFT, up(tick), RIGHT, up(tick), stroke=LINE)
        drawing.text(LEFT - 6, up(tick) + 5, f"{tick:.0f} {sign}", anchor="end", size=13, fill=SOFT)
    line = [(across(minutes), up(temperature)) for minutes, temperature in points]
    drawing.path(
        [(line[0][0], BOTTOM), *line, (line[-1][0], BOTTOM)],
        fill=INDIGO_WASH,
        stroke="none",
        closed=True,
    )
    drawing.path(line, stroke=INDIGO, width=2.5)
    if cooling:
        drawing.path(
            [line[-1], *[(across(minutes), up(temperature)) for minutes, temperature in cooling]],
            stroke=INDIGO,
            width=2.5,
            dash="4 4",
        )
    drawing.line(LEFT, up(boiling), RIGHT, up(boiling), stroke=MADDER, width=1.5, dash="6 4")
    drawing.text(
        RIGHT,
        up(boiling) - 5,
        f"boils near {boiling:.0f} {sign}",
        anchor="end",
        size=13,
        fill=MADDER,
    )
    # Numbers stand near the base line, moved apart where points are close in time, each joined to
    # its point; many stand in two rows.
    gap = min(19.0, (RIGHT - LEFT - 18) / max(len(line) - 1, 1))
    for number, ((x, y), place) in enumerate(
        zip(line, moved_apart([x for x, _ in line], gap, LEFT + 9, RIGHT - 9)), 1
    ):
        foot = BOTTOM - (29 if gap < 19 and number % 2 else 9)
        drawing.strokes([[(x, y), (x, foot - 9), (place, foot)]], stroke=INK, dash="2 3")
        drawing.circle(x, y, 3, fill=INK)
        drawing.circle(place, foot, 9, fill=SHEET, stroke=INK, width=1.5)
        drawing.text(place, foot + 4.5, str(number), anchor="middle", size=13, bold=True)
    said = []
    for number, ((minutes, temperature), each) in enumerate(zip(points, words), 1):
        said.append(f"{clock_time(begin, minutes)}, {temperature:.0f} {sign}: {each}")
        drawing.text(6, BOTTOM + 8 + 20 * number, str(number), bold=True)
        drawing.text(30, BOTTOM + 8 + 20 * number, said[-1])
    if cooling:
        said.append(f"{clock_time(begin, cooling[-1][0])}, {cooling[-1][1]:.0f} {sign}: cooled")
        drawing.text(30, BOTTOM + 28 + 20 * len(points), said[-1])
    return drawing.picture("The bath, by the clock", "; ".join(said) + ".")
