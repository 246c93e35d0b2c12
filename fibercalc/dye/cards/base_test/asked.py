"""What is asked of a new base, and what follows from it."""

from __future__ import annotations

from ....core.card import TEXT, Between, Case, Input, Plain, Result, Row, Rows
from ....core.units import LENGTH, MASS, NUMBER, PERCENT


class Dye(Row):
    """One dye, tried on both bases."""

    name = Input[str](TEXT, "Name", default="red", longest=20)
    usual = Input[float](
        PERCENT,
        "Depth on the usual base",
        default="1 %",
        allowed=("0.01 %", "12 %"),
        rough="2 % of it",
        strict=True,
    )
    new = Input[float](
        PERCENT,
        "Depth on this base that matches it",
        default="1 %",
        allowed=("0.01 %", "12 %"),
        rough="5 % of it",
        strict=True,
    )

    factor = Between[float](NUMBER, "Depth factor")


class BaseTest(Case):
    """Dyes and a test skein tried on a new base, and whether the usual recipes hold on it."""

    dyes = Rows(
        Dye,
        "Dyes tested",
        "dye",
        least=1,
        most=10,
        measure=(
            "Dye small skeins of both bases; find the depth on the new one that looks like the"
            " usual one."
        ),
        default=(
            {"name": "navy", "usual": "0.62 %", "new": "0.70 %"},
            {"name": "black", "usual": "0.24 %", "new": "0.26 %"},
            {"name": "brown", "usual": "0.04 %", "new": "0.043 %"},
        ),
    )
    length_before = Input[float](
        LENGTH,
        "Length before",
        default="21 m",
        allowed=("0.5 m", "2000 m"),
        usual=("5 m", "100 m"),
        rough="0.5 %",
        units=("m", "yd"),
        measure="Of the test skein, rested, the same way both times.",
    )
    length_after = Input[float](
        LENGTH,
        "Length after dyeing",
        default="20.4 m",
        allowed=("0.1 m", "2000 m"),
        usual=("5 m", "100 m"),
        rough="0.5 %",
        units=("m", "yd"),
    )
    mass_before = Input[float](
        MASS,
        "Weight before",
        default="5.00 g",
        allowed=("0.5 g", "1 kg"),
        usual=("3 g", "100 g"),
        rough="0.02 g",
        units=("g", "oz"),
        measure="As dry as after.",
    )
    mass_after = Input[float](
        MASS,
        "Weight after",
        default="4.92 g",
        allowed=("0.1 g", "1 kg"),
        usual=("3 g", "100 g"),
        rough="0.02 g",
        units=("g", "oz"),
    )

    verdicts = Plain[tuple[str, str, str]]()  # of the dyes, the length, the weight

    verdict = Result[str](TEXT, "Go or no-go")
    mean_factor = Result[float](NUMBER, "Depth factor, mean", finest=(0.01,), floor=0.0)
    apart = Result[float](NUMBER, "Largest factor over smallest", finest=(0.01,), floor=0.0)
    longer = Result[float](PERCENT, "Change of length", finest=(0.1,))
    heavier = Result[float](PERCENT, "Change of weight", finest=(0.1,))
