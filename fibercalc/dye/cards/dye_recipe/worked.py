"""What goes into the pot, how many pots that is, and how full the fullest stands."""

from __future__ import annotations

from math import ceil

from ....core.arithmetic import total
from ....core.problem import OutOfRange, Refused
from ....core.steps import at_least, at_most, looked_up, searched
from ....yarn.fiber_density import DENSITIES, density_column
from ...pot_loads import even_loads, skeins_that_fit
from ...recipe import (
    bath_auxiliary,
    bath_volume,
    by_weight,
    by_weight_error,
    carried_water,
    dye_mass,
    over_held,
    pot_level,
    recipe_mass,
    stock_volume,
    top_up_water,
    yarn_displacement,
)
from .asked import CITRIC, CLASSES, LIQUID, SODA, YES, Dye, DyeRecipe


def answer(case: DyeRecipe) -> None:
    case.goods = _goods(case)
    case.total_depth = total([dye.depth for dye in case.dyes])
    if case.total_depth == 0:
        raise Refused(
            "Dyes: all depths are 0; give at least one.", DyeRecipe.dyes.each(Dye.depth, row=1)
        )
    case.over = over_held(case.total_depth, CLASSES[case.dye_class]["depth_mark"])
    _find_doses(case)
    case.bath = bath_volume(case.goods, case.liquor_ratio)
    _fill_pots(case)
    _find_acid(case)
    _find_salts(case)
    _top_up(case)
    case.raised = case.displaced * case.share
    case.level = pot_level(case.bath * case.share, case.raised, case.fill)
    case.run_skeins = case.skeins * case.lots


def _goods(case: DyeRecipe) -> float:
    """Yarn in the lot, as dry as the recipe takes it to be."""
    weighed = case.skeins * case.skein_mass
    if case.damp == YES:
        return recipe_mass(weighed, case.regain_now, case.regain_usual)
    return weighed


def _find_doses(case: DyeRecipe) -> None:
    for dye in case.dyes:
        dye.powder = dye_mass(case.goods, dye.depth)
        dye.stock = stock_volume(dye.powder, dye.strength)
        dye.run_stock = dye.stock * case.lots
    case.stock_total = total([dye.stock for dye in case.dyes])
    case.dye_total = total([dye.powder for dye in case.dyes])


def _fill_pots(case: DyeRecipe) -> None:
    """Share the lot over as few pots as hold it, as evenly as whole skeins allow."""
    case.density = looked_up("yarn", DENSITIES, "fiber", case.fiber, density_column(case.fiber))
    case.displaced = yarn_displacement(case.goods, case.density)
    case.room = (case.bath + case.displaced) / case.skeins
    fits = skeins_that_fit(
        float(case.fill),
        float(case.goods) / case.skeins,
        float(case.liquor_ratio),
        1 / float(case.density),
    )
    case.most = searched(
        fits, lambda most: (at_most(most * case.room, case.fill),), lambda: case.fill / case.room
    )
    case.potfuls = searched(
        len(even_loads(case.skeins, case.most)),
        lambda potfuls: (at_least(potfuls * case.most, case.skeins),),
        lambda: case.skeins / case.most,
    )
    case.fullest = ceil(case.skeins / case.potfuls)
    case.share = case.fullest / case.skeins


def _find_acid(case: DyeRecipe) -> None:
    if case.acid not in (CITRIC, LIQUID):
        return
    if case.acid == LIQUID:
        case.acid_by_weight = by_weight(case.acid_strength)
        case.acid_by_weight_off = by_weight_error(case.acid_strength)
    if case.acid_share > 0:
        case.acid_pure = dye_mass(case.goods, case.acid_share)
        if case.acid == LIQUID:
            case.acid_volume = stock_volume(case.acid_pure, case.acid_strength)


def _find_salts(case: DyeRecipe) -> None:
    if case.salt_share:
        case.salt = dye_mass(case.goods, case.salt_share)
    if case.acid == SODA:
        case.soda_mass = bath_auxiliary(case.bath, case.soda)
    if case.salt_liter:
        case.salt_bath = bath_auxiliary(case.bath, case.salt_liter)


def _top_up(case: DyeRecipe) -> None:
    case.carried = carried_water(case.goods, case.pick_up)
    additions = case.stock_total + case.carried
    if case.has(DyeRecipe.acid_volume):
        additions = additions + case.acid_volume
    try:
        case.water = top_up_water(case.bath, additions)
    except OutOfRange as over:
        raise Refused(f"Dyes: {over.reason}.", DyeRecipe.dyes.each(Dye.strength, row=1)) from None
