"""What is asked about a label and the paper it is printed on, and what is found."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from ....core.asked import When
from ....core.card import CHOICE, DATE, TEXT, Between, Case, Input, Option, Result, Row, Rows
from ....core.ref import Field, FieldRef
from ....core.table import read_table
from ....core.units import COUNT, LENGTH, MASS, MONEY, NUMBER, PERCENT
from ....dye.inputs import STRENGTH
from ....held import RECORD
from ....yarn.inputs import SKEIN_LENGTH, SKEIN_MASS
from ...pictures.labels import BAND, BOTTLE, KIT, PRICE, SHELF, SIZES, SMALL, STICKER, WITH_CODE

ALONE, A4, LETTER = "alone", "a4", "letter"
PLAIN, PRECUT = "plain", "precut"
EDGES = "Edge to the same edge."
SKEINS = (*WITH_CODE, SMALL, PRICE, SHELF)
LABEL = Input[str](
    CHOICE,
    "Label",
    default=BAND,
    options=tuple(
        Option(kind, f"{name}, {width:g} × {height:g} mm")
        for kind, (name, width, height) in SIZES.items()
    ),
)
PAGE = Input[str](
    CHOICE,
    "Paper",
    default=A4,
    options=(
        Option(A4, "Sheets of A4"),
        Option(LETTER, "Sheets of US Letter"),
        Option(ALONE, "One to a page, for a label printer"),
    ),
)
ON_SHEETS = {PAGE: (A4, LETTER)}
SHEET = Input[str](
    CHOICE,
    "The sheet is",
    default=PLAIN,
    options=(Option(PLAIN, "Plain, I cut it"), Option(PRECUT, "Bought with cut labels")),
    when=ON_SHEETS,
)
BOUGHT = ON_SHEETS | {SHEET: (PRECUT,)}


def _for(*kinds: str) -> When:
    return {LABEL: kinds}


ON_SKEIN = _for(*SKEINS)


def _words(
    label: str,
    when: When,
    default: str = "",
    longest: int = 40,
    *,
    measure: str = "",
    record: FieldRef | None = None,
    bench: Field | None = None,
) -> Input[str | None]:
    """Words that may be left off."""
    return Input(
        TEXT,
        label,
        default=default,
        longest=longest,
        optional=True,
        when=when,
        measure=measure,
        record=record,
        bench=bench,
    )


def _number(
    label: str, kind: str, default: str, allowed: tuple[str, str], usual: tuple[str, str]
) -> Input[int]:
    return Input(COUNT, label, default=default, allowed=allowed, usual=usual, when=_for(kind))


def _measured(label: str, default: str, measure: str = "") -> Input[float]:
    """A measure of a bought sheet."""
    return Input(
        LENGTH,
        label,
        default=default,
        allowed=("0 mm", "297 mm"),
        units=("mm", "in"),
        when=BOUGHT,
        measure=measure,
    )


def _moved(label: str, measure: str) -> Input[float]:
    """How far all of it is moved on the paper."""
    return Input(
        LENGTH,
        label,
        default="0 mm",
        allowed=("-6 mm", "6 mm"),
        usual=("-3 mm", "3 mm"),
        units=("mm", "in"),
        measure=measure,
    )


class Substance(Row):
    """A substance in a bottle."""

    what = Input[str](
        CHOICE,
        "Substance",
        default="acetic",
        options=tuple(
            Option(row["key"], row["label"]) for row in read_table("safe", "label-limits").rows
        ),
    )
    share = Input[float](
        PERCENT,
        "Strength",
        default="1",
        allowed=("0.01", "100"),
        usual=("0.5", "100"),
        strict=True,
        measure="% by weight.",
    )


class Label(Case):
    """A kind of label, its words and its paper: how many sheets, and what it promises."""

    kind = LABEL
    page = PAGE
    copies = Input[int](
        COUNT,
        "Copies",
        default="4",
        allowed=("1", "600"),
        usual=("1", "100"),
        measure="Of each number, for stickers.",
    )
    name = _words(
        "Name",
        ON_SKEIN,
        "Tarrow Sock",
        measure="Of the base.",
        record=RECORD.base.name,
        bench=RECORD.bench.bases.name,
    )
    color = _words("Color", _for(*SKEINS, KIT), "Wet Slate", record=RECORD.colorway.name)
    maker = _words(
        "Maker", _for(*WITH_CODE, KIT), "Brackwend Dyehouse", measure="Name, or registered number."
    )
    fiber = _words(
        "Fiber content",
        _for(*WITH_CODE, PRICE),
        "75 % superwash wool, 25 % nylon",
        64,
        measure=(
            "In the legal order: see “What do I write for its fiber content?”. Not known is an"
            " answer: say so."
        ),
        record=RECORD.base.fiber_line,
    )
    mass = replace(
        SKEIN_MASS,
        label="Weight of a skein",
        allowed=("1 g", "2000 g"),
        usual=("5 g", "250 g"),
        when=ON_SKEIN,
        measure="Conditioned. With ± its low end is printed.",
    )
    length = replace(
        SKEIN_LENGTH,
        label="Length of a skein",
        allowed=("1 m", "10000 m"),
        usual=("10 m", "1000 m"),
        when=ON_SKEIN,
        measure="With ± its low end is printed.",
        rough="",
    )
    weight_class = Input[str](
        CHOICE,
        "Weight class for the code",
        record=RECORD.base.weight_class,
        default="1",
        options=(Option("none", "Not said"), *(Option(number, number) for number in "01234567")),
        when=_for(*WITH_CODE),
        bench=RECORD.bench.bases.weight_class,
    )
    lot = _words(
        "Lot",
        _for(*WITH_CODE, SMALL, SHELF, KIT),
        "WS-14",
        24,
        record=RECORD.dye_lot.lot,
        bench=RECORD.bench.bases.lot,
    )
    care_1 = _words(
        "Care",
        _for(*WITH_CODE),
        "Machine wash at 30 °C, mild cycle. Do not bleach.",
        64,
        measure="From “What goes on the care label?”.",
    )
    care_2 = _words(
        "Care, going on",
        _for(*WITH_CODE),
        "Do not tumble dry. Dry flat. Wash with like colors.",
        64,
    )
    origin = _words(
        "Made in", _for(*WITH_CODE), measure="Country. Blank leaves it off; some laws ask for it."
    )
    price = Input[float | None](
        MONEY,
        "Price",
        record=RECORD.product.price,
        default="27",
        allowed=("0.01", "99999"),
        usual=("1", "200"),
        optional=True,
        when=_for(PRICE),
    )
    of_set = _words("Set", _for(STICKER), "Twelve Lamps", record=RECORD.product.name)
    first = _number("First number", STICKER, "1", ("0", "999"), ("1", "100"))
    last = _number("Last number", STICKER, "12", ("0", "999"), ("1", "100"))
    kit = _words("Kit", _for(KIT), "Culvert Stole")
    parts = _number("Parts", KIT, "5", ("1", "12"), ("1", "8"))
    start = Input[date | None](
        DATE,
        "Part one comes on",
        default="2027-03-05",
        allowed=("2000-01-01", "2199-12-31"),
        optional=True,
        when=_for(KIT),
    )
    every = _number("Days from part to part", KIT, "7", ("1", "92"), ("7", "31"))
    stock = _words("Dye or other stock", _for(BOTTLE), "navy", record=RECORD.bottle.name)
    strength = replace(
        STRENGTH,
        record=RECORD.bottle.strength,
        allowed=("0.005 g/100 mL", "40 g/100 mL"),
        when=_for(BOTTLE),
    )
    made = Input[date](
        DATE,
        "Made on",
        record=RECORD.bottle.made_on,
        default="2027-01-11",
        today=True,
        when=_for(BOTTLE),
    )
    jar = _words("Lot of the jar", _for(BOTTLE), longest=24, record=RECORD.jar.lot)
    contents = Rows(
        Substance,
        "In the bottle",
        "substance",
        least=1,
        most=6,
        when=_for(BOTTLE),
        measure="What is not listed is water, or not classified by its own data sheet.",
        default=({"what": "dye-unknown", "share": "1"},),
    )
    right = _moved("Move right", "Where your printer starts too far left. Negative moves left.")
    down = _moved("Move down", "Negative moves up.")
    sheet = SHEET
    across = Input[int](COUNT, "Labels across", default="4", allowed=("1", "20"), when=BOUGHT)
    rows = Input[int](COUNT, "Labels down", default="1", allowed=("1", "40"), when=BOUGHT)
    left = _measured("Paper’s left edge to the first label", "13 mm")
    top = _measured("Paper’s top edge to the first label", "20 mm")
    step_across = _measured("From one label to the next, across", "48 mm", EDGES)
    step_down = _measured("From one label to the next, down", "48 mm", EDGES)
    used = Input[int](COUNT, "Places already used", default="0", allowed=("0", "799"), when=BOUGHT)

    count = Between[int](COUNT, "Stickers to print")
    fit_across = Between[int](COUNT, "Labels that fit across")
    fit_down = Between[int](COUNT, "Labels that fit down")
    yards = Between[int](NUMBER, "Whole yards in it")
    meters = Between[int](NUMBER, "Whole meters in it")
    grams = Between[int](NUMBER, "Whole grams in it")
    ounces = Between[float](NUMBER, "Tenths of an ounce in it")

    printed_length = Result[float](
        LENGTH, "Length promised", units=("yd", "m"), finest=(1, 1), at_step=True, rounding="down"
    )
    printed_mass = Result[float](
        MASS, "Weight promised", units=("g", "oz"), finest=(1, 0.1), at_step=True, rounding="down"
    )
    per_sheet = Result[int](COUNT, "To a sheet")
    sheets = Result[int](COUNT, "Sheets", rounding="up")
    smallest = Result[float](NUMBER, "Smallest letters, pt", finest=(0.1,), rounding="down")
