"""The pH at which all charges cancel, the amount that brings it about, and another acid for it."""

from __future__ import annotations

from ....core.problem import OutOfRange, Refused
from ....core.steps import looked_up, solved
from ....core.traced import Named, named
from ....safe.acids import (
    bath_ph,
    charge_left,
    densities_around,
    density_between,
    dose_for_ph,
    ionic_strength,
    ph_error,
)
from ....safe.liquids import liquid_name
from .asked import KNOWN, LABELS, LIQUIDS, SOUR, SWAP, TARGET, WATERS, BathAcid


def answer(case: BathAcid) -> None:
    ends = _find_alkalinity(case)
    if case.do == TARGET:
        _find_dose(case)
    else:
        _find_ph(case)
    case.salts = ionic_strength(_liters(case), _contents(case), float(case.alkaline))
    case.error(BathAcid.ph, ph_error(case.salts))
    if ends:
        case.band(BathAcid.ph, case.ph, *(_ph_in(case, end) for end in ends))
    doses = []
    if case.do == TARGET and ends:
        doses = [_dose_or_nothing(case, case.chemical, float(case.target), end) for end in ends]
        case.band(BathAcid.pure, case.pure, *doses)
    if case.chemical in LIQUIDS:
        case.volume = _poured(case, case.pure, case.chemical, case.strength, "strength")
        _refuse_more_than_bath(case, case.volume, case.chemical, case.strength, "strength")
        if doses:
            case.band(
                BathAcid.volume,
                case.volume,
                *(_poured(case, end, case.chemical, case.strength, "strength") for end in doses),
            )
    elif case.pure > case.liters:
        raise Refused(
            f"That is more {LABELS[case.chemical].lower()} than water, {case.pure / 1000:.3g} kg"
            f" in {case.liters / 1000:.3g} L: another pH, or a larger bath.",
            BathAcid.target if case.do == TARGET else BathAcid.grams,
        )
    if case.do == SWAP:
        _find_other(case, ends)


def _liters(case: BathAcid) -> float:
    return float(case.liters) / 1000


def _contents(case: BathAcid) -> dict[str, float]:
    """What is in the water: grams by chemical."""
    return {case.chemical: float(case.pure)}


def _ph_in(case: BathAcid, alkalinity: float) -> float:
    """The pH that the same amount gives in other water."""
    return bath_ph(_liters(case), _contents(case), alkalinity)


def _find_alkalinity(case: BathAcid) -> tuple[float, ...]:
    """The lowest and highest that a word for tap water may mean; nothing where it is known."""
    if case.water == KNOWN:
        case.alkaline = case.alkalinity
        return ()
    case.alkaline = looked_up("dye", "tap-waters", "water", case.water, "middle")
    return WATERS[case.water]["low"], WATERS[case.water]["high"]


def _find_dose(case: BathAcid) -> None:
    charge = _charge_with(case.chemical)
    case.pure = solved(
        _dose(case, case.chemical, float(case.target)),
        lambda pure: charge(case.target, pure, case.liters, case.alkaline),
    )
    case.ph = case.target


def _find_ph(case: BathAcid) -> None:
    case.pure = case.grams
    try:
        found = _ph_in(case, float(case.alkaline))
    except OutOfRange:
        raise Refused(
            "How much, pure: that is more than so little water can hold; give less, or a larger"
            " bath.",
            BathAcid.grams,
        ) from None
    charge = _charge_with(case.chemical)
    case.ph = solved(found, lambda ph: charge(ph, case.grams, case.liters, case.alkaline))


def _find_other(case: BathAcid, ends: tuple[float, ...]) -> None:
    """The other acid or alkali for the same pH."""
    if (case.chemical in SOUR) != (case.other in SOUR):
        raise Refused(
            "Instead of it: an acid cannot stand for an alkali; choose another of the same kind.",
            BathAcid.other,
        )
    charge = _charge_with(case.other)
    case.other_grams = solved(
        _dose(case, case.other, float(case.ph)),
        lambda other: charge(case.ph, other, case.liters, case.alkaline),
    )
    others = [_dose_or_nothing(case, case.other, _ph_in(case, end), end) for end in ends]
    if others:
        case.band(BathAcid.other_grams, case.other_grams, *others)
    if case.other in LIQUIDS:
        strength = case.other_strength
        case.other_volume = _poured(case, case.other_grams, case.other, strength, "other_strength")
        _refuse_more_than_bath(case, case.other_volume, case.other, strength, "other_strength")
        if others:
            case.band(
                BathAcid.other_volume,
                case.other_volume,
                *(_poured(case, end, case.other, strength, "other_strength") for end in others),
            )


def _charge_with(chemical: str) -> Named:
    """The charge left over in a bath, from its pH, the grams in it, its mL and its alkalinity."""

    def charge(ph: float, grams: float, bath: float, alkalinity: float) -> float:
        return charge_left(ph, bath / 1000, {chemical: grams}, alkalinity)

    return named(f"charge with {_short(chemical).partition(',')[0]}", charge)


def _dose(case: BathAcid, chemical: str, ph: float) -> float:
    try:
        return dose_for_ph(chemical, ph, _liters(case), alkalinity=float(case.alkaline))
    except OutOfRange as error:
        reason = error.reason or f"{LABELS[chemical].lower()} does not reach it here"
        raise Refused(f"pH wanted: {reason}.", BathAcid.target) from None


def _dose_or_nothing(case: BathAcid, chemical: str, ph: float, alkalinity: float) -> float:
    """The dose in other water; 0 where that water has this pH, or is beyond it, without any."""
    try:
        return dose_for_ph(chemical, ph, _liters(case), alkalinity=alkalinity)
    except OutOfRange:
        return 0.0


def _short(chemical: str) -> str:
    return LABELS[chemical].partition(" (")[0].lower()


def _poured(case: BathAcid, grams: float, chemical: str, strength: float, asked: str) -> float:
    """mL of the liquid that hold some grams."""
    name = _liquid(chemical, strength)
    if name not in case.density:
        try:
            _find_density(case, chemical, strength)
        except OutOfRange as error:
            raise Refused(
                f"Strength of the liquid: densities of {LABELS[chemical].lower()} are tabled up to"
                f" {error.high:g} %; give no more.",
                asked,
            ) from None
    return grams / (case.density[name] * strength / 100)


def _find_density(case: BathAcid, chemical: str, strength: float) -> None:
    """Density of a liquid: tabled, or from the two tabled ones around its strength."""
    name = _liquid(chemical, strength)
    rows = {_liquid(chemical, row["percent"]): row for row in densities_around(chemical, strength)}
    if name in rows:
        rows = {name: rows[name]}
    ends: list[float] = []
    for tabled, row in rows.items():
        if tabled not in case.density:
            case.density[tabled] = looked_up(
                "safe", "stock-densities", "key", row["key"], "density"
            )
        ends += [row["percent"], case.density[tabled]]
    if name not in rows:
        case.density[name] = round(density_between(strength, *ends), 4)


def _liquid(chemical: str, strength: float) -> str:
    return f"{strength:g} % {_short(chemical)}"


def _refuse_more_than_bath(
    case: BathAcid, volume: float, chemical: str, strength: float, asked: str
) -> None:
    if volume > case.liters:
        raise Refused(
            f"That would take {volume / 1000:.3g} L of"
            f" {liquid_name(chemical, strength, f'{strength:g} %')}, more than the bath of"
            f" {case.liters / 1000:.3g} L: take a stronger liquid, another acid or alkali, or"
            " another pH.",
            asked,
        )
