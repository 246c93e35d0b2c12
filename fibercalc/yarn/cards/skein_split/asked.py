"""What is asked about cutting a skein, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Chance, Input, Option, Result
from ....core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, PERCENT
from ...inputs import (
    AROUND,
    FULL_LENGTH,
    FULL_MASS,
    LEFT_OF_ONE,
    SMALL_COUNT,
    SMALL_HOLDS,
    SMALL_MASS,
    SMALL_OF_ONE,
    SMALL_TURNS,
    SMALL_WEIGHS,
    SMALL_WOUND,
    WINDING_LOSS,
)

BY_MASS, BY_LENGTH, BY_TURNS, BY_COUNT = "mass", "length", "turns", "count"


class SkeinSplit(Case):
    """One full skein, and the small ones that are wanted of it."""

    skein_mass = replace(
        FULL_MASS, label="Weight of a full skein", measure="Yarn only, dry and rested."
    )
    skein_length = replace(
        FULL_LENGTH,
        label="Length of a full skein",
        measure="As measured, or carried here from “How many yards are in this skein?”",
    )
    loss_share = replace(WINDING_LOSS, measure="Knots, a weak place, ties of the full skein.")
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
    wanted_mass = replace(SMALL_MASS, when={wanted_by: (BY_MASS,)})
    wanted_length = Input[float](
        LENGTH,
        "Length of a small skein",
        default="84 m",
        allowed=("0.5 m", "5000 m"),
        usual=("10 m", "200 m"),
        units=("m", "yd"),
        when={wanted_by: (BY_LENGTH,)},
    )
    wanted_turns = replace(SMALL_TURNS, when={wanted_by: (BY_TURNS,)})
    wanted_count = replace(SMALL_COUNT, when={wanted_by: (BY_COUNT,)})
    reel = replace(
        AROUND,
        label="One turn of your reel, rested",
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

    count = replace(SMALL_OF_ONE)
    turns = replace(SMALL_WOUND, rounding="up")
    small_length = replace(SMALL_HOLDS)
    small_mass = replace(SMALL_WEIGHS)
    left = replace(LEFT_OF_ONE, label="Left over of each full skein")
    left_mass = Result[float](MASS, "Weight of what is left", units=("g", "oz"), finest=(0.1, 0.01))
    margin = replace(LEFT_OF_ONE, label="To spare when the last one is wound")
    last_short = Result[float](
        PERCENT, "Chance that the last one is short", chance=Chance(margin, below=0.0)
    )
    full_skeins = Result[int](COUNT, "Full skeins to cut", rounding="up", fixed=True)
