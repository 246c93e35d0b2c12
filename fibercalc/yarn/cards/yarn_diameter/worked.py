"""How thick each model makes the yarn."""

from __future__ import annotations

from ....core.arithmetic import largest, smallest
from ....core.problem import Refused
from ....core.steps import looked_up
from ...blend import SHARES_OFF_BY, blend_density
from ...count import COTTON_HANK, count_from_tex, hanks_per_pound, yards_per_pound_from_metric
from ...diameter import (
    ashenhurst_diameters_per_inch,
    diameter_from_diameters_per_inch,
    peirce_diameter_of_count,
    solid_diameter,
)
from ...fiber_density import fiber_densities
from .asked import BLEND, OWN, Fiber, YarnDiameter

DENSITIES = "morton-hearle-fiber-densities"


def answer(case: YarnDiameter) -> None:
    case.solid = solid_diameter(case.count, _density(case), case.packing / 100)
    case.metric_count = count_from_tex(case.count, "Nm")
    case.yards_per_pound = yards_per_pound_from_metric(case.metric_count)
    case.cotton_count = hanks_per_pound(case.yards_per_pound, COTTON_HANK)
    case.peirce = peirce_diameter_of_count(case.cotton_count)
    case.constant = looked_up("yarn", "ashenhurst-constants", "name", case.kind, "constant")
    case.side_by_side = ashenhurst_diameters_per_inch(case.yards_per_pound, case.constant)
    case.ashenhurst = diameter_from_diameters_per_inch(case.side_by_side)
    case.thickest = largest(case.solid, case.peirce, case.ashenhurst)
    case.thinnest = smallest(case.solid, case.peirce, case.ashenhurst)
    case.apart = 100 * (case.thickest / case.thinnest - 1)


def _density(case: YarnDiameter) -> float:
    """The density of what the yarn is made of."""
    if case.made_of == OWN:
        return case.density
    if case.made_of == BLEND:
        return _density_of_blend(case)
    case.fiber_density = _looked_up(case.fiber)
    return case.fiber_density


def _density_of_blend(case: YarnDiameter) -> float:
    blend = case.blend
    together = sum(fiber.share for fiber in blend)
    if abs(together - 100) > SHARES_OFF_BY:
        raise Refused(
            f"Shares of the blend: they add up to {together:.4g} %; make them add up to 100 %.",
            YarnDiameter.blend.each(Fiber.share, row=len(blend)),
        )
    for fiber in blend:
        fiber.density = _looked_up(fiber.fiber)
    numbers = [str(number) for number in range(1, len(blend) + 1)]
    case.density_of_blend = blend_density(
        dict(zip(numbers, (fiber.share for fiber in blend))),
        dict(zip(numbers, (fiber.density for fiber in blend))),
    )
    return case.density_of_blend


def _looked_up(fiber: str) -> float:
    """The density of a fiber at 65 % humidity, or dry where only that is published."""
    row = fiber_densities().row("fiber", fiber)
    column = "at_65" if isinstance(row["at_65"], float) else "dry"
    return looked_up("yarn", DENSITIES, "fiber", fiber, column)
