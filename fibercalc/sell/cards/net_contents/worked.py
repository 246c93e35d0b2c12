"""A sample's mean and spread, and how far each rule lets them be short of the label."""

from __future__ import annotations

from ....core.arithmetic import largest, sqrt
from ....core.card import Between, Result
from ....core.problem import OutOfRange, Refused
from ....core.steps import solved
from ....core.traced import named
from ....yarn.blend import blend_regain
from ....yarn.moisture import mass_at_other_regain
from ....yarn.regain import CURVE_ERROR, regain_at_humidity
from ....yarn.sample import mean, standard_deviation
from ....yarn.student_t import quantile, share_below
from ...lot_test import SMALL_BATCH, WEIGHT, judge
from ...tolerance import (
    CHANCE_EU,
    CHANCE_US,
    HEAVIEST,
    LIGHTEST,
    allowed_short_length,
    allowed_short_weight,
    correction_factor,
    inspector_factor,
    lowest_mean,
    mean_short,
    tolerable_negative_error,
)
from .asked import Fiber, NetContents, as_labeled

SURE = 95.0  # %: how often a sample's mean keeps the rule when the packer aims as told
NORMAL_40 = 1.96  # standard deviations that 1 in 40 lie under
SHARE_BELOW = named("share below", share_below)


def answer(case: NetContents) -> None:
    weighed = case.by == WEIGHT
    case.values = (
        [skein.mass for skein in case.skeins]
        if weighed
        else [skein.length for skein in case.lengths]
    )
    case.label = case.label_mass if weighed else case.label_length
    case.judged = judge(list(map(float, case.values)), float(case.label), case.by, int(case.lot))
    _us_rules(case)
    if weighed and LIGHTEST <= case.label <= HEAVIEST:
        _average_rule(case)
    if weighed and case.air == "yes":
        _drier(case)


def _put(case: NetContents, part: Result[float] | Between[float], value: float) -> float:
    """Find a weight, or the length that says the same; gives it by its name."""
    name = as_labeled(case, part).name
    setattr(case, name, value)
    found: float = getattr(case, name)
    return found


def _us_rules(case: NetContents) -> None:
    case.count = len(case.values)
    middle = _put(case, NetContents.mean, mean(case.values))
    spread = _put(case, NetContents.spread, standard_deviation(case.values))
    _put(case, NetContents.over, middle - case.label)
    case.short = mean_short(middle, case.label)
    case.factor_us = _factor(case, correction_factor(len(case.values)), CHANCE_US)
    _put(case, NetContents.low_us, lowest_mean(case.label, case.factor_us, spread))
    allowed_short = allowed_short_weight if case.by == WEIGHT else allowed_short_length
    try:
        allowed = _put(case, NetContents.allowed_us, allowed_short(case.label))
    except OutOfRange:
        return  # a heavier label than the rows that were recalled
    _put(case, NetContents.each_us, case.label - allowed)


def _factor(case: NetContents, found: float, chance: float) -> float:
    """How many standard deviations a mean may be short: Student's t over the root of the count."""
    return solved(
        found, lambda factor: SHARE_BELOW(factor * sqrt(case.count), case.count - 1) - chance
    )


def _average_rule(case: NetContents) -> None:
    label = case.label_mass
    case.tolerable = tolerable_negative_error(label)
    case.first = label - case.tolerable
    case.second = label - 2 * case.tolerable
    if case.lot >= SMALL_BATCH:
        case.factor_eu = _factor(case, inspector_factor(len(case.values)), CHANCE_EU)
        case.low_eu = lowest_mean(label, case.factor_eu, case.spread)
    case.t = solved(
        quantile(SURE, len(case.values) - 1), lambda t: SHARE_BELOW(t, case.count - 1) - SURE
    )
    case.aim = largest(
        label + case.t * case.spread / sqrt(case.count),
        label - case.tolerable + NORMAL_40 * case.spread,
    )


def _drier(case: NetContents) -> None:
    """What the same skeins weigh in the driest air they may be weighed in."""
    shares: dict[str, float] = {}
    for fiber in case.fibers:
        shares[fiber.fiber] = shares.get(fiber.fiber, 0.0) + float(fiber.share)
    regain = named(
        "regain of the blend at",
        lambda humidity: blend_regain(
            shares, {family: regain_at_humidity(family, humidity) for family in shares}
        ),
    )
    try:
        case.here = regain(case.humidity)
        case.there = regain(case.driest)
    except OutOfRange as error:
        raise Refused(
            f"Fibers: {error.reason}.", NetContents.fibers.each(Fiber.share, row=1)
        ) from None
    case.dry_mean = mass_at_other_regain(case.mean, case.here, case.there)
    off = abs(case.there - case.here) / (100 + case.here) * CURVE_ERROR / 100
    case.error(NetContents.dry_mean, case.mean * off)
