"""What is asked about a recipe at the pot, and what follows."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, TEXT, Between, Case, Input, Option, Plain, Result, Row, Rows
from ....core.outcome import Outcome
from ....core.table import read_table
from ....core.units import CONCENTRATION, COUNT, MASS, NUMBER, PERCENT, VOLUME
from ....held import RECORD
from ....safe.liquids import liquid_name
from ....yarn.fiber_density import fiber_densities
from ...inputs import ACID_SHARE, DYED_SKEIN, LIQUOR_RATIO, STRENGTH, SYRINGE_ERROR

NO, YES = "no", "yes"
NONE, CITRIC, LIQUID, SODA = "none", "citric", "liquid", "soda-ash"
CLASSES = {row["key"]: row for row in read_table("dye", "dye-classes").rows}


def liquid(out: Outcome[DyeRecipe], kitchen: bool = True) -> str:
    """The liquid acid with its strength, as the label gives it: grams in 100 mL."""
    strength = out.case.acid_strength
    return liquid_name("acetic", strength, out.amount(strength, PERCENT), kitchen)


class Dye(Row):
    """One dye of the recipe: its depth and its stock, and how much of both goes in."""

    name = Input[str](TEXT, "Name", default="yellow", longest=40)
    depth = Input[float](
        PERCENT,
        "Depth",
        default="0.1 %",
        allowed=("0 %", "12 %"),
        usual=("0.01 %", "4 %"),
        strict=True,
    )
    strength = replace(STRENGTH, label="Strength of its stock")

    powder = Between[float](MASS, "Powder")
    stock = Between[float](VOLUME, "Stock")
    run_stock = Between[float](VOLUME, "Stock for the run")


class DyeRecipe(Case):
    """A lot of skeins by weight, dyes by depth and the pot: all that is measured into it."""

    skeins = Input[int](
        COUNT,
        "Skeins in the lot",
        record=RECORD.colorway.skeins,
        default="4",
        allowed=("1", "500"),
        usual=("1", "40"),
    )
    skein_mass = replace(
        DYED_SKEIN,
        allowed=("0.5 g", "5 kg"),
        usual=("5 g", "250 g"),
        measure="Dry, before it is soaked.",
    )
    damp = Input[str](
        CHOICE,
        "Correct for damp?",
        default=NO,
        options=(Option(NO, "No, weighed as usual"), Option(YES, "Yes, by regain")),
    )
    DAMP = {damp: (YES,)}
    regain_now = Input[float](
        PERCENT,
        "Regain when weighed",
        default="15.5 %",
        allowed=("0 %", "60 %"),
        usual=("8 %", "20 %"),
        when=DAMP,
        measure="From “It says 100 g, mine says 103”.",
    )
    regain_usual = Input[float](
        PERCENT,
        "Regain the recipe was made at",
        default="13 %",
        allowed=("0 %", "60 %"),
        usual=("8 %", "20 %"),
        when=DAMP,
    )
    fiber = Input[str](
        CHOICE,
        "Mostly",
        default="wool",
        options=tuple(
            Option(row["fiber"], row["fiber"][0].upper() + row["fiber"][1:])
            for row in fiber_densities().rows
        ),
    )
    dye_class = Input[str](
        CHOICE,
        "Class of dye",
        default="acid-unknown",
        options=tuple(Option(key, row["label"]) for key, row in CLASSES.items()),
    )
    dyes = Rows(
        Dye,
        "Dyes",
        "dye",
        record=RECORD.colorway.dyes,
        least=1,
        most=8,
        measure="Depth in percent of the dry fiber; strength of the stock in grams in 100 mL.",
        default=(
            {"name": "navy", "depth": "0.62 %"},
            {"name": "black", "depth": "0.24 %"},
            {"name": "brown", "depth": "0.04 %"},
        ),
    )
    liquor_ratio = replace(
        LIQUOR_RATIO,
        record=RECORD.colorway.liquor_ratio,
        measure="20 is a liquor ratio of 20 to 1.",
    )
    fill = Input[float](
        VOLUME,
        "Pot filled to at most",
        default="9 L",
        allowed=("0.1 L", "500 L"),
        usual=("2 L", "40 L"),
        units=("L", "mL", "qt", "gal"),
        bench=RECORD.bench.pots.fill,
        strict=True,
        measure="With the yarn in it; leave room to boil and to stir.",
    )
    pick_up = Input[float](
        PERCENT,
        "Water that the soaked yarn brings",
        default="150 %",
        allowed=("0 %", "600 %"),
        usual=("50 %", "300 %"),
        measure="Of its dry weight; 0 for dry yarn, about 150 when squeezed.",
    )
    acid = Input[str](
        CHOICE,
        "Acid or alkali",
        record=RECORD.colorway.acid,
        default=CITRIC,
        options=(
            Option(CITRIC, "Citric acid, crystals"),
            Option(LIQUID, "Vinegar or acetic acid, liquid"),
            Option(SODA, "No acid: soda ash, for reactive dye"),
            Option(NONE, "None in this recipe"),
        ),
    )
    WET = {acid: (LIQUID,)}
    acid_share = replace(
        ACID_SHARE,
        record=RECORD.colorway.acid_share,
        when={acid: (CITRIC, LIQUID)},
        measure="As pure acid. The pH decides: see “How sour is the bath?”.",
    )
    acid_strength = Input[float](
        CONCENTRATION,
        "Strength of the liquid",
        default="5 g/100 mL",
        allowed=("1 g/100 mL", "12 g/100 mL"),
        usual=("4 g/100 mL", "10 g/100 mL"),
        units=("g/100 mL", "g/L"),
        when=WET,
        strict=True,
        measure="As on the bottle. Dilute a stronger acid first.",
    )
    salt_share = Input[float | None](
        PERCENT,
        "Glauber’s salt, percent of the yarn",
        record=RECORD.colorway.salt_share,
        allowed=("0 %", "100 %"),
        usual=("0 %", "20 %"),
        optional=True,
        measure="Without its water. Blank for none.",
    )
    syringe = Input[float](
        VOLUME,
        "Syringe or cylinder holds",
        default="60 mL",
        allowed=("0.5 mL", "2 L"),
        usual=("5 mL", "250 mL"),
        units=("mL",),
        strict=True,
    )
    syringe_error = replace(
        SYRINGE_ERROR, label="It is good to", measure="Either way, for one filling."
    )
    lots = Input[int](
        COUNT, "Lots of this in the run", default="1", allowed=("1", "200"), usual=("1", "20")
    )
    soda = Input[float](
        CONCENTRATION,
        "Soda ash in the bath",
        default="10 g/L",
        allowed=("0.5 g/L", "40 g/L"),
        usual=("5 g/L", "20 g/L"),
        units=("g/L",),
        unit="g/L",
        when={acid: (SODA,)},
        strict=True,
        measure="Without water; washing soda is 2.7 times as much.",
    )
    salt_liter = Input[float | None](
        CONCENTRATION,
        "Salt in the bath, for plant fiber",
        allowed=("0 g/L", "120 g/L"),
        usual=("20 g/L", "100 g/L"),
        units=("g/L",),
        unit="g/L",
        optional=True,
        strict=True,
        measure="By the liter of bath. Blank for none.",
    )

    density = Between[float](NUMBER, "Density of the fiber, g/cm³")
    displaced = Between[float](VOLUME, "Room that the fiber itself takes up")
    room = Between[float](VOLUME, "Room that a skein takes, bath and all")
    most = Between[int](COUNT, "Skeins that a pot takes", fixed=True)
    fullest = Between[int](COUNT, "Skeins in the fullest pot", fixed=True)
    share = Between[float](NUMBER, "Share of the lot in the fullest pot")
    raised = Between[float](VOLUME, "By so much the yarn raises the fullest pot")
    carried = Between[float](VOLUME, "Water that the wet yarn brings")
    run_skeins = Between[int](COUNT, "Skeins in the run")
    over = Plain[float]()  # depth beyond what the table calls deep for the class, % of the fiber
    acid_by_weight = Plain[float]()  # strength of the liquid acid, % by weight
    acid_by_weight_off = Plain[float]()  # and how far off that may be, either way

    stock_total = Result[float](VOLUME, "Stocks in all", units=("mL",), finest=(1,))
    dye_total = Result[float](MASS, "Dye in all", units=("g",), finest=(0.01,))
    water = Result[float](
        VOLUME, "Water to top up", units=("L", "mL"), finest=(0.01, 10), floor=0.0
    )
    acid_pure = Result[float](MASS, "Acid, pure", units=("g",), finest=(0.1,))
    acid_volume = Result[float](VOLUME, "Acid, liquid", units=("mL",), finest=(1,), named=liquid)
    salt = Result[float](MASS, "Glauber’s salt", units=("g",), finest=(0.1,))
    soda_mass = Result[float](MASS, "Soda ash", units=("g",), finest=(1,))
    salt_bath = Result[float](MASS, "Salt", units=("g",), finest=(1,))
    bath = Result[float](VOLUME, "Bath in all", units=("L", "mL"), finest=(0.01, 10))
    potfuls = Result[int](COUNT, "Potfuls", rounding="up", fixed=True)
    level = Result[float](VOLUME, "The fullest pot, yarn and all", units=("L",), finest=(0.01,))
    goods = Result[float](MASS, "Yarn", units=("g", "oz"), finest=(1, 0.1))
    total_depth = Result[float](PERCENT, "Depth of shade", finest=(0.01,))
