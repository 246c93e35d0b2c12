"""What is asked of a bath before the drain, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, TEXT, Between, Case, Input, Option, Plain, Result
from ....core.table import read_table
from ....core.units import CONCENTRATION, MASS, NUMBER, TEMPERATURE, VOLUME
from ....held import RECORD
from ...inputs import LIMIT

NO_METAL, UNKNOWN = "none", "unknown"
SODA, OTHER = "soda-ash", "unknown-acid"
MORDANTS = read_table("safe", "mordants").rows
METALS = {row["key"]: row["metal_name"] for row in MORDANTS}  # by the mordant that brought it
ANY_PH, USUAL_PH = ("0", "14"), ("2", "12")


def _from_mordant(row: dict[str, str]) -> Option:
    salt = row["label"].partition(" (")[0].lower()
    return Option(row["key"], f"{row['metal_name'].capitalize()}, from {salt}")


class DrainCheck(Case):
    """A bath as it was measured, with the limits of the drain, and what is stirred in first."""

    drain = Input[str](
        CHOICE,
        "The drain leads to",
        default="sewer",
        options=(Option("sewer", "A public sewer"), Option("septic", "A septic tank")),
    )
    volume = Input[float](
        VOLUME,
        "Bath",
        default="9 L",
        allowed=("0.1 L", "1000 L"),
        usual=("1 L", "100 L"),
        units=("L", "qt", "gal"),
        unit="L",
        rough="5 %",
        strict=True,
    )
    ph = Input[float](
        NUMBER,
        "pH",
        default="4",
        allowed=ANY_PH,
        usual=USUAL_PH,
        rough="0.5",
        strict=True,
        measure="A strip is good to half a unit. Cool the sample first.",
    )
    temperature = Input[float](
        TEMPERATURE,
        "Temperature",
        default="35 °C",
        allowed=("0 °C", "105 °C"),
        usual=("5 °C", "100 °C"),
        units=("°C", "°F"),
        strict=True,
    )
    holds = Input[str](
        CHOICE,
        "The bath holds",
        default="acetic",
        options=(
            Option("acetic", "Vinegar or acetic acid"),
            Option("citric", "Citric acid"),
            Option("formic", "Formic acid"),
            Option(OTHER, "An acid, not known which"),
            Option(SODA, "Soda ash"),
        ),
    )
    alkalinity = Input[float](
        CONCENTRATION,
        "Alkalinity of the water",
        default="40 mg/L",
        allowed=("0 mg/L", "1000 mg/L"),
        usual=("10 mg/L", "400 mg/L"),
        units=("mg/L",),
        unit="mg/L",
        bench=RECORD.bench.alkalinity,
        rough="20 %",
        measure="As calcium carbonate: soft 20 to 60, hard 150 to 350.",
    )
    metal = Input[str](
        CHOICE,
        "Metal in it",
        default=NO_METAL,
        options=(
            Option(NO_METAL, "None was put in"),
            Option(UNKNOWN, "Not known, or in the dye (premetallized)"),
            *(_from_mordant(row) for row in MORDANTS),
        ),
    )
    WITH_METAL = {metal: tuple(METALS)}
    metal_amount = Input[float](
        CONCENTRATION,
        "How much metal",
        default="34 mg/L",
        allowed=("0 mg/L", "100000 mg/L"),
        usual=("0.1 mg/L", "2000 mg/L"),
        units=("mg/L",),
        unit="mg/L",
        when=WITH_METAL,
        rough="30 %",
    )
    own_low = Input[float | None](
        NUMBER, "Local lower pH", optional=True, allowed=ANY_PH, usual=USUAL_PH, strict=True
    )
    own_high = Input[float | None](
        NUMBER, "Local upper pH", optional=True, allowed=ANY_PH, usual=USUAL_PH, strict=True
    )
    own_heat = Input[float | None](
        TEMPERATURE,
        "Local limit of temperature",
        optional=True,
        allowed=("10 °C", "100 °C"),
        usual=("30 °C", "66 °C"),
        units=("°C", "°F"),
        strict=True,
    )
    own_metal = Input[float | None](
        CONCENTRATION,
        "Local limit of the metal",
        optional=True,
        allowed=("0.001 mg/L", "1000 mg/L"),
        usual=("0.1 mg/L", "50 mg/L"),
        units=("mg/L",),
        unit="mg/L",
        when=WITH_METAL,
        strict=True,
    )
    own_source = Input[str | None](
        TEXT,
        "Where the local limits stand",
        optional=True,
        longest=60,
        measure="Name of the rule and the day you read it.",
    )

    low = Between[float](NUMBER, "Lower limit of pH")
    high = Between[float](NUMBER, "Upper limit of pH")
    heat_limit = Between[float](TEMPERATURE, "Limit of temperature")
    below_low = Between[float](NUMBER, "Below the lower limit by")
    hotter = Between[float](NUMBER, "Above the temperature limit by, °C")
    chemical = Plain[str](fixed=True)  # what is stirred in, by its key; "" for nothing
    content = Plain[str]()  # what the bath is reckoned to hold, by its key
    strength = Plain[float](fixed=True)  # g of that in a liter
    target = Between[float](NUMBER, "pH aimed at")
    dose_held = Between[float](MASS, "To that pH, carbon dioxide held")
    ph_without_gas = Between[float](
        NUMBER, "pH once carbon dioxide has left: no dose is needed then"
    )
    dose_off = Between[float](MASS, "To that pH, carbon dioxide driven off")

    first = Result[float](MASS, "Stir in first", units=("g", "oz"), finest=(0.1, 0.01), floor=0.0)
    dose = Result[float](MASS, "In all about", units=("g", "oz"), finest=(0.1, 0.01), floor=0.0)
    held = Result[float](
        MASS, "Acid or soda that this pH means", units=("g",), finest=(0.1,), floor=0.0
    )
    metal_mass = Result[float](
        MASS, "Metal in the bath", units=("g",), finest=(0.01,), rounding="up", floor=0.0
    )
    limit = replace(LIMIT)
