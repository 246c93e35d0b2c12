"""Weight of yarn at one dampness from its weight at another.

Regain is water as a percentage of the oven-dry fiber. Only the oven-dry weight belongs to the
yarn; the rest is weather. So two weights are compared by taking both to the same regain.
"""

from ..core.problem import require

DAMPEST = 60.0  # % regain; wet wool holds about a third of its weight before it drips


def oven_dry_mass(mass: float, regain: float) -> float:
    """Weight of the fiber alone, g, with no water in it.

    mass    g as weighed, above 0
    regain  % of dry weight held as water when weighed, 0 to 60
    Raises OutOfRange outside these.
    Source: definition of regain (astm-d1909-extract).
    """
    require("mass", mass, above=0.0)
    require("regain", regain, 0.0, DAMPEST)
    return mass / (1 + regain / 100)


def mass_at_regain(dry_mass: float, regain: float) -> float:
    """Weight, g, at a given regain; with an agreed allowance as the regain, the commercial weight.

    dry_mass  g, oven-dry, above 0
    regain    % of dry weight, 0 to 60
    Raises OutOfRange outside these.
    Source: definition of regain (astm-d1909-extract).
    """
    require("dry_mass", dry_mass, above=0.0)
    require("regain", regain, 0.0, DAMPEST)
    return dry_mass * (1 + regain / 100)


def mass_at_other_regain(mass: float, regain_now: float, regain_wanted: float) -> float:
    """Weight, g, that yarn weighed at one regain has at another.

    mass           g as weighed, above 0
    regain_now     % when weighed, 0 to 60
    regain_wanted  % to be compared at, 0 to 60
    Raises OutOfRange outside these.
    Source: definition of regain (astm-d1909-extract).
    """
    return mass_at_regain(oven_dry_mass(mass, regain_now), regain_wanted)


def regain_from_masses(mass: float, dry_mass: float) -> float:
    """Regain, % of dry weight, from a weight and the oven-dry weight of the same yarn.

    mass      g as weighed, not below dry_mass
    dry_mass  g, oven-dry, above 0
    Raises OutOfRange outside these.
    Source: definition of regain (astm-d1909-extract).
    """
    require("dry_mass", dry_mass, above=0.0)
    require("mass", mass, dry_mass)
    return 100 * (mass - dry_mass) / dry_mass


def moisture_content(regain: float) -> float:
    """Moisture content, % of the weight as it is, from regain, % of dry weight.

    regain  %, 0 to 60
    Raises OutOfRange outside this.
    Source: arithmetic (the same water, shared by another weight).
    """
    require("regain", regain, 0.0, DAMPEST)
    return 100 * regain / (100 + regain)
