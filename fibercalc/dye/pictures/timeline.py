"""The dye room day by day: what is in each pot, on each burner and in hand, and how far the plan is
from what no plan can beat."""

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, SHEET, SOFT, Drawing, Scale
from ..schedule.plan import Placed, Plan, worked
from ..schedule.room import DAY, NOISE
from ..schedule.timetable import clock

LEFT, RIGHT, ROW, HEAD, AXIS = 66, 350, 20, 24, 26
OVER = 5  # how far a bar that runs on overnight stands out of its day
TALLEST, MOST_NUMBERS = 860, 200
SMALL = 12

Line = tuple[str, str, int]  # a row's label, its kind and the number of its pot, burner or hands
Box = tuple[float, float, float, float]  # left, top, width, height


def room_timeline(plan: Plan, opens: float) -> Picture:
    """A row for each pot, burner and pair of hands, day under day; hatched: on a burner; a bar that
    stands out of the day runs on overnight.

    plan   as schedule.plan.make_plan gives it
    opens  minutes after midnight at which a day opens
    Raises nothing. Days that would make it too tall or too full are left out, and said so.
    """
    rows = _rows(plan)
    high = HEAD + ROW * len(rows) + AXIS
    by_day = [
        [
            one
            for one in plan.steps
            if one.end > DAY * day + NOISE and one.start < DAY * (day + 1) - NOISE
        ]
        for day in range(plan.dye_days)
    ]
    shown = max(1, min(plan.dye_days, TALLEST // high))
    while shown > 1 and sum(map(len, by_day[:shown])) > 2 * MOST_NUMBERS:
        shown -= 1
    left_out = plan.dye_days - shown
    lines = ["Rail: skeins that hang at closing time."] if plan.hung else []
    if any(
        _held(plan, load)[1] % DAY > plan.room.day
        or _held(plan, load)[1] - _held(plan, load)[0] > DAY
        for load in range(1, len(plan.numbered) + 1)
    ):
        lines.append("A bar past the end of the day runs on overnight.")
    drawing = Drawing(shown * high + (20 if left_out else 0) + 18 * len(lines) + 104)
    across = Scale(0, plan.room.day, LEFT, RIGHT)
    said = []
    for day in range(shown):
        said.append(_day(drawing, plan, day, rows, across, 4 + day * high, opens))
    y = 4 + shown * high
    if left_out:
        drawing.text(
            4,
            y + 12,
            f"{'One day' if left_out == 1 else f'{left_out} days'} more: see the table.",
            size=13,
            fill=SOFT,
        )
        y += 20
    _key(drawing, y + 14, lines)
    _against_bound(drawing, plan, y + 32 + 18 * len(lines))
    more = f" {left_out} more." if left_out else ""
    return drawing.picture(
        "The room, day by day", "; ".join(said) + "." + more + f" {_compared(plan)}"
    )


def _rows(plan: Plan) -> list[Line]:
    """Every pot, burner and pair of hands that is used."""
    room = plan.room
    found: list[Line] = []
    for kind, word, count in (
        ("pot", "pot", len(room.pots)),
        ("burner", "burner", room.burners),
        ("hands", "hands", room.hands),
    ):
        used = {getattr(one, kind) for one in plan.steps} - {None}
        found += [
            (word if count == 1 else f"{word} {unit}", kind, unit)
            for unit in range(1, count + 1)
            if unit in used
        ]
    return found


def _day(
    drawing: Drawing,
    plan: Plan,
    day: int,
    rows: list[Line],
    across: Scale,
    top: float,
    opens: float,
) -> str:
    """One day's rows; returns it in words."""
    begin, end = DAY * day, DAY * day + plan.room.day
    bottom = top + HEAD + ROW * len(rows)
    steps = [
        one for one in plan.steps if one.end > begin + NOISE and one.start < begin + DAY - NOISE
    ]
    begun = sorted(
        {one.load for one in steps if one.pot and _held(plan, one.load)[0] >= begin - NOISE}
    )
    title = f"Day {day + 1}: " + (
        "nothing new in a pot"
        if not begun
        else f"load {begun[0]}"
        if len(begun) == 1
        else f"loads {begun[0]} to {begun[-1]}"
    )
    hanging = sum(
        plan.placing.loads[place].skeins
        for place, (start, dry) in enumerate(plan.hung)
        if start <= end + NOISE < dry
    )
    rail = f"; rail {hanging} of {plan.room.rail}" if plan.hung else ""
    drawing.text(4, top + 15, title + rail, size=13, bold=True)
    ticks = [
        [(across(minute), top + HEAD - 2), (across(minute), bottom + 3)]
        for minute in _ticks(plan.room.day)
    ]
    drawing.strokes(
        ticks
        + [
            [(LEFT, y), (RIGHT, y)]
            for y in (top + HEAD + ROW * place for place in range(1, len(rows) + 1))
        ],
        stroke=LINE,
    )
    for minute in _ticks(plan.room.day):
        drawing.text(
            across(minute),
            bottom + 16,
            clock(begin + minute, opens)[1],
            anchor="middle",
            size=SMALL,
            fill=SOFT,
        )

    def span(start: float, over: float) -> tuple[float, float]:
        """Left and right of a bar; what began before the day, or runs on after it, stands out."""
        left = LEFT - OVER if start < begin - NOISE else across(start - begin)
        return left, RIGHT + OVER if over > end + NOISE else across(over - begin)

    bars: list[Box] = []
    fires: list[Box] = []
    hands: list[Box] = []
    numbers, hatched = [], []
    for place, (label, kind, unit) in enumerate(rows):
        y = top + HEAD + ROW * place
        drawing.text(4, y + 14, label, size=13, fill=SOFT)
        for load, start, over in _spans(plan, steps, kind, unit):
            left, right = span(start, over)
            (hands if kind == "hands" else bars if kind == "pot" else fires).append(
                (left, y + 3, right - left, ROW - 5)
            )
            if kind != "hands" and right - left > 9 + 7 * len(str(load)):
                numbers.append(((left + right) / 2, y + 15, str(load)))
        if kind == "pot":
            for one in steps:
                if one.pot == unit and one.burner:
                    left, right = span(one.start, one.end)
                    hatched += _slants(left, right, y + 3, y + ROW - 2)
    drawing.boxes(bars, fill=SHEET, stroke=INDIGO, width=1.2)
    drawing.strokes(hatched, stroke=INDIGO, width=0.7)
    drawing.boxes(fires, fill=INDIGO_WASH, stroke=INDIGO, width=1.2)
    drawing.boxes(hands, fill=INK)
    for x, y, words in numbers:
        drawing.text(x, y, words, anchor="middle", size=SMALL, bold=True, halo=True)
    return title + rail


def _held(plan: Plan, load: int) -> tuple[float, float]:
    return plan.in_pot(plan.numbered[load - 1])


def _spans(plan: Plan, steps: list[Placed], kind: str, unit: int) -> list[tuple[int, float, float]]:
    """What stands in one row: load, start and end; a pot is held through, steps on a burner that
    follow one another are one bar."""
    own = [one for one in steps if getattr(one, kind) == unit]
    if kind == "hands":
        return [(one.load, one.start, one.end) for one in own]
    if kind == "pot":
        return [(load, *_held(plan, load)) for load in sorted({one.load for one in own})]
    joined: list[tuple[int, float, float]] = []
    for one in own:
        if joined and joined[-1][0] == one.load and abs(joined[-1][2] - one.start) < NOISE:
            joined[-1] = (one.load, joined[-1][1], one.end)
        else:
            joined.append((one.load, one.start, one.end))
    return joined


def _slants(
    left: float, right: float, top: float, bottom: float
) -> list[list[tuple[float, float]]]:
    """Slanting lines inside a box."""
    lines, x, rise = [], left, bottom - top
    while x + rise * 0.5 <= right:
        lines.append([(x, bottom), (x + rise * 0.5, top)])
        x += 5
    return lines


def _ticks(day: float) -> list[float]:
    """Up to five whole hours apart in equal steps, from the opening on."""
    step = next(hours * 60 for hours in (1, 2, 3, 4, 6, 12) if day / (hours * 60) <= 5)
    return [minute * step for minute in range(int(day // step) + 1)]


def _key(drawing: Drawing, y: float, lines: list[str]) -> None:
    drawing.boxes([(6, y - 11, 22, 13), (98, y - 11, 22, 13)], fill=SHEET, stroke=INDIGO, width=1.2)
    drawing.strokes(_slants(98, 120, y - 11, y + 2), stroke=INDIGO, width=0.7)
    drawing.boxes([(200, y - 11, 6, 13)], fill=INK)
    for x, words in ((33, "in a pot"), (125, "burner on"), (211, "hands"), (276, "7 is load 7")):
        drawing.text(x, y, words, size=SMALL)
    for place, words in enumerate(lines, 1):
        drawing.text(4, y + 18 * place, words, size=SMALL, fill=SOFT)


def _against_bound(drawing: Drawing, plan: Plan, y: float) -> None:
    """Two bars: the plan's working hours, and those that no plan can beat."""
    hours = [worked(minute, plan.room.day) / 60 for minute in (plan.work_end, plan.bound.work)]
    along = Scale(0, max(*hours, 1e-3), 126, 280)
    for place, (label, found) in enumerate(zip(("This plan", "No plan can beat"), hours)):
        top = y + 22 * place
        drawing.text(4, top + 12, label, size=13)
        drawing.rect(
            126,
            top,
            along(found) - 126,
            15,
            fill=SHEET if place else INDIGO_WASH,
            stroke=INDIGO,
            stroke_width=1.2,
        )
        drawing.text(along(found) + 6, top + 12, f"{found:.1f} h", size=13)
    drawing.text(
        4, y + 58, "Working hours until all is done, before drying.", size=SMALL, fill=SOFT
    )


def _compared(plan: Plan) -> str:
    hours = [worked(minute, plan.room.day) / 60 for minute in (plan.work_end, plan.bound.work)]
    return f"The work takes {hours[0]:.1f} working hours; no plan takes less than {hours[1]:.1f}."
