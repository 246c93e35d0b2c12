"""The plan, part by part, as a table and on a calendar."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.day import write_date
from ....core.outcome import Outcome
from ....core.units import TIME
from ...pace import knitting_minutes
from ...pictures.pace import pace_timeline
from .asked import KeepPace
from .worked import ends


def plan(out: Outcome[KeepPace]) -> Table | None:
    quick, slow = ends(out)
    rows = []
    for row, part, early, late in zip(out.case.parts, out.case.found, quick, slow):
        minutes = knitting_minutes(row.stitches_held, out.case.speed)
        behind = (
            "–"
            if part.behind is None
            else (
                "no"
                if part.behind <= 0
                else f"{part.behind} {'day' if part.behind == 1 else 'days'}"
            )
        )
        rows.append(
            (
                row.name,
                write_date(row.release),
                out.number(row.stitches_held),
                out.amount(minutes, TIME, "h", 2),
                write_date(part.done),
                f"{write_date(early.done)} to {write_date(late.done)}",
                behind,
            )
        )
    return Table(
        "Part by part",
        ("Part", "Out", "Stitches", "Hours", "Done about", "Likely between", "Behind"),
        tuple(rows),
    )


def picture(out: Outcome[KeepPace]) -> Picture | None:
    quick, slow = ends(out)
    return pace_timeline([row.name for row in out.case.parts], out.case.found, quick, slow)
