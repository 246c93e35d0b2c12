"""Working days and closed days, counted backward: the last day on which something can still be
begun.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from ..core.problem import OutOfRange, require

LONGEST = 1500  # days that are looked back over
WEEKS = {
    "mon-fri": (0, 1, 2, 3, 4),
    "mon-sat": (0, 1, 2, 3, 4, 5),
    "every": (0, 1, 2, 3, 4, 5, 6),
    "tue-sat": (1, 2, 3, 4, 5),
    "weekend": (5, 6),
}
ONE = timedelta(days=1)


@dataclass(frozen=True)
class Calendar:
    """The weekdays worked (Monday is 0), and stretches of closed days, first and last included."""

    weekdays: tuple[int, ...]
    closed: tuple[tuple[date, date], ...] = ()

    def shut(self, day: date) -> bool:
        """Whether the day lies in a closed stretch."""
        return any(first <= day <= last for first, last in self.closed)

    def works(self, day: date) -> bool:
        """Whether it is a working day."""
        return day.weekday() in self.weekdays and not self.shut(day)


def calendar_of(week: str, closed: Sequence[tuple[date, date]]) -> Calendar:
    """A calendar from a kind of week and closed stretches.

    week    one of the keys of WEEKS
    closed  (first, last) days of each stretch, in order
    Raises OutOfRange where a stretch ends before it begins, KeyError for another week.
    Source: definition of the days.
    """
    for first, last in closed:
        if last < first:
            raise OutOfRange("closed", 0.0, reason="closed days end before they begin")
    return Calendar(WEEKS[week], tuple(closed))


def last_working_day(day: date, calendar: Calendar) -> date:
    """The last working day on or before a day.

    day       any
    calendar  the days worked
    Raises OutOfRange where there is none in four years.
    Source: arithmetic.
    """
    return first_of_working_days(day, 1, calendar)


def first_of_working_days(end: date, days: int, calendar: Calendar) -> date:
    """The first of so many working days of which the last is on or before a day: the latest that
    they can begin.

    end       the day by whose evening all must be done
    days      working days, 1 to 400
    calendar  the days worked
    Raises OutOfRange outside these, and where there are not so many in four years.
    Source: arithmetic.
    """
    require("days", days, 1, 400)
    day, left = end, days
    for _ in range(LONGEST):
        if calendar.works(day):
            left -= 1
            if not left:
                return day
        day -= ONE
    raise OutOfRange(
        "closed",
        days,
        reason=f"fewer than {days} working days lie before {end:%d %b %Y}; look at the closed days",
    )


def days_earlier(end: date, days: int, calendar: Calendar | None = None) -> date:
    """A day so many calendar days before another. Where a calendar is given, its closed stretches
    do not count: nobody moves anything then.

    end       any day
    days      0 to 1,000
    calendar  of whoever carries or delivers, or None
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("days", days, 0, 1000)
    if calendar is None:
        return end - timedelta(days=days)
    day, left = end, days
    for _ in range(LONGEST):
        if not left:
            return day
        day -= ONE
        left -= not calendar.shut(day)
    raise OutOfRange(
        "closed", days, reason="the closed days leave no time before that; look at them"
    )
