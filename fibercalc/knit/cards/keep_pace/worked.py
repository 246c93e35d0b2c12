"""When each part is begun and done, at one's own pace and at both ends of it."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from ....core.arithmetic import total
from ....core.outcome import Outcome
from ....core.problem import Refused
from ...left import stitches_between, stitches_through
from ...pace import (
    PartDays,
    calendar_days,
    first_behind,
    keep_pace,
    knitting_minutes,
    minutes_per_week_needed,
    stitches_per_minute,
)
from .asked import BY_STITCHES, KeepPace, Part


def answer(case: KeepPace) -> None:
    _count_stitches(case)
    if any(later.release < earlier.release for earlier, later in zip(case.parts, case.parts[1:])):
        raise Refused(
            "Parts: they come out in order; a later part has an earlier day.",
            KeepPace.parts.each(Part.release, row=1),
        )
    case.all_stitches = total(part.stitches_held for part in case.parts)
    case.speed = stitches_per_minute(case.speed_stitches, case.speed_minutes)
    case.minutes = knitting_minutes(case.all_stitches, case.speed)
    weekly = 60 * case.week
    case.weeks = case.minutes / weekly
    minutes = [knitting_minutes(part.stitches_held, case.speed) for part in case.parts]
    case.days = [float(calendar_days(each, weekly)) for each in minutes]
    case.found = keep_pace(case.days, [part.release for part in case.parts], case.start)
    case.done = case.found[-1].done
    # A part's number names one of them and is no amount: it stays fixed, and how sure it is is
    # said by the parts at both ends of the pace.
    case.behind_at = first_behind(case.found)
    needed = _needed(case.parts, minutes, case.start)
    if needed is not None:
        case.needed = needed


def _count_stitches(case: KeepPace) -> None:
    """Find the stitches of each part."""
    before: Part | None = None
    for number, part in enumerate(case.parts, 1):
        if case.counted_by == BY_STITCHES:
            part.stitches_held = part.stitches
            continue
        if before is None:
            part.stitches_held = stitches_through(part.last_row, case.first, case.grow)
        elif part.last_row <= before.last_row:
            raise Refused(
                f"Part {number}, its last row: {part.last_row} given; it must come after row"
                f" {before.last_row}, the last of the part before.",
                KeepPace.parts.each(Part.last_row, row=number),
            )
        else:
            part.stitches_held = stitches_between(
                before.last_row, part.last_row, case.first, case.grow
            )
        before = part


def _needed(parts: Sequence[Part], minutes: Sequence[float], start: date) -> float | None:
    """Time in a week that gets each part done by the day the next one is out.

    None where one can only be begun after that.
    """
    longest = None
    for each, here, later in zip(minutes, parts, parts[1:]):
        if start > here.release and start >= later.release:
            return None
        days = max((later.release - max(here.release, start)).days, 1)
        longest = max(longest or 0.0, minutes_per_week_needed(each, days))
    return longest


def _at(case: KeepPace, share: float) -> list[PartDays]:
    """The plan at a pace, speed and hours of a week together, so much faster (1.1) or slower."""
    days, releases = [days / share for days in case.days], [part.release for part in case.parts]
    return keep_pace(days, releases, case.start)


def ends(out: Outcome[KeepPace]) -> tuple[list[PartDays], list[PartDays]]:
    """The plan at the quick and at the slow end of the pace."""
    weeks = out.case.weeks
    quick, slow = max(out.low(KeepPace.weeks), 0.05 * weeks), out.high(KeepPace.weeks)
    return _at(out.case, weeks / quick), _at(out.case, weeks / slow)
