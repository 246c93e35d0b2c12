"""Demand from past releases, the count that pays best, and what to dye for it."""

from __future__ import annotations

from collections.abc import Callable
from math import ceil

from ....core.arithmetic import total
from ....core.problem import OutOfRange, Refused
from ....core.steps import at_least, at_most, searched, solved
from ....core.traced import named
from ....yarn.student_t import share_below
from ...demand import (
    Demand,
    best_chance,
    chance_all_cut,
    demand_at,
    demand_from_sales,
    error_of_mean,
    expected_left,
    expected_profit,
    expected_short,
    factor_for_few,
    mean_above,
    normal_share_below,
    spread_of_next,
    square_above,
    told_by_cut,
)
from ...spares import chance_at_most, made_for, places_for, spares_for
from .asked import CountToDye, Release

CLOSE = 1e-9  # keeps a count from going up by the rounding of a float
NORMAL_95 = 1.96  # deviations that 95 % of a normal lie within
MEAN_ABOVE = named("mean above", mean_above)
TOLD = named("told by cut", told_by_cut)
NORMAL_BELOW = named("normal share below", normal_share_below)
STUDENT_BELOW = named("Student’s share below", share_below)
ASKED_IN_VAIN = named("asked in vain", expected_short)
AT_MOST = named("chance of at most", chance_at_most)


def answer(case: CountToDye) -> None:
    _refuse(case)
    case.demand = _demand(case)
    case.too_few = case.price - case.cost
    case.too_many = case.cost - case.left_value
    case.ratio = 100 * best_chance(case.too_few, case.too_many)
    _find_mean(case)
    _find_spread(case)
    _find_count(case)
    _find_made(case)
    _find_places(case)


def _refuse(case: CountToDye) -> None:
    for number, release in enumerate(case.releases, 1):
        if release.sold > release.offered:
            raise Refused(
                f"Release {number}: more were sold than offered.",
                CountToDye.releases.each(Release.sold, row=number),
            )
    if case.price <= case.cost:
        raise Refused(
            "One sold must bring more than one costs, or none is worth dyeing.", CountToDye.price
        )
    if case.left_value >= case.cost:
        raise Refused(
            "One left must bring less than it costs: else none is too many, and no count is best.",
            CountToDye.left_value,
        )


def _demand(case: CountToDye) -> Demand:
    try:
        return demand_from_sales(
            [int(release.sold) for release in case.releases],
            [int(release.offered) for release in case.releases],
            float(case.usual_spread) / 100,
        )
    except OutOfRange as error:
        raise Refused(
            f"Releases: {error.reason or 'these cannot be used'}.",
            CountToDye.releases.each(Release.sold, row=1),
        ) from None


def _find_mean(case: CountToDye) -> None:
    """The mean and the spread of demand, by the equations that they solve."""
    for release in case.releases:
        if release.sold < release.offered:
            release.wanted = release.sold
        else:
            release.at_least = release.sold
    case.number, case.known = len(case.releases), case.demand.seen
    if not case.demand.at_least:
        case.left_some = total(release.wanted for release in _known(case))
    if case.demand.degrees:
        _find_likely(case)
        _solve_mean(case, lambda mean: case.likely)
        case.deviation = case.likely * factor_for_few(case.known)
        return
    if case.demand.at_least:
        _solve_even_chance(case)
    else:
        _solve_mean(case, lambda mean: case.usual_spread / 100 * mean)
    case.deviation = case.usual_spread / 100 * case.typical


def _known(case: CountToDye) -> list[Release]:
    """The releases that did not sell out."""
    return [release for release in case.releases if release.sold < release.offered]


def _cut(case: CountToDye) -> list[Release]:
    """The releases that sold out."""
    return [release for release in case.releases if release.sold >= release.offered]


def _find_likely(case: CountToDye) -> None:
    """The spread that makes these sales likeliest."""
    mean = case.demand.mean
    wanted = [float(release.sold) for release in _known(case)]
    edges = [float(release.sold) for release in _cut(case)]

    def squares(deviation: float) -> float:
        return sum((value - mean) ** 2 for value in wanted) + sum(
            square_above(edge, mean, deviation) for edge in edges
        )

    about_mean = named("squares about the mean", squares)
    case.likely = solved(
        case.demand.deviation / factor_for_few(case.demand.seen),
        lambda likely: about_mean(likely) - case.number * likely**2,
    )


