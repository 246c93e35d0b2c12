"""The last days as a table, on a calendar and as a sheet to tick."""

from __future__ import annotations

from datetime import date

from ....core.answer import Picture, Table
from ....core.day import write_date
from ....core.outcome import Outcome
from ...pictures.dates import dates_picture
from .asked import STEPS, BackPlan
from .said import days


def last_days(out: Outcome[BackPlan]) -> Table:
    """Every step with its last day at three paces, late ones first."""
    today, rows = out.case.today, []
    for name, words in STEPS.items():
        sure, usual, quick = (getattr(plan, name) for plan in out.case.plans)
        cells = (
            words,
            write_date(sure),
            days((sure - today).days),
            _state(sure, quick, today),
            write_date(usual),
            write_date(quick),
        )
        rows.append((sure, cells))
    rows.sort(key=lambda row: (row[0] >= today, row[0]))
    return Table(
        "Last days, late ones first",
        ("Step", "Sure", "From today", "State", "Usual", "Quickest"),
        tuple(cells for _, cells in rows),
        "Sure: post and supplier at their slowest. Quickest: the day after which it cannot be done"
        " at all. Each day is one on which you work.",
    )


def _state(sure: date, quick: date, today: date) -> str:
    if quick < today:
        return "too late"
    if sure < today:
        return "late"
    return "today" if sure == today else "in time"


def date_sheet(out: Outcome[BackPlan]) -> tuple[Table, ...]:
    sure = out.case.plans[0]
    rows = tuple((words, write_date(getattr(sure, name)), "", "☐") for name, words in STEPS.items())
    ends = (
        ("In buyers’ hands", write_date(sure.in_hand), "", "☐"),
        ("Start", write_date(sure.start), "", "☐"),
    )
    return (Table("By the date", ("Step", "Last day", "Done on", ""), rows + ends),)


def picture(out: Outcome[BackPlan]) -> Picture:
    sure, _, quick = out.case.plans
    single = [
        (STEPS[name], getattr(sure, name), getattr(quick, name))
        for name in ("order", "arrive", "release", "post_abroad", "post_home")
    ]
    spans = [("Dye", sure.dye_from, sure.dye_to)]
    if out.case.label:
        spans.append(("Label, list", sure.label_from, sure.label_to))
    return dates_picture(
        [*single, ("In hand", sure.in_hand, sure.in_hand), ("Start", sure.start, sure.start)],
        spans,
        out.case.calendar.closed,
        out.case.today,
        out.case.start,
    )
