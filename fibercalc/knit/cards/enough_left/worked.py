"""Whether what is left ends the piece, and when its end must begin."""

from __future__ import annotations

from ....core.problem import Refused
from ....core.steps import at_most, searched, solved
from ....core.traced import named
from ...left import (
    bind_off_rows,
    last_row,
    mass_of_stitches,
    mass_per_stitch,
    row_at_share,
    rows_that_fill,
    share_used,
    stitches_between,
    stitches_in_row,
    stitches_through,
    stitches_to_come,
)
from .asked import TWO, EnoughLeft, shape_of

STRAY = 0.04  # 95 %: how far the rest may differ from what was knitted so far (common practice)
SHARE_USED = named("share of the yarn used by row", share_used)


def answer(case: EnoughLeft) -> None:
    _refuse_what_cannot_be(case)
    first, grow = shape_of(case)
    case.end_rows = case.edging + bind_off_rows(case.bind_off)
    if case.weighed == TWO:
        case.knit_between = stitches_between(case.row_before, case.row, first, grow)
    else:
        case.knit_between = stitches_through(case.row, first, grow)
    case.each = mass_per_stitch(case.mass_before, case.mass_now, case.knit_between)
    case.to_come = stitches_to_come(case.row, case.rows, first, grow, case.end_rows)
    case.rest = mass_of_stitches(case.to_come, case.each)
    case.spare = case.mass_now - case.rest
    case.error(EnoughLeft.spare, STRAY * case.rest)
    case.error(EnoughLeft.rest, STRAY * case.rest)
    _rows_to_go(case, first, grow)


def _refuse_what_cannot_be(case: EnoughLeft) -> None:
    if case.row > case.rows:
        raise Refused(
            f"Rows done: {case.row} given, but the whole piece has {case.rows}; give fewer, or"
            " more rows in all.",
            EnoughLeft.row,
        )
    if case.weighed == TWO and case.row_before >= case.row:
        raise Refused(
            f"Row of the first weighing: it must come before the {case.row} rows done now.",
            EnoughLeft.row_before,
        )
    if case.mass_now >= case.mass_before:
        raise Refused(
            f"Left now: {case.mass_now:g} g, no less than the {case.mass_before:g} g before; weigh"
            " both times the same way, without the knitting.",
            EnoughLeft.mass_now,
        )


def _rows_to_go(case: EnoughLeft, first: float, grow: float) -> None:
    """Find the rows that what is left makes, the last before the end, and where half is used."""
    end, done, rows = case.end_rows, case.row, case.rows
    case.left_for = case.mass_now / case.each
    case.next_row = stitches_in_row(done + 1, first, grow)
    case.more = rows_that_fill(case.left_for, case.next_row, grow)
    case.error(EnoughLeft.more, STRAY * case.more)

    def last(stray: float) -> float:
        return float(last_row(case.left_for / stray, int(done), first, grow, end))

    edge_at = last(1.0)
    case.band(EnoughLeft.edge_at, last(1 + STRAY), last(1 - STRAY))
    if edge_at >= done:
        edge_at = searched(
            edge_at,
            lambda row: (at_most(stitches_to_come(done, row, first, grow, end), case.left_for),),
            lambda: done + case.more,
        )
    case.edge_at = edge_at
    half = float(row_at_share(0.5, rows, first, grow, end))
    if half < rows:
        half = solved(half, lambda row: SHARE_USED(row, rows, first, grow, end) - 0.5)
    case.half = half
