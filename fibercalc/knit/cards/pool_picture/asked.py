"""What is asked of a hand-painted skein, and what is found."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from ....core.card import (
    CHOICE,
    COLOR,
    TEXT,
    Between,
    Case,
    Input,
    Many,
    Option,
    Plain,
    Result,
    Row,
    Rows,
)
from ....core.color import Color
from ....core.units import COUNT, LENGTH, MASS, NUMBER, PERCENT
from ...inputs import ROWS, STATE, STITCHES

IN_ROUND, FLAT = "round", "flat"
TALLEST = 60  # rows drawn


def _skein(number: int, alternate: Input[int]) -> Input[float]:
    """What one of the skeins in turn weighs; the first two are asked together."""
    return Input(
        MASS,
        f"Skein {number} weighs",
        default="100 g",
        allowed=("1 g", "5 kg"),
        usual=("20 g", "150 g"),
        units=("g", "oz"),
        when={alternate: tuple(range(max(number, 2), 5))},
    )


class Patch(Row):
    """One color around the skein."""

    name = Input[str](TEXT, "Name", default="Another color", longest=20, lent=False)
    color = Input[Color](COLOR, "Color", default="#8c2f22")
    length = Input[float](
        LENGTH,
        "Length",
        default="20 cm",
        allowed=("1 cm", "20 m"),
        usual=("5 cm", "1 m"),
        rough="2 %",
        units=("cm", "in", "m"),
        instrument="tape",
    )


class PoolPicture(Case):
    """A hand-painted skein and a stitch count: what its colors will do, from one or in turn."""

    colors = Rows(
        Patch,
        "Colors around one turn of the skein",
        "color",
        least=1,
        most=12,
        measure="Lay the skein open and measure each color along it, all the way around.",
        default=(
            {"name": "Slate", "color": "#3d4a5c", "length": "60 cm"},
            {"name": "Rust", "color": "#9c4a2b", "length": "30 cm"},
            {"name": "Cream", "color": "#e6d9bd", "length": "60 cm"},
        ),
    )
    stitches = replace(STITCHES, default="28 per 10 cm", measure="In stocking stitch, washed.")
    rows = replace(ROWS, default="40 per 10 cm")
    state = replace(STATE)
    worked = Input[str](
        CHOICE,
        "Knitted",
        default=IN_ROUND,
        options=(Option(IN_ROUND, "In the round"), Option(FLAT, "Flat, back and forth")),
    )
    count = Input[int](
        COUNT,
        "Stitches in a round or row",
        default="107",
        allowed=("4", "2000"),
        usual=("40", "300"),
    )
    drawn = Input[int](
        COUNT, "Rows to draw", default="48", allowed=("4", str(TALLEST)), usual=("20", "60")
    )
    wobble = Input[float](
        PERCENT,
        "How much your tension varies from row to row",
        default="2 %",
        allowed=("0 %", "30 %"),
        usual=("1 %", "5 %"),
    )
    alternate = Input[int](
        COUNT, "Skeins knitted in turn", default="1", allowed=("1", "4"), usual=("1", "3")
    )
    per_100 = Input[float](
        LENGTH,
        "Yarn in 100 g",
        default="420 m",
        allowed=("20 m", "3000 m"),
        usual=("100 m", "800 m"),
        units=("m", "yd"),
        when={alternate: (2, 3, 4)},
    )
    skein_1 = _skein(1, alternate)
    skein_2 = _skein(2, alternate)
    skein_3 = _skein(3, alternate)
    skein_4 = _skein(4, alternate)

    loop_constant = Between[float](NUMBER, "Loop constant Ks")
    two_rows = Between[float](MASS, "Yarn in two rows")
    whole_bands = Plain[list[int]](fixed=True)
    bands = Many(COUNT, "Times two rows from {}")
    times = Between[float](COUNT, "Times this order is knitted through")
    order = Plain[Sequence[int]]()
    over = Plain[list[float]]()

    kind = Result[str]("text", "Likely, from one skein")
    repeat = Result[float](NUMBER, "Stitches of one turn", finest=(0.1,), floor=0.0)
    shift = Result[float](NUMBER, "Shift, stitches", finest=(0.1,))
    patch = Result[float](NUMBER, "Stitches of the longest color", finest=(0.1,), floor=0.0)
    turn = Result[float](
        LENGTH, "One turn of the skein", units=("cm", "in"), finest=(1, 0.1), floor=0.0
    )
    loop = Result[float](LENGTH, "Yarn in a stitch", units=("mm",), finest=(0.1,), floor=0.0)
    in_turn = Result[str]("text", "Skeins in turn, two rows each")
    lasts = Result[float](COUNT, "Rows that this lasts", rounding="down")
