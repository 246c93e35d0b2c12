"""A plan written out: the loads with their times, and what hands do next, as tables."""

from math import floor

from ...core.answer import Table
from .plan import Plan
from .room import DAY, NOISE


def clock(minute: float, opens: float) -> tuple[int, str]:
    """The calendar day, from 1, and the time of day, to the minute, of a time on the plan's clock.

    minute  since the opening of the first day;  opens  minutes after midnight at which a day opens
    """
    whole = floor(minute + opens + 0.5)
    return whole // int(DAY) + 1, f"{whole % int(DAY) // 60}:{whole % 60:02d}"


def moment(minute: float, opens: float) -> str:
    """A time in words: "day 2, 14:05"."""
    day, time = clock(minute, opens)
    return f"day {day}, {time}"


def load_table(plan: Plan, opens: float) -> Table:
    """Every load with its color, skeins, pot and times, in the order they go into a pot."""
    rows, steps = [], plan.steps
    for number, place in enumerate(plan.numbered, 1):
        load, own = plan.placing.loads[place], [one for one in steps if one.load == number]
        first, last = plan.in_pot(place)
        fires = [one for one in own if one.burner]
        day, into = clock(first, opens)
        row = [
            str(number),
            plan.recipes[load.recipe].name,
            str(load.skeins),
            str(plan.placing.pot_of[place] + 1),
            str(day),
            into,
        ]
        row += [
            _later(one, day, opens) for one in ((fires[0].start, fires[-1].end) if fires else ())
        ] or ["–", "–"]
        row += [_later(last, day, opens), _later(max(one.end for one in own), day, opens)]
        if plan.hung:
            row.append(moment(plan.hung[place][1], opens))
        rows.append(tuple(row))
    columns = (
        "Load",
        "Color",
        "Skeins",
        "Pot",
        "Day",
        "In the pot",
        "Burner on",
        "Burner off",
        "Out",
        "Done",
    )
    return Table("The loads", columns + (("Dry",) if plan.hung else ()), tuple(rows))


def _later(minute: float, day: int, opens: float) -> str:
    """A time of day, with its day where that is another one."""
    other, time = clock(minute, opens)
    return time if other == day else f"day {other}, {time}"


def hands_table(plan: Plan, opens: float, day: int) -> Table:
    """What to do next on one working day (from 1), in order of time: every step that begins with
    a person there.
    """
    rows = []
    for one in plan.steps:
        if floor((one.start + NOISE) / DAY) + 1 != day:
            continue
        what = (
            one.step.name
            if len(plan.room.pots) == 1 or one.pot is None
            else f"{one.step.name}, pot {one.pot}"
        )
        rows.append((clock(one.start, opens)[1], what, str(one.load), clock(one.end, opens)[1]))
    return Table(f"Day {day}", ("At", "Begin", "Load", "Until"), tuple(rows))
