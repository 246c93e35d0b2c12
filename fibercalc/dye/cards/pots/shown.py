"""The loads, the first day, and the room hour by hour."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ...pictures.timeline import room_timeline
from ...schedule.timetable import hands_table, load_table
from .asked import Pots


def timetable(out: Outcome[Pots]) -> Table:
    return load_table(out.case.plan, out.case.opened)


def first_day(out: Outcome[Pots]) -> Table:
    return hands_table(out.case.plan, out.case.opened, 1)


def picture(out: Outcome[Pots]) -> Picture:
    return room_timeline(out.case.plan, out.case.opened)
