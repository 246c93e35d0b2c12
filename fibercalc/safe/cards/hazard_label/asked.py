"""What is asked of a bottle's contents, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, TEXT, Between, Case, Input, Option, Plain, Result, Row, Rows
from ....core.table import read_table
from ....core.units import NUMBER, PERCENT
from ...inputs import LIMIT

SUBSTANCES = tuple(
    Option(row["key"], row["label"]) for row in read_table("safe", "label-limits").rows
)


class Substance(Row):
    """One substance in the bottle, with the limits that its strength is set beside."""

    what = Input[str](CHOICE, "Substance", default="acetic", options=SUBSTANCES)
    strength = Input[float](
        PERCENT,
        "Strength",
        default="10",
        allowed=("0.01", "100"),
        usual=("0.5", "100"),
        rough="",
        strict=True,
        measure="% by weight.",
    )

    burns_limit = Between[float](PERCENT, "Limit for severe burns")
    skin_limit = Between[float](PERCENT, "Limit for skin irritation")
    damage_limit = Between[float](PERCENT, "Limit for eye damage")
    eyes_limit = Between[float](PERCENT, "Limit for eye irritation")
    oral_estimate = Between[float](NUMBER, "Swallowed, acute toxicity estimate, mg/kg")
    vapor_estimate = Between[float](NUMBER, "Vapor inhaled, acute toxicity estimate, mg/L")


class HazardLabel(Case):
    """What is in a bottle, and the statements that its label needs by published limits."""

    contents = Rows(
        Substance,
        "In the bottle",
        "substance",
        least=1,
        most=6,
        measure="What is not listed is water, or not classified by its own data sheet.",
        default=({"what": "dye-unknown", "strength": "1"}, {"what": "acetic", "strength": "5"}),
    )
    ph = Input[float | None](
        NUMBER,
        "pH, if measured",
        default="",
        allowed=("0", "14"),
        usual=("2", "12"),
        optional=True,
        strict=True,
        measure="2 and less, 11.5 and more count as burning the skin, unless data say otherwise.",
    )

    together = Between[float](PERCENT, "All of them together")
    oral_estimate = Between[float](
        NUMBER, "Swallowed: acute toxicity estimate of the mixture, mg/kg"
    )
    vapor_estimate = Between[float](
        NUMBER, "Vapor inhaled: acute toxicity estimate of the mixture, mg/L"
    )
    sure = Plain[dict[str, str]]()
    asked = Plain[tuple[str, ...]]()
    missing = Plain[list[str]]()

    signal = Result[str](TEXT, "Signal word")
    codes = Result[str](TEXT, "Hazard statements")
    ask = Result[str](TEXT, "The data sheet decides on")
    classes = Result[str](TEXT, "Class")
    precautions = Result[str](TEXT, "Precautionary statements")
    burns = Result[float](NUMBER, "Severe burns, share of the limit", finest=(0.01,), rounding="up")
    skin = Result[float](
        NUMBER, "Skin irritation, share of the limit", finest=(0.01,), rounding="up"
    )
    damage = Result[float](NUMBER, "Eye damage, share of the limit", finest=(0.01,), rounding="up")
    eyes = Result[float](
        NUMBER, "Eye irritation, share of the limit", finest=(0.01,), rounding="up"
    )
    limit = replace(LIMIT)
