"""From rough inputs to an honest range: the sum of independent uniform and normal parts.

Each rough input is a uniform distribution; nudging it to both its edges gives the half-width it lends to a result (first-order
propagation, JCGM 100:2008 clause 5.1, from memory). A model's own error is a normal part, stated as its 95 % half-width. The
two widest uniform parts are combined exactly with a normal for all the rest, so one dominant input is not overstated and many
small ones become the usual bell curve.
"""

from dataclasses import dataclass, field
from math import erf, exp, pi, sqrt

COVERAGE = 0.95
NORMAL_95 = 1.959963984540054  # two-sided 95 % point of the standard normal distribution


@dataclass
class Parts:
    """What each source of roughness lends to one result: half-widths toward low and toward high, and normal standard deviations."""

    down: list[float] = field(default_factory=list)
    up: list[float] = field(default_factory=list)
    normal: list[float] = field(default_factory=list)

    def half_width(self, side: str) -> float:
        """The distance from the value to the end of its 95 % range, on side "down" or "up"."""
        wide, narrow, sigma = self._parts(side)
        reach = wide + narrow + 8 * sigma
        if reach == 0:
            return 0.0
        low, high = 0.0, reach
        for _ in range(44):  # bisection: 2^-44 of the reach is far below any printed digit
            middle = (low + high) / 2
            if _below(middle, wide, narrow, sigma) < (1 + COVERAGE) / 2:
                low = middle
            else:
                high = middle
        return (low + high) / 2

    def chance_below(self, offset: float) -> float:
        """The chance, 0 to 1, that the true value lies below (value + offset)."""
        wide, narrow, sigma = self._parts("down" if offset < 0 else "up")
        if wide + narrow + sigma == 0:
            return 1.0 if offset > 0 else 0.0
        return min(max(_below(offset, wide, narrow, sigma), 0.0), 1.0)

    def _parts(self, side: str) -> tuple[float, float, float]:
        widths = sorted((w for w in getattr(self, side) if w > 0), reverse=True)
        wide, narrow = (widths + [0.0, 0.0])[:2]
        variance = sum(w * w / 3 for w in widths[2:]) + sum(s * s for s in self.normal)
        return wide, narrow, sqrt(variance)


def _below(t: float, wide: float, narrow: float, sigma: float) -> float:
    """P(U(-wide, wide) + U(-narrow, narrow) + N(0, sigma) < t), in closed form."""
    scale = wide + narrow + sigma
    # A part under a thousandth of the whole changes nothing that is printed, and would cancel badly below.
    if narrow < 1e-3 * scale:
        sigma, narrow = sqrt(sigma * sigma + narrow * narrow / 3), 0.0
    if wide < 1e-3 * scale:
        return _phi(t / sigma)
    if narrow == 0:
        return (_area(t + wide, sigma) - _area(t - wide, sigma)) / (2 * wide)
    return (_area2(t + wide + narrow, sigma) - _area2(t + wide - narrow, sigma)
            - _area2(t - wide + narrow, sigma) + _area2(t - wide - narrow, sigma)) / (4 * wide * narrow)


def _phi(z: float) -> float:
    return 0.5 * (1 + erf(z / sqrt(2)))


def _density(z: float) -> float:
    return exp(-z * z / 2) / sqrt(2 * pi)


def _area(x: float, sigma: float) -> float:
    """The integral of the normal distribution function up to x (the ramp max(x, 0) when sigma is 0)."""
    return max(x, 0.0) if sigma == 0 else x * _phi(x / sigma) + sigma * _density(x / sigma)


def _area2(x: float, sigma: float) -> float:
    """The integral of _area up to x."""
    if sigma == 0:
        return max(x, 0.0) ** 2 / 2
    return ((x * x + sigma * sigma) * _phi(x / sigma) + x * sigma * _density(x / sigma)) / 2
