"""What is asked of two strengths of an acid, and what follows from them."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, TEXT, Between, Case, Input, Many, Option, Result
from ....core.outcome import Outcome
from ....core.units import DENSITY, MASS, PERCENT, VOLUME
from ...inputs import LIMIT
from ...liquids import liquid_name

BY_MASS, BY_VOLUME = "mass", "volume"
MINERAL = (
    "mineral acids are left out: they spit, fume and burn far worse, and dyers have no need of"
    " them; buy them ready diluted or not at all"
)


def named_by_strength(out: Outcome[AcidDilution], percent: float) -> str:
    """The acid of one of the two bottles."""
    acid, written = out.case.acid, out.amount(percent, PERCENT)
    return f"{written} citric acid" if acid == "citric" else liquid_name(acid, percent, written)


class AcidDilution(Case):
    """An acid of one strength, and so much of a weaker one made from it."""

    acid = Input[str](
        CHOICE,
        "Acid",
        default="acetic",
        refused=dict.fromkeys(
            (
                "sulfuric",
                "sulphuric",
                "hydrochloric",
                "muriatic",
                "nitric",
                "phosphoric",
                "hydrofluoric",
                "mineral",
            ),
            MINERAL,
        ),
        options=(
            Option("acetic", "Acetic (vinegar)"),
            Option("citric", "Citric, in solution"),
            Option("formic", "Formic"),
        ),
        measure="A closed list: mineral acids are refused.",
    )
    have = Input[float](
        PERCENT,
        "Strength you have",
        default="50",
        allowed=("1", "100"),
        usual=("5", "99"),
        rough="1",
        strict=True,
        measure="% by weight, from the bottle’s label or data sheet.",
    )
    wanted = Input[float](
        PERCENT,
        "Strength wanted",
        default="5",
        allowed=("0.1", "99"),
        usual=("1", "30"),
        strict=True,
    )
    by = Input[str](
        CHOICE,
        "You measure the weak acid",
        default=BY_VOLUME,
        options=(Option(BY_VOLUME, "by volume"), Option(BY_MASS, "by weight")),
    )
    mass = Input[float](
        MASS,
        "Weak acid wanted",
        default="1000 g",
        allowed=("10 g", "50 kg"),
        usual=("100 g", "5 kg"),
        units=("g", "kg", "oz"),
        when={by: (BY_MASS,)},
        strict=True,
    )
    volume = Input[float](
        VOLUME,
        "Weak acid wanted",
        default="1 L",
        allowed=("10 mL", "50 L"),
        usual=("100 mL", "5 L"),
        units=("L", "mL", "qt"),
        when={by: (BY_VOLUME,)},
        strict=True,
    )

    density = Many(DENSITY, "Density at {}")
    have_density = Between[float](DENSITY, "Density of what you have")
    wanted_density = Between[float](DENSITY, "Density of the weak acid")
    total = Between[float](MASS, "Weight of the weak acid")

    water_volume = Result[float](VOLUME, "1. Water first", units=("mL",), finest=(1,), floor=0.0)
    acid_volume = Result[float](
        VOLUME,
        "2. Strong acid into it",
        units=("mL",),
        finest=(0.5,),
        floor=0.0,
        named=lambda out: f"2. {named_by_strength(out, out.case.have)} into it",
    )
    acid_mass = Result[float](MASS, "or by weight: acid", units=("g",), finest=(0.1,), floor=0.0)
    water_mass = Result[float](MASS, "and water", units=("g",), finest=(1,), floor=0.0)
    strong_class = Result[str](TEXT, "The strong acid is")
    weak_class = Result[str](TEXT, "The weak acid is")
    limit = replace(LIMIT)
