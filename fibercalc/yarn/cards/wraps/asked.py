"""What is asked about a wrapped yarn, and what follows from it."""

from __future__ import annotations

from ....core.card import CHOICE, Between, Case, Input, Option, Result, Row, Rows
from ....core.units import COUNT, LENGTH, LINEAR_DENSITY, NUMBER, PER_LENGTH
from ...wrapping import wrap_conventions

RELAXED = "relaxed"
PER_CM = 1 / 2.54  # the base unit of a count per length is per cm
CONVENTIONS = tuple(Option(row["name"], row["label"]) for row in wrap_conventions().rows)


class Try(Row):
    """One count of the turns, wrapped afresh."""

    turns = Input[int](
        COUNT, "Turns", default="35", allowed=("1", "400"), usual=("8", "80"), rough="0.5"
    )


class Wraps(Case):
    """A yarn wrapped over a width, and its length and weight where they are known."""

    convention = Input[str](CHOICE, "How you wrapped", default=RELAXED, options=CONVENTIONS)
    width = Input[float](
        LENGTH,
        "Width wrapped",
        default="2 in",
        allowed=("0.2 in", "39 in"),
        usual=("1 in", "4 in"),
        rough="0.02 in",
        units=("in", "cm", "mm"),
        unit="in",
        instrument="ruler",
        measure="Two inches (5 cm) or more, in the middle of the wrapping: the ends spread.",
    )
    tries = Rows(
        Try,
        "Turns counted",
        "try",
        least=1,
        most=8,
        measure="Unwind and wrap afresh each time. Three tries.",
        default=({"turns": "34"}, {"turns": "36"}, {"turns": "35"}),
    )
    grist = Input[float | None](
        LINEAR_DENSITY,
        "Its length and weight, if you know them",
        default="420 m/100 g",
        allowed=("5 tex", "20000 tex"),
        rough="2 %",
        optional=True,
        units=("m/100 g", "yd/100 g", "yd/lb", "tex", "yd/oz"),
        measure="From the label, or from a weighed length.",
    )

    turns = Between[float](NUMBER, "Turns, mean of the tries")
    k_middle = Between[float](NUMBER, "Ratio k, middle")
    k_low = Between[float](NUMBER, "Ratio k, low end")
    k_high = Between[float](NUMBER, "Ratio k, high end")
    finest = Between[float](LINEAR_DENSITY, "At most", unit="yd/lb")
    coarsest = Between[float](LINEAR_DENSITY, "At least", unit="yd/lb")

    wraps = Result[float](
        PER_LENGTH,
        "Wraps",
        unit="per in",
        units=("per in", "per cm"),
        finest=(0.5, 0.1),
        floor=0.1 * PER_CM,
    )
    by_wraps = Result[float](
        LINEAR_DENSITY,
        "Goes with, by wraps alone",
        unit="yd/lb",
        units=("yd/lb", "m/100 g"),
        finest=(10, 1),
    )
    by_label = Result[float](
        LINEAR_DENSITY, "By its length and weight", units=("yd/lb", "m/100 g"), finest=(1, 1)
    )
