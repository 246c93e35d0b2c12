"""Lengths of a planned warp as they are written: in the user's units, centimeters in. r is the
card's outcome.
"""

from typing import Any, Protocol

from ...core.outcome import Outcome
from ...core.units import METERS_PER_YARD


def in_inches(r: Outcome[Any]) -> bool:
    """Whether this person's lengths are inches: by the setting, else by the unit typed for the
    first piece.
    """
    typed = r.readings["pieces.1.length"].amount
    return r.settings.system == "us" or (
        r.settings.system == "both" and typed is not None and typed.unit.system == "us"
    )


def long(r: Outcome[Any], cm: float) -> str:
    """A length with its other unit behind it, "76.8 cm (30.2 in)"; whole ones without decimals."""
    metric, us = f"{_tenths(r, cm)} cm", f"{_tenths(r, cm / 2.54)} in"
    if r.settings.system != "both":
        return us if in_inches(r) else metric
    return f"{us} ({metric})" if in_inches(r) else f"{metric} ({us})"


def bare(r: Outcome[Any], cm: float) -> str:
    """A length in this person's unit: "40 cm"; whole numbers without decimals."""
    return f"{_tenths(r, cm / 2.54)} in" if in_inches(r) else f"{_tenths(r, cm)} cm"


def short(r: Outcome[Any], cm: float) -> str:
    """A length in this person's unit to a tenth: "76.8 cm"."""
    return f"{r.number(cm / 2.54, 1)} in" if in_inches(r) else f"{r.number(cm, 1)} cm"


def meters(r: Outcome[Any], m: float) -> str:
    """A length of warp, given in meters: "4.90 m"."""
    return f"{r.number(m / METERS_PER_YARD, 2)} yd" if in_inches(r) else f"{r.number(m, 2)} m"


def _tenths(r: Outcome[Any], number: float) -> str:
    return r.number(number, 0 if abs(number - round(number)) < 0.05 else 1)


class _HasName(Protocol):
    """A row that is called something."""

    @property
    def name(self) -> str: ...


def name_of(row: _HasName) -> str:
    """What a row of pieces is called."""
    return row.name or "Piece"
