"""What is asked of a sock machine and a foot, and what is found."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Chance, Input, Option, Result
from ....core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER, PERCENT
from ...inputs import ROWS, SKEIN_LENGTH, SKEIN_MASS, STATE, STITCHES

PLAIN, MOCK = "plain", "mock"
MACHINE_UNITS = ("per cm", "per in", "per 10 cm")


class CrankSocks(Case):
    """A cylinder, its washed gauge and a foot: the rounds, the yarn and the stretch of a pair."""

    needles = Input[int](
        COUNT, "Needles of the cylinder", default="60", allowed=("16", "400"), usual=("48", "100")
    )
    stitches = replace(
        STITCHES,
        default="2.8 per cm",
        allowed=("0.5 per cm", "20 per cm"),
        usual=("2 per cm", "5 per cm"),
        rough="0.05 per cm",
        units=MACHINE_UNITS,
        measure="Of a tube washed and rested a day, counted around.",
    )
    rows = replace(
        ROWS,
        default="4 per cm",
        allowed=("0.5 per cm", "30 per cm"),
        usual=("3 per cm", "7 per cm"),
        rough="0.05 per cm",
        units=MACHINE_UNITS,
        measure="Over at least 40 rounds.",
    )
    state = replace(STATE)
    foot_length = Input[float](
        LENGTH,
        "Foot, heel to toe",
        default="27.5 cm",
        allowed=("8 cm", "40 cm"),
        usual=("20 cm", "30 cm"),
        rough="0.3 cm",
        units=("cm", "in"),
    )
    shorter = Input[float](
        PERCENT,
        "Knitted shorter than the foot by",
        default="0 %",
        allowed=("0 %", "25 %"),
        usual=("0 %", "10 %"),
        measure="A sock stretches; up to a tenth is usual.",
    )
    foot_girth = Input[float](
        LENGTH,
        "Around the foot",
        default="24 cm",
        allowed=("6 cm", "60 cm"),
        usual=("18 cm", "28 cm"),
        rough="0.5 cm",
        units=("cm", "in"),
        measure="Around the ball.",
    )
    heel_girth = Input[float](
        LENGTH,
        "Around heel and instep, slanting",
        default="32 cm",
        allowed=("8 cm", "80 cm"),
        usual=("26 cm", "38 cm"),
        rough="0.5 cm",
        units=("cm", "in"),
        measure="Over the point of the heel and the front of the ankle: the tube must pass there.",
    )
    hem = Input[float](
        LENGTH,
        "Hem, folded",
        default="3 cm",
        allowed=("0 cm", "20 cm"),
        usual=("2 cm", "5 cm"),
        units=("cm", "in"),
        measure="As deep as it is when folded; 0 for none.",
    )
    leg = Input[float](
        LENGTH,
        "Leg below the hem",
        default="18 cm",
        allowed=("0 cm", "80 cm"),
        usual=("8 cm", "40 cm"),
        units=("cm", "in"),
    )
    left = Input[int | None](
        COUNT,
        "Needles left at the narrowest of heel and toe",
        default="10",
        allowed=("2", "190"),
        usual=("6", "20"),
        optional=True,
        measure="Blank for a third of the half.",
    )
    rib = Input[str](
        CHOICE,
        "Leg",
        default=PLAIN,
        options=(Option(PLAIN, "Plain"), Option(MOCK, "Mock rib: some needles out of work")),
    )
    RIBBED = {rib: (MOCK,)}
    rib_in = Input[int](
        COUNT, "Needles in work", default="3", allowed=("1", "50"), usual=("1", "5"), when=RIBBED
    )
    rib_out = Input[int](
        COUNT, "then out of work", default="1", allowed=("1", "10"), usual=("1", "2"), when=RIBBED
    )
    between = Input[int](
        COUNT,
        "Waste rounds between the two socks",
        default="15",
        allowed=("0", "200"),
        usual=("10", "20"),
    )
    at_ends = Input[int](
        COUNT,
        "Waste rounds before and after",
        default="15",
        allowed=("0", "200"),
        usual=("10", "30"),
    )
    skein_mass = replace(SKEIN_MASS)
    skein_length = replace(SKEIN_LENGTH, default="420 m", usual=("100 m", "900 m"))

    half = Between[int](COUNT, "Needles for heel and toe, half of all")
    narrowest = Between[int](COUNT, "Needles left at the narrowest", fixed=True)
    pocket_stitches = Between[int](COUNT, "Heel, and toe, stitches")
    pocket_depth = Between[float](LENGTH, "Heel, and toe, how deep")
    knitted = Between[float](LENGTH, "Foot as knitted")
    loop_constant = Between[float](NUMBER, "Loop constant Ks")
    loop = Between[float](LENGTH, "Yarn in a stitch")
    knitting = Between[int](COUNT, "Needles in work in the rib")
    rib_share = Between[float](NUMBER, "Yarn of a rib round against a plain one, at the least")
    saved = Between[float](NUMBER, "Stitches that floats save, at the most")
    tex = Between[float](LINEAR_DENSITY, "The yarn")

    hem_rounds = Result[int](COUNT, "Hem, rounds before folding", fixed=True)
    leg_rounds = Result[int](COUNT, "Leg, rounds", fixed=True)
    pocket_rows = Result[int](COUNT, "Heel, rows, and the same for the toe")
    foot_rounds = Result[int](COUNT, "Foot, rounds", fixed=True)
    sock = Result[int](COUNT, "Stitches of one sock")
    pair = Result[float](
        LENGTH, "Yarn for the pair", units=("yd", "m"), finest=(1, 1), rounding="up", floor=0.0
    )
    pair_mass = Result[float](
        MASS, "Its weight", units=("g", "oz"), finest=(1, 0.1), rounding="up", floor=0.0
    )
    over = Result[float](
        LENGTH, "Over from one skein", units=("yd", "m"), finest=(1, 1), rounding="down"
    )
    one_skein = Result[float](
        PERCENT, "Pairs for which one skein is enough", chance=Chance(over, above=0.0)
    )
    girth = Result[float](
        LENGTH, "Around the tube at rest", units=("cm", "in"), finest=(0.1, 0.1), floor=0.0
    )
    stretch = Result[float](PERCENT, "Stretch over the heel", finest=(1,))
    snug = Result[float](PERCENT, "Stretch around the foot", finest=(1,))
