"""What is asked of the shelf, the supplier and the days, and what is to be ordered."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from ....core.card import CHOICE, DATE, TEXT, Between, Case, Input, Option, Plain, Result, Row, Rows
from ....core.units import COUNT, LENGTH, MASS, MONEY, NUMBER, PERCENT, VOLUME
from ....dye.inputs import STRENGTH
from ....held import RECORD
from ...inputs import CLOSED, PACK, PACK_PRICE


class Base(Row):
    """One base: what is spoken for, on hand and used, and how it is sold."""

    name = Input[str](TEXT, "Name", default="another base", longest=40)
    needed = Input[int](
        COUNT,
        "Skeins that open plans need",
        record=RECORD.base.planned,
        default="0",
        allowed=("0", "20000"),
    )
    promised = Input[int](
        COUNT, "promised: club, dyed to order", default="0", allowed=("0", "20000")
    )
    on_hand = Input[int](COUNT, "on hand", default="0", allowed=("0", "20000"))
    week = Input[float](NUMBER, "used in a week besides", default="0", allowed=("0", "2000"))
    pack = replace(PACK)
    price = replace(PACK_PRICE)
    large = Input[int](
        COUNT, "Skeins in a large pack (0: none)", default="0", allowed=("0", "5000")
    )
    large_price = Input[float](MONEY, "It costs", default="0", allowed=("0", "100000"))
    mass = Input[float](
        MASS, "A skein weighs", default="100 g", allowed=("5 g", "2 kg"), units=("g", "oz")
    )
    length = Input[float](
        LENGTH, "and holds", default="420 m", allowed=("5 m", "10000 m"), units=("m", "yd")
    )

    waiting = Between[float](NUMBER, "Used over the supplier’s weeks")
    margin = Between[float](NUMBER, "Margin, as use and supplier vary")
    keep = Between[int](COUNT, "To keep")
    net = Between[float](COUNT, "Skeins to get")
    large_packs = Between[int](COUNT, "Large packs")
    small_packs = Between[int](COUNT, "Packs, in the cheapest way")
    ordered = Between[int](COUNT, "Skeins ordered")
    outlay = Between[float](MONEY, "Its packs, in your own money")
    grams = Between[float](MASS, "What it weighs")
    landed_cost = Between[float](MONEY, "Landed")


class DyeOrChemical(Row):
    """One dye or chemical: what is needed, what jar and bottle hold, and how it is sold."""

    name = Input[str](TEXT, "Name", default="red", longest=40)
    needed = Input[float](
        MASS,
        "Open plans need",
        default="10 g",
        allowed=("0 g", "50 kg"),
        units=("g", "oz"),
        strict=True,
    )
    jar = Input[float](
        MASS,
        "Jar weighs now",
        default="120 g",
        allowed=("0 g", "50 kg"),
        rough="1 g",
        units=("g", "oz"),
        strict=True,
        instrument="kitchen scale",
    )
    empty = Input[float](
        MASS, "Empty jar", default="100 g", allowed=("0 g", "5 kg"), units=("g", "oz"), strict=True
    )
    bottle = Input[float](
        VOLUME,
        "Stock in its bottle",
        default="0 mL",
        allowed=("0 mL", "50 L"),
        units=("mL", "L"),
        strict=True,
    )
    strength = replace(STRENGTH, label="its strength", usual=None)
    age = Input[int](COUNT, "made so many days ago", default="0", allowed=("0", "3650"))
    pack = Input[float](
        MASS, "Sold by", default="100 g", allowed=("1 g", "25 kg"), units=("g", "oz"), strict=True
    )
    price = Input[float](MONEY, "That costs", default="48", allowed=("0", "5000"))

    too_old = Plain[bool]()
    held = Between[float](MASS, "Can be counted on")
    short = Between[float](MASS, "To get")
    packs = Between[int](COUNT, "Packs")
    ordered = Between[float](MASS, "Ordered")
    outlay = Between[float](MONEY, "Its packs, in your own money")
    grams = Between[float](MASS, "What it weighs")
    landed_cost = Between[float](MONEY, "Landed")


class BaseOrder(Case):
    """What plans need and the shelf holds, how it is sold and brought; what to order, and by
    when.
    """

    bases = Rows(
        Base,
        "Bases",
        "base",
        record=RECORD.base,
        least=0,
        most=40,
        measure="Count the shelf without what is promised. Prices as on the supplier’s list.",
        default=(
            {
                "name": "Tarrow Sock",
                "needed": "168",
                "promised": "12",
                "on_hand": "24",
                "week": "3",
                "large": "50",
                "large_price": "430",
            },
            {
                "name": "Dunmel DK",
                "needed": "24",
                "on_hand": "38",
                "week": "2",
                "price": "78",
                "length": "230 m",
            },
        ),
    )
    dyes = Rows(
        DyeOrChemical,
        "Dyes and chemicals",
        "dye or chemical",
        lent=bases,
        least=0,
        most=40,
        measure="Weigh the jar as it stands, and know what the empty jar weighs.",
        default=(
            {
                "name": "navy",
                "needed": "81.7 g",
                "jar": "242 g",
                "empty": "102 g",
                "bottle": "400 mL",
                "age": "20",
            },
            {
                "name": "black",
                "needed": "14.8 g",
                "jar": "162 g",
                "empty": "102 g",
                "bottle": "300 mL",
                "age": "140",
            },
            {"name": "yellow", "needed": "9.9 g", "jar": "110 g", "empty": "102 g"},
            {
                "name": "citric acid",
                "needed": "168 g",
                "jar": "560 g",
                "empty": "60 g",
                "pack": "1000 g",
                "price": "6.50",
            },
        ),
    )
    spread = Input[float](
        PERCENT,
        "A week’s use goes up and down by",
        default="50 %",
        allowed=("0 %", "300 %"),
        usual=("20 %", "100 %"),
        measure="Its standard deviation.",
    )
    sure = Input[str](
        CHOICE,
        "Stock to keep is enough while waiting, in",
        default="90",
        options=tuple(Option(each, f"{each} in 100 waits") for each in ("80", "90", "95", "99")),
    )
    good_for = Input[int](
        COUNT,
        "A dye stock is counted on for days",
        default="90",
        allowed=("0", "3650"),
        usual=("14", "365"),
        measure="Your own rule for your dyes; it differs by class.",
    )
    carriage = Input[float](
        MONEY,
        "Carriage for all",
        default="24",
        allowed=("0", "20000"),
        usual=("0", "500"),
        measure="In the supplier’s money.",
    )
    duty = Input[float](
        PERCENT,
        "Duty on arrival",
        default="0 %",
        allowed=("0 %", "200 %"),
        usual=("0 %", "20 %"),
        measure="Your own; tax that you get back is no cost.",
    )
    exchange = Input[float](
        NUMBER,
        "Your money for one of the supplier’s",
        default="1",
        allowed=("0.0001", "10000"),
        measure="1 where it is the same.",
    )
    needed_by = Input[date](
        DATE,
        "Wanted on",
        default="2027-01-19",
        measure="The first dye day; see “By when must I do what?”.",
    )
    check = Input[int](
        COUNT, "Days to weigh it in", default="1", allowed=("0", "60"), usual=("0", "7")
    )
    lead_low = Input[int](COUNT, "Supplier, weeks, at best", default="3", allowed=("0", "60"))
    lead = Input[int](COUNT, "Supplier, weeks, usually", default="4", allowed=("0", "60"))
    lead_high = Input[int](COUNT, "Supplier, weeks, at worst", default="5", allowed=("0", "60"))
    closed = replace(CLOSED)
    today = Input[date](
        DATE, "Today", default="2026-11-26", today=True, measure="Or the day on which you look."
    )

    to_keep = Plain[list[int]](fixed=True)
    packs_of_dyes = Plain[list[int]](fixed=True)
    certainty = Between[float](NUMBER, "Standard deviations to keep, to be so sure")
    freight = Between[float](MONEY, "Carriage, in your own money")
    arrive = Plain[date]()

    packs = Result[float](COUNT, "Packs to order", rounding="up")
    skeins = Result[float](COUNT, "Skeins of base ordered", rounding="up")
    dye_short = Result[float](
        MASS,
        "Dye and chemicals to get",
        units=("g", "oz"),
        finest=(0.1, 0.01),
        rounding="up",
        floor=0.0,
    )
    goods = Result[float](MONEY, "Goods", finest=(0.01,))
    landed = Result[float](MONEY, "Landed, all of it", finest=(0.01,), rounding="up")
    each = Result[float](MONEY, "A skein of the first base, landed", finest=(0.01,))
    hundred = Result[float](MONEY, "100 m of it", finest=(0.01,))
    order_by = Result[date](DATE, "Order by")
    order_usual = Result[date](DATE, "if the lead is as usual")
    order_quick = Result[date](DATE, "if it is as quick as can be")
    slack = Result[int](COUNT, "Days from today", rounding="down")


def ordered_lines(case: BaseOrder) -> list[Base | DyeOrChemical]:
    """The bases and dyes of which something is ordered, in their order."""
    lines: list[Base | DyeOrChemical] = [*case.bases, *case.dyes]
    return [line for line in lines if line.ordered]
