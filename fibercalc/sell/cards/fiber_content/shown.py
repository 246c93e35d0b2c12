"""Each fiber: exactly, on the label, and as a test may find it."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ...fiber_label import tolerance
from ...pictures.fiber_bars import fiber_bars
from .asked import NAMES, OTHER, FiberContent


def _may_find(out: Outcome[FiberContent], percent: float) -> tuple[float, float]:
    return tolerance(percent) if out.case.allowed else (percent, percent)


def table(out: Outcome[FiberContent]) -> Table:
    shares, rows = out.case.shares, []
    for key, percent in out.case.lines:
        exact = sum(shares[fiber] for fiber in out.case.small) if key == OTHER else shares[key]
        low, high = _may_find(out, percent)
        rows.append(
            (
                "Other" if key == OTHER else NAMES[key]["label"],
                f"{out.number(exact, 2)} %",
                f"{percent} %",
                f"{low:g} to {high:g} %" if high > low else "no tolerance",
            )
        )
    return Table(
        "Each fiber",
        ("Fiber", "Exactly", "On the label", "A test may find"),
        tuple(rows),
        "By weight as sold, agreed moisture included.",
    )


def picture(out: Outcome[FiberContent]) -> Picture:
    sold, rows = out.case.sold, []
    for key, percent in out.case.lines:
        words = "other fibers" if key == OTHER else NAMES[key][sold]
        rows.append((words, percent, *_may_find(out, percent)))
    return fiber_bars(rows)
