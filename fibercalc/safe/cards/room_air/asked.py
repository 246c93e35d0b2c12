"""What is asked of a room and its pots, and what follows for the air."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, TEXT, Between, Case, Input, Many, Option, Result, Row, Rows
from ....core.table import read_table
from ....core.units import CONCENTRATION, COUNT, LENGTH, NUMBER, PERCENT, TIME, VOLUME
from ...inputs import LIMIT

VAPOR, POWDER = "vapor", "powder"
NOBODY, PREGNANT, LUNGS, CHILDREN, FOOD = "none", "pregnant", "lungs", "children", "food"
KNOWN = "known"
AIR_TABLE, POT_TABLE, LIMITS = "air-choices", "vapor-choices", "exposure-limits"


def _options(table: str) -> tuple[Option, ...]:
    return tuple(Option(row["key"], row["label"]) for row in read_table("safe", table).rows)


class Spell(Row):
    """One spell of the day with a pot going, and the vapor that it lets off."""

    vapor = Input[str](CHOICE, "Vapor", default="acetic", options=_options(LIMITS))
    pot = Input[str](CHOICE, "The pot", default="simmer", options=_options(POT_TABLE))
    strength = Input[float](
        CONCENTRATION,
        "Pure acid in the bath",
        default="0.56 g/L",
        allowed=("0.001 g/L", "100 g/L"),
        usual=("0.05 g/L", "10 g/L"),
        units=("g/L", "g/100 mL"),
        strict=True,
        rough="20 %",
    )
    time = Input[float](
        TIME,
        "For",
        default="60 min",
        allowed=("1 min", "8 h"),
        usual=("5 min", "4 h"),
        units=("min", "h"),
        unit="h",
    )

    mass = Between[float](NUMBER, "G in a mole")
    henry = Between[float](NUMBER, "Solubility at 25 °C, mol/(m³ Pa)")
    slope = Between[float](NUMBER, "Its fall with heat, K")
    hot = Between[float](NUMBER, "Bath, °C")
    speed = Between[float](NUMBER, "Transfer, mm/s")
    moles = Between[float](NUMBER, "Mol in a m³ of bath")
    solubility = Between[float](NUMBER, "Solubility in the hot bath, mol/(m³ Pa)")
    pressure = Between[float](NUMBER, "Pressure over the bath, Pa")
    over_bath = Between[float](NUMBER, "Vapor over the bath, mg/m³")
    emitted = Between[float](NUMBER, "Vapor let off, mg in an hour")
    level = Between[float](NUMBER, "Level at the end, ppm")


class RoomAir(Case):
    """A room with its airing, the pots in it, and how near the air comes to published limits."""

    stop = Input[str](
        CHOICE,
        "Does one of these hold?",
        default=NOBODY,
        options=(
            Option(NOBODY, "None of them"),
            Option(PREGNANT, "Pregnant or nursing"),
            Option(LUNGS, "Asthma, or a dye allergy"),
            Option(CHILDREN, "Children or pets in the room"),
            Option(FOOD, "A kitchen for food"),
        ),
    )
    what = Input[str](
        CHOICE,
        "In the air",
        default=VAPOR,
        options=(Option(VAPOR, "Vapor of a bath"), Option(POWDER, "Dust of a dye")),
    )
    WITH_VAPOR = {what: (VAPOR,)}
    room = Input[float](
        VOLUME,
        "Room",
        default="30 m³",
        allowed=("3 m³", "2000 m³"),
        usual=("8 m³", "200 m³"),
        rough="10 %",
        units=("m³", "ft³"),
        unit="m³",
        measure="Length times width times height.",
    )
    air = Input[str](
        CHOICE,
        "Airing",
        default="window",
        options=(*_options(AIR_TABLE), Option(KNOWN, "I know the air changes")),
        measure="A fan moving 240 m³ in an hour gives a room of 30 m³ eight changes.",
    )
    changes = Input[float](
        NUMBER,
        "Air changes in an hour",
        default="2",
        allowed=("0.1", "60"),
        usual=("0.5", "20"),
        when={air: (KNOWN,)},
    )
    mixing = Input[float](
        NUMBER,
        "Mixing factor",
        default="5",
        allowed=("1", "10"),
        usual=("3", "10"),
        rough="2",
        measure="1 is perfect mixing; rooms with dead corners 3 to 10.",
    )
    pans = Input[int](
        COUNT, "Pots at once", default="2", allowed=("1", "20"), usual=("1", "6"), when=WITH_VAPOR
    )
    across = Input[float](
        LENGTH,
        "Width of a pot",
        default="28 cm",
        allowed=("5 cm", "200 cm"),
        usual=("15 cm", "60 cm"),
        units=("cm", "in"),
        unit="cm",
        when=WITH_VAPOR,
    )
    times = Rows(
        Spell,
        "Times of the day",
        "time",
        least=1,
        most=6,
        when=WITH_VAPOR,
        measure=(
            "Each spell with a pot going. Acid in the bath: 100 mL of 5 % vinegar in 9 L is"
            " 0.56 g/L."
        ),
        default=(
            {"vapor": "acetic", "pot": "simmer", "strength": "0.56 g/L", "time": "60 min"},
            {"vapor": "acetic", "pot": "simmer", "strength": "0.56 g/L", "time": "60 min"},
            {"vapor": "acetic", "pot": "simmer", "strength": "0.56 g/L", "time": "60 min"},
        ),
    )

    renewed = Between[float](NUMBER, "Air changes in an hour")
    fresh = Between[float](NUMBER, "Fresh air that counts, m³ in an hour")
    share_left = Between[float](NUMBER, "Share of a vapor that is left")
    area = Between[float](NUMBER, "Open surface, m²")
    mean = Many(NUMBER, "Mean over 8 hours, {}, ppm")

    controls = Result[str](TEXT, "Do first")
    index = Result[float](
        PERCENT, "Share of the 8-hour limit", finest=(1,), rounding="up", floor=0.0, product=True
    )
    short = Result[float](
        PERCENT, "Share of the 15-minute limit", finest=(1,), rounding="up", floor=0.0, product=True
    )
    peak = Result[float](
        NUMBER,
        "Highest level in the room, ppm",
        finest=(0.1,),
        rounding="up",
        floor=0.0,
        product=True,
    )
    ceiling = Result[float](
        PERCENT, "Share of the ceiling", finest=(1,), rounding="up", floor=0.0, product=True
    )
    idlh = Result[float](
        PERCENT,
        "Share of what is immediately dangerous (IDLH)",
        finest=(1,),
        rounding="up",
        floor=0.0,
        product=True,
    )
    clear = Result[float](
        TIME, "Until 1 % is left", units=("min", "h"), finest=(1, 0.1), rounding="up", floor=0.0
    )
    limit = replace(LIMIT)
