"""What is asked of a load, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Input, Option, Result
from ....core.table import read_table
from ....core.units import ANGLE, COUNT, LENGTH, MASS, NUMBER, VOLUME
from ...inputs import LIMIT

BOX, BUCKET, HOT = "box", "bucket", "hot"
HOURS = {"hour": "Up to 1 hour", "two": "1 to 2 hours", "eight": "2 to 8 hours"}
LOAD = Input[str](
    CHOICE,
    "The load",
    default=BUCKET,
    options=(
        Option(BUCKET, "Wet skeins in a lidded bucket, cold"),
        Option(BOX, "A box, cold and stable"),
        Option(HOT, "A hot or open pot"),
    ),
)
COLD, IN_POT = {LOAD: (BOX, BUCKET)}, {LOAD: (HOT,)}


def _cm(
    label: str, default: str, allowed: tuple[str, str], usual: tuple[str, str], measure: str = ""
) -> Input[float]:
    return Input(
        LENGTH,
        label,
        default=default,
        allowed=allowed,
        usual=usual,
        rough="3 cm",
        units=("cm", "in"),
        unit="cm",
        when=COLD,
        measure=measure,
    )


class Lift(Case):
    """One way of lifting a cold, closed load, or a hot pot that is to be bailed out instead."""

    load = LOAD
    volume = Input[float](
        VOLUME,
        "Bath in the pot",
        default="9 L",
        allowed=("0.1 L", "500 L"),
        usual=("1 L", "60 L"),
        units=("L", "qt", "gal"),
        when=IN_POT,
    )
    jug = Input[float](
        VOLUME,
        "Jug to bail with",
        default="1 L",
        allowed=("0.1 L", "10 L"),
        usual=("0.5 L", "3 L"),
        units=("L", "qt"),
        when=IN_POT,
    )
    mass = Input[float](
        MASS,
        "Weight",
        default="8 kg",
        allowed=("0.1 kg", "100 kg"),
        usual=("1 kg", "30 kg"),
        rough="5 %",
        units=("kg", "lb", "g"),
        unit="kg",
        when=COLD,
        measure="Skeins from the spinner weigh about 1.5 times their dry weight, dripping ones 3"
        " times.",
    )
    reach = _cm(
        "Hands in front of the ankles",
        "35 cm",
        ("0 cm", "120 cm"),
        ("25 cm", "63 cm"),
        "From between the ankles to between the hands, at the farther end of the lift.",
    )
    start = _cm(
        "Hands at the start, from the floor", "40 cm", ("0 cm", "220 cm"), ("0 cm", "150 cm")
    )
    end = _cm("Hands at the end, from the floor", "90 cm", ("0 cm", "220 cm"), ("0 cm", "175 cm"))
    angle = Input[float](
        ANGLE,
        "Turn of the trunk",
        default="30°",
        allowed=("0°", "180°"),
        usual=("0°", "90°"),
        rough="10°",
        when=COLD,
    )
    often = Input[float](
        NUMBER,
        "Lifts in a minute",
        default="0.2",
        allowed=("0.01", "15"),
        usual=("0.02", "9"),
        when=COLD,
        measure="Once in five minutes is 0.2.",
    )
    lasting = Input[str](
        CHOICE,
        "For",
        default="hour",
        options=tuple(Option(key, words) for key, words in HOURS.items()),
        when=COLD,
    )
    grip = Input[str](
        CHOICE,
        "Grip",
        default="fair",
        options=tuple(
            Option(row["key"], row["label"]) for row in read_table("safe", "lift-grip").rows
        ),
        when=COLD,
    )

    horizontal = Between[float](NUMBER, "How far in front")
    vertical = Between[float](NUMBER, "Height of the hands, the worse end")
    travel = Between[float](NUMBER, "How far up or down")
    twist = Between[float](NUMBER, "Turning")
    frequency = Between[float](NUMBER, "How often and how long")
    coupling = Between[float](NUMBER, "Grip")

    rwl = Result[float](
        MASS,
        "Recommended weight limit",
        units=("kg", "lb"),
        finest=(0.1, 0.2),
        rounding="down",
        floor=0.0,
        unit="kg",
    )
    index = Result[float](NUMBER, "Load over the limit", finest=(0.01,), rounding="up", floor=0.0)
    jugs = Result[float](COUNT, "Jugs to bail")
    limit = replace(LIMIT)
