"""What is asked of a piece and its ball, and what is found."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Chance, Input, Option, Result
from ....core.outcome import Outcome
from ....core.units import COUNT, MASS, NUMBER, PERCENT
from ...inputs import FIRST_ROW, GROWTH
from ...left import rows_before_weighing, weighing_error

STRAIGHT, GROWS = "straight", "grows"
START, TWO = "start", "two"
FINE_ENOUGH = 10.0  # %: yarn in a stitch known so far is good enough to go by (our own edge)


def half_step(out: Outcome[EnoughLeft]) -> float:
    """What the scale does not show, either way, as typed or as declared; none is perfect."""
    return max(out.readings[EnoughLeft.mass_now.name].rough, 0.005)


def scale_error(out: Outcome[EnoughLeft]) -> float:
    """How well the two weighings tell the yarn in a stitch, %, either way."""
    return weighing_error(half_step(out), out.case.mass_before - out.case.mass_now)


def weigh_again(out: Outcome[EnoughLeft]) -> int | None:
    """Rows to knit before another weighing is worth it; None where the two say enough already."""
    if scale_error(out) <= FINE_ENOUGH:
        return None
    case = out.case
    grow, used = shape_of(case)[1], case.mass_before - case.mass_now
    return rows_before_weighing(half_step(out), FINE_ENOUGH, case.each, case.next_row, grow, used)


def shape_of(case: EnoughLeft) -> tuple[float, float]:
    """Stitches in the first row, and by which each is longer than the last."""
    if case.shape == STRAIGHT:  # then a row is the unit, and its stitches do not matter
        return 1.0, 0.0
    return case.first, case.grow


SPARE = Result[float](
    MASS, "To spare at the end", units=("g", "oz"), finest=(0.1, 0.01), rounding="down"
)


class EnoughLeft(Case):
    """A piece, and its yarn weighed at two rows: whether what is left ends it."""

    shape = Input[str](
        CHOICE,
        "The piece",
        default=GROWS,
        options=(
            Option(GROWS, "Grows: each row longer than the last"),
            Option(STRAIGHT, "Straight: every row the same"),
        ),
    )
    GROWING = {shape: (GROWS,)}
    first = replace(FIRST_ROW, when=GROWING)
    grow = replace(GROWTH, when=GROWING, measure="On average: 4 on every other row is 2.")
    rows = Input[int](
        COUNT,
        "Rows in all, before edging and binding off",
        default="120",
        allowed=("2", "5000"),
        usual=("20", "600"),
    )
    row = Input[int](COUNT, "Rows done", default="100", allowed=("1", "5000"), usual=("5", "600"))
    weighed = Input[str](
        CHOICE,
        "You weighed",
        default=START,
        options=(
            Option(START, "The whole ball before starting, and what is left"),
            Option(TWO, "What was left, at two rows"),
        ),
    )
    row_before = Input[int](
        COUNT,
        "Rows done at the first weighing",
        default="60",
        allowed=("1", "5000"),
        usual=("1", "600"),
        when={weighed: (TWO,)},
    )
    mass_before = Input[float](
        MASS,
        "Weight then",
        default="100 g",
        allowed=("1 g", "10 kg"),
        usual=("20 g", "500 g"),
        rough="0.5 g",
        units=("g", "oz"),
        measure="Yarn only, no core. A kitchen scale shows whole grams: that is ± 0.5 g.",
    )
    mass_now = Input[float](
        MASS,
        "Left now",
        default="30.5 g",
        allowed=("0.1 g", "10 kg"),
        usual=("3 g", "400 g"),
        rough="0.5 g",
        units=("g", "oz"),
        measure="The same way, as dry as before.",
    )
    edging = Input[float](
        NUMBER,
        "Edging, rows",
        default="0",
        allowed=("0", "300"),
        usual=("0", "30"),
        measure="At the last width; the yarn of an edging counts in rows like those before it.",
    )
    bind_off = Input[float](
        NUMBER,
        "Binding off takes, in widths of the edge",
        default="3.5",
        allowed=("1", "12"),
        usual=("3", "6"),
        rough="0.5",
        measure="Three to four times the edge is common practice; a stretchy one takes more.",
    )

    end_rows = Between[float](
        NUMBER,
        "Edging and binding off, in rows of the last width (a stitch holds about 4 of its widths)",
    )
    knit_between = Between[float](NUMBER, "Knitted between the weighings")
    each = Between[float](MASS, "Yarn in a stitch (in a row, of a straight piece)")
    to_come = Between[float](NUMBER, "Still to knit, in stitches (in rows, of a straight piece)")
    left_for = Between[float](NUMBER, "What is left is enough for, in stitches (or rows)")
    next_row = Between[float](NUMBER, "Stitches in the next row")

    lasts = Result[float](PERCENT, "Chance that it is enough", chance=Chance(SPARE, above=0.0))
    rest = Result[float](
        MASS, "Needed for the rest", units=("g", "oz"), finest=(0.1, 0.01), rounding="up", floor=0.0
    )
    spare = SPARE
    edge_at = Result[float](
        NUMBER, "Last row before edging and binding off", finest=(1,), rounding="down", floor=0.0
    )
    more = Result[float](
        NUMBER, "Rows that could still be knitted", finest=(1,), rounding="down", floor=0.0
    )
    half = Result[float](NUMBER, "Row at which half of the yarn is used", finest=(1,), floor=0.0)
    weigh_again = Result[int](COUNT, "Rows to knit before weighing again", decided=weigh_again)
