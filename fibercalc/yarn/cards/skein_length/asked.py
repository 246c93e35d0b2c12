"""What was counted and what was weighed of a skein, and how long it is."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Input, Option, Result, Row, Rows
from ....core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER
from ...inputs import AROUND, SKEIN_MASS, STRETCH

BY_TURNS, BY_SAMPLE, BOTH = "turns", "sample", "both"


class Skein(Row):
    """One skein."""

    length = Input[float](
        LENGTH,
        "Length",
        default="420 m",
        allowed=("1 m", "20000 m"),
        units=("m", "yd"),
        rough="0.5 %",
        instrument="reel",
    )


TURNS_LENGTH = Result[float](
    LENGTH, "By turns of the reel", units=("yd", "m"), finest=(1, 1), rounding="down"
)
SAMPLE_LENGTH = Result[float](
    LENGTH, "By the weighed sample", units=("yd", "m"), finest=(1, 1), rounding="down"
)


class SkeinLength(Case):
    """A skein measured on the reel or by a sample, alone or among others of its delivery."""

    way = Input[str](
        CHOICE,
        "How you measured",
        default=BOTH,
        options=(
            Option(BOTH, "Both ways"),
            Option(BY_TURNS, "Turns of a reel"),
            Option(BY_SAMPLE, "A weighed sample"),
        ),
    )
    BY_SCALE = {way: (BY_SAMPLE, BOTH)}
    BY_REEL = {way: (BY_TURNS, BOTH)}
    turns = Input[int](
        COUNT,
        "Turns of the reel",
        default="280",
        allowed=("1", "20000"),
        usual=("40", "600"),
        rough="1",
        when=BY_REEL,
        measure="Count them all; the half turn at the end is worth having.",
    )
    circumference = replace(
        AROUND,
        usual=("1 m", "2 m"),
        when=BY_REEL,
        instrument="reel",
        measure="Measure on the yarn as it lies on the reel: unwind ten turns, lay them straight,"
        " divide by ten.",
    )
    stretch = replace(
        STRETCH,
        rough="1 %",
        when=BY_REEL,
        measure="How much longer the yarn is on the reel than at rest. 0 if you measured the"
        " circumference on rested yarn.",
    )
    sample_length = Input[float](
        LENGTH,
        "Length of the sample",
        default="10 m",
        allowed=("0.2 m", "2000 m"),
        usual=("5 m", "20 m"),
        rough="1 %",
        when=BY_SCALE,
        units=("m", "yd"),
        measure="Straight, not pulled. The longer the sample, the better the answer.",
    )
    sample_mass = Input[float](
        MASS,
        "Weight of the sample",
        default="2.38 g",
        allowed=("0.05 g", "2 kg"),
        usual=("1 g", "20 g"),
        rough="0.02 g",
        when=BY_SCALE,
        units=("g", "oz"),
        instrument="fine scale",
        measure="On the fine scale, as dry as the skein.",
    )
    skein_mass = replace(
        SKEIN_MASS,
        label="Weight of the skein",
        rough="1 g",
        when=BY_SCALE,
        measure="Yarn only: take off the band, allow for the ties.",
        bench=None,
    )
    several = Input[str](
        CHOICE,
        "Other skeins of this delivery measured too?",
        default="no",
        options=(Option("no", "No, this one only"), Option("yes", "Yes, several")),
    )
    skeins = Rows(
        Skein,
        "Skeins of this delivery",
        "skein",
        least=2,
        most=40,
        when={several: ("yes",)},
        measure="Each measured the same way. Five say much more than two.",
        default=(
            {"length": "420 m"},
            {"length": "423 m"},
            {"length": "417.5 m"},
            {"length": "421 m"},
            {"length": "418 m"},
        ),
    )

    turn = Between[float](LENGTH, "One turn, rested")
    scatter = Between[float](LENGTH, "Standard deviation between skeins")
    number = Between[int](COUNT, "Skeins measured")
    students_t = Between[float](NUMBER, "Student’s t, one-sided 95 %")

    length = Result[float](
        LENGTH,
        "Length of the skein",
        units=("yd", "m"),
        finest=(1, 1),
        rounding="down",
        best_of=(TURNS_LENGTH, SAMPLE_LENGTH),
    )
    by_turns = TURNS_LENGTH
    by_sample = SAMPLE_LENGTH
    grist = Result[float](
        LINEAR_DENSITY, "Count of the sample", units=("yd/lb", "m/100 g", "tex"), finest=(10, 1, 1)
    )
    average = Result[float](
        LENGTH, "Average of the skeins", units=("yd", "m"), finest=(1, 1), rounding="down"
    )
    printable = Result[float](
        LENGTH, "Lower limit of the average", units=("yd", "m"), finest=(1, 1), rounding="down"
    )
    next_skein = Result[float](
        LENGTH, "Lower limit of one more skein", units=("yd", "m"), finest=(1, 1), rounding="down"
    )
