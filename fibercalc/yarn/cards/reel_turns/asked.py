"""What is asked about turns of a reel, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Chance, Input, Option, Plain, Result
from ....core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER, PERCENT
from ...inputs import AROUND, STRETCH

BY_LENGTH, BY_MASS, BY_TURNS = "length", "mass", "turns"


class ReelTurns(Case):
    """Turns of one reel for a wanted length or weight, or what some turns on it hold."""

    wanted_by = Input[str](
        CHOICE,
        "What you want",
        default=BY_LENGTH,
        options=(
            Option(BY_LENGTH, "A length"),
            Option(BY_MASS, "A weight"),
            Option(BY_TURNS, "I have the turns: what do they hold?"),
        ),
    )
    wanted_length = Input[float](
        LENGTH,
        "Wanted length",
        default="84 m",
        allowed=("0.1 m", "5000 m"),
        usual=("10 m", "1000 m"),
        units=("m", "yd"),
        when={wanted_by: (BY_LENGTH,)},
        measure="At rest, as it is promised.",
    )
    wanted_mass = Input[float](
        MASS,
        "Wanted weight",
        default="20 g",
        allowed=("0.1 g", "5 kg"),
        usual=("5 g", "250 g"),
        units=("g", "oz"),
        when={wanted_by: (BY_MASS,)},
        measure="Rested and dry, without ties.",
    )
    wanted_turns = Input[int](
        COUNT,
        "Turns on the reel",
        default="54",
        allowed=("1", "20000"),
        usual=("10", "600"),
        when={wanted_by: (BY_TURNS,)},
    )
    count = Input[float | None](
        LINEAR_DENSITY,
        "Count of the yarn",
        default="238 tex",
        allowed=("0.5 tex", "100000 tex"),
        usual=("15 tex", "2000 tex"),
        rough="2 %",
        optional=True,
        units=("tex", "yd/lb", "m/100 g", "yd/100 g", "Nm", "Ne", "Nw"),
        measure="For the weight of a turn. Leave it blank if only length matters.",
    )
    turn = replace(
        AROUND,
        allowed=("0.1 m", "10 m"),
        instrument="reel",
        measure="Measure on the yarn as it lies on the reel: unwind ten turns, lay them straight,"
        " divide by ten.",
    )
    stretch = replace(
        STRETCH,
        measure="How much longer the yarn is on the reel than at rest. 0 if you measured once"
        " around on rested yarn.",
    )

    length_for_weight = Between[float](LENGTH, "Length of that weight")
    wanted = Plain[float]()  # the length, however it was asked for

    turns = Result[int](COUNT, "Whole turns", rounding="up", fixed=True)
    length = Result[float](
        LENGTH, "Length of those turns", units=("yd", "m"), finest=(1, 0.1), rounding="down"
    )
    mass = Result[float](MASS, "Weight of those turns", units=("g", "oz"), finest=(0.1, 0.01))
    need = Result[float](NUMBER, "Turns needed, with the part turn", finest=(0.01,))
    margin = Result[float](LENGTH, "Over the wanted length", units=("m", "yd"), finest=(0.1, 0.1))
    short = Result[float](PERCENT, "Chance that it is short", chance=Chance(margin, below=0.0))
    rested_turn = Result[float](LENGTH, "One turn, rested", units=("in", "cm"), finest=(0.1, 0.1))
    turn_mass = Result[float](MASS, "Weight of one turn", units=("g", "oz"), finest=(0.001, 0.0001))
