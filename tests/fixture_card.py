"""A card with every kind of input, kept for the tests: it proves the frame for chapters that are still to come.

Invented: a little order of colors, dyed in a bath. It stands outside the package and is registered by the tests that want it.
"""

from fibercalc.core.answer import Table
from fibercalc.core.card import (
    BENCH_RULE,
    CHOICE,
    COLOR,
    DATE,
    TEXT,
    Basis,
    Card,
    Carry,
    Caution,
    Chance,
    Input,
    Option,
    Result,
    Rows,
    row_of,
)
from fibercalc.core.picture import INK, Drawing
from fibercalc.core.problem import Refused
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


def answer(
    w,
    mass,
    count_of_yarn,
    temperature,
    skeins,
    loss,
    price,
    stock_note,
    ready,
    way,
    bath,
    shade,
    dyes,
):
    fiber = w.step(
        "fiber",
        "mass * skeins * (1 - loss / 100)",
        mass * skeins * (1 - loss / 100),
        MASS,
        label="Fiber dyed",
    )
    depth = w.step(
        "depth", "sum(dyes.depth)", sum(row.depth for row in dyes), PERCENT, label="Depth in all"
    )
    if depth > 10:
        raise Refused("Depths: together they are above 10 %; give less.", "dyes.1.depth")
    dye = w.step("dye", "fiber * depth / 100", fiber * depth / 100, MASS, label="Dye in all")
    first = w.step(
        "first",
        "fiber * dyes[1].depth / dyes[1].strength",
        fiber * dyes[0].depth / dyes[0].strength,
        VOLUME,
        label="Stock of the first dye",
    )
    hold = w.step("hold", "20 + 30 * depth", 20 + 30 * depth, TIME, label="Hold")
    boxes = w.decide("boxes", -(-skeins // 6))
    w.searched("boxes", boxes, ("boxes * 6 >= skeins",), "skeins / 6", label="Boxes")
    spare = w.step("spare", "boxes * 6 - skeins", boxes * 6 - skeins, NUMBER)
    money = w.step("cost", "skeins * price", skeins * price, MONEY) if price is not None else None
    return {
        "dye": dye,
        "first": first,
        "boxes": boxes,
        "cost": money,
        "spare": spare,
        "hold": hold,
        "day": ready,
        "words": "in the bath" if way == "bath" else "by hand",
        "length": 1000 * fiber / count_of_yarn,
        "bath_per_fiber": bath / fiber if bath else None,
        "shade_seen": shade.lightness,
    }


def say(r):
    return (
        f"Weigh {r.text('dye')} of dye.",
        (
            f"{r.number(r.value('boxes'))} boxes, {r.text('words')}, for"
            f" {r.given['stock_note'] or 'the shelf'}."
        ),
    )


def picture(r):
    drawing = Drawing(60)
    drawing.rect(8, 8, 80, 30, fill=r.given["shade"].hex, stroke=INK)
    drawing.text(100, 28, r.given["stock_note"] or "no note")
    return drawing.picture("The shade", f"A box in the shade, noted {r.given['stock_note']}.")


def table(r):
    return Table(
        "Dyes",
        ("Dye", "Depth"),
        tuple((row.name, r.amount(row.depth, PERCENT)) for row in r.given["dyes"]),
    )


CARD = Card(
    id="every-kind",
    chapter="yarn",
    place=990,
    question="Does every kind of input work?",
    inputs=(
        Input(
            MASS,
            "Weight of a skein",
            default="100 g",
            allowed=("1 g", "5 kg"),
            usual=("50 g", "200 g"),
            rough="1 %",
            units=("g", "oz"),
            name="mass",
        ),
        Input(
            LINEAR_DENSITY,
            "Count of the yarn",
            default="420 m/100 g",
            allowed=("5 tex", "20000 tex"),
            rough="2 %",
            units=("m/100 g", "yd/lb", "tex"),
            name="count_of_yarn",
        ),
        Input(
            TEMPERATURE,
            "Bath",
            default="82 °C",
            allowed=("-10 °C", "110 °C"),
            rough="2 °C",
            units=("°C", "°F"),
            strict=True,
            name="temperature",
        ),
        Input(
            COUNT, "Skeins", default="16", allowed=("1", "5000"), usual=("4", "100"), name="skeins"
        ),
        Input(PERCENT, "Loss", default="2 %", allowed=("0 %", "50 %"), rough="0.5 %", name="loss"),
        Input(
            MONEY,
            "Price of a skein",
            default="27.50",
            allowed=("0", "1000"),
            optional=True,
            name="price",
        ),
        Input(TEXT, "Note", default="shelf 3", longest=30, optional=True, name="stock_note"),
        Input(
            DATE,
            "Ready on",
            default="2027-03-05",
            allowed=("2020-01-01", "2099-12-31"),
            name="ready",
        ),
        Input(
            CHOICE,
            "How",
            default="bath",
            options=(Option("bath", "In a bath"), Option("hand", "By hand")),
            name="way",
        ),
        Input(
            VOLUME,
            "Bath volume",
            default="9 L",
            allowed=("0.1 L", "200 L"),
            units=("L", "qt"),
            unit="mL",
            when={"way": ("bath",)},
            strict=True,
            rough="5 %",
            name="bath",
        ),
        Input(COLOR, "Shade", default="#6b7f8f", rough="4", name="shade"),
        Rows(
            row_of(
                (
                    Input(TEXT, "Name", default="navy", longest=20, name="name"),
                    Input(
                        PERCENT,
                        "Depth of shade",
                        default="0.5 %",
                        allowed=("0 %", "8 %"),
                        strict=True,
                        rough="0.01 %",
                        instrument="scale",
                        name="depth",
                    ),
                    Input(
                        PERCENT,
                        "Stock strength",
                        default="1 %",
                        allowed=("0.01 %", "10 %"),
                        name="strength",
                    ),
                )
            ),
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
            name="dyes",
        ),
    ),
    results=(
        Result(MASS, "Dye in all", units=("g", "oz"), finest=(0.01, 0.001), name="dye"),
        Result(VOLUME, "Stock of the first dye", units=("mL",), finest=(1,), name="first"),
        Result(COUNT, "Boxes", rounding="up", name="boxes"),
        Result(NUMBER, "Places to spare", name="spare"),
        Result(TIME, "Hold", units=("min",), finest=(1,), timer=True, name="hold"),
        Result(MONEY, "Price in all", finest=(0.01,), name="cost"),
        Result(DATE, "Ready on", name="day"),
        Result(TEXT, "How", name="words"),
        Result(
            LENGTH,
            "Length in all",
            units=("yd", "m"),
            finest=(1, 1),
            rounding="down",
            error="3 %",
            name="length",
        ),
        Result(NUMBER, "Bath for each gram", finest=(0.1,), name="bath_per_fiber"),
        Result(NUMBER, "Lightness of the shade", name="shade_seen"),
        Result(
            PERCENT,
            "Chance that there are 6.5 km",
            chance=Chance("length", above=6500.0),
            name="long_enough",
        ),
    ),
    answer=answer,
    say=say,
    pictures=(picture,),
    tables=(table,),
    notes=lambda r: ["A note."],
    basis=Basis(BENCH_RULE, "Invented for the tests."),
    sources=(COMMON_PRACTICE,),
    cautions=(Caution("Hot.", "The bath is hot.", when=lambda r: r.given["temperature"] > 45),),
    carry=(Carry("skein-length", "How long is one?", {"skein_mass": "mass"}),),
)
