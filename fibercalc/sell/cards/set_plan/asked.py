"""What is asked of a numbered set, and what follows for both ways of making it."""

from __future__ import annotations

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
from ....held import RECORD

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
    skein_mass = Input[float](
        MASS,
        "A full skein weighs",
        record=RECORD.base.mass,
        default="100 g",
        allowed=("1 g", "5 kg"),
        usual=("50 g", "250 g"),
        rough="1 %",
        units=("g", "oz"),
        bench=RECORD.bench.bases.mass,
    )
    skein_length = Input[float](
        LENGTH,
        "A full skein holds",
        record=RECORD.base.length,
        default="420 m",
        allowed=("1 m", "20000 m"),
        usual=("100 m", "800 m"),
        rough="1.5 %",
        units=("m", "yd"),
        bench=RECORD.bench.bases.length,
    )
    loss_share = Input[float](
        PERCENT,
        "Lost in winding",
        default="2 %",
        allowed=("0 %", "50 %"),
        usual=("1 %", "3 %"),
        rough="0.5 %",
    )
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
    wanted_turns = Input[int](
        COUNT,
        "Turns for each",
        default="54",
        allowed=("1", "5000"),
        usual=("10", "150"),
        when={wanted_by: (BY_TURNS,)},
    )
    wanted_mass = Input[float](
        MASS,
        "Weight of each",
        default="20 g",
        allowed=("0.5 g", "1 kg"),
        usual=("5 g", "50 g"),
        units=("g", "oz"),
        when={wanted_by: (BY_MASS,)},
    )
    wanted_count = Input[int](
        COUNT,
        "How many from one skein",
        default="5",
        allowed=("1", "200"),
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
    )
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
    load = Input[int](
        COUNT,
        "Full skeins in a load",
        default="4",
        allowed=("1", "200"),
        usual=("1", "20"),
        measure="See “How long does the whole run take?”.",
    )
    a_day = Input[int](
        COUNT,
        "Loads in a day",
        default="6",
        allowed=("1", "100"),
        usual=("1", "12"),
        measure="Pots times rounds.",
    )
    scale_step = Input[float](
        MASS,
        "The dye scale shows steps of",
        default="0.01 g",
        allowed=("0.0001 g", "1 g"),
        usual=("0.001 g", "0.1 g"),
        units=("g",),
        strict=True,
    )
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
    per = Result[int](COUNT, "Small skeins from one", rounding="down", fixed=True)
    turns = Result[int](COUNT, "Turns for each", fixed=True)
    small_length = Result[float](
        LENGTH, "Length of a small skein", units=("m", "yd"), finest=(0.1, 1), rounding="down"
    )
    small_mass = Result[float](
        MASS, "Weight of a small skein", units=("g", "oz"), finest=(0.1, 0.01), rounding="down"
    )
    all_small = Result[int](COUNT, "Small skeins, and day stickers, in all")
    margin = Result[float](LENGTH, "Left of each full skein", units=("m", "yd"), finest=(0.1, 0.1))
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
