"""A project in parts on a calendar: when each part is out, when it is done, and how surely."""

from collections.abc import Sequence
from datetime import date, timedelta

from ...core.answer import Picture
from ...core.day import write_date
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, MADDER, SOFT, Drawing, Scale
from ..pace import PartDays

LEFT, RIGHT, ROW = 74, 350, 34
MOST_LABELS = 4


def pace_timeline(
    names: Sequence[str],
    parts: Sequence[PartDays],
    quick: Sequence[PartDays],
    slow: Sequence[PartDays],
) -> Picture:
    """A bar for each part from the day it is begun to the day it is done, its release as a
    triangle, the likely range of its end as a line.

    A bar that ends after the next release is hatched.
    names               of the parts, short; longer than nine characters are cut
    parts, quick, slow  as pace.keep_pace gives them for the middle, quick and slow end of the speed
    Raises nothing.
    """
    low = min([part.out for part in parts] + [part.begun for part in parts])
    high = max([part.done for part in slow] + [part.out for part in parts]) + timedelta(days=1)
    scale = Scale(0, max((high - low).days, 1), LEFT, RIGHT)

    def across(day: date) -> float:
        return scale((day - low).days)

    bottom = 10 + ROW * len(parts)
    drawing = Drawing(bottom + 78)
    for day in _ticks(low, high):
        drawing.line(across(day), 4, across(day), bottom, stroke=LINE)
        drawing.text(across(day), bottom + 17, _short(day), anchor="middle", size=13, fill=SOFT)
    said = []
    for place, (name, part, soon, late) in enumerate(zip(names, parts, quick, slow)):
        top = 10 + ROW * place
        behind = part.behind is not None and part.behind > 0
        left, right = across(part.begun), across(part.done + timedelta(days=1))
        drawing.text(4, top + 18, name if len(name) <= 9 else name[:8] + "…", size=13, bold=behind)
        drawing.rect(
            left,
            top + 8,
            right - left,
            14,
            fill=INDIGO_WASH,
            stroke=MADDER if behind else INDIGO,
            stroke_width=1.5,
        )
        if behind:
            drawing.hatch(left, top + 8, right - left, 14, gap=5, stroke=MADDER)
        ends = [across(each.done + timedelta(days=1)) for each in (soon, late)]
        if ends[1] > ends[0]:
            drawing.strokes(
                [
                    [(ends[0], top + 26), (ends[1], top + 26)],
                    *([(x, top + 23), (x, top + 29)] for x in ends),
                ],
                width=1.5,
            )
        out = across(part.out)
        drawing.path(
            [(out - 5, top - 1), (out + 5, top - 1), (out, top + 8)], fill=INK, closed=True
        )
        said.append(
            f"{name} out {write_date(part.out)}, done {write_date(part.done)}"
            + (f", {part.behind} {'day' if part.behind == 1 else 'days'} behind" if behind else "")
        )
    y = bottom + 42
    drawing.path([(6, y - 10), (16, y - 10), (11, y - 1)], fill=INK, closed=True)
    drawing.text(22, y, "comes out", size=13)
    drawing.strokes(
        [[(110, y - 5), (134, y - 5)], [(110, y - 8), (110, y - 2)], [(134, y - 8), (134, y - 2)]],
        width=1.5,
    )
    drawing.text(140, y, "likely done between", size=13)
    y += 22
    drawing.rect(6, y - 11, 24, 12, fill=INDIGO_WASH, stroke=INDIGO, stroke_width=1.5)
    drawing.text(36, y, "knitting", size=13)
    drawing.rect(110, y - 11, 24, 12, fill=INDIGO_WASH, stroke=MADDER, stroke_width=1.5)
    drawing.hatch(110, y - 11, 24, 12, gap=5, stroke=MADDER)
    drawing.text(140, y, "done after the next is out", size=13)
    return drawing.picture("Each part: out, and done", "; ".join(said) + ".")


def _ticks(low: date, high: date) -> list[date]:
    """Up to four days, evenly apart, whole weeks apart where there is room."""
    days = (high - low).days
    step = max(-(-days // MOST_LABELS), 1)
    step = -(-step // 7) * 7 if days >= 7 * MOST_LABELS - 6 else step
    return [low + timedelta(days=at) for at in range(0, days + 1, step)]


def _short(day: date) -> str:
    """A day without weekday and year: "5 Mar"."""
    return " ".join(write_date(day).split()[1:3])
