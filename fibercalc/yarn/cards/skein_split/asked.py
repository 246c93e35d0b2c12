"""What is asked about cutting a skein, and what follows from it."""

from __future__ import annotations

from ....core.card import CHOICE, Between, Case, Chance, Input, Option, Result
from ....core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, PERCENT
from ....held import RECORD

BY_MASS, BY_LENGTH, BY_TURNS, BY_COUNT = "mass", "length", "turns", "count"


class SkeinSplit(Case):
    """One full skein, and the small ones that are wanted of it."""

    skein_mass = Input[float](
        MASS,
        "Weight of a full skein",
        default="100 g",
        allowed=("1 g", "5 kg"),
        usual=("50 g", "250 g"),
        rough="1 %",
        units=("g", "oz"),
        bench=RECORD.bench.bases.mass,
        record=RECORD.base.mass,
        measure="Yarn only, dry and rested.",
    )
    skein_length = Input[float](
        LENGTH,
        "Length of a full skein",
        default="420 m",
        allowed=("1 m", "20000 m"),
        usual=("100 m", "800 m"),
        rough="1.5 %",
        units=("m", "yd"),
        bench=RECORD.bench.bases.length,
        record=RECORD.base.length,
        measure="As measured, or carried here from “How many yards are in this skein?”",
    )
    loss_share = Input[float](
        PERCENT,
        "Lost in winding",
        default="2 %",
        allowed=("0 %", "50 %"),
        usual=("1 %", "3 %"),
        rough="0.5 %",
        measure="Knots, a weak place, ties of the full skein.",
    )
    wanted_by = Input[str](
        CHOICE,
        "What you want of the small ones",
        default=BY_MASS,
        options=(
            Option(BY_MASS, "A weight each"),
            Option(BY_LENGTH, "A length each"),
            Option(BY_TURNS, "A number of turns each"),
            Option(BY_COUNT, "A number of them from each skein"),
        ),
    )
    wanted_mass = Input[float](
        MASS,
        "Weight of a small skein",
        default="20 g",
        allowed=("0.5 g", "1 kg"),
        usual=("5 g", "50 g"),
        units=("g", "oz"),
        when={wanted_by: (BY_MASS,)},
    )
    wanted_length = Input[float](
        LENGTH,
        "Length of a small skein",
        default="84 m",
        allowed=("0.5 m", "5000 m"),
        usual=("10 m", "200 m"),
        units=("m", "yd"),
        when={wanted_by: (BY_LENGTH,)},
    )
    wanted_turns = Input[int](
        COUNT,
        "Turns for a small skein",
        default="54",
        allowed=("1", "5000"),
        usual=("10", "150"),
        when={wanted_by: (BY_TURNS,)},
    )
    wanted_count = Input[int](
        COUNT,
        "How many from one skein",
        default="5",
        allowed=("1", "500"),
        usual=("2", "20"),
        when={wanted_by: (BY_COUNT,)},
    )
    reel = Input[float](
        LENGTH,
        "One turn of your reel, rested",
        default="1.50 m",
        allowed=("0.05 m", "10 m"),
        usual=("0.5 m", "2 m"),
        rough="0.5 %",
        units=("m", "cm", "in", "yd"),
        bench=RECORD.bench.reels.circumference,
        measure="Measured on the yarn; off the reel it is a little shorter.",
    )
    loss_per_cut = Input[float](
        LENGTH,
        "Lost with each small skein",
        default="0 m",
        allowed=("0 m", "20 m"),
        usual=("0 m", "0.5 m"),
        units=("m", "cm", "in", "yd"),
        measure="Ends and ties.",
    )
    total = Input[int | None](
        COUNT,
        "Small skeins wanted in all",
        default="312",
        allowed=("1", "100000"),
        optional=True,
        measure="For a whole set or release.",
    )

    usable = Between[float](LENGTH, "Length that can be wound")
    length_for_weight = Between[float](LENGTH, "Length of that weight")
    yarn_count = Between[float](LINEAR_DENSITY, "Count of the yarn: grams in 1,000 m")

    count = Result[int](COUNT, "Small skeins from one", rounding="down", fixed=True)
    turns = Result[int](COUNT, "Turns for each", rounding="up", fixed=True)
    small_length = Result[float](
        LENGTH, "Length of a small skein", units=("m", "yd"), finest=(0.1, 1), rounding="down"
    )
    small_mass = Result[float](
        MASS, "Weight of a small skein", units=("g", "oz"), finest=(0.1, 0.01), rounding="down"
    )
    left = Result[float](
        LENGTH, "Left over of each full skein", units=("m", "yd"), finest=(0.1, 0.1)
    )
    left_mass = Result[float](MASS, "Weight of what is left", units=("g", "oz"), finest=(0.1, 0.01))
    margin = Result[float](
        LENGTH, "To spare when the last one is wound", units=("m", "yd"), finest=(0.1, 0.1)
    )
    last_short = Result[float](
        PERCENT, "Chance that the last one is short", chance=Chance(margin, below=0.0)
    )
    full_skeins = Result[int](COUNT, "Full skeins to cut", rounding="up", fixed=True)
