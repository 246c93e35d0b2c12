"""What is said of the hours of a run."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import TIME
from ...pace import sittings
from .asked import WeavePace


def say(out: Outcome[WeavePace]) -> str | tuple[str, ...]:
    many = out.case.pieces
    what = "The piece takes" if many == 1 else f"The {many} pieces take"
    first = (
        f"{what} about {out.text(WeavePace.total, 'h')} ({out.span(WeavePace.total, 'h')}):"
        f" {out.text(WeavePace.each, 'h')} each."
    )
    count, most = int(out.value(WeavePace.sittings)), _at_most(out)
    spoken = f"{count} {'sitting' if count == 1 else 'sittings'}" + (
        f", {most} at the slow end" if most > count else ""
    )
    weeks = out.text(WeavePace.weeks)
    return (
        first,
        f"That is {spoken}, about {weeks} {'week' if weeks == '1' else 'weeks'}."
        f" {out.text(WeavePace.setup, 'h')} of it pass before the first pick.",
    )


def _at_most(out: Outcome[WeavePace]) -> int:
    return sittings(out.high(WeavePace.total), out.case.sitting, out.case.settling)


def notes(out: Outcome[WeavePace]) -> list[str]:
    said = [
        f"Before the first pick goes {out.case.setup_share:.0f} % of the time, however many pieces"
        f" are on the warp; one more piece on it is about {out.text(WeavePace.one_more, 'h')}."
    ]
    if out.case.has(WeavePace.stick):
        said.append(f"The stick costs {out.amount(out.case.stick, TIME, 'h', 2)} of the weaving.")
    return said
