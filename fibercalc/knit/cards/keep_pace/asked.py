"""What is asked of the parts and of one's own pace, and what is found."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from ....core.card import CHOICE, DATE, TEXT, Between, Case, Input, Option, Plain, Result, Row, Rows
from ....core.units import COUNT, NUMBER, TIME
from ....held import RECORD
from ...inputs import FIRST_ROW, GROWTH
from ...pace import PartDays

BY_STITCHES, BY_ROWS = "stitches", "rows"
COUNTED_BY = Input[str](
    CHOICE,
    "The parts are given by",
    default=BY_ROWS,
    options=(Option(BY_ROWS, "The row each one ends at"), Option(BY_STITCHES, "Their stitches")),
)
ROWS_ONLY = {COUNTED_BY: (BY_ROWS,)}


class Part(Row):
    """One part."""

    name = Input[str](TEXT, "Name", default="Another part", longest=24, lent=False)
    release = Input[date](DATE, "Comes out on", default="2027-04-09")
    last_row = Input[int](
        COUNT, "Ends at row", default="480", allowed=("1", "5000"), when=ROWS_ONLY
    )
    stitches = Input[float](
        NUMBER,
        "Stitches",
        default="18600",
        allowed=("1", "1000000"),
        when={COUNTED_BY: (BY_STITCHES,)},
    )
    stitches_held = Between[float](NUMBER, "Stitches")


class KeepPace(Case):
    """Parts that come out on dates and one's own speed: the day each is done."""

    counted_by = COUNTED_BY
    first = replace(FIRST_ROW, default="33", usual=("1", "300"), when=ROWS_ONLY)
    grow = replace(
        GROWTH,
        default="1",
        usual=("0", "6"),
        when=ROWS_ONLY,
        measure="On average; 0 for a straight piece.",
    )
    parts = Rows(
        Part,
        "Parts",
        "part",
        least=1,
        most=24,
        measure="In the order in which they come out.",
        default=tuple(
            {
                "name": f"Part {number}",
                "release": release,
                "last_row": str(80 * number),
                "stitches": "18600",
            }
            for number, release in enumerate(
                ("2027-03-05", "2027-03-12", "2027-03-19", "2027-03-26", "2027-04-02"), 1
            )
        ),
    )
    speed_stitches = Input[float](
        NUMBER,
        "Stitches you made",
        record=RECORD.measurement.made,
        default="500",
        allowed=("5", "100000"),
        usual=("50", "3000"),
        rough="15 %",
        measure="Time a stretch of this very project. Evenings differ: ± 15 % is common practice.",
    )
    speed_minutes = Input[float](
        NUMBER,
        "in minutes",
        record=RECORD.measurement.in_minutes,
        default="20",
        allowed=("0.2", "2000"),
        usual=("5", "120"),
    )
    week = Input[float](
        NUMBER,
        "Hours for knitting in a week",
        default="12",
        allowed=("0.1", "120"),
        usual=("2", "25"),
        rough="2",
    )
    start = Input[date](DATE, "You can begin on", default="2027-03-05")

    all_stitches = Between[float](NUMBER, "Stitches in all")
    days = Plain[list[float]]()
    found = Plain[list[PartDays]]()

    behind_at = Result[int](COUNT, "First part that falls behind (0: none)", fixed=True)
    done = Result[date](DATE, "The last part is done")
    minutes = Result[float](TIME, "Time at the needles", units=("h",), finest=(1,), floor=0.0)
    weeks = Result[float](NUMBER, "Weeks of your knitting time", finest=(0.1,), floor=0.0)
    speed = Result[float](NUMBER, "Stitches in a minute", finest=(0.1,), floor=0.0)
    needed = Result[float](
        TIME,
        "Hours a week that keep pace in every part",
        units=("h",),
        finest=(0.1,),
        rounding="up",
        floor=0.0,
    )
