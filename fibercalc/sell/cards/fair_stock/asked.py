"""What is asked for a fair, and what is found."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import TEXT, Between, Case, Input, Plain, Result, Row, Rows
from ....core.units import COUNT, MASS, MONEY, NUMBER, PERCENT, TIME, VOLUME
from ....yarn.inputs import SKEIN_MASS
from ...demand import Demand
from ...inputs import TICKET

VOLUME_TAKEN = Input[float](
    VOLUME, "Volume", allowed=("0.02 L", "1000 L"), units=("L", "ft³"), unit="L"
)


class Cost(Row):
    """What the fair costs, whether anything sells or not."""

    name = Input[str](TEXT, "For", default="another", longest=20, lent=False)
    amount = Input[float](MONEY, "Amount", default="20", allowed=("0", "100000"))


class Fair(Row):
    """One past fair."""

    brought = Input[int](COUNT, "Brought", default="60", allowed=("1", "100000"))
    sold = Input[int](COUNT, "Sold", default="50", allowed=("0", "100000"))


class ColorBrought(Row):
    """One color, and its share of all."""

    name = Input[str](TEXT, "Name", default="another", longest=22)
    share = Input[float](NUMBER, "Share", default="20", allowed=("0.1", "1000"))


class FairStock(Case):
    """A fair's costs, sales at fairs like it, and how many skeins to bring and to sell."""

    costs = Rows(
        Cost,
        "Costs of the fair",
        "cost",
        least=1,
        most=10,
        measure="That come whether anything sells or not.",
        default=(
            {"name": "stall", "amount": "180"},
            {"name": "travel", "amount": "64"},
            {"name": "bed", "amount": "95"},
        ),
    )
    days = Input[int](COUNT, "Days", default="2", allowed=("1", "14"), usual=("1", "4"))
    hours = Input[float](
        TIME,
        "Hours of work a day",
        default="8 h",
        allowed=("0 h", "24 h"),
        usual=("4 h", "14 h"),
        units=("h",),
        measure="Driving, setting up and packing too.",
    )
    wage = Input[float](
        MONEY, "Your wage, an hour", default="18", allowed=("0", "1000"), usual=("5", "80")
    )
    contribution = Input[float](
        MONEY,
        "One skein leaves",
        default="10.89",
        allowed=("0.01", "10000"),
        usual=("2", "60"),
        measure="Before labor and overhead, after tax, fee and what it cost: see “What must this"
        " skein sell at”.",
    )
    home = Input[float](
        MONEY,
        "One carried home costs you",
        default="2.50",
        allowed=("0.01", "10000"),
        usual=("0.1", "30"),
        measure="Money tied up, handling, a price cut later. Its whole cost if it will never sell.",
    )
    past = Rows(
        Fair,
        "Past fairs like it",
        "fair",
        least=1,
        most=20,
        measure="Sold as many as brought means sold out: then demand was at least that.",
        default=(
            {"brought": "50", "sold": "50"},
            {"brought": "80", "sold": "61"},
            {"brought": "70", "sold": "70"},
        ),
    )
    usual_spread = Input[float](
        PERCENT,
        "Fairs differ by about",
        default="30 %",
        allowed=("2 %", "150 %"),
        usual=("10 %", "60 %"),
        measure="Standard deviation, of the mean: used until four fairs did not sell out.",
    )
    colors = Rows(
        ColorBrought,
        "Colors, by their share",
        "color",
        least=1,
        most=24,
        measure="What they add up to is the whole.",
        default=(
            {"name": "Wet Slate", "share": "45"},
            {"name": "Rusted Gate", "share": "35"},
            {"name": "undyed", "share": "20"},
        ),
    )
    price = replace(TICKET, label="A buyer pays")
    skein_mass = replace(SKEIN_MASS, usual=("10 g", "250 g"), unit="kg")
    skein_volume = replace(
        VOLUME_TAKEN,
        label="A skein takes up",
        default="0.7 L",
        allowed=("0.02 L", "50 L"),
        usual=("0.1 L", "3 L"),
        measure="Fill a crate without pressing, count, divide.",
    )
    crate_volume = replace(
        VOLUME_TAKEN,
        label="A crate holds",
        default="45 L",
        allowed=("1 L", "1000 L"),
        usual=("20 L", "120 L"),
    )
    crate_mass = Input[float](
        MASS,
        "and may weigh, filled",
        default="10 kg",
        allowed=("0.1 kg", "100 kg"),
        usual=("5 kg", "25 kg"),
        units=("kg", "lb"),
        unit="kg",
        measure="What you can lift all day.",
    )
    cash_sales = Input[int](
        COUNT,
        "Cash sales before takings give change",
        default="6",
        allowed=("0", "1000"),
        usual=("2", "30"),
    )
    note = Input[float](
        MONEY,
        "Largest note you take",
        default="50",
        allowed=("0.01", "100000"),
        usual=("10", "200"),
    )

    demand = Plain[Demand]()
    ratio = Between[float](NUMBER, "Chance of having enough that pays best")
    wanted = Between[float](NUMBER, "Demand that is not passed with that chance", fixed=True)
    holds = Between[int](COUNT, "Skeins in a crate")
    notes = Between[float](COUNT, "Largest notes for one such sale")
    due = Between[float](COUNT, "Change for one such sale, in cents")

    with_wage = Result[int](COUNT, "Skeins that pay the fair and you", rounding="up")
    break_even = Result[int](COUNT, "Skeins that pay the fair alone", rounding="up")
    bring = Result[int](COUNT, "Bring")
    enough = Result[float](PERCENT, "They are enough, of 100 such fairs", finest=(1,))
    pays = Result[float](PERCENT, "Your wage comes in, of 100 such fairs", finest=(1,))
    mean = Result[float](NUMBER, "Demand, on average", finest=(1,))
    fixed = Result[float](MONEY, "Costs of the fair", finest=(0.01,))
    pay = Result[float](MONEY, "Your wage for it", finest=(0.01,))
    crates = Result[int](COUNT, "Crates", rounding="up")
    load = Result[float](
        MASS, "Yarn in the car", units=("kg", "lb"), unit="kg", finest=(0.1, 0.1), rounding="up"
    )
    float = Result[float](MONEY, "Change to bring", finest=(0.01,), rounding="up")
