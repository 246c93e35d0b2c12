"""A release planned backward: for each step the last day on which it can be done, at a slow, a
usual and a quick pace.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from .calendar import Calendar, days_earlier, first_of_working_days, last_working_day

SLOW, USUAL, QUICK = "slow", "usual", "quick"


@dataclass(frozen=True)
class Pace:
    """Days that others take: the post at home and abroad, and the supplier."""

    home: int
    abroad: int
    supplier: int


@dataclass(frozen=True)
class Times:
    """Days of one's own, and those that are kept.

    ahead   days that a parcel is to be there before the start
    window  days from the release to the first parcel
    label   working days to label, picture and list;  drying  days that the last load hangs;  dye,
            check  working days
    spare   working days kept free before labeling
    """

    ahead: int
    window: int
    label: int
    drying: int
    dye: int
    check: int
    spare: int = 0


@dataclass(frozen=True)
class LastDays:
    """The last days. dye_from to dye_to, label_from to label_to and check are working days in
    full; the rest are single days.
    """

    order: date
    arrive: date
    check: date
    dye_from: date
    dye_to: date
    label_from: date
    label_to: date
    release: date
    post_abroad: date
    post_home: date
    in_hand: date
    start: date


def back_plan(
    start: date, times: Times, pace: Pace, calendar: Calendar, supplier: Calendar | None = None
) -> LastDays:
    """The last day for each step, so that every later step can still be done.

    start     the day on which all begins, such as part one
    times     one's own days
    pace      the others' days
    calendar  one's working days and closed days; orders, parcels and the release fall on working
              days too
    supplier  the supplier's closed days, which are added to its lead; None where it has none
    Raises OutOfRange where the closed days leave no room.
    Source: arithmetic (each step begins as late as the next allows).
    """
    day = timedelta(days=1)
    in_hand = days_earlier(start, times.ahead)
    home = last_working_day(days_earlier(in_hand, pace.home), calendar)
    abroad = last_working_day(days_earlier(in_hand, pace.abroad), calendar)
    release = last_working_day(days_earlier(min(home, abroad), times.window), calendar)
    label_to = last_working_day(release - day, calendar)
    label_from = first_of_working_days(label_to, times.label, calendar) if times.label else release
    ready = (
        label_from
        if not times.spare
        else first_of_working_days(label_from - day, times.spare, calendar)
    )
    dye_to = last_working_day(ready - day * (times.drying + 1), calendar)
    dye_from = first_of_working_days(dye_to, times.dye, calendar)
    check = (
        first_of_working_days(dye_from - day, times.check, calendar) if times.check else dye_from
    )
    arrive = last_working_day(check - day, calendar)
    order = last_working_day(days_earlier(arrive, pace.supplier, supplier), calendar)
    return LastDays(
        order,
        arrive,
        check,
        dye_from,
        dye_to,
        label_from,
        label_to,
        release,
        abroad,
        home,
        in_hand,
        start,
    )


def late_steps(plan: LastDays, today: date, names: Sequence[str]) -> tuple[str, ...]:
    """The steps whose last day is over.

    plan   as back_plan gives it
    today  the day it is
    names  of the steps that are asked for
    Raises nothing.
    Source: arithmetic.
    """
    return tuple(name for name in names if getattr(plan, name) < today)
