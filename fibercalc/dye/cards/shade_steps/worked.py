"""The steps between the ends: even ones, as they can be weighed, and other ways beside them."""

from __future__ import annotations

from collections.abc import Sequence

from ....core.arithmetic import mean, total
from ....core.problem import OutOfRange, Refused
from ...color.asked import corrected, mixer
from ...color.kubelka_munk import Palette
from ...color.path import Path, Recipe
from ...color.seeing import half_width, half_width_of_difference
from ...color.steps import (
    equal_percent_ladder,
    even_ladder,
    farthest,
    finest_by_stock,
    geometric_ladder,
    geometric_ratio,
    off_by,
    weighed_ladder,
)
from ...pot_loads import skeins_found
from .asked import POWDER, STOCK, STRAIGHT, Dye, ShadeSteps


def answer(case: ShadeSteps) -> None:
    undyed, *samples = corrected(
        (case.undyed, *(dye.sample for dye in case.dyes)), case.maybe(ShadeSteps.gray)
    )
    palette = mixer(
        undyed, [(sample, float(dye.percent)) for sample, dye in zip(samples, case.dyes)]
    )
    ends = _ends(case)
    _step(case, palette, ends)
    if len(ends) == 2 and all((first > 0) == (last > 0) for first, last in zip(*_outer(case))):
        _step_by_ratio(case, palette)
    for number, gap in enumerate(case.even.differences, 1):
        case.gaps[f"{number} to {number + 1}"] = gap
    gaps = list(case.gaps.values())
    case.mean = mean(gaps)
    case.farthest = farthest(gaps, case.mean)
    case.uneven = off_by(case.farthest, case.mean)
    case.error(ShadeSteps.mean, _error_of_way(case) / (case.count - 1))
    for number, recipe in enumerate(case.even.recipes, 1):
        case.depths[f"{number}"] = sum(recipe)
    case.total_depth = total(list(case.depths.values()))
    case.dye_total = case.fiber * case.total_depth / 100
    _find_amounts(case)


def _outer(case: ShadeSteps) -> tuple[Recipe, Recipe]:
    """The recipes of the first and the last skein."""
    firsts = tuple(float(dye.first) for dye in case.dyes)
    return firsts, tuple(float(dye.last) for dye in case.dyes)


def _ends(case: ShadeSteps) -> list[Recipe]:
    """The recipes that the steps lead through."""
    firsts, lasts = _outer(case)
    if case.way == STRAIGHT or len(lasts) == 1:
        return [firsts, lasts]
    return [
        tuple(last if at == number else 0.0 for at, last in enumerate(lasts))
        for number in range(len(lasts))
    ]


def _step(case: ShadeSteps, palette: Palette, ends: Sequence[Recipe]) -> None:
    """Even steps, as they can be weighed, and equal percents beside them."""
    count = int(case.count)
    try:
        path = Path(palette, ends)
        case.even = even_ladder(path, count)
    except OutOfRange as error:
        raise Refused(
            f"Steps: {error.reason or 'the two ends must differ'}.",
            ShadeSteps.dyes.each(Dye.last, row=1),
        ) from None
    case.by_percent = equal_percent_ladder(path, count)
    case.equal = case.by_percent.unevenness
    if case.dose_by == POWDER:
        finest = float(case.scale_step)
    else:
        finest = finest_by_stock(float(case.strength), float(case.syringe_step))
    case.real = weighed_ladder(palette, case.even, float(case.fiber), [finest] * len(case.dyes))
    case.weighed = case.real.unevenness


def _step_by_ratio(case: ShadeSteps, palette: Palette) -> None:
    case.by_ratio = geometric_ladder(palette, *_outer(case), int(case.count))
    case.geometric = case.by_ratio.unevenness
    if len(case.dyes) == 1:
        case.ratio = geometric_ratio(case.dyes[0].first, case.dyes[0].last, case.count)
    case.geometric_depth = sum(sum(recipe) for recipe in case.by_ratio.recipes)
    case.geometric_total = case.fiber * case.geometric_depth / 100


def _error_of_way(case: ShadeSteps) -> float:
    """Of the whole way from the first color to the last."""
    half = half_width(case.seen)
    return half_width_of_difference(case.even.colors[0], case.even.colors[-1], half, half)


def _find_amounts(case: ShadeSteps) -> None:
    """What goes on: the stock of the whole set, and the yarn of a shade in skeins."""
    if case.dose_by == STOCK:
        for number, dye in enumerate(case.dyes):
            dye.depth_of_set = sum(recipe[number] for recipe in case.real.recipes)
            dye.stock = case.fiber * dye.depth_of_set / case.strength
    case.pieces = skeins_found(case.fiber)
    case.skein_mass = case.fiber / case.pieces
