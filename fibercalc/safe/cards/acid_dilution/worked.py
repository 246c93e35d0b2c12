"""How much strong acid and how much water, and what both bottles are by published limits."""

from __future__ import annotations

from ....core.problem import Refused
from ....core.steps import looked_up
from ....core.table import read_table
from ...acids import densities_around, density_between
from ...dilution import acid_for_mass, mass_of_volume, water_volume
from ...label import classes, signal_word, to_ask
from ...limits import published
from .asked import BY_VOLUME, AcidDilution

STRONGEST_CITRIC = 50.0  # %: as strong as it stays dissolved and is tabled


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
            AcidDilution.wanted,
        )
    if case.acid == "citric" and case.have > STRONGEST_CITRIC:
        raise Refused(
            f"Strength you have: citric acid is a solution up to {STRONGEST_CITRIC:g} %; weigh"
            " crystals as a stock solution instead.",
            AcidDilution.have,
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
