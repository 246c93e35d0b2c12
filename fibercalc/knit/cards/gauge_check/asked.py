"""What is asked for a gauge, and what is found."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, TEXT, Case, Input, Option, Plain, Result, Row, Rows
from ....core.units import LENGTH, NUMBER, PER_LENGTH, PERCENT
from ...inputs import PATTERN_ROWS, PATTERN_STITCHES

GIRTH = Input[float](
    LENGTH,
    "Around",
    default="125 cm",
    allowed=("20 cm", "300 cm"),
    usual=("45 cm", "170 cm"),
    units=("cm", "in"),
    unit="cm",
)
SPAN = Input[float](
    LENGTH,
    "over a width of",
    default="15 cm",
    allowed=("2 cm", "200 cm"),
    usual=("8 cm", "30 cm"),
    rough="0.15 cm",
    units=("cm", "in"),
    unit="cm",
    instrument="swatch tape",
)
BEFORE = replace(SPAN, instrument="tape before")


class Size(Row):
    """One size."""

    name = Input[str](TEXT, "Name", default="Next", longest=12, lent=False)
    girth = replace(GIRTH)


class GaugeCheck(Case):
    """A washed swatch and a pattern's sizes, and the one that comes out nearest to the wanted."""

    pattern_stitches = replace(PATTERN_STITCHES)
    pattern_rows = replace(PATTERN_ROWS)
    counted = Input[float](
        NUMBER,
        "Stitches you counted",
        default="30",
        allowed=("2", "1000"),
        usual=("15", "80"),
        rough="0.25",
        measure="Over as much as you have, quarters too: 10 cm is little, 20 cm is good.",
    )
    across = replace(SPAN)
    counted_rows = Input[float](
        NUMBER,
        "Rows you counted",
        default="40.5",
        allowed=("2", "1000"),
        usual=("20", "120"),
        rough="0.25",
    )
    tall = replace(SPAN, label="over a height of", measure="Washed, dry and rested, not pinned.")
    washed = Input[str](
        CHOICE,
        "Measured before the wash too?",
        default="yes",
        options=(Option("yes", "Yes"), Option("no", "No")),
    )
    WASHED = {washed: ("yes",)}
    wide_before = replace(
        BEFORE,
        when=WASHED,
        label="Width before",
        default="14.6 cm",
        measure="The same stitches, before washing.",
    )
    tall_before = replace(BEFORE, label="Height before", default="15.3 cm", when=WASHED)
    needle = Input[float](
        LENGTH,
        "Needle of the swatch",
        default="4 mm",
        allowed=("1 mm", "60 mm"),
        usual=("2 mm", "10 mm"),
        units=("mm",),
        unit="mm",
    )
    wanted = replace(
        GIRTH,
        label="Wanted around the chest",
        default="104 cm",
        measure="Of the garment: the body and its ease.",
    )
    sizes = Rows(
        Size,
        "Sizes of the pattern",
        "size",
        least=1,
        most=16,
        measure="Finished, around the chest, as the pattern gives them.",
        default=(
            {"name": "1", "girth": "90 cm"},
            {"name": "2", "girth": "97 cm"},
            {"name": "3", "girth": "104 cm"},
            {"name": "4", "girth": "111 cm"},
            {"name": "5", "girth": "118 cm"},
        ),
    )

    best = Plain[int](fixed=True)

    girth = Result[float](
        LENGTH,
        "That size at your gauge",
        units=("cm", "in"),
        unit="cm",
        finest=(0.5, 0.2),
        floor=0.0,
    )
    off = Result[float](
        LENGTH, "Wider than wanted by", units=("cm", "in"), unit="cm", finest=(0.5, 0.2)
    )
    own_stitches = Result[float](
        PER_LENGTH,
        "Your stitches, washed",
        units=("per 10 cm", "per 4 in"),
        finest=(0.1, 0.1),
        floor=0.0,
    )
    own_rows = Result[float](
        PER_LENGTH,
        "Your rows, washed",
        units=("per 10 cm", "per 4 in"),
        finest=(0.1, 0.1),
        floor=0.0,
    )
    row_share = Result[float](NUMBER, "Rows against the pattern’s", finest=(0.01,), floor=0.0)
    needle_to_try = Result[float](
        LENGTH,
        "Needle to try for the pattern’s gauge",
        units=("mm",),
        unit="mm",
        finest=(0.1,),
        floor=0.0,
    )
    wider = Result[float](PERCENT, "Width, in the wash", finest=(0.5,))
    longer = Result[float](PERCENT, "Length, in the wash", finest=(0.5,))
