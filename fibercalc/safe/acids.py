"""Baths of water, acid and alkali: their pH, and how much of a chemical brings them to a pH.
Water alone, before fiber."""

from collections.abc import Mapping
from functools import cache
from math import inf
from typing import Any

from ..core.problem import OutOfRange, require
from ..core.table import read_table
from .charge_balance import Forms, Weak, forms, solve, water_charge

ALKALINITY_PER_MOLE = 50_000.0  # mg of calcium carbonate that neutralize one mole of acid
# mol/L that stays in water open to air (420 ppm of carbon dioxide); from memory, unverified
OPEN_AIR_CARBONIC = 1.4e-5
STRONGEST = 10.0  # mol/L: no bath is stronger
NOTHING: Mapping[str, float] = {}  # the contents of plain water


@cache
def _weak(key: str) -> tuple[tuple[float, ...], int]:
    row = read_table("safe", "weak-acids").row("key", key)
    return tuple(row[name] for name in ("pka1", "pka2", "pka3") if row[name] != ""), int(
        row["charge"]
    )


@cache
def _chemical(key: str) -> tuple[float, str, float, float]:
    """Molar mass, weak acid, strong cations and strong anions of one chemical."""
    row = read_table("safe", "bath-chemicals").row("key", key)
    return row["molar_mass"], row["weak"], row["cations"], row["anions"]


@cache
def _densities(key: str) -> tuple[dict[str, Any], ...]:
    rows = tuple(
        row for row in read_table("safe", "stock-densities").rows if row["chemical"] == key
    )
    if not rows:
        raise KeyError(f"no densities for {key}")
    return rows


def densities_around(chemical: str, percent: float) -> tuple[dict[str, Any], dict[str, Any]]:
    """Rows of the table of densities between which a strength lies, the weaker one first.

    chemical  acetic, formic, citric or ammonia
    percent   strength, % by weight, from 0 to the table's last row
    Raises KeyError for a chemical without densities and OutOfRange outside the table.
    Source: density-table, handbook-densities.
    """
    rows = _densities(chemical)
    require("percent", percent, rows[0]["percent"], rows[-1]["percent"])
    return next((low, high) for low, high in zip(rows, rows[1:]) if percent <= high["percent"])


def density_between(
    percent: float, low: float, at_low: float, high: float, at_high: float
) -> float:
    """Density of a solution between two tabled strengths, g/mL, by a straight line.

    percent  strength, % by weight, from low to high
    low      one tabled strength, %
    at_low   its density, g/mL, above 0
    high     the other one, %, above low
    at_high  its density, g/mL, above 0
    Raises OutOfRange outside these.
    Source: arithmetic (a straight line).
    """
    require("percent", percent, low, high)
    require("high", high, above=low)
    require("at_low", at_low, above=0.0)
    require("at_high", at_high, above=0.0)
    return at_low + (at_high - at_low) * (percent - low) / (high - low)


def density(chemical: str, percent: float) -> float:
    """Density of a solution at 20 °C, g/mL, by straight lines between tabled strengths.

    chemical  acetic, formic, citric or ammonia
    percent   strength, % by weight, from 0 to the table's last row
    Raises KeyError for a chemical without densities and OutOfRange outside the table.
    Source: density-table; strong acetic and formic, citric above 30 % and ammonia:
    handbook-densities (from memory, unverified).
    """
    low, high = densities_around(chemical, percent)
    return density_between(
        percent, low["percent"], low["density"], high["percent"], high["density"]
    )


def grams_in(chemical: str, volume: float, percent: float) -> float:
    """Pure acid or ammonia in some volume of solution, g.

    chemical  acetic, formic, citric or ammonia
    volume    mL, 0 or more
    percent   strength, % by weight, within the table of densities
    Raises KeyError for a chemical without densities and OutOfRange outside these.
    Source: arithmetic (volume x density x share by weight).
    """
    require("volume", volume, 0.0)
    return volume * density(chemical, percent) * percent / 100.0


def volume_of(chemical: str, grams: float, percent: float) -> float:
    """Volume of solution that holds some grams of pure acid or ammonia, mL.

    chemical  acetic, formic, citric or ammonia
    grams     of pure acid or ammonia, 0 or more
    percent   strength, % by weight, above 0 and within the table of densities
    Raises KeyError for a chemical without densities and OutOfRange outside these.
    Source: arithmetic (weight over density and share by weight).
    """
    require("grams", grams, 0.0)
    require("percent", percent, above=0.0)
    return grams / (density(chemical, percent) * percent / 100.0)


