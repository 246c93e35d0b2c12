"""What is said of a release planned backward."""

from __future__ import annotations

from ....core.day import write_date
from ....core.outcome import Outcome
from ...last_days import late_steps
from .asked import STEPS, BackPlan

FAR = 550  # days: a start farther off is in the wrong year more often than not (our own edge)


def say(out: Outcome[BackPlan]) -> tuple[str, ...]:
    sure, usual, _ = out.case.plans
    late = out.case.late_steps
    if late:
        listed = ", ".join(
            f"{STEPS[name][0].lower()}{STEPS[name][1:]} ({write_date(getattr(sure, name))})"
            for name in late[:2]
        )
        more = f" and {len(late) - 2} more" if len(late) > 2 else ""
        first = f"Already late, by the slow reckoning: {listed}{more}."
    else:
        first = f"Order base by {write_date(sure.order)}, {days(out.case.slack)} from today."
    return (
        first,
        f"Dye from {write_date(sure.dye_from)}, release by {write_date(sure.release)}, post abroad"
        f" by {write_date(sure.post_abroad)}. If post and supplier are as quick as usual, ordering"
        f" on {write_date(usual.order)} is enough.",
    )


def days(count: int) -> str:
    return f"{count} {'day' if abs(count) == 1 else 'days'}"


def notes(out: Outcome[BackPlan]) -> list[str]:
    said, case = [], out.case
    off = (case.start - case.today).days
    if off <= 0:
        said.append("The start is not after today: look at the month and the year.")
    elif off > FAR:
        said.append(f"The start is {days(off)} off: is the year right?")
    sure, _, quick = case.plans
    lost = late_steps(quick, case.today, tuple(STEPS))
    if lost:
        said.append(
            "Too late even if all others are quick:"
            f" {', '.join(STEPS[name].lower() for name in lost)}. Move the start, make fewer, or"
            " sell at home only."
        )
    elif case.late_steps:
        said.append(
            "It can still be done if post or supplier are quicker than their slowest: see the last"
            " column, and tell buyers what may happen."
        )
    if sure.post_abroad < sure.post_home:
        apart = (sure.post_home - sure.post_abroad).days
        said.append(f"Selling at home only would give {days(apart)} more.")
    if case.supplier_closed == "no" and case.closed:
        said.append(
            "The supplier is taken as open on your closed days. Ask: a mill that shuts as well adds"
            " as many days."
        )
    if not case.spare:
        said.append("No day is kept free for a pot that goes wrong.")
    return said
