"""Yarn left at a row: grams in a stitch from two weighings, what the rest needs, and the last row
at which the edging may begin.

Rows grow evenly: row k holds first + grow x (k - 1) stitches. That covers constant width (grow
0), a triangle from the top center or from one corner, a crescent and a wing; grow is the mean for
each row (2 stitches on every other row are 1). The end (edging and bind-off) is counted in rows
of the width it is worked on, so everything is a number of stitches times the grams in one.
"""

from math import floor

from ..core.arithmetic import sqrt
from ..core.problem import require
from ..yarn.putup import whole_above

MOST_ROWS = 5000  # beyond lies a slip of the pen
MOST_STITCHES = 5000  # in the first row, or by which a row grows
TWO_ROUNDINGS = 2 * (
    1 - sqrt(0.05)
)  # 95 % half-width of the sum of two equal uniform errors, in half-widths of one


def stitches_in_row(row: float, first: float, grow: float = 0.0) -> float:
    """Stitches in a row.

    row    number of the row, 1 to 5,000
    first  stitches in row 1, above 0 to 5,000
    grow   stitches by which each row is longer than the last, on average, 0 to 5,000
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("row", row, 1.0, MOST_ROWS)
    _require_shape(first, grow)
    return first + grow * (row - 1) if grow else first


def stitches_through(row: float, first: float, grow: float = 0.0) -> float:
    """All stitches from row 1 to the end of a row: row x first + grow x row x (row - 1) / 2.

    row    number of the last row, 0 (nothing yet) to 5,000
    first  stitches in row 1, above 0 to 5,000
    grow   stitches by which each row is longer than the last, 0 to 5,000
    Raises OutOfRange outside these.
    Source: arithmetic (sum of an arithmetic series).
    """
    require("row", row, 0.0, MOST_ROWS)
    _require_shape(first, grow)
    return row * first + grow * row * (row - 1) / 2 if grow else row * first


def stitches_between(row_before: float, row_last: float, first: float, grow: float = 0.0) -> float:
    """Stitches from the end of one row to the end of another: of a part, or still to come.

    row_before  number of the row before, 0 to row_last
    row_last    number of the last row, to 5,000
    first       stitches in row 1, above 0 to 5,000
    grow        stitches by which each row is longer than the last, 0 to 5,000
    Raises OutOfRange outside these.
    Source: arithmetic (the rows times the mean of their stitches).
    """
    require("row_before", row_before, 0.0, row_last)
    require("row_last", row_last, 0.0, MOST_ROWS)
    _require_shape(first, grow)
    middle = first + grow * (row_before + row_last - 1) / 2 if grow else first
    return (row_last - row_before) * middle


def bind_off_rows(widths: float = 3.5, stitch_widths: float = 4.0) -> float:
    """What a bind-off takes, in rows of its own width.

    A bind-off takes so many times the width of the edge in yarn; a plain row takes so many times
    its own width too, because a stitch holds about four times its width (Munden's Kw). Their
    ratio is a number of rows, near 1.
    widths         yarn of the bind-off over the width of the edge, 1 to 12 (3 to 4 is usual)
    stitch_widths  yarn of a stitch over its width, 2 to 8 (Kw: 3.8 dry, 4.2 washed)
    Raises OutOfRange outside these.
    Source: common practice (3 to 4 widths); Kw from Munden 1959 (munden-1959, from memory).
    """
    require("widths", widths, 1.0, 12.0)
    require("stitch_widths", stitch_widths, 2.0, 8.0)
    return widths / stitch_widths


def stitches_to_come(
    row: float, rows: float, first: float, grow: float = 0.0, end_rows: float = 0.0
) -> float:
    """Stitches from the end of a row to the end of the piece, its end (edging, bind-off) included.

    row       rows done, 0 or more
    rows      rows of the whole piece before its end, row to 5,000
    first     stitches in row 1, above 0 to 5,000
    grow      stitches by which each row is longer than the last, 0 to 5,000
    end_rows  edging rows and the bind-off, in rows of the final width, 0 to 500 (see bind_off_rows)
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("rows", rows, max(row, 1.0), MOST_ROWS)
    require("end_rows", end_rows, 0.0, 500.0)
    ahead = stitches_between(row, rows, first, grow)
    return ahead + end_rows * stitches_in_row(rows, first, grow)


def share_used(
    row: float, rows: float, first: float, grow: float = 0.0, end_rows: float = 0.0
) -> float:
    """How much of the piece's yarn is used at the end of a row, 0 to 1.

    row       rows done, 0 to rows
    rows      rows of the whole piece before its end, 1 to 5,000
    first     stitches in row 1, above 0 to 5,000
    grow      stitches by which each row is longer than the last, 0 to 5,000
    end_rows  edging rows and the bind-off, in rows of the final width, 0 to 500
    Raises OutOfRange outside these.
    Source: arithmetic (every stitch takes the same yarn).
    """
    whole = stitches_to_come(0, rows, first, grow, end_rows)
    require("row", row, 0.0, rows)
    return stitches_through(row, first, grow) / whole


def row_at_share(
    share: float, rows: float, first: float, grow: float = 0.0, end_rows: float = 0.0
) -> float:
    """The row, with its part, at which a share of the piece's yarn is used; rows of a triangle
    from the top: rows / sqrt(2) at half.

    share     0 to 1
    rows      rows of the whole piece before its end, 1 to 5,000
    first     stitches in row 1, above 0 to 5,000
    grow      stitches by which each row is longer than the last, 0 to 5,000
    end_rows  edging rows and the bind-off, in rows of the final width, 0 to 500
    Raises OutOfRange outside these. A share that falls within the end gives rows.
    Source: arithmetic.
    """
    require("share", share, 0.0, 1.0)
    return min(
        rows_that_fill(share * stitches_to_come(0, rows, first, grow, end_rows), first, grow), rows
    )


def rows_that_fill(stitches: float, first: float, grow: float = 0.0) -> float:
    """Rows, with the part of one, that a number of stitches makes, when the first of them holds
    first.

    The solution of rows x first + grow x rows x (rows - 1) / 2 = stitches.
    stitches  0 or more
    first     stitches in the first of these rows, above 0
    grow      stitches by which each row is longer than the last, 0 to 5,000
    Raises OutOfRange outside these.
    Source: arithmetic (quadratic formula, in the form that stays exact when grow is 0).
    """
    require("stitches", stitches, 0.0)
    require("first", first, above=0.0)
    require("grow", grow, 0.0, MOST_STITCHES)
    if stitches == 0:
        return 0.0
    if grow == 0:
        return stitches / first
    middle = first - grow / 2
    return 2 * stitches / (middle + sqrt(middle**2 + 2 * grow * stitches))


def mass_per_stitch(mass_before: float, mass_after: float, stitches_between: float) -> float:
    """Yarn in a stitch, g, from two weighings of the ball: the start and now, or two rows of
    which both are known.

    mass_before       g at the first weighing, above mass_after
    mass_after        g at the second, 0 or more
    stitches_between  stitches knit between the two, above 0
    Raises OutOfRange outside these.
    Source: arithmetic; weighing the ball is common practice.
    """
    require("mass_after", mass_after, 0.0)
    require("mass_before", mass_before, above=mass_after)
    require("stitches_between", stitches_between, above=0.0)
    return (mass_before - mass_after) / stitches_between


def mass_of_stitches(stitches: float, per_stitch: float) -> float:
    """Yarn, g, for a number of stitches.

    stitches    0 or more
    per_stitch  g in a stitch, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("stitches", stitches, 0.0)
    require("per_stitch", per_stitch, above=0.0)
    return stitches * per_stitch


def weighing_error(half_step: float, mass_used: float) -> float:
    """How far grams per stitch may be off because a scale shows only whole steps, % either way,
    95 times in 100.

    Both weighings are rounded by themselves, so their difference scatters as the sum of two
    uniform errors.
    half_step  g, half of the scale's step, above 0
    mass_used  g between the two weighings, above 0
    Raises OutOfRange outside these.
    Source: arithmetic (2 x (1 - sqrt(0.05)) = 1.553 half-steps hold 95 % of a triangular
    distribution).
    """
    require("half_step", half_step, above=0.0)
    require("mass_used", mass_used, above=0.0)
    return 100 * TWO_ROUNDINGS * half_step / mass_used


def rows_before_weighing(
    half_step: float,
    wanted_error: float,
    per_stitch: float,
    next_row: float,
    grow: float = 0.0,
    used: float = 0.0,
) -> int:
    """Rows to knit before the next weighing tells the grams in a stitch (or in a row) to a wanted
    share.

    half_step     g, half of the scale's step, above 0
    wanted_error  % either way, 95 times in 100, 0.1 to 100
    per_stitch    g in a stitch as known so far, above 0
    next_row      stitches in the next row, above 0
    grow          stitches by which each row is longer than the last, 0 to 5,000
    used          g used already since the weighing to compare with, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic (see weighing_error).
    """
    require("half_step", half_step, above=0.0)
    require("wanted_error", wanted_error, 0.1, 100.0)
    require("per_stitch", per_stitch, above=0.0)
    require("used", used, 0.0)
    lacking = max(100 * TWO_ROUNDINGS * half_step / wanted_error - used, 0.0)
    return max(1, whole_above(rows_that_fill(lacking / per_stitch, next_row, grow)))


def last_row(
    stitches_left: float, row: int, first: float, grow: float = 0.0, end_rows: float = 0.0
) -> int:
    """The last row after which the end (edging, bind-off) can still be worked on the width
    reached: start it there at the latest.

    With end_rows 0 it is the last row that can be knit at all. Below row, the end cannot be
    worked even now. At most 5,000.
    stitches_left  what the yarn left makes (grams left over grams in a stitch), 0 or more
    row            rows done, 0 to 5,000
    first          stitches in row 1, above 0 to 5,000
    grow           stitches by which each row is longer than the last, 0 to 5,000
    end_rows       edging rows and the bind-off, in rows of the width reached, 0 to 500
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("stitches_left", stitches_left, 0.0)
    require("end_rows", end_rows, 0.0, 500.0)
    have = stitches_left + stitches_through(row, first, grow)
    # x first + grow x (x - 1) / 2 + end (first + grow (x - 1)) = have, a quadratic in x: the end
    # adds end x grow to each row.
    rest = have - end_rows * (first - grow)
    middle = first - grow / 2 + end_rows * grow
    inside = middle * middle + 2 * grow * rest
    if inside < 0 or middle + sqrt(inside) <= 0:
        return 0
    return min(max(floor(2 * rest / (middle + sqrt(inside)) + 1e-9), 0), MOST_ROWS)


def _require_shape(first: float, grow: float) -> None:
    require("first", first, 0.0, MOST_STITCHES, above=0.0)
    require("grow", grow, 0.0, MOST_STITCHES)
