"""What is asked of a yarn and of the one in its place, and what is found."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Chance, Input, Option, Result
from ....core.outcome import Outcome
from ....core.spread import Parts
from ....core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER, PERCENT
from ...inputs import PATTERN_ROWS, PATTERN_STITCHES, SKEIN_LENGTH, SKEIN_MASS
from ...odds import smallest_enough

SKEINS, LENGTH_GIVEN = "skeins", "length"


def spread_of(out: Outcome[YarnInstead]) -> Parts:
    """What lends to the range of the skeins needed."""
    return out.found[YarnInstead.skeins.name].parts or Parts()


def to_buy(out: Outcome[YarnInstead]) -> int:
    """The fewest skeins of mine that hold the length with the wished chance."""
    spread = spread_of(out)
    return smallest_enough(out.case.skeins, spread, float(out.case.sure) / 100)


SKEINS_NEEDED = Result[float](NUMBER, "In my skeins", finest=(0.01,), rounding="up", floor=0.0)


class YarnInstead(Case):
    """A pattern's yarn and one's own: the length that is asked for in skeins of the other."""

    theirs_mass = Input[float](
        MASS,
        "The pattern’s yarn: a skein weighs",
        default="50 g",
        allowed=("5 g", "2 kg"),
        usual=("20 g", "250 g"),
        units=("g", "oz"),
        measure="Both from the same line of the pattern: yards in 50 g are not meters in 100 g.",
    )
    theirs_length = Input[float](
        LENGTH,
        "A skein of theirs holds",
        default="115 yd",
        allowed=("5 m", "10000 m"),
        usual=("50 m", "900 m"),
        rough="1.5 %",
        units=("yd", "m"),
    )
    need_by = Input[str](
        CHOICE,
        "The pattern asks for",
        default=SKEINS,
        options=(Option(SKEINS, "So many skeins"), Option(LENGTH_GIVEN, "A length")),
    )
    theirs_skeins = Input[int](
        COUNT,
        "Skeins of theirs",
        default="8",
        allowed=("1", "100"),
        usual=("1", "25"),
        when={need_by: (SKEINS,)},
    )
    need_length = Input[float](
        LENGTH,
        "Length",
        default="920 yd",
        allowed=("5 m", "20000 m"),
        usual=("100 m", "2500 m"),
        units=("yd", "m"),
        when={need_by: (LENGTH_GIVEN,)},
    )
    stitches = replace(PATTERN_STITCHES, optional=True)
    rows = replace(PATTERN_ROWS, optional=True)
    mine_mass = replace(SKEIN_MASS, label="My yarn: a skein weighs")
    mine_length = replace(SKEIN_LENGTH, label="A skein of mine holds")
    sure = Input[str](
        CHOICE,
        "How sure of that length",
        default="95",
        options=tuple(Option(each, f"{each} in 100") for each in ("80", "90", "95")),
    )

    loop_constant = Between[float](NUMBER, "Loop constant Ks")
    stitch = Between[float](LENGTH, "Yarn in a stitch at the pattern’s gauge")

    buy = Result[int](COUNT, "Skeins of mine", rounding="up", decided=to_buy)
    enough = Result[float](
        PERCENT,
        "Chance that they hold that length",
        chance=Chance(SKEINS_NEEDED, below=lambda out: out.value(YarnInstead.buy)),
    )
    need = Result[float](
        LENGTH, "Length asked for", units=("yd", "m"), finest=(1, 1), rounding="up", floor=0.0
    )
    skeins = SKEINS_NEEDED
    mass = Result[float](
        MASS, "Its weight in my yarn", units=("g", "oz"), finest=(1, 0.1), rounding="up", floor=0.0
    )
    finer = Result[float](PERCENT, "More meters in a gram than theirs, by", finest=(1,))
    theirs_tex = Result[float](
        LINEAR_DENSITY, "Their yarn", units=("m/100 g", "yd/100 g", "tex"), finest=(1, 1, 1)
    )
    mine_tex = Result[float](
        LINEAR_DENSITY, "My yarn", units=("m/100 g", "yd/100 g", "tex"), finest=(1, 1, 1)
    )
    theirs_tight = Result[float](NUMBER, "Tightness with theirs", finest=(0.01,), floor=0.0)
    mine_tight = Result[float](NUMBER, "Tightness with mine", finest=(0.01,), floor=0.0)
