"""Student's t distribution, for the few skeins a maker has time to measure.

Whole degrees of freedom have a finite sum in sines and cosines, so nothing is approximated and
nothing need be installed.
"""

from functools import cache
from math import atan, cos, inf, pi, sin, sqrt

from ..core.problem import require

MOST_DEGREES = 10_000
LARGEST_T = 1e9


def share_below(t: float, degrees: int) -> float:
    """Share, %, of Student's t distribution that lies below t.

    t        any number from -1e9 to 1e9
    degrees  degrees of freedom, a whole number from 1 to 10,000
    Raises OutOfRange outside these.
    Source: Abramowitz and Stegun 26.7.3, 26.7.4 (abramowitz-stegun, from memory); checked against
    a printed table (student-table).
    """
    require("t", t, -LARGEST_T, LARGEST_T)
    _require_degrees(degrees)
    angle = atan(t / sqrt(degrees))
    c2 = cos(angle) ** 2
    term = total = cos(angle) if degrees % 2 else 1.0
    for k in range(degrees % 2 + 2, degrees - 1, 2):  # 26.7.3 odd: 3, 5 ...; 26.7.4 even: 2, 4 ...
        term *= c2 * (k - 1) / k
        total += term
    if degrees == 1:
        central = 2 * angle / pi
    elif degrees % 2:
        central = 2 * (angle + sin(angle) * total) / pi
    else:
        central = sin(angle) * total
    return 50 * (1 + central)


@cache
def quantile(share: float, degrees: int) -> float:
    """The t below which a given share of Student's t distribution lies.

    share    %, 0.1 to 99.9
    degrees  degrees of freedom, a whole number from 1 to 10,000
    Raises OutOfRange outside these.
    Source: Abramowitz and Stegun 26.7.3, 26.7.4 (abramowitz-stegun, from memory); checked against
    a printed table (student-table).
    """
    require("share", share, 0.1, 99.9)
    _require_degrees(degrees)
    if share < 50:
        return -quantile(100 - share, degrees)
    low, high = 0.0, 1.0
    while share_below(high, degrees) < share:
        high *= 2
    width = inf
    while high - low < width:  # until halving no longer moves a float
        width = high - low
        middle = (low + high) / 2
        low, high = (middle, high) if share_below(middle, degrees) < share else (low, middle)
    return (low + high) / 2


def _require_degrees(degrees: int) -> None:
    require("degrees", degrees, 1.0, MOST_DEGREES)
    require("degrees", degrees, int(degrees), int(degrees))
