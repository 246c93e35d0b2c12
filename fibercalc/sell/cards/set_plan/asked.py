"""What is asked of a numbered set, and what follows for both ways of making it."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import (
    CHOICE,
    COLOR,
    TEXT,
    Between,
    Case,
    Chance,
    Input,
    Many,
    Option,
    Plain,
    Result,
    Row,
    Rows,
)
from ....core.color import Color
from ....core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, MONEY, NUMBER, PERCENT, TIME
from ....dye.color.steps import Ladder
from ....dye.inputs import SCALE_STEP
from ....held import RECORD
from ....yarn.inputs import (
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
from ...inputs import LOADS_IN_DAY, SKEINS_IN_LOAD

BY_TURNS, BY_MASS, BY_COUNT = "turns", "mass", "count"
RATIO, EVEN, PERCENTS = "ratio", "even", "percent"


class Dye(Row):
    """One dye: its full-strength sample, and how much the first and the last shade get."""

    name = Input[str](TEXT, "Name", default="brown", longest=40)
    sample = Input[Color](COLOR, "Color of its sample", default="#7a4a2b", lent=True)
    percent = Input[float](
        PERCENT,
        "Depth of that sample",
        default="1.5 %",
        allowed=("0.05 %", "12 %"),
        usual=("0.5 %", "4 %"),
        strict=True,
        lent=True,
    )
    first = Input[float](
        PERCENT,
        "Depth on the first shade",
        default="0.05 %",
        allowed=("0 %", "12 %"),
        usual=("0 %", "4 %"),
        strict=True,
        lent=True,
    )
    last = Input[float](
        PERCENT,
        "Depth on the last shade",
        default="1 %",
        allowed=("0 %", "12 %"),
        usual=("0 %", "4 %"),
        strict=True,
        lent=True,
    )

    mean_depth = Between[float](PERCENT, "Mean depth of the shades")


class SetPlan(Case):
    """A set, its small skeins, shades and pots; what it takes cut first, and dyed whole."""

    name = Input[str | None](
        TEXT,
        "Name of the set",
        record=RECORD.product.name,
        default="Twelve Lamps",
        longest=40,
        optional=True,
    )
    days = Input[int](
        COUNT,
        "Days, or shades",
        record=RECORD.colorway.set_shades,
        default="12",
        allowed=("2", "60"),
        usual=("5", "31"),
    )
    sets = Input[int](
        COUNT, "Sets to sell", default="24", allowed=("1", "1000"), usual=("5", "100")
    )
    spare = Input[int](
        COUNT,
        "Spare sets",
        default="2",
        allowed=("0", "200"),
        usual=("1", "10"),
        measure="For lost parcels and a bad knot.",
    )
    skein_mass = replace(FULL_MASS)
    skein_length = replace(FULL_LENGTH)
    loss_share = replace(WINDING_LOSS)
    wanted_by = Input[str](
        CHOICE,
        "A small skein is given by",
        default=BY_TURNS,
        options=(
            Option(BY_TURNS, "Turns of the reel"),
            Option(BY_MASS, "Weight"),
            Option(BY_COUNT, "How many from one skein"),
        ),
    )
    wanted_turns = replace(SMALL_TURNS, label="Turns for each", when={wanted_by: (BY_TURNS,)})
    wanted_mass = replace(SMALL_MASS, label="Weight of each", when={wanted_by: (BY_MASS,)})
    wanted_count = replace(SMALL_COUNT, allowed=("1", "200"), when={wanted_by: (BY_COUNT,)})
    reel = replace(AROUND, label="One turn of your reel, rested")
    steps = Input[str](
        CHOICE,
        "Steps between shades",
        default=RATIO,
        options=(
            Option(RATIO, "Equal ratios of dye"),
            Option(EVEN, "Even to the eye"),
            Option(PERCENTS, "Equal percents"),
        ),
    )
    undyed = Input[Color](COLOR, "Undyed yarn", default="#efe6d2")
    dyes = Rows(
        Dye,
        "Dyes",
        "dye",
        record=RECORD.colorway.dyes,
        least=1,
        most=3,
        measure="A full-strength sample of each, and how much of it the first and the last shade"
        " get.",
        default=(
            {
                "name": "navy",
                "sample": "#27406a",
                "percent": "2 %",
                "first": "0.08 %",
                "last": "1.92 %",
            },
        ),
    )
    load = replace(
        SKEINS_IN_LOAD,
        label="Full skeins in a load",
        measure="See “How long does the whole run take?”.",
    )
    a_day = replace(LOADS_IN_DAY, measure="Pots times rounds.")
    scale_step = replace(SCALE_STEP, label="The dye scale shows steps of")
    skein_cost = Input[float](
        MONEY,
        "A full skein of base costs",
        record=RECORD.base.cost,
        default="9.20",
        allowed=("0", "1000"),
        usual=("2", "60"),
    )
    tie = Input[float](
        TIME,
        "Winding and tying one more for the pot takes",
        default="1.5 min",
        allowed=("0 min", "60 min"),
        usual=("0.5 min", "5 min"),
        rough="30 %",
        units=("min",),
        measure="Before dyeing; small skeins tangle.",
    )

    usable = Between[float](LENGTH, "Length that can be wound")
    length_for_weight = Between[float](LENGTH, "Length of that weight")
    tex = Between[float](LINEAR_DENSITY, "Count of the yarn")
    all_sets = Between[int](COUNT, "Sets with spares")
    each_shade = Between[int](COUNT, "Full skeins of one shade, dyed whole")
    over_cut = Between[int](COUNT, "Small skeins over, cut first")
    over_whole = Between[int](COUNT, "Small skeins over, dyed whole")
    over_each = Between[int](COUNT, "Small skeins over, of each shade")
    ladder = Plain[Ladder](fixed=True)
    depth = Many(PERCENT, "Depth of shade {}")
    depths = Between[float](PERCENT, "Depths of all shades added")
    shade_whole = Between[float](MASS, "Yarn of one shade, dyed whole")
    small_load = Between[int](COUNT, "Small skeins in a load", fixed=True)

    cut_first = Result[int](COUNT, "Full skeins, cut first", rounding="up")
    dyed_whole = Result[int](COUNT, "Full skeins, dyed whole", rounding="up")
    per = replace(SMALL_OF_ONE)
    turns = replace(SMALL_WOUND)
    small_length = replace(SMALL_HOLDS)
    small_mass = replace(SMALL_WEIGHS)
    all_small = Result[int](COUNT, "Small skeins, and day stickers, in all")
    margin = replace(LEFT_OF_ONE)
    last_short = Result[float](
        PERCENT, "Chance that a skein's last one is short", chance=Chance(margin, below=0.0)
    )
    shade_cut = Result[float](
        MASS, "Yarn of one shade, cut first", units=("g", "oz"), finest=(1, 0.1)
    )
    dye_cut = Result[float](MASS, "Dye, cut first", units=("g",), finest=(0.1,), rounding="up")
    dye_whole = Result[float](MASS, "Dye, dyed whole", units=("g",), finest=(0.1,), rounding="up")
    ratio = Result[float](NUMBER, "Each shade against the one before", finest=(0.001,), fixed=True)
    loads_cut = Result[int](COUNT, "Loads, cut first", rounding="up")
    loads_whole = Result[int](COUNT, "Loads, dyed whole", rounding="up")
    days_cut = Result[int](COUNT, "Dye days, cut first", rounding="up")
    days_whole = Result[int](COUNT, "Dye days, dyed whole", rounding="up")
    more_yarn = Result[float](MONEY, "Dyed whole costs more yarn", finest=(0.01,))
    tying = Result[float](TIME, "Cut first takes more tying", units=("h",), finest=(0.1,))
