"""How far a bath lies from its limits, and what brings its pH between them."""

from __future__ import annotations

from ....core.arithmetic import largest, smallest
from ....core.problem import OutOfRange, Refused
from ....core.steps import looked_up, solved
from ....core.table import read_table
from ....core.traced import Named, named
from ...acids import bath_ph
from ...drain import FIRST_SHARE, doses, held_acid, held_soda
from ...limits import published
from .asked import NO_METAL, OTHER, SODA, UNKNOWN, DrainCheck

AIM_LOW, AIM_HIGH, AIM = 6.0, 9.0, 7.0  # aimed at: common practice
MARGIN = 0.3  # between what is aimed at and a limit
# g in a liter: twice what any recipe for acid or soda brings to a bath (our own edge); beyond it
# no dose is told
STRONGEST = 50.0


def answer(case: DrainCheck) -> None:
    _find_limits(case)
    case.below_low = case.low - case.ph
    case.hotter = case.temperature - case.heat_limit
    if case.below_low > 0 or case.ph < AIM_LOW:
        case.chemical = "soda-ash"
    else:
        case.chemical = "citric" if case.ph > case.high else ""
    if case.chemical:
        _neutralize(case)
    if case.metal not in (NO_METAL, UNKNOWN):
        case.metal_mass = case.metal_amount * case.volume / 1000
    own = f"; your own: {case.own_source}" if case.own_source else ""
    case.limit = published("pH 5.0 and up, 40 °C at the works", "cfr-40-403-5") + own


def _find_limits(case: DrainCheck) -> None:
    federal = looked_up("safe", "drain-limits", "key", "federal", "ph_low")
    case.low = largest(federal, case.own_low) if case.own_low else federal
    case.high = case.own_high or AIM_HIGH
    if case.low >= case.high:
        raise Refused(
            f"Local pH limits: the lower one ({case.low:g}) must lie below the upper one"
            f" ({case.high:g}).",
            DrainCheck.own_low,
        )
    case.heat_limit = case.own_heat or looked_up(
        "safe", "drain-limits", "key", "federal", "celsius"
    )


def _neutralize(case: DrainCheck) -> None:
    acid = "acetic" if case.holds in (OTHER, SODA) else case.holds
    case.content = acid if case.chemical == "soda-ash" else SODA
    if case.high - case.low > 2 * MARGIN:
        case.target = smallest(largest(AIM, case.low + MARGIN), case.high - MARGIN)
    else:
        case.target = (case.low + case.high) / 2
    try:
        _find_content(case)
        _find_doses(case)
    except OutOfRange as error:
        raise Refused(
            f"pH: {case.ph:g} is beyond what {called(case.content).lower()} in water can give;"
            " measure again, and do not pour it out.",
            DrainCheck.ph,
        ) from error


def _find_content(case: DrainCheck) -> None:
    """What the bath holds by its pH."""
    bath = float(case.ph), float(case.volume), float(case.alkalinity)
    grams = held_soda(*bath) if case.content == SODA else held_acid(case.content, *bath)
    # Of the reading itself: what a strip leaves open belongs in the range.
    case.strength = grams / bath[1]
    if case.strength > STRONGEST:
        raise Refused(
            f"pH: {case.ph:g} would mean more than {STRONGEST:g} g of"
            f" {called(case.content).partition(',')[0].lower()} in a liter, so something stronger"
            " is in it; keep it, and ask the sewer authority.",
            DrainCheck.ph,
        )
    ph_with = _ph_with(case.content)
    case.held = (
        solved(grams, lambda held: ph_with(held, case.volume, case.alkalinity) - case.ph)
        if grams
        else grams  # the water alone is as acid, or as alkaline: no content has just this pH
    )


def _find_doses(case: DrainCheck) -> None:
    """What leads to the pH aimed at, over the range that carbon dioxide leaves."""
    off, closed = doses(
        case.chemical,
        float(case.target),
        float(case.volume),
        case.content,
        float(case.held),
        float(case.alkalinity),
    )
    rest = case.volume, case.alkalinity
    full = _ph_with(case.content, case.chemical)
    case.dose_held = solved(closed, lambda dose: full(case.held, dose, *rest) - case.target)
    if off > 0:
        gone = _ph_with(case.content, case.chemical, driven_off=True)
        case.dose_off = solved(off, lambda dose: gone(case.held, dose, *rest) - case.target)
    else:
        case.ph_without_gas = _ph_with(case.content, driven_off=True)(case.held, *rest)
        case.dose_off = off
    case.first = FIRST_SHARE * smallest(case.dose_off, case.dose_held)
    case.dose = (case.dose_off + case.dose_held) / 2
    case.band(DrainCheck.dose, off, closed)


def _ph_with(*chemicals: str, driven_off: bool = False) -> Named:
    """The pH of a bath from the grams of each chemical in it, its liters and its alkalinity."""

    def ph(*given: float) -> float:
        *grams, liters, alkalinity = given
        return bath_ph(liters, dict(zip(chemicals, grams)), alkalinity, driven_off)

    said = " and ".join(called(key).partition(",")[0].lower() for key in chemicals)
    return named(f"pH with {said}{', carbon dioxide gone' if driven_off else ''}", ph)


def called(chemical: str) -> str:
    """What a chemical is called, by its key."""
    row = next(
        (row for row in read_table("safe", "bath-chemicals").rows if row["key"] == chemical), None
    )
    return row["label"].partition(" (")[0] if row else "an acid that is not known"
