"""What is asked about hours at the loom: own timed stretches, the run, the sittings."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import Between, Case, Input, Result
from ....core.outcome import Outcome
from ....core.units import COUNT, LENGTH, NUMBER, PERCENT, TIME
from ...inputs import WARP_ENDS
from ...pace import sittings


def count_sittings(out: Outcome[WeavePace]) -> int:
    return sittings(out.value(WeavePace.total), out.case.sitting, out.case.settling)


def count_weeks(out: Outcome[WeavePace]) -> float:
    weeks: float = out.value(WeavePace.sittings) / out.case.week
    return weeks


class WeavePace(Case):
    """A run of pieces on one warp, worked at one's own pace."""

    ends = replace(WARP_ENDS, allowed=("1", "5000"))
    warp = Input[float](
        LENGTH,
        "Length of the warp",
        default="4.9 m",
        allowed=("0.2 m", "200 m"),
        usual=("1 m", "15 m"),
        units=("m", "yd"),
    )
    wind_length = Input[float](
        LENGTH,
        "Yarn you wound",
        default="98 m",
        allowed=("1 m", "10000 m"),
        usual=("10 m", "500 m"),
        units=("m", "yd"),
        measure="Time twenty ends: 20 × the length of the warp.",
    )
    wind_minutes = Input[float](
        TIME,
        "Winding it took",
        default="15 min",
        allowed=("0.5 min", "600 min"),
        usual=("2 min", "60 min"),
        rough="15 %",
        units=("min", "h"),
    )
    thread_ends = Input[int](
        COUNT, "Ends you threaded", default="20", allowed=("1", "2000"), usual=("5", "100")
    )
    thread_minutes = Input[float](
        TIME,
        "Threading them took",
        default="10 min",
        allowed=("0.2 min", "600 min"),
        usual=("2 min", "60 min"),
        rough="15 %",
        units=("min", "h"),
        measure="Slots and holes; with two heddles or shafts all of it.",
    )
    beam = Input[float](
        TIME,
        "Beaming and tying on",
        default="60 min",
        allowed=("0 min", "1200 min"),
        usual=("10 min", "240 min"),
        rough="20 %",
        units=("min", "h"),
    )
    pieces = Input[int](COUNT, "Pieces", default="5", allowed=("1", "100"), usual=("1", "12"))
    piece_picks = Input[int](
        COUNT, "Picks of a piece", default="384", allowed=("1", "20000"), usual=("20", "2000")
    )
    weave_picks = Input[int](
        COUNT, "Plain picks you wove", default="50", allowed=("1", "5000"), usual=("10", "500")
    )
    weave_minutes = Input[float](
        TIME,
        "Weaving them took",
        default="12 min",
        allowed=("0.2 min", "600 min"),
        usual=("2 min", "60 min"),
        rough="15 %",
        units=("min", "h"),
        measure="With advancing the warp and winding the shuttle.",
    )
    stick_share = Input[float](
        PERCENT,
        "Picks with the stick",
        default="30 %",
        allowed=("0 %", "100 %"),
        usual=("0 %", "70 %"),
        rough="5 %",
    )
    stick_times = Input[float](
        NUMBER,
        "Such a pick takes, plain ones",
        default="1.5",
        allowed=("1", "20"),
        usual=("1", "6"),
        rough="0.2",
        measure="1 is as long as a plain one; picking every pick by hand is 5 and more.",
    )
    changes = Input[int](
        COUNT, "Color changes in a piece", default="22", allowed=("0", "2000"), usual=("0", "100")
    )
    change_minutes = Input[float](
        TIME,
        "A change takes",
        default="0.5 min",
        allowed=("0 min", "60 min"),
        usual=("0 min", "5 min"),
        rough="0.2 min",
        units=("min", "s"),
    )
    hems = Input[int](
        COUNT, "Hems or fringes of a piece", default="2", allowed=("0", "8"), usual=("0", "2")
    )
    hem_minutes = Input[float](
        TIME,
        "One takes",
        default="25 min",
        allowed=("0 min", "600 min"),
        usual=("5 min", "120 min"),
        rough="20 %",
        units=("min", "h"),
    )
    finish = Input[float](
        TIME,
        "Washing and pressing a piece",
        default="10 min",
        allowed=("0 min", "600 min"),
        usual=("0 min", "60 min"),
        rough="20 %",
        units=("min", "h"),
    )
    sitting = Input[float](
        TIME,
        "You sit at the loom for",
        default="120 min",
        allowed=("5 min", "1000 min"),
        usual=("20 min", "480 min"),
        units=("min", "h"),
    )
    settling = Input[float](
        TIME,
        "of which to settle and clear away",
        default="10 min",
        allowed=("0 min", "240 min"),
        usual=("0 min", "40 min"),
        units=("min", "h"),
    )
    week = Input[float](
        NUMBER, "Times a week", default="4", allowed=("0.1", "40"), usual=("0.5", "10")
    )

    winding = Between[float](TIME, "Winding the warp")
    threading = Between[float](TIME, "Threading")
    stick = Between[float](TIME, "Of the weaving, what the stick costs")
    changing = Between[float](TIME, "Changing colors")
    hemming = Between[float](TIME, "Hemming")
    finishing = Between[float](TIME, "Washing and pressing")
    setup_share = Between[float](PERCENT, "Of all the time, before the first pick")

    total = Result[float](TIME, "In all", units=("h",), finest=(0.5,), floor=0.0)
    each = Result[float](TIME, "For each piece", units=("h",), finest=(0.1,), floor=0.0)
    setup = Result[float](TIME, "Before the first pick", units=("h",), finest=(0.1,), floor=0.0)
    weaving = Result[float](TIME, "Weaving", units=("h",), finest=(0.1,), floor=0.0)
    ending = Result[float](
        TIME, "Hemming, washing, pressing", units=("h",), finest=(0.1,), floor=0.0
    )
    one_more = Result[float](
        TIME, "One more piece on the same warp", units=("h",), finest=(0.1,), floor=0.0
    )
    sittings = Result[int](COUNT, "Sittings", rounding="up", decided=count_sittings)
    weeks = Result[float](NUMBER, "Weeks", finest=(1,), rounding="up", decided=count_weeks)
