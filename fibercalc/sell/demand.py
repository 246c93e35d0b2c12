"""How many to make when nobody knows how many will be wanted: demand from past sales, some cut off
by selling out, and the number to bring.

What was sold when something was left is what was wanted. Where it sold out, what was wanted is at
least that: a censored value. Such a release counts as the mean of all demands at least as large,
which is what the likelihood of the normal distribution asks (Tobin; Cohen).
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import erf, erfc, exp, lgamma, log1p, pi, sqrt

from ..core import arithmetic
from ..core.problem import OutOfRange, require
from ..yarn import student_t

# Releases that did not sell out, from which on the spread is taken from the data (our own edge).
FITTED_FROM = 4
MOST = 1e6
MOST_RELEASES = 150  # five years of a release or a fair every other week
STEPS = 200
FARTHEST = 100  # times the most ever sold: a mean beyond that has no bound in the data


def critical_ratio(price: float, cost: float, left_value: float) -> float:
    """The chance of having enough that pays best:
    (price - cost) / ((price - cost) + (cost - left_value)).

    price       what one brings when sold, more than cost
    cost        what one more costs to make, 0 or more
    left_value  what one that is left still brings, under cost
    Raises OutOfRange outside these.
    Source: cachon-terwiesch.
    """
    require("cost", cost, 0.0)
    require("price", price, above=cost)
    require("left_value", left_value)
    if left_value >= cost:
        raise OutOfRange(
            "left_value",
            left_value,
            reason=(
                "what is left would bring its cost or more: then none is too many, and no count is"
                " best"
            ),
        )
    return best_chance(price - cost, cost - left_value)


def best_chance(short: float, over: float) -> float:
    """The chance of having enough that pays best: short / (short + over).

    short  what one too few costs, above 0
    over   what one too many costs, above 0
    Raises OutOfRange outside these.
    Source: cachon-terwiesch.
    """
    require("short", short, above=0.0)
    require("over", over, above=0.0)
    return short / (short + over)


def normal_share_below(z: float) -> float:
    """The share, 0 to 1, of the standard normal distribution below z.

    z  any number
    Raises OutOfRange for what is no number.
    Source: abramowitz-stegun.
    """
    require("z", z)
    return 0.5 * erfc(-z / sqrt(2))


def normal_quantile(share: float) -> float:
    """The z below which a share of the standard normal distribution lies.

    share  above 0 and below 1
    Raises OutOfRange outside these.
    Source: abramowitz-stegun.
    """
    require("share", share, 1e-12, 1 - 1e-12)
    low, high = -8.0, 8.0
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if normal_share_below(middle) < share else (low, middle)
    return (low + high) / 2


def normal_loss(z: float) -> float:
    """What a standard normal exceeds z by, on average: density - z x share above.

    z  any number
    Raises OutOfRange for what is no number.
    Source: cachon-terwiesch.
    """
    require("z", z)
    return exp(-z * z / 2) / sqrt(2 * pi) - z * 0.5 * erfc(z / sqrt(2))


def student_loss(z: float, degrees: float) -> float:
    """What Student's t exceeds z by, on average: (degrees + z²) / (degrees - 1) x density - z x
    share above.

    z        -1e9 to 1e9
    degrees  degrees of freedom, a whole number from 2 to 10,000: with one the average has no end
    Raises OutOfRange outside these.
    Source: arithmetic (the integral of t times its density, abramowitz-stegun 26.7.1).
    """
    require("degrees", degrees, 2, student_t.MOST_DEGREES)
    above = 1 - student_t.share_below(z, int(degrees)) / 100
    half = (degrees + 1) / 2
    density = exp(lgamma(half) - lgamma(degrees / 2) - half * log1p(z * z / degrees))
    density /= sqrt(degrees * pi)
    return (degrees + z * z) / (degrees - 1) * density - z * above


def expected_short(count: float, mean: float, deviation: float, degrees: float = 0) -> float:
    """How many are asked for in vain on average when count are there and demand is normal, or
    Student's t where its spread is a sample's own.

    count      0 or more
    mean       of demand, 0 or more
    deviation  its standard deviation, above 0
    degrees    of freedom of that spread, 2 to 10,000; 0 where it is given
    Raises OutOfRange outside these.
    Source: cachon-terwiesch; of Student's t arithmetic.
    """
    _require_normal(count, mean, deviation)
    z = (count - mean) / deviation
    return deviation * (student_loss(z, degrees) if degrees else normal_loss(z))


def expected_left(count: float, mean: float, deviation: float, short: float | None = None) -> float:
    """How many are left on average: count - mean + expected_short.

    count      0 or more
    mean       of demand, 0 or more
    deviation  its standard deviation, above 0
    short      expected_short of these, where it is known already
    Raises OutOfRange outside these.
    Source: cachon-terwiesch.
    """
    _require_normal(count, mean, deviation)
    return count - mean + (expected_short(count, mean, deviation) if short is None else short)


def expected_profit(
    count: float,
    mean: float,
    deviation: float,
    price: float,
    cost: float,
    left_value: float,
    short: float | None = None,
) -> float:
    """What count bring on average over what they cost:
    (price - cost) mean - (price - cost) short - (cost - left_value) left.

    count       0 or more
    mean        of demand, 0 or more
    deviation   its standard deviation, above 0
    price       of one sold, above cost
    cost        of one, 0 or more
    left_value  of one left, under cost
    short       expected_short of these, where it is known already
    Raises OutOfRange outside these.
    Source: cachon-terwiesch.
    """
    critical_ratio(price, cost, left_value)
    if short is None:
        short = expected_short(count, mean, deviation)
    left = expected_left(count, mean, deviation, short)
    return (price - cost) * (mean - short) - (cost - left_value) * left


def mean_above(edge: float, mean: float, deviation: float) -> float:
    """The mean of a normal demand, given that it is at least edge: what a sold-out release
    counts as.

    edge       any number
    mean       of all demand
    deviation  its standard deviation, above 0
    Raises OutOfRange outside these.
    Source: cohen-1991 (the estimating equations of the censored normal).
    """
    require("edge", edge)
    require("mean", mean)
    require("deviation", deviation, above=0.0)
    return mean + deviation * _hazard((edge - mean) / deviation)


def told_by_cut(edge: float, mean: float, deviation: float) -> float:
    """What a value that is only known to be at least edge tells of the mean, as a share of what a
    known value tells: h (h - z).

    edge       any number; z is its distance from the mean in deviations, h density over share above
               at z
    mean       of all demand
    deviation  its standard deviation, above 0
    Raises OutOfRange outside these.
    Source: cohen-1991 (second derivative of the likelihood of the censored normal).
    """
    require("edge", edge)
    require("mean", mean)
    require("deviation", deviation, above=0.0)
    z = (edge - mean) / deviation
    hazard = _hazard(z)
    return hazard * (hazard - z)


def square_above(edge: float, mean: float, deviation: float) -> float:
    """The mean squared distance from the mean, of a normal demand that is at least edge.

    edge       any number
    mean       of all demand
    deviation  its standard deviation, above 0
    Raises OutOfRange outside these.
    Source: cohen-1991 (the estimating equations of the censored normal).
    """
    require("edge", edge)
    require("mean", mean)
    require("deviation", deviation, above=0.0)
    z = (edge - mean) / deviation
    return deviation**2 * (1 + z * _hazard(z))


def factor_for_few(known: float) -> float:
    """What the likeliest deviation is multiplied with to be the sample's, with n - 1:
    sqrt(n / (n - 1)).

    known  how many values are known, 2 or more
    Raises OutOfRange outside this.
    Source: definition of a sample's standard deviation.
    """
    require("known", known, 2)
    return arithmetic.sqrt(known / (known - 1))


def error_of_mean(deviation: float, known: float, told: Sequence[float]) -> float:
    """Standard error of the mean by what each value tells: a cut one tells less, the farther below
    the mean it was cut.

    deviation  of demand, above 0
    known      how many values are known, 0 or more
    told       told_by_cut of each other one
    Raises OutOfRange outside these, and where there is no value.
    Source: cohen-1991 (second derivative of the likelihood of the censored normal).
    """
    require("deviation", deviation, above=0.0)
    require("known", known, 0)
    tells = known + arithmetic.total(told)
    require("told", tells, above=0.0)
    return deviation / arithmetic.sqrt(tells)


def spread_of_next(deviation: float, mean_error: float) -> float:
    """The standard deviation of the next demand about the mean, with that of the mean itself.

    deviation   of demand, 0 or more
    mean_error  standard error of its mean, 0 or more
    Raises OutOfRange outside these.
    Source: definition of the variance of a sum of independent parts.
    """
    require("deviation", deviation, 0.0)
    require("mean_error", mean_error, 0.0)
    return arithmetic.sqrt(deviation**2 + mean_error**2)


def demand_at(place: float, mean: float, spread: float) -> float:
    """The demand at a place of its distribution, in spreads from the mean; never under 0.

    place   any number
    mean    of demand
    spread  of the next demand about it, 0 or more
    Raises OutOfRange outside these.
    Source: definition of the quantile.
    """
    require("place", place)
    require("mean", mean)
    require("spread", spread, 0.0)
    return arithmetic.largest(mean + place * spread, 0.0)


def chance_all_cut(edges: Sequence[float], mean: float, deviation: float) -> float:
    """The chance, 0 to 1, that every one of several normal demands is at least so much: that all
    sold out.

    edges      what was offered each time
    mean       of all demand
    deviation  its standard deviation, above 0
    Raises OutOfRange outside these.
    Source: definition of the normal distribution.
    """
    require("mean", mean)
    require("deviation", deviation, above=0.0)
    chance = 1.0
    for edge in edges:
        chance *= 0.5 * (1 - erf((edge - mean) / deviation / sqrt(2)))
    return chance


@dataclass(frozen=True)
class Demand:
    """What is known of demand: its mean and standard deviation, how well the mean is known, and
    from what.

    mean_error  standard error of the mean
    degrees     of freedom where the spread is the data's own; 0 where it was given
    seen, cut   releases that did not sell out, and that did
    at_least    whether every release sold out, so that the mean is only what makes that as likely
                as not
    """

    mean: float
    deviation: float
    mean_error: float
    degrees: int
    seen: int
    cut: int

    @property
    def at_least(self) -> bool:
        return self.seen == 0

    @property
    def whole(self) -> float:
        return spread_of_next(self.deviation, self.mean_error)

    def count_for(self, share: float) -> float:
        """The number that is enough with a chance, 0.001 to 0.999; never under 0."""
        return demand_at(self.place_of(share), self.mean, self.whole)

    def place_of(self, share: float) -> float:
        """The place in the distribution, in spreads from the mean, below which a share of it lies,
        0.001 to 0.999.
        """
        if self.degrees:
            return student_t.quantile(100 * share, self.degrees)
        return normal_quantile(share)

    def chance_enough(self, count: float) -> float:
        """The chance, 0 to 1, that count are enough."""
        z = (count - self.mean) / self.whole
        return (
            student_t.share_below(z, self.degrees) / 100 if self.degrees else normal_share_below(z)
        )


def demand_from_sales(
    sold: Sequence[float], offered: Sequence[float], usual_spread: float
) -> Demand:
    """Demand from past releases. One that sold all it offered is taken as at least that.

    sold          in each release, 0 or more, not over what was offered; 1 to 150 releases
    offered       in each release, above 0
    usual_spread  standard deviation of demand as a share of its mean, 0.02 to 1.5: used while fewer
                  than four releases did not sell out
    Raises OutOfRange outside these, where nothing was ever sold, and where so many sold out and the
    spread is so wide that no mean is likeliest.
    Source: cohen-1991 (censored normal), tobin-1958; common practice where every release sold out
    (the mean that makes that as likely as not).
    """
    require("sold", len(sold), 1, MOST_RELEASES)
    require("usual_spread", usual_spread, 0.02, 1.5)
    if len(offered) != len(sold):
        raise OutOfRange(
            "offered",
            len(offered),
            reason="each release needs both: what was offered and what was sold",
        )
    for some, most in zip(sold, offered):
        require("offered", most, 0.0, MOST, above=0.0)
        require("sold", some, 0.0, most)
    if sum(sold) <= 0:
        raise OutOfRange("sold", 0.0, reason="nothing was ever sold, so nothing is known of demand")
    seen = [some for some, most in zip(sold, offered) if some < most]
    cut = [some for some, most in zip(sold, offered) if some >= most]
    own = len(seen) >= FITTED_FROM and max(seen) > min(seen)
    if own:
        mean, deviation = censored_normal(seen, cut)
        # Without cut values this is Student's prediction: the sample's deviation with n - 1, and t
        # instead of z.
        deviation *= factor_for_few(len(seen))
    elif seen:
        mean = _root(
            lambda m: (
                sum(seen)
                + sum(mean_above(edge, m, usual_spread * m) for edge in cut)
                - len(sold) * m
            ),
            max(sold),
        )
        deviation = usual_spread * mean
    else:
        mean = _root(lambda m: chance_all_cut(cut, m, usual_spread * m) < 0.5, max(sold))
        deviation = usual_spread * mean
    return Demand(
        mean,
        deviation,
        error_of_mean(deviation, len(seen), [told_by_cut(edge, mean, deviation) for edge in cut]),
        len(seen) - 1 if own else 0,
        len(seen),
        len(cut),
    )


def censored_normal(seen: Sequence[float], cut: Sequence[float]) -> tuple[float, float]:
    """Mean and standard deviation of a normal of which some values are only known to be at least so
    much: the likeliest ones.

    seen  values known, two or more that differ
    cut   lower edges of the others, any number
    Raises OutOfRange outside these.
    Source: cohen-1991 (its estimating equations); tobin-1958.
    """
    if len(seen) < 2 or max(seen) <= min(seen):
        raise OutOfRange(
            "seen", len(seen), 2, reason="two known values that differ are needed to see a spread"
        )
    count, middle = len(seen), sum(seen) / len(seen)
    square = sum((value - middle) ** 2 for value in seen) / count
    mean, deviation = middle, sqrt(square)
    # Each turn fills the cut values in with what they are on average: the likelihood only grows.
    for _ in range(20 * STEPS):
        new_mean = (count * middle + sum(mean_above(edge, mean, deviation) for edge in cut)) / (
            count + len(cut)
        )
        about_old = count * (square + (middle - mean) ** 2) + sum(
            square_above(edge, mean, deviation) for edge in cut
        )
        new_deviation = sqrt(max(about_old / (count + len(cut)) - (new_mean - mean) ** 2, 0.0))
        moved = abs(new_mean - mean) + abs(new_deviation - deviation)
        mean, deviation = new_mean, new_deviation
        if moved < 1e-10 * deviation:
            break
    return mean, deviation


def _hazard(z: float) -> float:
    """Density over share above, of the standard normal."""
    return z + 1 / z if z > 25 else exp(-z * z / 2) / sqrt(2 * pi) / (0.5 * erfc(z / sqrt(2)))


def _root(above: Callable[[float], float], start: float) -> float:
    """Where a mean, from 0 up, stops being too low: above(mean) is true or positive while it is."""
    low, high = 1e-9 * start, start
    while above(high) > 0:
        low, high = high, 2 * high
        if high > FARTHEST * start:
            raise OutOfRange(
                "usual_spread",
                high,
                reason=(
                    "too many of them sold out for so wide a usual spread: nothing bounds demand"
                    " from above; give a smaller spread"
                ),
            )
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if above(middle) > 0 else (low, middle)
    return (low + high) / 2


def _require_normal(count: float, mean: float, deviation: float) -> None:
    require("count", count, 0.0)
    require("mean", mean, 0.0)
    require("deviation", deviation, above=0.0)
