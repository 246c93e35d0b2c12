"""What is asked about a skein that is painted by hand, and what follows."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, TEXT, Between, Case, Input, Option, Result, Row, Rows
from ....core.table import read_table
from ....core.units import CONCENTRATION, COUNT, MASS, NUMBER, PERCENT, TIME, VOLUME
from ...inputs import DYED_SKEIN, STRENGTH

STEAM_TIMES = "steam-times"
STEAM = {row["key"]: row for row in read_table("dye", STEAM_TIMES).rows}


class Section(Row):
    """One painted section: its share of the way around, and what goes on it."""

    name = Input[str](TEXT, "Name", default="another", longest=20, lent=False)
    share = Input[float](NUMBER, "Share", default="10", allowed=("0.5", "1000"))
    depth = Input[float](
        PERCENT,
        "Depth",
        default="0.5 %",
        allowed=("0 %", "8 %"),
        usual=("0.05 %", "4 %"),
        strict=True,
    )

    mass = Between[float](MASS, "Yarn")
    volume = Between[float](VOLUME, "Liquor")
    strength = Between[float](CONCENTRATION, "Strength of its liquor")
    stock = Between[float](VOLUME, "Stock in it")
    run_stock = Between[float](VOLUME, "Stock for all skeins")
    run_water = Between[float](VOLUME, "Water, soured, for all skeins")


class PaintPlan(Case):
    """Skeins painted in sections: the liquor of each and its stock, and the rounds of steam."""

    skein_mass = replace(DYED_SKEIN, label="A skein weighs, dry", allowed=("1 g", "2 kg"))
    full = Input[float](
        PERCENT,
        "Wet through it holds, percent of dry",
        default="250 %",
        allowed=("10 %", "1000 %"),
        usual=("150 %", "400 %"),
        rough="20 %",
        measure="Weigh a skein dry, then dripping wet laid flat: the water over the dry weight.",
    )
    damp = Input[float](
        PERCENT,
        "Before painting it holds",
        default="80 %",
        allowed=("0 %", "900 %"),
        usual=("0 %", "150 %"),
        rough="10 %",
        measure="Soaked and spun or squeezed; 0 for dry yarn.",
    )
    sections = Rows(
        Section,
        "Sections",
        "section",
        least=1,
        most=12,
        measure="Around the skein. What the shares add up to is the whole.",
        default=(
            {"name": "slate", "share": "50", "depth": "0.9 %"},
            {"name": "rust", "share": "20", "depth": "1.2 %"},
            {"name": "cream", "share": "30", "depth": "0.05 %"},
        ),
    )
    stock = replace(
        STRENGTH,
        label="Strength of the stocks",
        default="2 g/100 mL",
        usual=("0.5 g/100 mL", "5 g/100 mL"),
    )
    skeins = Input[int](COUNT, "Skeins", default="4", allowed=("1", "200"), usual=("1", "40"))
    at_once = Input[int](
        COUNT, "Skeins in the steamer at once", default="4", allowed=("1", "100"), usual=("1", "12")
    )
    fiber = Input[str](
        CHOICE,
        "Fiber and dye",
        default="superwash-wool",
        options=tuple(Option(key, row["label"]) for key, row in STEAM.items()),
    )

    least_steam = Between[float](TIME, "Steam for one round, at the least", unit="min")
    most_steam = Between[float](TIME, "Steam for one round, at the most", unit="min")

    liquor = Result[float](
        VOLUME, "Liquor that one skein takes up", units=("mL",), finest=(1,), floor=0.0
    )
    run_liquor = Result[float](
        VOLUME,
        "Liquor for all skeins",
        units=("mL", "L"),
        finest=(10, 0.1),
        rounding="up",
        floor=0.0,
    )
    stock_all = Result[float](
        VOLUME, "Stocks in it", units=("mL",), finest=(1,), rounding="up", floor=0.0
    )
    rounds = Result[int](COUNT, "Rounds in the steamer", rounding="up")
    steaming = Result[float](
        TIME,
        "Steaming in all, once hot",
        units=("min", "h"),
        finest=(5, 0.1),
        floor=0.0,
        timer=True,
    )
