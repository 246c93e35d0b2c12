"""From rough inputs to an honest range: the sum of independent uniform and normal parts.

Each rough input is a uniform distribution; nudging it to both its edges gives the half-width it
lends to a result (first-order propagation, JCGM 100:2008 clause 5.1, from memory). A model's own
error is a normal part, stated as its 95 % half-width. The three widest uniform parts are combined
exactly with a normal for all the rest, so one dominant input is not overstated and many small
ones become the usual bell curve.
"""

from collections.abc import Callable
from dataclasses import dataclass, field
from itertools import product
from math import erf, exp, log, pi, sqrt

COVERAGE = 0.95
NOTHING = 1e-100  # narrower than this is no width: its square would not be a number
KEPT = 3  # uniform parts combined exactly
ROOT_2, ROOT_2_PI = sqrt(2), sqrt(2 * pi)
NORMAL_95 = 1.959963984540054  # two-sided 95 % point of the standard normal distribution


@dataclass
class Parts:
    """What each source of roughness lends to one result: half-widths toward low and toward high,
    and normal standard deviations.
    """

    down: list[float] = field(default_factory=list)
    up: list[float] = field(default_factory=list)
    normal: list[float] = field(default_factory=list)

    def half_width(self, side: str) -> float:
        """The distance from the value to the end of its 95 % range, on side "down" or "up"."""
        widths, sigma = self._parts(side)
        deviation = sqrt(sum(w * w for w in widths) / 3 + sigma * sigma)
        if len(widths) == 1 and sigma == 0:
            return COVERAGE * widths[0]
        if not widths:
            return NORMAL_95 * sigma
        # A sum of uniforms and a normal has thinner tails than a normal of the same deviation and
        # thicker ones than one uniform.
        return _root(
            lambda t: _below(t, widths, sigma) - (1 + COVERAGE) / 2,
            COVERAGE * sqrt(3) * deviation * 0.999,
            NORMAL_95 * deviation * 1.001,
        )

    def as_factors(self, value: float) -> "Parts":
        """The same widths as logarithms of factors on a value above 0, for a product: what halves
        it and what halves it again quarter it.
        """
        return Parts(
            [-log(max(1 - width / value, NOTHING)) for width in self.down],
            [log(1 + width / value) for width in self.up],
            [deviation / value for deviation in self.normal],
        )

    def chance_below(self, offset: float) -> float:
        """The chance, 0 to 1, that the true value lies below (value + offset)."""
        widths, sigma = self._parts("down" if offset < 0 else "up")
        if not widths and sigma == 0:
            return 1.0 if offset > 0 else 0.0
        return min(max(_below(offset, widths, sigma), 0.0), 1.0)

    def offset_below(self, chance: float) -> float:
        """The offset from the value below which the true value lies with this chance, above 0 and
        under 1: chance_below the other way about.
        """
        reach = max(sum(self._parts(side)[0]) + 9 * self._parts(side)[1] for side in ("down", "up"))
        return _root(lambda t: self.chance_below(t) - chance, -reach, reach) if reach else 0.0

    def _parts(self, side: str) -> tuple[list[float], float]:
        """The widest uniform parts, and the standard deviation of all the rest."""
        widths = sorted((w for w in getattr(self, side) if w > NOTHING), reverse=True)
        scale = sum(widths) + sum(self.normal)
        # A part under a thousandth of the whole changes nothing that is printed, and would cancel
        # badly in the closed form.
        exact = [w for w in widths[:KEPT] if w >= 1e-3 * scale]
        variance = sum(w * w / 3 for w in widths[len(exact) :]) + sum(s * s for s in self.normal)
        return exact, sqrt(variance)


def _root(function: Callable[[float], float], low: float, high: float) -> float:
    """Where a rising function crosses zero between low and high, by false position with the
    Illinois step.
    """
    at_low, at_high = function(low), function(high)
    # The end that the last step left in place: its value is halved only when it stays a second time
    kept = 0
    for _ in range(60):
        middle = (low * at_high - high * at_low) / (at_high - at_low)
        at_middle = function(middle)
        if abs(at_middle) < 1e-8:  # a chance this close moves no printed digit
            break
        if (at_middle < 0) == (at_high < 0):
            high, at_high = middle, at_middle
            at_low, kept = at_low / (2 if kept < 0 else 1), -1
        else:
            low, at_low = middle, at_middle
            at_high, kept = at_high / (2 if kept > 0 else 1), 1
    return middle


def _below(t: float, widths: list[float], sigma: float) -> float:
    """P(sum of U(-w, w) + N(0, sigma) < t), in closed form: the normal distribution function
    integrated once for each width.
    """
    integral, total = INTEGRALS[len(widths)], 0.0
    for signs in SIGNS[len(widths)]:
        at, sign = t, 1
        for each, width in zip(signs, widths):
            at += each * width
            sign *= each
        total += sign * integral(at, sigma)
    for width in widths:
        total /= 2 * width
    return total


def _phi(x: float, sigma: float) -> float:
    return 0.5 * (1 + erf(x / sigma / ROOT_2))


def _density(x: float, sigma: float) -> float:
    z = x / sigma
    return exp(-z * z / 2) / ROOT_2_PI


def _once(x: float, sigma: float) -> float:
    """The integral of the normal distribution function up to x (the ramp max(x, 0) when sigma is
    0).
    """
    return max(x, 0.0) if sigma == 0 else x * _phi(x, sigma) + sigma * _density(x, sigma)


def _twice(x: float, sigma: float) -> float:
    if sigma == 0:
        return max(x, 0.0) ** 2 / 2
    return ((x * x + sigma * sigma) * _phi(x, sigma) + x * sigma * _density(x, sigma)) / 2


def _thrice(x: float, sigma: float) -> float:
    if sigma == 0:
        return max(x, 0.0) ** 3 / 6
    variance = sigma * sigma
    return (
        (x**3 + 3 * x * variance) * _phi(x, sigma)
        + (x * x + 2 * variance) * sigma * _density(x, sigma)
    ) / 6


SIGNS = tuple(tuple(product((1, -1), repeat=count)) for count in range(KEPT + 1))
INTEGRALS = (_phi, _once, _twice, _thrice)
