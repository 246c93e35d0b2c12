"""How the weights follow: the water is taken out, and put back as each rule has it."""

from __future__ import annotations

from ....core.card import Between
from ....core.problem import Refused
from ....core.steps import looked_up
from ...blend import SHARES_OFF_BY, blend_regain, dry_parts, share_of
from ...moisture import mass_at_regain, oven_dry_mass
from ...regain import (
    CURVE_ERROR,
    STANDARD_HUMIDITY,
    actual_regains,
    commercial_regains,
    fiber_family,
    has_curve,
    humidities_around,
    regain_at_humidity,
    regain_between,
    regain_curves,
)
from .asked import BY_REGAIN, LABEL, Fiber, TrueWeight

EU, US, FOUND, CURVES = (
    "ec-1998-agreed-allowances",
    "d1909-commercial-regains",
    "actual-regains",
    "regain-against-humidity",
)
IN_US = {row["fiber"] for row in commercial_regains().rows}
FOUND_AT_STANDARD = {row["fiber"]: row for row in actual_regains().rows}


def answer(case: TrueWeight) -> None:
    _refuse_shares(case.fibers)
    _dry_shares(case)
    off_now = _now(case)
    case.dry = oven_dry_mass(case.weighed, case.now)
    case.water = case.weighed - case.dry
    off_standard = _standard(case)
    case.conditioned = mass_at_regain(case.dry, case.standard)
    if case.labelled is not None:
        case.over = case.conditioned - case.labelled
    _commercial(case)
    _state_error(case, off_now, off_standard)


def _refuse_shares(fibers: list[Fiber]) -> None:
    together = sum(fiber.share for fiber in fibers)
    if abs(together - 100) > SHARES_OFF_BY:
        raise Refused(
            f"Shares of the fibers: they add up to {together:.4g} %; make them add up to 100 %.",
            TrueWeight.fibers.each(Fiber.share, row=len(fibers)),
        )


def _dry_shares(case: TrueWeight) -> None:
    """Each fiber's share of the dry weight."""
    for fiber in case.fibers:
        fiber.allowance = looked_up("yarn", EU, "fiber", fiber.fiber, "allowance")
    parts = [fiber.share for fiber in case.fibers]
    if case.shares_of == LABEL and len(parts) > 1:
        for fiber in case.fibers:
            fiber.dry_parts = dry_parts(fiber.share, fiber.allowance)
        parts = [fiber.dry_parts for fiber in case.fibers]
    for fiber, own in zip(case.fibers, parts):
        fiber.dry_share = share_of(own, parts)


def _now(case: TrueWeight) -> float:
    """The regain as weighed; gives by how many points it may be off by the tables."""
    if case.dampness == BY_REGAIN:
        case.now = case.regain
        return 0.0
    regains = [_regain(case, fiber, case.humidity, Fiber.regain_now) for fiber in case.fibers]
    case.regain_now = _blend(case, regains)
    case.now = case.regain_now
    return _off(case, regains, case.humidity)


def _standard(case: TrueWeight) -> float:
    """The regain at the standard atmosphere; gives by how many points it may be off."""
    measured = case.maybe(TrueWeight.standard_regain)
    if measured is not None:
        case.standard = measured
        return 0.0
    case.standard_humidity = STANDARD_HUMIDITY
    regains = [
        _regain(case, fiber, case.standard_humidity, Fiber.regain_at_standard)
        for fiber in case.fibers
    ]
    case.regain_at_standard = _blend(case, regains)
    case.standard = case.regain_at_standard
    return _off(case, regains, STANDARD_HUMIDITY)


def _regain(case: TrueWeight, fiber: Fiber, humidity: float, part: Between[float]) -> float:
    """One fiber's regain in air of one humidity, by its curve where it has one."""
    family = fiber_family(fiber.fiber)
    if not has_curve(family):
        return _without_curve(fiber)
    below, above = humidities_around(humidity)
    ends = [_on_curve(case, family, point) for point in (below, above)]
    setattr(fiber, part.name, regain_between(humidity, below, above, *ends))
    found: float = getattr(fiber, part.name)
    return found


