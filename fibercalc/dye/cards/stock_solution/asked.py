"""What is asked about a stock to make up, and what follows."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from ....core.card import CHOICE, DATE, TEXT, Between, Case, Input, Option, Result
from ....core.units import CONCENTRATION, MASS, NUMBER, PERCENT, VOLUME
from ....held import RECORD
from ...inputs import SCALE_ERROR, STRENGTH
from ...stock import keeping_losses

MAKE, USE_UP, DILUTE, EXTEND = "make", "use-up", "dilute", "extend"
KEEPING = "stock-keeping"
KINDS = {row["kind"]: row for row in keeping_losses().rows}
NO, YES = "no", "yes"
STRENGTHS = ("g/100 mL", "g/L")


class StockSolution(Case):
    """A stock made, thinned, extended or made of an odd amount of powder, and how it keeps."""

    do = Input[str](
        CHOICE,
        "What to do",
        default=MAKE,
        options=(
            Option(MAKE, "Make it from powder"),
            Option(USE_UP, "Use up an odd amount of powder"),
            Option(DILUTE, "Thin a stronger stock"),
            Option(EXTEND, "Extend what is left"),
        ),
    )
    POWDERED = {do: (MAKE, USE_UP, EXTEND)}
    VOLUMES = {do: (MAKE, DILUTE, EXTEND)}
    wanted = replace(
        STRENGTH,
        label="Strength wanted",
        allowed=("0.001 g/100 mL", "20 g/100 mL"),
        measure="1 g in 100 mL is a 1 % stock.",
    )
    volume = Input[float](
        VOLUME,
        "Final volume",
        default="500 mL",
        allowed=("5 mL", "50 L"),
        usual=("100 mL", "2 L"),
        units=("mL", "L"),
        when=VOLUMES,
        strict=True,
        measure="What the bottle will hold, dye and all.",
    )
    powder = Input[float](
        MASS,
        "Powder you have",
        default="3.7 g",
        allowed=("0.01 g", "2 kg"),
        usual=("0.5 g", "50 g"),
        units=("g", "oz"),
        when={do: (USE_UP,)},
        strict=True,
    )
    have = replace(
        STRENGTH,
        label="Strength of the strong stock",
        default="5 g/100 mL",
        allowed=("0.001 g/100 mL", "20 g/100 mL"),
        usual=("0.5 g/100 mL", "10 g/100 mL"),
        when={do: (DILUTE,)},
    )
    left = Input[float](
        VOLUME,
        "Stock left",
        record=RECORD.bottle.left,
        default="120 mL",
        allowed=("0 mL", "50 L"),
        usual=("10 mL", "1 L"),
        units=("mL", "L"),
        when={do: (EXTEND,)},
        strict=True,
    )
    strength_left = replace(
        STRENGTH,
        label="Strength of what is left",
        record=RECORD.bottle.strength,
        allowed=("0.001 g/100 mL", "20 g/100 mL"),
        when={do: (EXTEND,)},
    )
    jar = Input[str](
        CHOICE,
        "Does this jar differ in strength from the one your recipes are from?",
        default=NO,
        options=(Option(NO, "No, or not known"), Option(YES, "Yes")),
        when=POWDERED,
    )
    JARRED = {jar: (YES,), do: (MAKE, USE_UP, EXTEND)}
    old_jar = Input[float](
        NUMBER,
        "The old jar’s strength",
        default="100",
        allowed=("10", "400"),
        usual=("100", "200"),
        when=JARRED,
        strict=True,
        measure="As the maker marks it, 100 for usual.",
    )
    new_jar = Input[float](
        NUMBER,
        "This jar’s strength",
        record=RECORD.jar.strength,
        default="125",
        allowed=("10", "400"),
        usual=("100", "200"),
        when=JARRED,
        strict=True,
    )
    scale_error = replace(
        SCALE_ERROR,
        allowed=("0.0005 g", "5 g"),
        measure="Either way; a pocket scale that shows 0.01 g is good to about 0.02 g.",
    )
    jug_error = Input[float](
        VOLUME,
        "The jug or flask is good to",
        default="5 mL",
        allowed=("0.1 mL", "500 mL"),
        usual=("0.5 mL", "25 mL"),
        units=("mL",),
        strict=True,
    )
    kind = Input[str](
        CHOICE,
        "Kind of dye",
        default="acid",
        options=tuple(Option(key, row["label"]) for key, row in KINDS.items()),
    )
    weeks = Input[float](
        NUMBER, "Weeks it will stand", default="8", allowed=("0", "104"), usual=("1", "26")
    )
    name = Input[str](
        TEXT, "Name on the bottle", record=RECORD.jar.name, default="navy", longest=40
    )
    lot = Input[str | None](
        TEXT, "Lot of the jar", record=RECORD.jar.lot, default="", longest=24, optional=True
    )
    made = Input[date](DATE, "Made on", default="2027-01-11", today=True)
    hazards = Input[str | None](
        TEXT,
        "Hazard words of its safety data sheet",
        record=RECORD.jar.hazards,
        default="",
        longest=200,
        optional=True,
        measure="As the sheet has them; never guessed.",
    )

    active = Between[float](MASS, "That powder, in the usual jar’s grams")
    plain_powder = Between[float](MASS, "Powder, at the usual strength of the jar")
    if_added = Between[float](CONCENTRATION, "Strength if that much water were poured onto it")
    least_loss = Between[float](PERCENT, "Lost in a week, at the least")
    most_loss = Between[float](PERCENT, "Lost in a week, at the most")

    powder_to_weigh = Result[float](MASS, "Powder to weigh", units=("g",), finest=(0.01,))
    stock = Result[float](VOLUME, "Of the strong stock", units=("mL",), finest=(0.5,))
    water = Result[float](VOLUME, "Water, to the mark", units=("mL",), finest=(1,))
    final = Result[float](VOLUME, "Make it up to", units=("mL", "L"), finest=(1, 0.01))
    holds = Result[float](
        CONCENTRATION, "Powder in it, as weighed", units=("g/100 mL",), finest=(0.01,)
    )
    may_be_off = Result[float](
        PERCENT, "Strength may be off by, either way", finest=(0.1,), at_step=True
    )
    weakest = Result[float](
        CONCENTRATION, "After those weeks, at the weakest", units=("g/100 mL",), finest=(0.001,)
    )
    strongest = Result[float](
        CONCENTRATION, "at the strongest", units=("g/100 mL",), finest=(0.001,)
    )
