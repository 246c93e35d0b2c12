"""The yarn used, row by row."""

from __future__ import annotations

from ....core.answer import Picture
from ....core.outcome import Outcome
from ...pictures.left import yarn_used_by_row
from .asked import TWO, EnoughLeft, shape_of
from .said import end_words


def picture(out: Outcome[EnoughLeft]) -> Picture | None:
    case = out.case
    marks = [("weighed now", float(case.row)), ("half of the yarn used", case.half)]
    if case.weighed == TWO:
        marks.insert(0, ("weighed before", float(case.row_before)))
    if case.row <= case.edge_at < case.rows:
        marks.append((f"last row before you {end_words(case)[1]}", case.edge_at))
    stop = case.row + case.more
    first, grow = shape_of(case)
    return yarn_used_by_row(
        case.rows, first, grow, case.end_rows, marks, stop if stop < case.rows else 0.0
    )
