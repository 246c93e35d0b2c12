"""A bath before the drain: what acid or soda it holds by its pH, and what brings it into range."""

from ..core.problem import OutOfRange, require
from .acids import NOTHING, bath_ph, dose_for_ph

FIRST_SHARE = 0.8  # of the smaller dose: then stir, wait and measure (our own rule)


def held_acid(kind: str, ph: float, liters: float, alkalinity: float) -> float:
    """Pure acid that a bath of one acid holds, by its pH, g; 0 where the water alone is as acid.

    kind        acetic, citric or formic
    ph          as measured, 0 to 14
    liters      of bath, above 0
    alkalinity  of the water, mg/L as calcium carbonate, 0 to 2,000
    Raises OutOfRange outside these or for a pH this acid does not reach, KeyError for an unknown
    acid.
    Source: goldberg-2002, spana-help (the charge balance); a bath that holds salts of the acid
    holds more of it.
    """
    require("ph", ph, 0.0, 14.0)
    if ph >= bath_ph(liters, NOTHING, alkalinity):
        return 0.0
    return dose_for_ph(kind, ph, liters, NOTHING, alkalinity)


def held_soda(ph: float, liters: float, alkalinity: float) -> float:
    """Soda ash that an alkaline bath holds, by its pH, g; 0 where the water alone is as alkaline.

    ph          as measured, 0 to 14
    liters      of bath, above 0
    alkalinity  of the water, mg/L as calcium carbonate, 0 to 2,000
    Raises OutOfRange outside these or for a pH that soda does not reach.
    Source: goldberg-2002, spana-help (the charge balance).
    """
    require("ph", ph, 0.0, 14.0)
    if ph <= bath_ph(liters, NOTHING, alkalinity):
        return 0.0
    return dose_for_ph("soda-ash", ph, liters, NOTHING, alkalinity)


def doses(
    chemical: str, target: float, liters: float, held: str, grams: float, alkalinity: float
) -> tuple[float, float]:
    """Grams of a chemical to a target pH with carbon dioxide driven off, and with it held.

    chemical    soda-ash, bicarbonate or citric
    target      pH wanted, 4 to 10
    liters      of bath, above 0
    held        what the bath holds: acetic, citric, formic or soda-ash
    grams       of it, pure, 0 or more
    alkalinity  of the water, mg/L as calcium carbonate, 0 to 2,000
    Raises OutOfRange outside these or for a pH out of reach, KeyError for an unknown chemical.
    Source: goldberg-2002, spana-help (the charge balance).
    """
    require("target", target, 4.0, 10.0)
    found = []
    for driven_off in (True, False):
        try:
            found.append(
                dose_for_ph(chemical, target, liters, {held: grams}, alkalinity, driven_off)
            )
        except OutOfRange:
            # With its carbon dioxide gone the bath may lie beyond the target already: nothing is
            # needed then
            if driven_off:
                found.append(0.0)
            else:
                raise
    return found[0], found[1]