def _solve_mean(case: CountToDye, spread: Callable[[float], float]) -> None:
    """The mean with each sold-out release counted as the mean of all above it."""
    edges = [float(release.sold) for release in _cut(case)]
    filled_in = named(
        "sold out and filled in",
        lambda mean, deviation: sum(mean_above(edge, mean, deviation) for edge in edges),
    )
    case.typical = solved(
        case.demand.mean,
        lambda mean: case.left_some + filled_in(mean, spread(mean)) - case.number * mean,
    )
    for release in _cut(case):
        release.counts_as = MEAN_ABOVE(release.at_least, case.typical, spread(case.typical))


def _solve_even_chance(case: CountToDye) -> None:
    """The mean at which selling out every time is as likely as not."""
    edges = [float(release.sold) for release in case.releases]
    all_sell_out = named(
        "chance that all sell out", lambda mean, deviation: chance_all_cut(edges, mean, deviation)
    )
    case.typical = solved(
        case.demand.mean, lambda mean: all_sell_out(mean, case.usual_spread / 100 * mean) - 0.5
    )


def _find_spread(case: CountToDye) -> None:
    """How sure the mean is, and the spread of the next release about it."""
    for release in _cut(case):
        release.tells = TOLD(release.at_least, case.typical, case.deviation)
    case.mean_error = error_of_mean(
        case.deviation, case.known, [release.tells for release in _cut(case)]
    )
    case.error(CountToDye.typical, NORMAL_95 * case.mean_error)
    case.whole = spread_of_next(case.deviation, case.mean_error)


def _find_count(case: CountToDye) -> None:
    """The count that is enough with the chance that pays best, and what comes of it."""
    found, degrees = case.demand.place_of(float(case.ratio) / 100), case.demand.degrees
    if degrees:
        case.t = solved(found, lambda t: STUDENT_BELOW(t, degrees) - case.ratio)
        case.point = demand_at(case.t, case.typical, case.whole)
    else:
        case.z = solved(found, lambda z: NORMAL_BELOW(z) - case.ratio / 100)
        case.point = demand_at(case.z, case.typical, case.whole)
    case.count = searched(
        max(ceil(float(case.point) - CLOSE), 1),
        lambda count: (at_least(count, case.point),),
        lambda: case.point,
    )
    chance_below = named("chance of demand under", case.demand.chance_enough)
    case.enough = 100 * chance_below(case.count)
    next_one = case.count, case.typical, case.whole
    # Of the distribution that the chance is of: of another, the count that pays best would not.
    case.in_vain = ASKED_IN_VAIN(*next_one, *((degrees,) if degrees else ()))
    case.left_over = expected_left(*next_one, short=case.in_vain)
    case.profit = expected_profit(
        *next_one, case.price, case.cost, case.left_value, short=case.in_vain
    )


def _find_made(case: CountToDye) -> None:
    """Spares for lost parcels, and what to dye so that enough come out well."""
    sure, count = float(case.sure) / 100, int(case.count)
    case.spares = searched(
        spares_for(count, float(case.lost) / 100, sure),
        lambda spares: (at_least(AT_MOST(spares, case.count, case.lost / 100), sure),),
        lambda: 0,
    )
    case.suffice = AT_MOST(case.spares, case.count, case.lost / 100)
    case.good = case.count + case.spares
    case.made = searched(
        made_for(int(case.good), float(case.seconds) / 100, sure),
        lambda made: (
            at_least(AT_MOST(made - case.good, made, case.seconds / 100), sure),
            at_least(made, case.good),
        ),
        lambda: case.good,
    )


def _find_places(case: CountToDye) -> None:
    dyed = case.club_made
    if not dyed:
        return
    try:
        found = places_for(
            int(dyed), float(case.seconds) / 100, float(case.lost) / 100, float(case.sure) / 100
        )
    except OutOfRange as error:
        raise Refused(f"Dyed for the club: {error.reason}.", CountToDye.club_made) from None
    case.places = searched(found, lambda places: (at_most(places, dyed),), lambda: dyed)
