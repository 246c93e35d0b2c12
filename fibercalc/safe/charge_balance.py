"""The pH of water with acids and bases in it, by exact charge balance with
Davies activities, at 25 °C.

Every dissolved weak acid or base is a `Weak`; strong ions (sodium, chloride) are given as they
are. The pH is the one root at which all charges cancel: the sum of charges only rises with
acidity, so a bracket always holds it.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp, inf, log, sqrt

from ..core.problem import OutOfRange, require

PKW = 13.995  # of water at 25 °C and no salt; from memory (goldberg-2002)
DAVIES_A = 0.509  # at 25 °C; read (spana-help)
DAVIES_SLOPE = 0.3  # read (spana-help); other printed forms have 0.2
ROUGH_ABOVE = 0.1  # mol/L: Davies holds to here (spana-help)
HELD_ABOVE = 0.5  # mol/L: rough to here; above it the coefficients stay what they are at 0.5
LOWEST, HIGHEST = -1.0, 15.0  # pH between which the root is sought
LN10 = log(10.0)


@dataclass(frozen=True)
class Weak:
    """One weak acid or base in the water.

    total    mol/L of all its forms together
    pkas     its pKa at 25 °C and no salt, in the order in which it gives protons away
    charge   of the form that still has all its protons: 0 for an acid, +1 for ammonium
    escapes  mol/L that the form with all its protons can keep: what is above leaves as a gas;
             infinite in a closed vessel
    """

    total: float
    pkas: tuple[float, ...]
    charge: int = 0
    escapes: float = inf


@dataclass(frozen=True)
class Solution:
    """What the balance gives: ph (-log activity of hydrogen ions) and the ionic strength, mol/L."""

    ph: float
    ionic_strength: float


def davies(charge: int, ionic_strength: float) -> float:
    """Activity coefficient of an ion, no unit.

    charge          of the ion, whole charges of either sign
    ionic_strength  mol/L, 0 or more; above 0.5 the coefficient stays what it is there
    Raises OutOfRange for a negative ionic strength.
    Source: spana-help (Davies 1962 form, slope 0.3; A = 0.509 at 25 °C).
    """
    require("ionic_strength", ionic_strength, 0.0)
    strength = min(ionic_strength, HELD_ABOVE)
    root = sqrt(strength)
    bent = root / (1.0 + root) - DAVIES_SLOPE * strength
    coefficient: float = 10.0 ** (-DAVIES_A * charge * charge * bent)
    return coefficient


class _Mixed:
    """The constants of all weak acids at one ionic strength, in the form the balance needs."""

    def __init__(self, weak: Sequence[Weak], ionic_strength: float):
        self.g1 = davies(1, ionic_strength)
        by_charge = [
            1.0,
            self.g1,
            self.g1**4,
            self.g1**9,
        ]  # the logarithm goes with the square of the charge
        self.kw = 10.0**-PKW
        self.weak = []
        for each in weak:
            weight, weights = 1.0, [1.0]
            for given_away, pka in enumerate(each.pkas):
                before, after = abs(each.charge - given_away), abs(each.charge - given_away - 1)
                weight *= 10.0**-pka * by_charge[before] / by_charge[after]
                weights.append(weight)
            self.weak.append((each.total, each.charge, each.escapes, weights))

    def at(self, activity: float) -> tuple[float, float, float]:
        """Sum of charges of hydrogen, hydroxide and weak forms, mol/L; its slope against
        ln(activity); and their part of the ionic strength."""
        hydrogen, hydroxide = activity / self.g1, self.kw / (activity * self.g1)
        charge, slope = hydrogen - hydroxide, hydrogen + hydroxide
        squares = slope
        for total, top, escapes, weights in self.weak:
            power, all_, first, second, squared = 1.0, 0.0, 0.0, 0.0, 0.0
            for given_away, weight in enumerate(weights):
                share = weight * power
                all_ += share
                first += given_away * share
                second += given_away * given_away * share
                squared += (top - given_away) ** 2 * share
                power /= activity
            if total > escapes * all_:  # the gas above it sets how much stays
                charge += escapes * (top * all_ - first)
                slope += escapes * (second - top * first)
                squares += escapes * squared
            else:
                mean = first / all_
                charge += total * (top - mean)
                slope += total * (second / all_ - mean * mean)
                squares += total * squared / all_
        return charge, slope, squares / 2.0


def solve(
    weak: Sequence[Weak], cations: float = 0.0, anions: float = 0.0, activities: bool = True
) -> Solution:
    """The pH at which all charges cancel, and the ionic strength there.

    weak        the weak acids and bases in the water; list and totals may be empty or 0
    cations     strong cations (sodium), mol/L, 0 to 50
    anions      strong anions (chloride), mol/L, 0 to 50
    activities  False leaves activity coefficients at 1: the school sum, off
                by up to 0.3 in salty water
    Raises OutOfRange for negative or huge amounts.
    Source: spana-help (activities); definition (electroneutrality); goldberg-2002
    (constants, by way of the caller).
    """
    require("cations", cations, 0.0, 50.0)
    require("anions", anions, 0.0, 50.0)
    for each in weak:
        require("total", each.total, 0.0, 50.0)
    strong, salt = cations - anions, (cations + anions) / 2.0
    strength, log_activity = salt if activities else 0.0, -7.0 * LN10
    for _ in range(60):
        mixed = _Mixed(weak, strength)
        log_activity, found = _root(mixed, strong, log_activity)
        new = found + salt
        if not activities or abs(new - strength) < 1e-10:
            return Solution(-log_activity / LN10, new)
        strength = new
    raise OutOfRange(
        "ionic_strength",
        strength,
        reason="the balance of charges does not settle for these amounts",
    )


def _root(mixed: _Mixed, strong: float, start: float) -> tuple[float, float]:
    """ln(activity) where the charges cancel, by Newton kept inside a bracket, and the weak forms'
    part of the ionic strength there."""
    low, high = -HIGHEST * LN10, -LOWEST * LN10
    at = start
    for _ in range(200):
        charge, slope, squares = mixed.at(exp(at))
        charge += strong
        if charge > 0:
            high = at
        else:
            low = at
        step = -charge / slope
        new = at + step
        if not low < new < high:
            new = (low + high) / 2.0
        if abs(new - at) < 1e-11 * LN10:
            return new, squares
        at = new
    return at, squares


@dataclass(frozen=True)
class Forms:
    """One weak acid at one pH: the mean charge of its forms, the mean square of it, and the mol/L
    that can stay (infinite if it cannot leave)."""

    charge: float
    squared: float
    most: float


def forms(weak: Weak, ph: float, ionic_strength: float) -> Forms:
    """How the forms of one weak acid share it out at one pH.

    weak            the weak acid or base; its total does not matter
    ph              -1 to 15
    ionic_strength  mol/L, 0 or more
    Raises OutOfRange outside these.
    Source: spana-help (activities); definition (law of mass action).
    """
    require("ph", ph, LOWEST, HIGHEST)
    require("ionic_strength", ionic_strength, 0.0)
    ((_, top, escapes, weights),) = _Mixed([weak], ionic_strength).weak
    shares = [weight * 10.0 ** (ph * given_away) for given_away, weight in enumerate(weights)]
    all_ = sum(shares)
    mean = sum((top - given_away) * share for given_away, share in enumerate(shares)) / all_
    squared = sum((top - given_away) ** 2 * share for given_away, share in enumerate(shares)) / all_
    return Forms(mean, squared, escapes * all_)


def water_charge(ph: float, ionic_strength: float) -> tuple[float, float]:
    """Hydrogen less hydroxide ions, and both together, mol/L, at one pH.

    ph              -1 to 15
    ionic_strength  mol/L, 0 or more
    Raises OutOfRange outside these.
    Source: spana-help (activities); definition (pH and the ion product of water).
    """
    require("ph", ph, LOWEST, HIGHEST)
    g1 = davies(1, ionic_strength)
    hydrogen, hydroxide = 10.0**-ph / g1, 10.0 ** (ph - PKW) / g1
    return hydrogen - hydroxide, hydrogen + hydroxide