def bath_ph(
    liters: float,
    contents: Mapping[str, float] = NOTHING,
    alkalinity: float = 0.0,
    driven_off: bool = False,
    cations: float = 0.0,
    activities: bool = True,
) -> float:
    """pH of a bath at 25 °C, water alone, before fiber.

    liters      of bath, above 0
    contents    grams of each pure chemical of the table bath-chemicals, by its key, each 0 or more
    alkalinity  of the water, mg/L as calcium carbonate, 0 to 2,000
    driven_off  True when carbon dioxide has left (stirred hot, or stood); False
                in a closed or fresh bath
    cations     further strong cations (positive) or anions (negative), mol/L: what fiber and
                earlier additions left behind
    activities  False leaves the activity coefficients at 1
    Raises OutOfRange outside these or above 10 mol/L of anything, KeyError for an unknown chemical.
    Source: goldberg-2002 (constants), spana-help (activities).
    """
    weak, plus, minus = _bath(liters, contents, alkalinity, driven_off, cations)
    return solve(weak, plus, minus, activities).ph


def ionic_strength(
    liters: float,
    contents: Mapping[str, float] = NOTHING,
    alkalinity: float = 0.0,
    driven_off: bool = False,
    cations: float = 0.0,
) -> float:
    """Ionic strength of a bath, mol/L: above 0.1 the pH is rough, above 0.5
    very rough (see ph_error).

    liters      of bath, above 0
    contents    grams of each pure chemical, by its key, each 0 or more
    alkalinity  of the water, mg/L as calcium carbonate, 0 to 2,000
    driven_off  whether carbon dioxide has left
    cations     further strong cations (positive) or anions (negative), mol/L
    Raises OutOfRange outside these or above 10 mol/L of anything, KeyError for an unknown chemical.
    Source: spana-help; definition (half the sum of concentration times charge squared).
    """
    weak, plus, minus = _bath(liters, contents, alkalinity, driven_off, cations)
    return solve(weak, plus, minus).ionic_strength


def charge_left(
    ph: float,
    liters: float,
    contents: Mapping[str, float] = NOTHING,
    alkalinity: float = 0.0,
    driven_off: bool = False,
    cations: float = 0.0,
) -> float:
    """Charges of all ions added up at a pH, mol/L: nothing at the bath's own pH, positive below it.
    What a working shows of the balance.

    ph          -1 to 15
    liters      of bath, above 0
    contents    grams of each pure chemical, by its key, each 0 or more
    alkalinity  of the water, mg/L as calcium carbonate, 0 to 2,000
    driven_off  whether carbon dioxide has left
    cations     further strong cations (positive) or anions (negative), mol/L
    Raises OutOfRange outside these or above 10 mol/L of anything, KeyError for an unknown chemical.
    Source: definition (electroneutrality); goldberg-2002 (constants), spana-help (activities, at
    the bath's own ionic strength).
    """
    require("ph", ph, -1.0, 15.0)
    weak, plus, minus = _bath(liters, contents, alkalinity, driven_off, cations)
    strength = solve(weak, plus, minus).ionic_strength
    charge, _ = water_charge(ph, strength)
    for each in weak:
        shared = forms(each, ph, strength)
        charge += min(each.total, shared.most) * shared.charge
    return charge + plus - minus


def ph_error(strength: float) -> float:
    """How far a calculated pH may be off, either way (95 %), from the activity model alone.

    strength  ionic strength, mol/L, 0 or more
    Raises OutOfRange for a negative one.
    Source: spana-help (where Davies holds); the widths are our own, from tabled pH values missed
    by up to 0.04 at 0.1 mol/L.
    """
    require("strength", strength, 0.0)
    return (
        0.03 + 0.2 * min(strength, 0.5)
        if strength <= 0.5
        else 0.13 + 0.3 * min(strength - 0.5, 1.0)
    )


