"""Weaker acid from stronger: acetic, citric and formic only."""

from __future__ import annotations

from ...core.answer import Picture
from ...core.card import (
    CHOICE,
    STANDARD,
    TEXT,
    Basis,
    Between,
    Card,
    Carry,
    Case,
    Caution,
    Input,
    Many,
    Option,
    Result,
)
from ...core.outcome import Outcome
from ...core.problem import Refused
from ...core.steps import looked_up
from ...core.table import read_table
from ...core.units import DENSITY, MASS, PERCENT, VOLUME
from ...sources import ARITHMETIC, CLP_ANNEXES, CLP_MEMORY, DENSITY_TABLE, HANDBOOK_DENSITIES
from ..acids import densities_around, density_between
from ..dilution import acid_for_mass, mass_of_volume, water_volume
from ..label import classes, signal_word, to_ask
from ..limits import published
from ..liquids import liquid_name
from ..pictures.mixing import water_then_acid

BY_MASS, BY_VOLUME = "mass", "volume"
MINERAL = (
    "mineral acids are left out: they spit, fume and burn far worse, and dyers have no need of"
    " them; buy them ready diluted or not at all"
)
STRONGEST_CITRIC = 50.0  # %: as strong as it stays dissolved and is tabled


class AcidDilution(Case):
    """An acid of one strength, and so much of a weaker one made from it."""

    acid = Input[str](
        CHOICE,
        "Acid",
        default="acetic",
        refused={
            word: MINERAL
            for word in (
                "sulfuric",
                "sulphuric",
                "hydrochloric",
                "muriatic",
                "nitric",
                "phosphoric",
                "hydrofluoric",
                "mineral",
            )
        },
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
        when={"by": (BY_MASS,)},
        strict=True,
    )
    volume = Input[float](
        VOLUME,
        "Weak acid wanted",
        default="1 L",
        allowed=("10 mL", "50 L"),
        usual=("100 mL", "5 L"),
        units=("L", "mL", "qt"),
        when={"by": (BY_VOLUME,)},
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
        named=lambda out: f"2. {_named(out, out.case.have)} into it",
    )
    acid_mass = Result[float](MASS, "or by weight: acid", units=("g",), finest=(0.1,), floor=0.0)
    water_mass = Result[float](MASS, "and water", units=("g",), finest=(1,), floor=0.0)
    strong_class = Result[str](TEXT, "The strong acid is")
    weak_class = Result[str](TEXT, "The weak acid is")
    limit = Result[str](TEXT, "Published limit")


def answer(case: AcidDilution) -> None:
    _refuse_what_cannot_be(case)
    case.have_density = _density(case, case.have)
    if case.by == BY_VOLUME:
        case.wanted_density = _density(case, case.wanted)
        case.total = mass_of_volume(case.volume, case.wanted_density)
        total = case.total
    else:
        total = case.mass
    case.acid_mass = acid_for_mass(total, case.wanted, case.have)
    case.water_mass = total - case.acid_mass
    case.acid_volume = case.acid_mass / case.have_density
    case.water_volume = water_volume(case.water_mass)
    case.strong_class = _class(case.acid, case.have)
    case.weak_class = _class(case.acid, case.wanted)
    case.limit = published(
        _limits(case.acid), "clp-annexes" if case.acid == "acetic" else "clp-memory"
    )


def _refuse_what_cannot_be(case: AcidDilution) -> None:
    if case.wanted >= case.have:
        raise Refused(
            f"Strength wanted: {case.wanted:g} % is not weaker than the {case.have:g} % you have;"
            " give less.",
            "wanted",
        )
    if case.acid == "citric" and case.have > STRONGEST_CITRIC:
        raise Refused(
            f"Strength you have: citric acid is a solution up to {STRONGEST_CITRIC:g} %; weigh"
            " crystals as a stock solution instead.",
            "have",
        )


def _density(case: AcidDilution, percent: float) -> float:
    """Density of the acid at a strength, from the two tabled ones around it."""
    ends: list[float] = []
    for row in densities_around(case.acid, percent):
        tabled = f"{row['percent']:g} %"
        if tabled not in case.density:
            case.density[tabled] = looked_up(
                "safe", "stock-densities", "key", row["key"], "density"
            )
        ends += [row["percent"], case.density[tabled]]
    return density_between(percent, *ends)


