"""Lengths of a planned warp as they are written: in the user's units, centimeters in. r is the card's outcome."""


def long(r, cm: float) -> str:
    """A length in the user's units: "76.8 cm (30.2 in)"."""
    metric, us = f"{_tenths(r, cm)} cm", f"{_tenths(r, cm / 2.54)} in"
    return {"metric": metric, "us": us}.get(r.settings.system, f"{metric} ({us})")


def _tenths(r, number: float) -> str:
    return r.number(number, 0 if abs(number - round(number)) < 0.05 else 1)


def short(r, cm: float) -> str:
    """The same in one unit: "76.8 cm"."""
    return f"{r.number(cm / 2.54, 1)} in" if r.settings.system == "us" else f"{r.number(cm, 1)} cm"


def meters(r, m: float, decimals: int = 2) -> str:
    """A length of warp, given in meters: "4.90 m"."""
    return f"{r.number(m / 0.9144, decimals)} yd" if r.settings.system == "us" else f"{r.number(m, decimals)} m"


def name_of(row) -> str:
    """What a row of pieces is called."""
    return row.name or "Piece"
