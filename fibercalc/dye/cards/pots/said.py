"""What is said of a run that is planned."""

from __future__ import annotations

from ....core.outcome import Outcome
from ...schedule.timetable import moment
from .asked import Pots

BY = {
    "one load": "one load’s own steps",
    "pots": "the pots",
    "burners": "the burners",
    "hands": "the hands",
    "rail": "the rail",
}


def say(out: Outcome[Pots]) -> tuple[str, ...]:
    plan, opened = out.case.plan, out.case.opened
    dry = (
        f" and {_days(out.value(Pots.drying_days), 'drying')} more"
        if out.has(Pots.drying_days) and out.value(Pots.drying_days) > 0
        else ""
    )
    loads = out.value(Pots.loads)
    first = (
        f"{loads:.0f} {'load' if loads == 1 else 'loads'}:"
        f" {_days(out.value(Pots.dye_days), 'dye')}{dry}."
    )
    return (
        first,
        (
            f"The last load is rinsed on {_moment(plan.work_end, opened)}. No plan can end"
            f" before {_moment(plan.bound.work, opened)}."
        ),
    )


def _moment(minute: float, opened: int) -> str:
    text = moment(minute, opened)
    return text[0].lower() + text[1:]


def notes(out: Outcome[Pots]) -> list[str]:
    over = out.value(Pots.over)
    how_near = (
        "This plan meets it: nothing is faster in this room."
        if over < 0.5
        else f"This plan takes {over:.0f} % longer; the bound itself may not be reachable."
    )
    return [
        f"What sets that bound: {BY[out.case.plan.bound.by_work]}. {how_near}",
        (
            "More of what sets the bound (pots, burners, hands, rail) is what makes the run"
            " shorter; more of anything else does not."
        ),
        (
            "No two recipes share a pot. A hold on a burner is never left overnight; a soak or a"
            " bath that cools by itself may be."
        ),
    ]


def _days(count: int, what: str) -> str:
    return f"{count:.0f} {what} {'day' if count == 1 else 'days'}"