def dose_for_ph(
    chemical: str,
    target: float,
    liters: float,
    contents: Mapping[str, float] = NOTHING,
    alkalinity: float = 0.0,
    driven_off: bool = False,
    cations: float = 0.0,
) -> float:
    """Grams of one pure chemical that bring a bath to a pH at 25 °C, water alone, before fiber.

    chemical    key of the table bath-chemicals
    target      pH wanted, 0 to 14
    liters      of bath, above 0 (the dose's own volume is left out)
    contents    grams of each pure chemical already in it, by its key
    alkalinity  of the water, mg/L as calcium carbonate, 0 to 2,000
    driven_off  True when carbon dioxide leaves as it forms
    cations     further strong cations (positive) or anions (negative), mol/L
    Raises OutOfRange outside these and for a pH this chemical cannot reach,
    KeyError for an unknown chemical.
    Source: goldberg-2002 (constants), spana-help (activities); definition (electroneutrality).
    """
    require("target", target, 0.0, 14.0)
    mass, own, plus, minus = _chemical(chemical)
    weak, cations_there, anions_there = _bath(liters, contents, alkalinity, driven_off, cations)
    there = next((each.total for each in weak if own and each.pkas == _weak(own)[0]), 0.0)
    others = [each for each in weak if not own or each.pkas != _weak(own)[0]]
    dose, strength = 0.0, 0.0
    for _ in range(60):
        charge, squares = water_charge(target, strength)
        for each in others:
            shared = forms(each, target, strength)
            charge, squares = (
                charge + min(each.total, shared.most) * shared.charge,
                squares + min(each.total, shared.most) * shared.squared,
            )
        mine = forms(_as_weak(own, driven_off), target, strength) if own else Forms(0.0, 0.0, inf)
        new = _moles(charge + cations_there - anions_there, there, plus - minus, mine)
        if new is None:
            raise OutOfRange("target", target, reason=_why_not(chemical, target))
        if abs(new - dose) <= 1e-11 * max(new, 1e-6):
            return new * mass * liters
        squares += (
            min(there + new, mine.most) * mine.squared
            + cations_there
            + anions_there
            + (plus + minus) * new
        )
        dose, strength = new, squares / 2.0
    raise OutOfRange("target", target, reason=f"no dose that settles was found for pH {target:g}")


def _moles(charge: float, there: float, strong: float, mine: Forms) -> float | None:
    """The dose, mol/L, that cancels the charge of everything else; None where none does. Where
    the dosed acid leaves as a gas the balance is two straight lines: all of it stays, or no more
    than the most that can."""
    total = strong + mine.charge
    dose = -(charge + there * mine.charge) / total if total else inf
    if there + dose > mine.most:
        dose = -(charge + mine.most * mine.charge) / strong if strong else inf
    return max(dose, 0.0) if -1e-12 <= dose <= STRONGEST else None


def _why_not(chemical: str, target: float) -> str:
    raises = read_table("safe", "bath-chemicals").row("key", chemical)["kind"] == "base"
    return (
        f"pH {target:g} is not reached: this only {'raises' if raises else 'lowers'} the pH, and"
        f" the bath may already be {'above' if raises else 'below'} it or would need more than can"
        " dissolve"
    )


def _bath(
    liters: float,
    contents: Mapping[str, float],
    alkalinity: float,
    driven_off: bool,
    cations: float,
) -> tuple[list[Weak], float, float]:
    """The weak acids in a bath and its strong cations and anions, mol/L."""
    require("liters", liters, above=0.0)
    require("alkalinity", alkalinity, 0.0, 2000.0)
    require("cations", cations, -STRONGEST, STRONGEST)
    # Nearly all alkalinity of tap water is bicarbonate: as many moles of carbon as of charge.
    hard = alkalinity / ALKALINITY_PER_MOLE
    plus, minus, totals = (
        hard + max(cations, 0.0),
        max(-cations, 0.0),
        {"carbonic": hard} if hard else {},
    )
    for key, grams in contents.items():
        require(key, grams, 0.0)
        mass, weak, own_plus, own_minus = _chemical(key)
        moles = grams / mass / liters
        require(key, moles, 0.0, STRONGEST)
        plus, minus = plus + own_plus * moles, minus + own_minus * moles
        if weak:
            totals[weak] = totals.get(weak, 0.0) + moles
    return [_as_weak(key, driven_off, total) for key, total in totals.items()], plus, minus


def _as_weak(key: str, driven_off: bool, total: float = 0.0) -> Weak:
    pkas, charge = _weak(key)
    return Weak(total, pkas, charge, OPEN_AIR_CARBONIC if driven_off and key == "carbonic" else inf)
