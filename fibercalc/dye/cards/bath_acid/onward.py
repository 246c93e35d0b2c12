"""What of a bath with acid goes on to the next card, by the names it has there."""

from __future__ import annotations

from ....core.onward import spread_text
from ....core.outcome import Outcome
from ....safe.acids import volume_of
from .asked import BathAcid

# %: a bath's acid is thinned first above the one, to the other (our own edges)
WEAK, THINNED = 10.0, 5.0
DILUTED_AS = {
    "acetic": "acetic",
    "formic": "formic",
    "citric": "citric",
    "citric-monohydrate": "citric",
}


def diluted_as(out: Outcome[BathAcid]) -> str | None:
    """The acid, as it is thinned; None for an alkali."""
    return DILUTED_AS.get(out.case.chemical)


def _poured_acid(out: Outcome[BathAcid]) -> float | None:
    """The strength of a liquid acid that goes in; None where it is none."""
    return out.case.strength if out.has(BathAcid.volume) and diluted_as(out) else None


def strong(out: Outcome[BathAcid]) -> str | None:
    """The bottle in hand, where it is strong; one weak already is left to the next card."""
    strength = _poured_acid(out)
    return f"{strength:.4g}%" if strength is not None and strength > WEAK else None


def wanted(out: Outcome[BathAcid]) -> str | None:
    """The weak acid that goes in."""
    strength = _poured_acid(out)
    return None if strength is None else f"{THINNED if strength > WEAK else strength:.4g}%"


def thinned(out: Outcome[BathAcid]) -> str | None:
    """What goes in, as so much of the weak acid."""
    strength = _poured_acid(out)
    if strength is None:
        return None
    more = 1.0
    if strength > WEAK:
        weak, bottle = (volume_of(out.case.chemical, 1.0, each) for each in (THINNED, strength))
        more = weak / bottle
    found = out.value(BathAcid.volume), out.low(BathAcid.volume), out.high(BathAcid.volume)
    value, low, high = (more * each for each in found)
    return spread_text(value, low, high, "mL")


def holds(out: Outcome[BathAcid]) -> str | None:
    """The acid or alkali, as the card on drains knows it."""
    soda = "soda-ash" if out.case.chemical in ("soda-ash", "washing-soda") else None
    return diluted_as(out) or soda
