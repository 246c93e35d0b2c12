"""What the first wash asks: a knitted swatch before it, and after it where that was measured."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Input, Option, Plain, Result
from ....core.table import read_table
from ....core.units import NUMBER, PER_LENGTH
from ...inputs import CHANGE_WASHED, SIZE_WASHED, TAPE_BEFORE

CONSTANTS = read_table("wash", "munden-constants")
DRY = "dry"
YES, NO = "yes", "no"

BEFORE = replace(TAPE_BEFORE, allowed=("2 cm", "200 cm"), usual=("8 cm", "30 cm"), rough="0.15 cm")
AFTER = replace(BEFORE, default="15 cm", instrument="tape after")
CHANGE = replace(CHANGE_WASHED, finest=(0.5,))
SIZE = replace(SIZE_WASHED)
GAUGE = Result[float](
    PER_LENGTH, "Gauge", units=("per 10 cm", "per 4 in"), finest=(0.1, 0.1), floor=0.0
)


class WetFinish(Case):
    """A swatch off the needles: what the wash does to it by the constants, and what it did."""

    wide = replace(
        BEFORE,
        label="Width before",
        default="14.6 cm",
        measure="Off the needles, rested a day, not pinned.",
    )
    tall = replace(BEFORE, label="Height before", default="15.3 cm")
    stitches = Input[float | None](
        NUMBER,
        "Stitches in that width",
        default="30",
        allowed=("2", "1000"),
        usual=("15", "80"),
        rough="0.25",
        optional=True,
    )
    rows = Input[float | None](
        NUMBER,
        "Rows in that height",
        default="40.5",
        allowed=("2", "1000"),
        usual=("20", "120"),
        rough="0.25",
        optional=True,
    )
    after = Input[str](
        CHOICE,
        "Then it is",
        default="wet",
        options=tuple(
            Option(row["state"], row["label"].partition(": ")[2].capitalize())
            for row in CONSTANTS.rows
            if row["state"] != DRY
        ),
    )
    measured = Input[str](
        CHOICE,
        "Measured afterward?",
        default=YES,
        options=(Option(YES, "Yes"), Option(NO, "Not yet")),
    )
    wide_after = replace(
        AFTER,
        label="Width after",
        when={measured: (YES,)},
        measure="The same stitches, dry again and rested.",
    )
    tall_after = replace(AFTER, label="Height after", when={measured: (YES,)})

    width_dry = Between[float](NUMBER, "Kw, off the needles and rested")
    width_wet = Between[float](NUMBER, "Kw, after")
    height_dry = Between[float](NUMBER, "Kc, off the needles and rested")
    height_wet = Between[float](NUMBER, "Kc, after")
    width_band = Plain[tuple[float, float]]()  # least and most change, %
    height_band = Plain[tuple[float, float]]()

    width_likely = replace(CHANGE, label="Width, expected")
    height_likely = replace(CHANGE, label="Height, expected")
    width_own = replace(CHANGE, label="Width, yours")
    height_own = replace(CHANGE, label="Height, yours")
    width_off = replace(CHANGE, label="Width, apart")
    height_off = replace(CHANGE, label="Height, apart")
    width_after = replace(SIZE, label="Expected width")
    height_after = replace(SIZE, label="Expected height")
    stitches_after = replace(GAUGE, label="Expected stitches")
    rows_after = replace(GAUGE, label="Expected rows")
    proportion = Result[float](NUMBER, "Rows over stitches", finest=(0.01,), floor=0.0)


# The two directions of the swatch and their parts.
WAYS = ("width", "height")
LIKELY = {"width": WetFinish.width_likely, "height": WetFinish.height_likely}
OWN = {"width": WetFinish.width_own, "height": WetFinish.height_own}
OFF = {"width": WetFinish.width_off, "height": WetFinish.height_off}