def _class(acid: str, percent: float) -> str:
    found, asked = classes({acid: percent}), to_ask({acid: percent})
    ask = f"; ask about {', '.join(asked)}" if asked else ""
    if not found:
        return f"below the limits for skin and eyes{ask}"
    names = ", ".join(dict.fromkeys(found.values()))
    return f"{signal_word((*found, *asked))}: {', '.join(found)} ({names}){ask}"


def _limits(acid: str) -> str:
    row = read_table("safe", "label-limits").row("key", acid)
    if row["corr"] == "":
        return f"eye irritation from {row['eye']:g} %"
    return f"burns from {row['corr']:g} %, irritates from {row['irrit']:g} %"


def say(out: Outcome[AcidDilution]) -> tuple[str, ...]:
    water, acid = out.text(AcidDilution.water_volume), out.text(AcidDilution.acid_volume)
    have, wanted = _named(out, out.case.have), _named(out, out.case.wanted)
    return (
        (
            f"Put in {water} of cool water first, then {acid} ({out.text(AcidDilution.acid_mass)})"
            f" of {have}, slowly, stirring."
        ),
        (
            f"That makes {_made(out)} of {wanted}. The strong acid is {out.case.strong_class}; the"
            f" weak one is {out.case.weak_class}."
        ),
    )


def _named(out: Outcome[AcidDilution], percent: float) -> str:
    """The acid of one of the two bottles."""
    acid, written = out.case.acid, out.amount(percent, PERCENT)
    return f"{written} citric acid" if acid == "citric" else liquid_name(acid, percent, written)


def _made(out: Outcome[AcidDilution]) -> str:
    if out.case.by == BY_MASS:
        return out.amount(out.case.mass, MASS, "g")
    return out.amount(out.case.volume, VOLUME, "L" if out.case.volume >= 1000 else "mL")


def notes(out: Outcome[AcidDilution]) -> list[str]:
    said = [
        (
            "Volumes do not add up exactly when acid meets water; weights do. By weight is better"
            " where a scale can stand on a tray."
        ),
        f"Mineral acids (sulfuric, hydrochloric, nitric, phosphoric) are refused here: {MINERAL}.",
    ]
    if out.case.acid != "acetic":
        said.append(
            "The limits for this acid are from memory, unverified: the supplier’s data sheet"
            " decides."
        )
    return said


def picture(out: Outcome[AcidDilution]) -> Picture:
    return water_then_acid(
        out.value(AcidDilution.water_mass),
        out.value(AcidDilution.acid_mass),
        out.text(AcidDilution.water_volume),
        f"{out.text(AcidDilution.acid_volume)} of {out.amount(out.case.have, PERCENT)}",
    )


CARD = Card(
    id="acid-dilution",
    chapter="safe",
    place=10,
    tall_sheet=True,
    question="How do I make weaker acid from stronger?",
    case=AcidDilution,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        STANDARD,
        "The pure acid stays the same. Densities at 20 °C stand between tabled values; classes are"
        " by the regulation’s limits, % by weight.",
    ),
    sources=(CLP_ANNEXES, CLP_MEMORY, DENSITY_TABLE, HANDBOOK_DENSITIES, ARITHMETIC),
    cautions=(
        Caution(
            "Acid into water, slowly, stirring; never water into acid.",
            "Goggles and gloves on first, window open, cool water, away from children and food."
            " Strong acid in the eye or on skin: rinse at once, go on rinsing, get help.",
        ),
        Caution(
            "Nothing else into it.",
            "No bleach, no hydrosulfite, no peroxide. Label the bottle; never a drinks bottle. The"
            " data sheet decides.",
        ),
    ),
    carry=(
        Carry(
            "hazard-label",
            "What goes on the bottle?",
            {
                "contents": lambda out: [
                    {"what": out.case.acid, "strength": f"{out.case.wanted:.4g}%"}
                ]
            },
        ),
    ),
    handles=("acid",),
)
