"""What is asked about a yarn and its water, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Input, Many, Option, Plain, Result, Row, Rows
from ....core.units import MASS, NUMBER, PERCENT
from ....held import RECORD
from ...inputs import SHARE
from ...regain import agreed_allowances

BY_HUMIDITY, BY_REGAIN, LABEL, DRY = "humidity", "regain", "label", "dry"
FIBERS = tuple(
    Option(row["fiber"], row["fiber"][0].upper() + row["fiber"][1:])
    for row in agreed_allowances().rows
)


class Fiber(Row):
    """One fiber."""

    fiber = Input[str](CHOICE, "Fiber", default="wool, combed (worsted)", options=FIBERS)
    share = replace(SHARE)

    allowance = Between[float](PERCENT, "Allowance in the EU")
    dry_parts = Between[float](NUMBER, "Parts dry, without its allowance")
    dry_share = Between[float](PERCENT, "Dry share")
    regain_now = Between[float](PERCENT, "Regain as weighed")
    regain_at_standard = Between[float](PERCENT, "Regain at the standard atmosphere")
    found_low = Between[float](PERCENT, "Lowest found at 65 %; it has no curve")
    found_high = Between[float](PERCENT, "Highest found at 65 %; it has no curve")
    without_curve = Between[float](PERCENT, "Regain; it has no curve")
    us_regain = Between[float](PERCENT, "Regain agreed in the US")


class TrueWeight(Case):
    """A yarn weighed as damp as it is, with what its label says and what it is made of."""

    weighed = Input[float](
        MASS,
        "Weight on my scale",
        record=RECORD.mill_lot.mass,
        default="103 g",
        allowed=("1 g", "50 kg"),
        usual=("20 g", "2 kg"),
        rough="1 g",
        units=("g", "oz", "kg", "lb"),
        measure="Yarn only. Ten skeins at once, divided by ten, say more than one.",
    )
    labelled = Input[float | None](
        MASS,
        "Weight on the label",
        default="100 g",
        allowed=("1 g", "50 kg"),
        usual=("20 g", "2 kg"),
        units=("g", "oz", "kg", "lb"),
        optional=True,
        bench=RECORD.bench.bases.mass,
        record=RECORD.base.mass,
        measure="For the same yarn as on the scale; blank if there is none.",
    )
    dampness = Input[str](
        CHOICE,
        "How damp it is",
        default=BY_HUMIDITY,
        options=(
            Option(BY_HUMIDITY, "By the humidity of the room"),
            Option(BY_REGAIN, "I know its regain"),
        ),
    )
    humidity = Input[float](
        PERCENT,
        "Relative humidity where it rested",
        record=RECORD.mill_lot.humidity,
        default="78 %",
        allowed=("10 %", "90 %"),
        usual=("30 %", "85 %"),
        rough="5 %",
        when={dampness: (BY_HUMIDITY,)},
        measure="Where the yarn lay open for two days or more. A cheap meter is easily 5 % out.",
    )
    regain = Input[float](
        PERCENT,
        "Regain as weighed",
        default="15.5 %",
        allowed=("0 %", "40 %"),
        usual=("0 %", "25 %"),
        rough="0.5 %",
        when={dampness: (BY_REGAIN,)},
        measure=(
            "Water as a percentage of the dry yarn: weigh a sample, dry it fully, weigh it hot;"
            " 100 × (damp − dry) ÷ dry."
        ),
    )
    standard_regain = Input[float | None](
        PERCENT,
        "Regain at the standard atmosphere",
        default="",
        allowed=("0 %", "40 %"),
        usual=("0 %", "20 %"),
        rough="0.5 %",
        optional=True,
        when={dampness: (BY_REGAIN,)},
        measure="Blank: taken from the table by fiber.",
    )
    shares_of = Input[str](
        CHOICE,
        "What the shares are shares of",
        default=LABEL,
        options=(
            Option(LABEL, "As on a label, allowances included"),
            Option(DRY, "The dry weight"),
        ),
    )
    fibers = Rows(
        Fiber,
        "Fibers in the yarn",
        "fiber",
        least=1,
        most=6,
        measure="Together 100 %.",
        default=(
            {"fiber": "wool, combed (worsted)", "share": "75 %"},
            {"fiber": "polyamide (nylon), staple", "share": "25 %"},
        ),
    )

    curve = Many(PERCENT, "Regain of {} humidity")
    standard_humidity = Between[float](PERCENT, "Humidity of the standard atmosphere")
    regain_now = Between[float](PERCENT, "Regain as weighed")
    regain_at_standard = Between[float](PERCENT, "Regain at the standard atmosphere")
    now = Plain[float]()  # regain as weighed, however it is known
    standard = Plain[float]()  # and at the standard atmosphere
    eu_regain = Between[float](PERCENT, "EU allowance of the blend")
    us_regain = Between[float](PERCENT, "US regain of the blend")

    conditioned = Result[float](
        MASS, "At the standard atmosphere", units=("g", "oz"), finest=(0.1, 0.01)
    )
    water = Result[float](MASS, "Water in it as weighed", units=("g", "oz"), finest=(0.1, 0.01))
    dry = Result[float](MASS, "Oven-dry", units=("g", "oz"), finest=(0.1, 0.01))
    over = Result[float](
        MASS, "Over the label, at the standard atmosphere", units=("g", "oz"), finest=(0.1, 0.01)
    )
    eu_mass = Result[float](
        MASS, "Commercial weight, EU allowance", units=("g", "oz"), finest=(0.1, 0.01)
    )
    us_mass = Result[float](
        MASS, "Commercial weight, US regain", units=("g", "oz"), finest=(0.1, 0.01)
    )
