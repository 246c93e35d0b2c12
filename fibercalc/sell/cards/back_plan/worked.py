"""The last day for each step, at three paces, and how the surest plan is counted back."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from math import ceil

from ....core.arithmetic import largest
from ....core.card import Between
from ....core.problem import OutOfRange, Refused
from ....core.steps import at_least, searched
from ...calendar import Calendar, calendar_of
from ...inputs import Stretch
from ...last_days import Pace, Times, back_plan, late_steps
from .asked import STEPS, BackPlan

DAY = 1440  # minutes


def answer(case: BackPlan) -> None:
    _refuse_falling(case)
    case.calendar = calendar_of(case.week, [(each.first, each.last) for each in case.closed])
    case.hang = ceil(case.drying / DAY)
    _make_plans(case)
    _find_days(case)
    _count_back(case)


def _refuse_falling(case: BackPlan) -> None:
    """What must rise: the others' paces, and the days of a closed stretch."""
    for name, words, paces in (
        ("home", "Post at home", (case.home_quick, case.home, case.home_slow)),
        ("abroad", "Post abroad", (case.abroad_quick, case.abroad, case.abroad_slow)),
        ("supplier", "Supplier", (case.supplier_quick, case.supplier, case.supplier_slow)),
    ):
        if not paces[0] <= paces[1] <= paces[2]:
            raise Refused(
                f"{words}: give the quickest, the usual and the slowest in rising order.", name
            )
    for number, stretch in enumerate(case.closed, 1):
        if stretch.last < stretch.first:
            raise Refused(
                f"Closed days {number}: the last day lies before the first.",
                BackPlan.closed.each(Stretch.last, row=number),
            )


def _make_plans(case: BackPlan) -> None:
    own = case.ahead, case.window, case.label, case.hang, case.dye_days, case.check, case.spare
    times = Times(*map(int, own))
    theirs = (
        Calendar(tuple(range(7)), case.calendar.closed) if case.supplier_closed == "yes" else None
    )
    paces = (
        (case.home_slow, case.abroad_slow, 7 * case.supplier_slow),
        (case.home, case.abroad, 7 * case.supplier),
        (case.home_quick, case.abroad_quick, 7 * case.supplier_quick),
    )
    try:
        sure, usual, quick = (
            back_plan(case.start, times, Pace(*map(int, pace)), case.calendar, theirs)
            for pace in paces
        )
    except OutOfRange as error:
        raise Refused(
            f"Closed days: {error.reason or 'they leave no room'}.",
            BackPlan.closed.each(Stretch.last, row=1),
        ) from None
    case.plans = sure, usual, quick


def _find_days(case: BackPlan) -> None:
    sure, usual, quick = case.plans
    case.order, case.order_usual, case.order_quick = sure.order, usual.order, quick.order
    case.dye_from, case.dye_to, case.label_from = sure.dye_from, sure.dye_to, sure.label_from
    case.release, case.in_hand = sure.release, sure.in_hand
    case.post_abroad, case.post_home = sure.post_abroad, sure.post_home
    case.late_steps = late_steps(sure, case.today, tuple(STEPS))
    case.late = len(case.late_steps)
    case.slack = (min(getattr(sure, name) for name in STEPS) - case.today).days


def _count_back(case: BackPlan) -> None:
    """The chain in days before the start: each step as late as the next allows.

    Closed days, and days on which one does not work, push a step back further.
    """
    sure, part = case.plans[0], BackPlan
    _push(case, part.in_hand_ahead, sure.in_hand, lambda: case.ahead)
    _push(case, part.post_home_ahead, sure.post_home, lambda: case.in_hand_ahead + case.home_slow)
    _push(
        case,
        part.post_abroad_ahead,
        sure.post_abroad,
        lambda: case.in_hand_ahead + case.abroad_slow,
    )
    case.first_post_ahead = largest(case.post_home_ahead, case.post_abroad_ahead)
    _push(case, part.release_ahead, sure.release, lambda: case.first_post_ahead + case.window)
    _push(case, part.labels_ahead, sure.label_from, lambda: case.release_ahead + case.label)
    _push(
        case,
        part.last_load_ahead,
        sure.dye_to,
        lambda: case.labels_ahead + case.spare + case.hang + 1,
    )
    _push(case, part.dyeing_ahead, sure.dye_from, lambda: case.last_load_ahead + case.dye_days - 1)
    _push(case, part.base_ahead, sure.arrive, lambda: case.dyeing_ahead + case.check + 1)
    ordered = part.order_ahead_of_closed if case.supplier_closed == "yes" else part.order_ahead
    _push(case, ordered, sure.order, lambda: case.base_ahead + 7 * case.supplier_slow)


def _push(case: BackPlan, step: Between[float], day: date, needed: Callable[[], float]) -> None:
    """A step on its last day, and the days before the start that what follows it needs."""
    days = searched((case.start - day).days, lambda found: (at_least(found, needed()),), needed)
    setattr(case, step.name, days)
