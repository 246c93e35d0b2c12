"""Where the time of a run goes: as bars and as a table."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.units import TIME
from ...pictures.time import time_bars
from .asked import WeavePace


def parts(out: Outcome[WeavePace]) -> list[tuple[str, float]]:
    """What is done, and its minutes."""
    return [
        ("Winding the warp", out.case.winding),
        ("Threading", out.case.threading),
        ("Beaming, tying on", out.case.beam),
        ("Weaving", out.case.weaving),
        ("Changing colors", out.case.changing),
        ("Hemming", out.case.hemming),
        ("Washing, pressing", out.case.finishing),
    ]


def picture(out: Outcome[WeavePace]) -> Picture | None:
    return time_bars([(name, minutes / 60) for name, minutes in parts(out)], out)


def table(out: Outcome[WeavePace]) -> Table | None:
    rows = tuple(
        (
            name,
            out.amount(minutes, TIME, "h", 2),
            out.amount(minutes / out.case.pieces, TIME, "min", 2),
            f"{100 * minutes / out.case.total:.0f} %",
        )
        for name, minutes in parts(out)
        if minutes
    )
    return Table("Where the time goes", ("Work", "In all", "For each piece", "Share"), rows)
