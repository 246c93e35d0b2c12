"""What is asked for a sample beside its label, and what is found."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Input, Option, Plain, Result, Row, Rows
from ....core.units import COUNT, LENGTH, MASS, NUMBER, PERCENT
from ....held import RECORD
from ....yarn.inputs import SHARE, SKEIN_LENGTH, SKEIN_MASS
from ....yarn.regain import regain_curves
from ...lot_test import EU, THREAD, US, WEIGHT, Judged
from ...lot_test import LENGTH as BY_LENGTH

MASSES = [
    "100.4",
    "99.1",
    "101.2",
    "98.8",
    "100.9",
    "99.7",
    "100.2",
    "98.6",
    "100.6",
    "101.0",
    "99.4",
    "100.5",
]
METERS = [
    "421",
    "418",
    "424",
    "419.5",
    "423",
    "420.5",
    "417",
    "422",
    "421.5",
    "425",
    "419",
    "422.5",
]


class WeighedSkein(Row):
    """One skein of the sample, weighed."""

    mass = Input[float](
        MASS,
        "Weight",
        default="100 g",
        allowed=("0.5 g", "11 kg"),
        rough="0.1 g",
        units=("g", "oz"),
        instrument="scale",
    )


class MeasuredSkein(Row):
    """One skein of the sample, measured."""

    length = Input[float](
        LENGTH,
        "Length",
        default="420 m",
        allowed=("0.5 m", "25000 m"),
        rough="1 %",
        units=("m", "yd"),
        instrument="reel",
    )


class Fiber(Row):
    """One fiber of the yarn."""

    fiber = Input[str](
        CHOICE,
        "Fiber",
        default="wool",
        options=tuple(
            Option(family, family[0].upper() + family[1:])
            for family in regain_curves().columns[1:-1]
        ),
    )
    share = replace(SHARE)


class NetContents(Case):
    """A sample of skeins under one label, and what each rule makes of it."""

    by = Input[str](
        CHOICE,
        "The label says",
        default=WEIGHT,
        options=(Option(WEIGHT, "A weight"), Option(BY_LENGTH, "A length")),
    )
    REELED = {by: (BY_LENGTH,)}
    WEIGHED = {by: (WEIGHT,)}
    label_mass = replace(
        SKEIN_MASS,
        label="Weight on the label",
        allowed=("1 g", "10 kg"),
        usual=("10 g", "500 g"),
        when=WEIGHED,
    )
    label_length = replace(
        SKEIN_LENGTH,
        label="Length on the label",
        allowed=("1 m", "20000 m"),
        usual=("20 m", "2000 m"),
        when=REELED,
        rough="",
    )
    skeins = Rows(
        WeighedSkein,
        "Skeins, weighed",
        "skein",
        least=2,
        most=100,
        when=WEIGHED,
        measure="Taken at random, yarn alone, without band and ties; 12 from a lot of up to 250.",
        default=tuple({"mass": f"{mass} g"} for mass in MASSES),
    )
    lengths = Rows(
        MeasuredSkein,
        "Skeins, measured",
        "skein",
        least=2,
        most=100,
        when=REELED,
        measure="Taken at random, unwound on one reel or meter, lightly tensioned.",
        default=tuple({"length": f"{length} m"} for length in METERS),
    )
    lot = Input[int](
        COUNT,
        "Skeins under that label",
        default="40",
        allowed=("1", "100000"),
        usual=("4", "3000"),
        measure="One base, one put-up, wound alike.",
    )
    sold = Input[str](
        CHOICE,
        "Judge it by",
        default=US,
        options=(
            Option(US, "US: NIST Handbook 133"),
            Option(EU, "EU or UK: average rule"),
            Option(THREAD, "US: a state thread law"),
        ),
    )
    air = Input[str](
        CHOICE,
        "Look at drier air too",
        default="yes",
        options=(Option("yes", "Yes"), Option("no", "No")),
        when=WEIGHED,
    )
    AIRED = {by: (WEIGHT,), air: ("yes",)}
    humidity = Input[float](
        PERCENT,
        "Humidity where they were weighed",
        default="55 %",
        allowed=("10 %", "90 %"),
        usual=("30 %", "80 %"),
        rough="5 %",
        when=AIRED,
        measure="Where they lay open for two days.",
    )
    driest = Input[float](
        PERCENT,
        "Driest air they may be weighed in",
        default="40 %",
        allowed=("10 %", "90 %"),
        usual=("20 %", "65 %"),
        when=AIRED,
        measure="A heated shop in winter: 30 to 40.",
    )
    fibers = Rows(
        Fiber,
        "Fibers",
        "fiber",
        record=RECORD.base.fibers,
        least=1,
        most=8,
        when=AIRED,
        measure="Shares together 100 %.",
        default=(
            {"fiber": "wool", "share": "75 %"},
            {"fiber": "polyamide (nylon)", "share": "25 %"},
        ),
    )

    values = Plain[list[float]]()
    label = Plain[float]()
    judged = Plain[list[Judged]]()
    count = Between[int](COUNT, "Skeins in the sample")
    factor_us = Between[float](NUMBER, "Sample correction factor, US")
    allowed_us = Between[float](MASS, "US: one skein may be short by")
    allowed_us_length = Between[float](LENGTH, "US: one skein may be short by")
    tolerable = Between[float](MASS, "EU and UK: tolerable negative error")
    factor_eu = Between[float](NUMBER, "Inspector’s factor, EU and UK")
    low_eu = Between[float](MASS, "EU and UK: an inspector’s mean may be down to")
    t = Between[float](NUMBER, "Student’s t, 95 %")
    here = Between[float](PERCENT, "Regain in the air here")
    there = Between[float](PERCENT, "Regain in the driest air")

    mean = Result[float](MASS, "Mean of the sample", units=("g", "oz"), finest=(0.01, 0.001))
    mean_length = Result[float](LENGTH, "Mean of the sample", units=("m", "yd"), finest=(0.1, 0.1))
    over = Result[float](MASS, "Mean, over the label", units=("g", "oz"), finest=(0.01, 0.001))
    over_length = Result[float](
        LENGTH, "Mean, over the label", units=("m", "yd"), finest=(0.1, 0.1)
    )
    short = Result[float](PERCENT, "The mean is short by", finest=(0.01,))
    spread = Result[float](
        MASS, "Standard deviation", units=("g", "oz"), finest=(0.01, 0.001), floor=0.0
    )
    spread_length = Result[float](
        LENGTH, "Standard deviation", units=("m", "yd"), finest=(0.1, 0.1), floor=0.0
    )
    low_us = Result[float](
        MASS, "US: the mean may be down to", units=("g", "oz"), finest=(0.01, 0.001), rounding="up"
    )
    low_us_length = Result[float](
        LENGTH, "US: the mean may be down to", units=("m", "yd"), finest=(0.1, 0.1), rounding="up"
    )
    each_us = Result[float](
        MASS, "US: no skein under", units=("g", "oz"), finest=(0.1, 0.01), rounding="up"
    )
    each_us_length = Result[float](
        LENGTH, "US: no skein under", units=("m", "yd"), finest=(0.1, 0.1), rounding="up"
    )
    first = Result[float](
        MASS,
        "EU and UK: 1 in 40 under at most",
        units=("g", "oz"),
        finest=(0.1, 0.01),
        rounding="up",
    )
    second = Result[float](
        MASS, "EU and UK: none under", units=("g", "oz"), finest=(0.1, 0.01), rounding="up"
    )
    aim = Result[float](
        MASS, "Aim at a mean of", units=("g", "oz"), finest=(0.1, 0.01), rounding="up"
    )
    dry_mean = Result[float](
        MASS, "They would weigh in the driest air", units=("g", "oz"), finest=(0.1, 0.01)
    )


# What is said of a weight, and the same said of a length.
OF_A_LENGTH: dict[Result[float] | Between[float], Result[float] | Between[float]] = {
    NetContents.mean: NetContents.mean_length,
    NetContents.over: NetContents.over_length,
    NetContents.spread: NetContents.spread_length,
    NetContents.low_us: NetContents.low_us_length,
    NetContents.allowed_us: NetContents.allowed_us_length,
    NetContents.each_us: NetContents.each_us_length,
}


def as_labeled(
    case: NetContents, part: Result[float] | Between[float]
) -> Result[float] | Between[float]:
    """A weight's part, or the length's that says the same where the label says a length."""
    return part if case.by == WEIGHT else OF_A_LENGTH[part]
