"""What is asked of a bath with acid or alkali in it, and what follows from it."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from ....core.card import CHOICE, Between, Case, Input, Many, Option, Plain, Result
from ....core.outcome import Outcome
from ....core.table import read_table
from ....core.units import CONCENTRATION, DENSITY, MASS, NUMBER, PERCENT, VOLUME
from ....safe.liquids import liquid_name
from ...inputs import BATH

AMOUNT, TARGET, SWAP = "amount", "target", "swap"
SOUR = ("citric", "citric-monohydrate", "acetic", "formic")
ALKALIS = ("ammonia", "soda-ash", "washing-soda", "bicarbonate")
LIQUIDS = ("acetic", "formic", "ammonia")
LABELS: dict[str, str] = {
    key: read_table("safe", "bath-chemicals").row("key", key)["label"] for key in (*SOUR, *ALKALIS)
}
CHEMICALS = tuple(Option(key, label) for key, label in LABELS.items())
WATERS = {row["water"]: row for row in read_table("dye", "tap-waters").rows}
KNOWN = "known"


def liquid(out: Outcome[Any], chemical: str, strength: float, kitchen: bool = True) -> str:
    """A liquid with its strength, and what the kitchen calls it."""
    return liquid_name(chemical, strength, out.amount(strength, PERCENT), kitchen)


class BathAcid(Case):
    """Water in a bath, the acid or alkali in it, and what another one in its place would be."""

    do = Input[str](
        CHOICE,
        "What you want",
        default=AMOUNT,
        options=(
            Option(AMOUNT, "The pH that an amount gives"),
            Option(TARGET, "The amount for a pH"),
            Option(SWAP, "Another acid for the same pH"),
        ),
    )
    liters = replace(BATH, default="8 L", allowed=("50 mL", "1000 L"))
    water = Input[str](
        CHOICE,
        "Water",
        default="soft",
        options=(
            *(Option(key, row["label"]) for key, row in WATERS.items()),
            Option(KNOWN, "Its alkalinity is known"),
        ),
    )
    alkalinity = Input[float](
        NUMBER,
        "Alkalinity, mg/L as calcium carbonate",
        default="40",
        allowed=("0", "1000"),
        usual=("10", "350"),
        rough="10 %",
        when={water: (KNOWN,)},
        strict=True,
        measure="From the supplier’s report; total hardness is not the same.",
    )
    chemical = Input[str](CHOICE, "Acid or alkali", default="citric", options=CHEMICALS)
    grams = Input[float](
        MASS,
        "How much, pure",
        default="4 g",
        allowed=("0 g", "20 kg"),
        usual=("0.5 g", "100 g"),
        rough="0.1 g",
        units=("g", "oz"),
        when={do: (AMOUNT, SWAP)},
        strict=True,
        measure="100 mL of 5 % vinegar holds 5 g.",
    )
    strength = Input[float](
        PERCENT,
        "Strength of the liquid, by weight",
        default="5 %",
        allowed=("1 %", "90 %"),
        usual=("4 %", "60 %"),
        when={chemical: LIQUIDS},
        strict=True,
    )
    target = Input[float](
        NUMBER,
        "pH wanted",
        default="4",
        allowed=("1", "13"),
        usual=("3", "10.5"),
        when={do: (TARGET,)},
        strict=True,
    )
    other = Input[str](
        CHOICE, "Instead of it", default="acetic", options=CHEMICALS, when={do: (SWAP,)}
    )
    other_strength = Input[float](
        PERCENT,
        "Strength of that liquid, by weight",
        default="5 %",
        allowed=("1 %", "90 %"),
        usual=("4 %", "60 %"),
        when={do: (SWAP,), other: LIQUIDS},
        strict=True,
    )
    strip = Input[float | None](
        NUMBER,
        "What a pH strip says",
        allowed=("0", "14"),
        usual=("2", "11"),
        optional=True,
        strict=True,
        measure="In a cooled sample; a strip is good to half a step.",
    )

    # As asked, or as a word for tap water means it.
    alkaline = Between[float](
        CONCENTRATION, "Alkalinity of the water, as calcium carbonate", unit="mg/L"
    )
    salts = Plain[float]()  # ionic strength, mol/L
    density = Many(DENSITY, "Density of {}")

    ph = Result[float](NUMBER, "pH, water alone, before fiber", finest=(0.05,))
    pure = Result[float](
        MASS, "Acid or alkali, pure", units=("g", "oz"), finest=(0.1, 0.01), floor=0.0
    )
    volume = Result[float](
        VOLUME,
        "as the liquid",
        units=("mL",),
        finest=(0.1,),
        floor=0.0,
        named=lambda out: f"as {liquid(out, out.case.chemical, out.case.strength)}",
    )
    other_grams = Result[float](
        MASS, "The other one, pure", units=("g", "oz"), finest=(0.1, 0.01), floor=0.0
    )
    other_volume = Result[float](
        VOLUME,
        "as its liquid",
        units=("mL",),
        finest=(0.1,),
        floor=0.0,
        named=lambda out: f"as {liquid(out, out.case.other, out.case.other_strength)}",
    )
