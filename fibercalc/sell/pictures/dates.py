"""A plan on a calendar: for each step the span from its last sure day to its last possible one,
today as a line, closed days hatched.
"""

from collections.abc import Sequence
from datetime import date, timedelta

from ...core.answer import Picture
from ...core.day import write_date
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, MADDER, SOFT, Drawing, Scale

LEFT, RIGHT, ROW, TOP = 112, 348, 24, 26
MOST_LABELS = 4


def dates_picture(
    steps: Sequence[tuple[str, date, date]],
    spans: Sequence[tuple[str, date, date]],
    closed: Sequence[tuple[date, date]],
    today: date,
    start: date,
) -> Picture:
    """A row for each step.

    steps   (name, last sure day, last possible day) of single days, in order
    spans   (name, first, last) of steps that take working days, at the sure pace, in order
    closed  stretches, first and last included
    today, start  as dates
    Raises nothing.
    """
    rows = sorted(
        [(sure, name, sure, quick, False) for name, sure, quick in steps]
        + [(first, name, first, last, True) for name, first, last in spans]
    )
    low = min([row[0] for row in rows] + [today]) - timedelta(days=2)
    high = max(start, today) + timedelta(days=2)
    across = Scale(0, max((high - low).days, 1), LEFT, RIGHT)

    def at(day: date) -> float:
        return across((day - low).days)

    bottom = TOP + ROW * len(rows)
    drawing = Drawing(bottom + 66)
    for first, last in closed:
        if last >= low and first <= high:
            left, right = at(max(first, low)), at(min(last + timedelta(days=1), high))
            drawing.hatch(left, TOP - 4, right - left, bottom - TOP + 4, gap=7, stroke=LINE)
    step = 7 * max(-(-(high - low).days // (7 * MOST_LABELS)), 1)
    for tick in range(0, (high - low).days + 1, step):
        day = low + timedelta(days=tick)
        drawing.line(at(day), TOP - 4, at(day), bottom, stroke=LINE)
        drawing.text(at(day), bottom + 16, _short(day), anchor="middle", size=12, fill=SOFT)
    for place, (_, name, first, last, span) in enumerate(rows):
        y = TOP + ROW * place
        late = first < today
        drawing.text(4, y + 15, name, size=13, bold=late)
        if span:
            drawing.rect(
                at(first),
                y + 4,
                max(at(last + timedelta(days=1)) - at(first), 3),
                13,
                fill=INDIGO_WASH,
                stroke=MADDER if late else INDIGO,
                stroke_width=1.4,
            )
        else:
            if last > first:
                drawing.line(at(first), y + 11, at(last), y + 11, stroke=INK, width=1.4)
                drawing.line(at(last), y + 6, at(last), y + 16, stroke=INK, width=1.4)
            x = at(first)
            drawing.path(
                [(x - 5, y + 5), (x + 5, y + 5), (x, y + 17)],
                fill=MADDER if late else INDIGO,
                stroke=MADDER if late else INDIGO,
                closed=True,
            )
    drawing.line(at(today), 18, at(today), bottom, stroke=INK, width=1.6, dash="4 3")
    drawing.text(at(today), 13, f"today, {_short(today)}", anchor="middle", size=13)
    y = bottom + 38
    drawing.path([(6, y - 10), (16, y - 10), (11, y + 1)], fill=INDIGO, stroke=INDIGO, closed=True)
    drawing.text(22, y, "last sure day, to the last possible", size=12)
    drawing.rect(6, y + 10, 14, 11, fill=INDIGO_WASH, stroke=INDIGO, stroke_width=1.4)
    drawing.text(24, y + 20, "working days", size=12)
    drawing.hatch(120, y + 10, 20, 11, gap=7, stroke=SOFT)
    drawing.text(146, y + 20, "closed", size=12)
    said = "; ".join(
        f"{name} {write_date(first)}" + (f" to {write_date(last)}" if last > first else "")
        for _, name, first, last, _ in rows
    )
    return drawing.picture("The last days, on a calendar", f"Today is {write_date(today)}. {said}.")


def _short(day: date) -> str:
    """A day without weekday and year: "5 Mar"."""
    return " ".join(write_date(day).split()[1:3])
