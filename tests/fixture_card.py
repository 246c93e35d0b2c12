"""A card with every kind of input and every part of a case, kept for the tests.

Invented: a little order of colors, dyed in a bath. It stands outside the package; the tests that
want it register it.
"""

from __future__ import annotations

from datetime import date

from fibercalc.core.answer import Picture, Table
from fibercalc.core.card import (
    BENCH_RULE,
    CHOICE,
    COLOR,
    DATE,
    TEXT,
    Basis,
    Between,
    Card,
    Carry,
    Case,
    Caution,
    Chance,
    Input,
    Many,
    Option,
    Plain,
    Result,
    Row,
    Rows,
)
from fibercalc.core.color import Color
from fibercalc.core.outcome import Outcome
from fibercalc.core.picture import INK, Drawing
from fibercalc.core.problem import Refused
from fibercalc.core.steps import at_least, looked_up, searched, solved
from fibercalc.core.units import (
    COUNT,
    LENGTH,
    LINEAR_DENSITY,
    MASS,
    MONEY,
    NUMBER,
    PERCENT,
    TEMPERATURE,
    TIME,
    VOLUME,
)
from fibercalc.sources import COMMON_PRACTICE


class Dye(Row):
    """One dye of the recipe, and how much of its stock goes in."""

    name = Input[str](TEXT, "Name", default="navy", longest=20)
    depth = Input[float](
        PERCENT,
        "Depth of shade",
        default="0.5 %",
        allowed=("0 %", "8 %"),
        strict=True,
        rough="0.01 %",
        instrument="scale",
    )
    strength = Input[float](PERCENT, "Stock strength", default="1 %", allowed=("0.01 %", "10 %"))

    stock = Between[float](VOLUME, "Stock")


class EveryKind(Case):
    """An order of skeins in one shade, with the bath, the dyes and the boxes it takes."""

    mass = Input[float](
        MASS,
        "Weight of a skein",
        default="100 g",
        allowed=("1 g", "5 kg"),
        usual=("50 g", "200 g"),
        rough="1 %",
        units=("g", "oz"),
    )
    count_of_yarn = Input[float](
        LINEAR_DENSITY,
        "Count of the yarn",
        default="420 m/100 g",
        allowed=("5 tex", "20000 tex"),
        rough="2 %",
        units=("m/100 g", "yd/lb", "tex"),
    )
    temperature = Input[float](
        TEMPERATURE,
        "Bath",
        default="82 °C",
        allowed=("-10 °C", "110 °C"),
        rough="2 °C",
        units=("°C", "°F"),
        strict=True,
    )
    skeins = Input[int](COUNT, "Skeins", default="16", allowed=("1", "5000"), usual=("4", "100"))
    loss = Input[float](PERCENT, "Loss", default="2 %", allowed=("0 %", "50 %"), rough="0.5 %")
    price = Input[float | None](
        MONEY, "Price of a skein", default="27.50", allowed=("0", "1000"), optional=True
    )
    stock_note = Input[str | None](TEXT, "Note", default="shelf 3", longest=30, optional=True)
    ready = Input[date](
        DATE, "Ready on", default="2027-03-05", allowed=("2020-01-01", "2099-12-31")
    )
    way = Input[str](
        CHOICE,
        "How",
        default="bath",
        options=(Option("bath", "In a bath"), Option("hand", "By hand")),
    )
    bath = Input[float](
        VOLUME,
        "Bath volume",
        default="9 L",
        allowed=("0.1 L", "200 L"),
        units=("L", "qt"),
        unit="mL",
        when={way: ("bath",)},
        strict=True,
        rough="5 %",
    )
    shade = Input[Color](COLOR, "Shade", default="#6b7f8f", rough="4")
    dyes = Rows(
        Dye,
        "Dyes",
        "dye",
        least=1,
        most=6,
        measure="In the order they go in.",
        default=(
            {"name": "navy", "depth": "0.62 %"},
            {"name": "black", "depth": "0.24 %"},
            {"name": "brown", "depth": "0.04 %"},
        ),
    )

    fiber = Between[float](MASS, "Fiber dyed")
    regain = Between[float](PERCENT, "Regain of wool")
    dry = Between[float](MASS, "Fiber without its water")
    depth = Between[float](PERCENT, "Depth in all")
    water = Many(VOLUME, "Water at {} times the dry weight")
    side = Between[float](LENGTH, "Side of a box, a milliliter for each gram", unit="cm")
    noted = Plain[str]()

    dye = Result[float](MASS, "Dye in all", units=("g", "oz"), finest=(0.01, 0.001))
    first = Result[float](VOLUME, "Stock of the first dye", units=("mL",), finest=(1,))
    boxes = Result[int](COUNT, "Boxes", rounding="up", fixed=True)
    spare = Result[float](NUMBER, "Places to spare")
    hold = Result[float](TIME, "Hold", units=("min",), finest=(1,), timer=True)
    cost = Result[float](MONEY, "Price in all", finest=(0.01,))
    day = Result[date](DATE, "Ready on")
    words = Result[str](TEXT, "How")
    length = Result[float](
        LENGTH,
        "Length in all",
        unit="km",
        units=("yd", "m"),
        finest=(1, 1),
        rounding="down",
        error="3 %",
    )
    bath_per_fiber = Result[float](NUMBER, "Bath for each gram", finest=(0.1,))
    shade_seen = Result[float](NUMBER, "Lightness of the shade")
    long_enough = Result[float](
        PERCENT, "Chance that there are 6.5 km", chance=Chance(length, above=6500.0)
    )


