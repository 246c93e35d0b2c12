"""What is asked about a yarn's thickness, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Input, Option, Result, Row, Rows
from ....core.units import DENSITY, LENGTH, LINEAR_DENSITY, NUMBER, PER_LENGTH, PERCENT
from ...diameter import ashenhurst_constants
from ...fiber_density import fiber_densities
from ...inputs import SHARE

ONE, BLEND, OWN = "fiber", "blend", "own"
FIBERS = tuple(
    Option(row["fiber"], row["fiber"][0].upper() + row["fiber"][1:])
    for row in fiber_densities().rows
)
KINDS = tuple(Option(row["name"], row["label"]) for row in ashenhurst_constants().rows)


class Fiber(Row):
    """One fiber of the blend."""

    fiber = Input[str](CHOICE, "Fiber", default="wool", options=FIBERS)
    share = replace(SHARE)

    density = Between[float](DENSITY, "Density")


class YarnDiameter(Case):
    """A yarn of which the count is known, and of what and how it is made."""

    count = Input[float](
        LINEAR_DENSITY,
        "Count",
        default="238 tex",
        allowed=("0.5 tex", "100000 tex"),
        usual=("15 tex", "2000 tex"),
        rough="3 %",
        units=(
            "tex",
            "yd/lb",
            "m/100 g",
            "yd/100 g",
            "Nm",
            "Ne",
            "Nw",
            "run",
            "cut",
            "lea",
            "den",
            "dtex",
        ),
        measure="From a label, or from a weighed length. Never from a hand wrap.",
    )
    made_of = Input[str](
        CHOICE,
        "What it is made of",
        default=BLEND,
        options=(
            Option(ONE, "One fiber"),
            Option(BLEND, "A blend"),
            Option(OWN, "I know the density"),
        ),
    )
    fiber = Input[str](CHOICE, "Fiber", default="wool", options=FIBERS, when={made_of: (ONE,)})
    blend = Rows(
        Fiber,
        "Fibers of the blend",
        "fiber",
        least=1,
        most=6,
        when={made_of: (BLEND,)},
        measure="Shares by weight; together 100 %.",
        default=(
            {"fiber": "wool", "share": "75 %"},
            {"fiber": "polyamide (nylon)", "share": "25 %"},
        ),
    )
    density = Input[float](
        DENSITY,
        "Density of the fiber",
        default="1.31 g/cm3",
        allowed=("0.8 g/cm3", "3 g/cm3"),
        usual=("0.9 g/cm3", "1.6 g/cm3"),
        rough="1 %",
        when={made_of: (OWN,)},
        measure="The fiber itself, without the air between.",
    )
    packing = Input[float](
        PERCENT,
        "Packing: how much of the yarn is fiber",
        default="50 %",
        allowed=("5 %", "90 %"),
        usual=("25 %", "70 %"),
        rough="10 %",
        measure=(
            "About 60 % for close-spun yarn, 30 to 45 % for soft or woolen yarn; a plied sock"
            " yarn lies between (from memory, unverified)."
        ),
    )
    kind = Input[str](CHOICE, "Kind of yarn, for Ashenhurst", default="worsted", options=KINDS)

    fiber_density = Between[float](DENSITY, "Density of the fiber")
    density_of_blend = Between[float](DENSITY, "Density of the blend: volumes add")
    metric_count = Between[float](LINEAR_DENSITY, "Meters in a gram", unit="Nm")
    yards_per_pound = Between[float](LINEAR_DENSITY, "Yards in a pound", unit="yd/lb")
    cotton_count = Between[float](LINEAR_DENSITY, "Cotton hanks in a pound", unit="Ne")
    thickest = Between[float](LENGTH, "Thickest of the three", unit="mm")
    thinnest = Between[float](LENGTH, "Thinnest of the three", unit="mm")
    constant = Between[float](NUMBER, "Ashenhurst’s constant for this kind of yarn")

    solid = Result[float](
        LENGTH, "Solid model", unit="mm", units=("mm", "in"), finest=(0.01, 0.001)
    )
    peirce = Result[float](LENGTH, "Peirce", unit="mm", units=("mm", "in"), finest=(0.01, 0.001))
    ashenhurst = Result[float](
        LENGTH, "Ashenhurst", unit="mm", units=("mm", "in"), finest=(0.01, 0.001)
    )
    side_by_side = Result[float](
        PER_LENGTH,
        "Diameters side by side, Ashenhurst",
        unit="per in",
        units=("per in", "per cm"),
        finest=(0.1, 0.1),
    )
    apart = Result[float](PERCENT, "Thickest over thinnest", finest=(1,))
