"""What is asked of a bath that bleeds, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Input, Option, Plain, Result, Row, Rows
from ....core.units import MASS, NUMBER, PERCENT, VOLUME
from ....held import RECORD
from ...bleed import NO, UNKNOWN, YES, CarryOver, bleed_symptoms
from ...inputs import YARN_IN_BATH

SYMPTOMS = {row["symptom"]: row["question"] for row in bleed_symptoms().rows}
ASKED = (Option(UNKNOWN, "Not known"), Option(YES, "Yes"), Option(NO, "No"))


def _sign(symptom: str, default: str = UNKNOWN) -> Input[str]:
    return Input(CHOICE, SYMPTOMS[symptom], default=default, options=ASKED)


class Rinse(Row):
    """One rinse that was compared with the jars."""

    jar = Input[float](NUMBER, "Jar", default="8", allowed=("0", "16"))

    color = Between[float](PERCENT, "Color left in it")


class BleedCheck(Case):
    """A cooled bath and its rinses beside a ladder of jars, and what else was seen."""

    jar = Input[float](
        NUMBER,
        "The cooled bath matches jar",
        default="4",
        allowed=("0", "12"),
        usual=("1", "7"),
        measure=(
            "Jar 0 is the bath before the yarn; each next jar is half of the one before. Halves"
            " between two."
        ),
    )
    mass = replace(
        YARN_IN_BATH, record=RECORD.dye_lot.mass, allowed=("0.5 g", "50 kg"), usual=("20 g", "2 kg")
    )
    depth = Input[float](
        PERCENT,
        "Depth of shade, all dyes",
        default="0.9 %",
        allowed=("0.001 %", "20 %"),
        usual=("0.1 %", "5 %"),
        strict=True,
    )
    rinsed = Input[str](
        CHOICE,
        "Did you compare the rinses with the jars?",
        default=YES,
        options=(Option(YES, "Yes"), Option(NO, "No")),
    )
    RINSED = {rinsed: (YES,)}
    rinses = Rows(
        Rinse,
        "Rinses so far",
        "rinse",
        least=1,
        most=10,
        when=RINSED,
        measure="The jar that each rinse water matches.",
        default=({"jar": "5"}, {"jar": "8"}),
    )
    wanted = Input[float](
        PERCENT,
        "Pale enough at, percent of the first bath",
        default="0.2 %",
        allowed=("0.005 %", "20 %"),
        usual=("0.05 %", "1 %"),
        when=RINSED,
        measure="Jar 9 is 0.2 %.",
    )
    held = Input[float](
        VOLUME,
        "Water the squeezed yarn holds",
        default="600 mL",
        allowed=("1 mL", "100 L"),
        usual=("50 mL", "3 L"),
        units=("mL", "L"),
    )
    rinse = Input[float](
        VOLUME,
        "Clean water of one rinse",
        default="6 L",
        allowed=("0.05 L", "500 L"),
        usual=("1 L", "20 L"),
        units=("L", "mL"),
    )
    bath_colored = _sign("bath_colored", default=YES)
    rinses_fall = _sign("rinses_fall", default=YES)
    bleeds_again = _sign("bleeds_again")
    cloth_stain = _sign("cloth_stain")
    fibers_seen = _sign("fibers_seen")
    high_ph = _sign("high_ph")
    over_held = _sign("over_held")
    short_hold = _sign("short_hold")
    hard_water = _sign("hard_water")
    other_fiber = _sign("other_fiber")

    signs = Plain[dict[str, str]]()  # what was seen, by symptom
    readings = Plain[list[tuple[int, float]]]()  # number and color of each rinse
    slope = Between[float](NUMBER, "From rinse to rinse the logarithm of the color rises by")
    fit = Plain[CarryOver]()
    gives_off = Plain[bool]()  # whether the yarn itself gives off dye
    last = Between[float](PERCENT, "Color of the last rinse, on that line")

    left = Result[float](PERCENT, "Color left in the bath", finest=(0.1,), floor=0.0)
    exhausted = Result[float](PERCENT, "Gone onto the fiber", finest=(0.1,), floor=0.0)
    grams = Result[float](MASS, "Dye left in it", units=("g",), finest=(0.01,), floor=0.0)
    share = Result[float](PERCENT, "What a rinse leaves, fitted", finest=(1,), floor=0.0)
    by_water = Result[float](
        PERCENT, "What it would leave by its water alone", finest=(1,), floor=0.0
    )
    more = Result[float](NUMBER, "Rinses still to come", finest=(0.1,), rounding="up", floor=0.0)