def answer(case: EveryKind) -> None:
    case.fiber = case.mass * case.skeins * (1 - case.loss / 100)
    case.depth = sum(dye.depth for dye in case.dyes)
    if case.depth > 10:
        raise Refused(
            "Depths: together they are above 10 %; give less.",
            EveryKind.dyes.each(Dye.depth, row=1),
        )
    case.dye = case.fiber * case.depth / 100
    for dye in case.dyes:
        dye.stock = case.fiber * dye.depth / dye.strength
    case.first = case.dyes[0].stock
    _bath(case)
    case.hold = 20 + 30 * case.depth
    _boxes(case)
    if case.price is not None:
        case.cost = case.skeins * case.price
    case.day = case.ready
    case.words = "in the bath" if case.way == "bath" else "by hand"
    case.length = case.fiber / case.count_of_yarn
    case.shade_seen = case.shade.lightness
    case.noted = case.stock_note or "the shelf"


def _bath(case: EveryKind) -> None:
    table, column = "d1909-commercial-regains", "regain"
    case.regain = looked_up("yarn", table, "fiber", "wool, combed (worsted)", column)
    case.dry = case.fiber / (1 + case.regain / 100)
    for ratio in (20, 30):
        case.water[f"{ratio}"] = ratio * case.dry
    if case.way == "bath":
        case.bath_per_fiber = case.bath / case.fiber


def _boxes(case: EveryKind) -> None:
    case.boxes = searched(
        -(-int(case.skeins) // 6),
        lambda boxes: (at_least(boxes * 6, case.skeins),),
        lambda: case.skeins / 6,
    )
    case.spare = case.boxes * 6 - case.skeins
    case.side = solved(float(case.fiber) ** (1 / 3), lambda side: side**3 - case.fiber)


def say(out: Outcome[EveryKind]) -> str | tuple[str, ...]:
    return (
        f"Weigh {out.text(EveryKind.dye)} of dye.",
        (
            f"{out.number(out.value(EveryKind.boxes))} boxes, {out.text(EveryKind.words)}, for"
            f" {out.case.noted}."
        ),
    )


def picture(out: Outcome[EveryKind]) -> Picture | None:
    drawing = Drawing(60)
    drawing.rect(8, 8, 80, 30, fill=out.case.shade.hex, stroke=INK)
    drawing.text(100, 28, out.case.stock_note or "no note")
    return drawing.picture("The shade", f"A box in the shade, noted {out.case.stock_note}.")


def table(out: Outcome[EveryKind]) -> Table | None:
    return Table(
        "Dyes",
        ("Dye", "Depth"),
        tuple((row.name, out.amount(row.depth, PERCENT)) for row in out.case.dyes),
    )


CARD = Card(
    id="every-kind",
    chapter="yarn",
    place=990,
    question="Does every kind of input work?",
    case=EveryKind,
    answer=answer,
    say=say,
    pictures=(picture,),
    tables=(table,),
    notes=lambda out: ["A note."],
    basis=Basis(BENCH_RULE, "Invented for the tests."),
    sources=(COMMON_PRACTICE,),
    cautions=(Caution("Hot.", "The bath is hot.", when=lambda out: out.case.temperature > 45),),
    carry=(Carry("skein-length", "How long is one?", {"skein_mass": EveryKind.mass}),),
)