def _on_curve(case: TrueWeight, family: str, point: float) -> float:
    """A value of a curve, looked up once."""
    name = f"{family.split()[0]} at {point:.0f} %"
    if name not in case.curve:
        case.curve[name] = looked_up("yarn", CURVES, "humidity", int(point), family)
    return case.curve[name]


def _without_curve(fiber: Fiber) -> float:
    """What was found at the standard atmosphere, else what is agreed for trade."""
    known = fiber.maybe(Fiber.without_curve)
    if known is not None:
        return known
    name = fiber.fiber
    row = FOUND_AT_STANDARD.get(name)
    if row is None:
        table, column = (US, "regain") if name in IN_US else (EU, "allowance")
        fiber.without_curve = looked_up("yarn", table, "fiber", name, column)
    elif row["low"] == row["high"]:
        fiber.without_curve = looked_up("yarn", FOUND, "fiber", name, "low")
    else:
        fiber.found_low = looked_up("yarn", FOUND, "fiber", name, "low")
        fiber.found_high = looked_up("yarn", FOUND, "fiber", name, "high")
        fiber.without_curve = (fiber.found_low + fiber.found_high) / 2
    return fiber.without_curve


def _blend(case: TrueWeight, regains: list[float]) -> float:
    """The regain of the whole yarn from that of each fiber."""
    numbers = [str(number) for number in range(1, len(regains) + 1)]
    shares = [fiber.dry_share for fiber in case.fibers]
    return blend_regain(dict(zip(numbers, shares)), dict(zip(numbers, regains)))


def _commercial(case: TrueWeight) -> None:
    """The weights that the EU and, where it has a figure for each fiber, the US agreed on."""
    case.eu_regain = _blend(case, [fiber.allowance for fiber in case.fibers])
    case.eu_mass = mass_at_regain(case.dry, case.eu_regain)
    if all(fiber.fiber in IN_US for fiber in case.fibers):
        for fiber in case.fibers:
            fiber.us_regain = looked_up("yarn", US, "fiber", fiber.fiber, "regain")
        case.us_regain = _blend(case, [fiber.us_regain for fiber in case.fibers])
        case.us_mass = mass_at_regain(case.dry, case.us_regain)


def _off(case: TrueWeight, regains: list[float], humidity: float) -> float:
    """By how many points the yarn's regain may be off.

    A fiber without a curve is held at its standard value, so it may be off as far as the steepest
    curve has moved.
    """
    families = [name for name in regain_curves().columns if has_curve(name)]
    moved = max(
        abs(regain_at_humidity(name, humidity) / regain_at_humidity(name, STANDARD_HUMIDITY) - 1)
        for name in families
    )
    return sum(
        fiber.dry_share
        / 100
        * regain
        * (CURVE_ERROR / 100 + (0 if has_curve(fiber_family(fiber.fiber)) else moved))
        for fiber, regain in zip(case.fibers, regains)
    )


def _state_error(case: TrueWeight, off_now: float, off_standard: float) -> None:
    """The tables' own error, carried to every weight.

    One yarn has one history, so its regain is off the same way at both humidities.
    """
    dry_up = oven_dry_mass(case.weighed, case.now + off_now)
    dry_half = case.dry - dry_up
    conditioned = abs(mass_at_regain(dry_up, case.standard + off_standard) - case.conditioned)
    for result in (TrueWeight.dry, TrueWeight.water):
        case.error(result, dry_half)
    for result in (TrueWeight.conditioned, TrueWeight.over):
        case.error(result, conditioned)
    case.error(TrueWeight.eu_mass, dry_half * (1 + case.eu_regain / 100))
    if case.has(TrueWeight.us_regain):
        case.error(TrueWeight.us_mass, dry_half * (1 + case.us_regain / 100))
