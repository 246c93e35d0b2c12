"""How well a real syringe, jug or scale can measure a dose, and what dose it takes to measure well.

Errors are half-widths: what is poured lies this far either way of what was meant. A syringe
filled several times errs at each filling on its own, so the errors add as the root of the sum of
their squares.
"""

from math import ceil

from ..core.arithmetic import sqrt
from ..core.problem import require


def fillings(volume: float, capacity: float) -> int:
    """Times a syringe or jug is filled to measure a volume.

    volume    mL, 0 or more
    capacity  mL that it holds, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("volume", volume, 0.0)
    require("capacity", capacity, above=0.0)
    return ceil(volume / capacity - 1e-9)


def volume_error(volume: float, capacity: float, error: float) -> float:
    """Half-width, mL, of a volume measured in one or more fillings.

    volume    mL, 0 or more
    capacity  mL that the syringe or jug holds, above 0
    error     mL either way of one filling, 0 or more
    Raises OutOfRange outside these.
    Source: first-order propagation of independent errors.
    """
    require("error", error, 0.0)
    return error * sqrt(fillings(volume, capacity))


def error_share(error: float, dose: float) -> float:
    """Error of a dose as a share of it, %.

    error  half-width, in the dose's unit, 0 or more
    dose   g or mL, above 0
    Raises OutOfRange outside these.
    Source: definition.
    """
    require("error", error, 0.0)
    require("dose", dose, above=0.0)
    return 100 * error / dose


def least_dose(error: float, share: float) -> float:
    """Smallest dose, in the error's unit, that a tool measures to within a share of it.

    error  half-width of the tool, 0 or more
    share  % of the dose that is put up with, above 0 to 100
    Raises OutOfRange outside these.
    Source: definition.
    """
    require("error", error, 0.0)
    require("share", share, 0.0, 100.0, above=0.0)
    return 100 * error / share


def combined_error(first: float, second: float) -> float:
    """Two independent errors together, %: the root of the sum of their squares.

    first   %, 0 or more
    second  %, 0 or more
    Raises OutOfRange below 0.
    Source: first-order propagation of independent errors.
    """
    require("first", first, 0.0)
    require("second", second, 0.0)
    return sqrt(first**2 + second**2)
