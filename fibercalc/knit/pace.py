"""Keeping pace with a project that comes out in parts: how long each takes, the day it is done,
and where it falls behind.

Time for knitting is spread evenly over the week, so a part takes calendar days in proportion. A
part starts when it is out and the one before it is done; it falls behind when it is done later
than the next part comes out.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil

from ..core.problem import OutOfRange, require

MINUTES_A_WEEK = 7 * 24 * 60
MOST_PARTS = 100
MOST_DAYS = 20_000  # about 50 years: beyond lies a slip of the pen
NOISE = 1e-9


@dataclass(frozen=True)
class PartDays:
    """One part: the day it is out, is begun and is done, and by how many days that is after the
    next one is out (below 0: in hand; None: there is no next).
    """

    out: date
    begun: date
    done: date
    behind: int | None


def stitches_per_minute(stitches: float, minutes: float) -> float:
    """Own speed.

    stitches  worked while timed, above 0
    minutes   it took, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("stitches", stitches, above=0.0)
    require("minutes", minutes, above=0.0)
    return stitches / minutes


def knitting_minutes(stitches: float, speed: float) -> float:
    """Time at the needles, min.

    stitches  0 or more
    speed     stitches in a minute, 0.5 to 2,000 (a cranked machine is fast)
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("stitches", stitches, 0.0)
    require("speed", speed, 0.5, 2000.0)
    return stitches / speed


def calendar_days(minutes: float, minutes_per_week: float) -> float:
    """Days, with the part of one, that some time at the needles takes.

    minutes           0 or more
    minutes_per_week  time for knitting in a week, 1 to 10,080
    Raises OutOfRange outside these.
    Source: arithmetic (time spread evenly over the week).
    """
    require("minutes", minutes, 0.0)
    require("minutes_per_week", minutes_per_week, 1.0, MINUTES_A_WEEK)
    return 7 * minutes / minutes_per_week


def minutes_per_week_needed(minutes: float, days: float) -> float:
    """Time for knitting in a week, min, that gets a part done in some days.

    minutes  time at the needles, 0 or more
    days     from its release to the next, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("minutes", minutes, 0.0)
    require("days", days, above=0.0)
    return 7 * minutes / days


def keep_pace(days: Sequence[float], releases: Sequence[date], start: date) -> list[PartDays]:
    """When each part is begun and done. Call it again with the days of the slow and the quick end
    of the speed for a range.

    days      calendar days of each part, in order, each 0 to 20,000 (see calendar_days)
    releases  the day each part comes out, in order
    start     the first day there is time for it (after what must be finished before)
    Raises OutOfRange when there are not as many days as releases, none or more than 100, or when
    releases run backward.
    Source: arithmetic.
    """
    if not 1 <= len(releases) <= MOST_PARTS or len(days) != len(releases):
        raise OutOfRange(
            "days",
            len(days),
            1,
            MOST_PARTS,
            f"{len(days)} parts with a length and {len(releases)} with a day; give 1 to"
            f" {MOST_PARTS} of both",
        )
    if any(later < earlier for earlier, later in zip(releases, releases[1:])):
        raise OutOfRange(
            "releases",
            len(releases),
            reason="the parts come out in order: a later part has an earlier day",
        )
    found, free = [], 0.0  # free: days after start at which the needles are free
    for place, (length, out) in enumerate(zip(days, releases)):
        require("days", length, 0.0, MOST_DAYS)
        begin = max(free, (out - start).days)
        free = begin + length
        # Work that ends at the very end of a day is done on that day, not on the next.
        done = start + timedelta(days=max(ceil(free - NOISE) - 1, int(begin + NOISE)))
        following = releases[place + 1] if place + 1 < len(releases) else None
        found.append(
            PartDays(
                out,
                start + timedelta(days=int(begin + NOISE)),
                done,
                (done - following).days if following else None,
            )
        )
    return found


def first_behind(parts: Sequence[PartDays]) -> int:
    """The first part (from 1) that is done later than the day the next one comes out; 0 when none
    is.

    parts  as keep_pace gives them
    Raises nothing.
    Source: arithmetic.
    """
    return next(
        (
            place
            for place, part in enumerate(parts, 1)
            if part.behind is not None and part.behind > 0
        ),
        0,
    )
