"""Days as people type and write them: 2027-03-05, 5 Mar 2027, "Fri 5 Mar 2027"."""

import re
from datetime import date

from .amount import Unreadable

MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
clock = date.today  # the device's local day, in a browser too; a test puts another here


def today() -> date:
    """This day. The one place that asks the device."""
    return clock()


def read_date(text: str) -> date:
    """A date from 2027-03-05, 5 Mar 2027 or March 5, 2027. Raises Unreadable; 3/5/2027 is refused with a question."""
    numbers = re.findall(r"\d+", text)
    words = [word.lower()[:3] for word in re.findall(r"[A-Za-z]+", text)]
    month = next((MONTHS.index(word) + 1 for word in words if word in MONTHS), None)
    try:
        if re.fullmatch(r"\d{4}-\d{1,2}-\d{1,2}", text):
            return date(*map(int, text.split("-")))
        if month and len(numbers) == 2:
            day, year = sorted(map(int, numbers))
            return date(year, month, day)
        if not month and len(numbers) == 3 and len(numbers[2]) == 4:
            first, second, year = map(int, numbers)
            if first > 12 or second > 12 or first == second:
                day, month = (first, second) if first > 12 or first == second else (second, first)
                return date(year, month, day)
            raise Unreadable(f"is that {write_date(date(year, second, first))} or {write_date(date(year, first, second))}?")
    except Unreadable:
        raise
    except ValueError:
        raise Unreadable("there is no such day") from None
    raise Unreadable("no date was found")


def write_date(day: date) -> str:
    """A date with its weekday: "Fri 5 Mar 2027"."""
    weekday = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")[day.weekday()]
    return f"{weekday} {day.day} {MONTHS[day.month - 1].capitalize()} {day.year}"
