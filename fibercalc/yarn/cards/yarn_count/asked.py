"""What is asked about a yarn, and what follows from it."""

from __future__ import annotations

from ....core.card import CHOICE, Between, Case, Input, Option, Result, Row, Rows
from ....core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, PERCENT

BY_NUMBER, BY_PUTUP, BY_SINGLES = "count", "put-up", "singles"
UNITS = (
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
    "yd/oz",
    "m/g",
    "m/kg",
)
FINEST, COARSEST = "0.1 tex", "100000 tex"


class Single(Row):
    """One kind of single in a plied yarn."""

    strands = Input[int](COUNT, "Strands of it", default="1", allowed=("1", "50"), usual=("1", "8"))
    count = Input[float](
        LINEAR_DENSITY,
        "Count of this single",
        default="56.5 tex",
        allowed=(FINEST, COARSEST),
        units=UNITS,
    )

    together = Between[float](LINEAR_DENSITY, "All its strands together")
    metric_count = Between[float](LINEAR_DENSITY, "The same in metric count", unit="Nm")


class YarnCount(Case):
    """A yarn of which the count, a put-up or the singles are known."""

    known = Input[str](
        CHOICE,
        "What you know of the yarn",
        default=BY_NUMBER,
        options=(
            Option(BY_NUMBER, "Its count in one system"),
            Option(BY_PUTUP, "Weight and length of a put-up"),
            Option(BY_SINGLES, "The singles it is plied from"),
        ),
    )
    count = Input[float](
        LINEAR_DENSITY,
        "Count",
        default="238 tex",
        allowed=(FINEST, COARSEST),
        usual=("15 tex", "2000 tex"),
        units=UNITS,
        when={known: (BY_NUMBER,)},
        measure="Choose the system first: 20 in cotton count is not 20 in worsted count.",
    )
    length = Input[float](
        LENGTH,
        "Length of the put-up",
        default="420 m",
        allowed=("0.1 m", "200 km"),
        usual=("50 m", "2000 m"),
        units=("m", "yd"),
        when={known: (BY_PUTUP,)},
        measure="From the label, or better as you measured it.",
    )
    mass = Input[float](
        MASS,
        "Weight of the put-up",
        default="100 g",
        allowed=("0.1 g", "10 kg"),
        usual=("20 g", "1 kg"),
        units=("g", "oz", "kg", "lb"),
        measure="Yarn only, rested and dry.",
    )
    singles = Rows(
        Single,
        "Singles in the plied yarn",
        "single",
        least=1,
        most=8,
        when={known: (BY_SINGLES,)},
        measure="One row for each kind of single.",
        default=({"strands": "4", "count": "56.5 tex"},),
    )
    take_up = Input[float](
        PERCENT,
        "Take-up in plying",
        default="5 %",
        allowed=("0 %", "50 %"),
        usual=("0 %", "10 %"),
        when={known: (BY_SINGLES,)},
        measure=(
            "How much shorter the plied yarn is than its singles. 0 for a nominal count;"
            " handspun yarn mostly 5 to 10 % (from memory, unverified)."
        ),
    )

    metric_count = Between[float](LINEAR_DENSITY, "Meters in a gram", unit="Nm")
    by_metric_counts = Between[float](
        LINEAR_DENSITY, "The same by indirect (metric) counts, 1,000 ÷ tex", unit="Nm"
    )
    yards_per_pound = Between[float](LINEAR_DENSITY, "Yards in a pound", unit="yd/lb")
    cotton_count = Between[float](LINEAR_DENSITY, "Cotton hanks in a pound", unit="Ne")
    worsted_count = Between[float](LINEAR_DENSITY, "Worsted hanks in a pound", unit="Nw")

    linear_density = Result[float](
        LINEAR_DENSITY, "Count of the yarn", units=("yd/lb", "m/100 g", "tex")
    )
    putup_length = Result[float](
        LENGTH,
        "Length in the put-up, to print",
        units=("yd", "m"),
        finest=(1, 1),
        at_step=True,
        rounding="down",
    )
