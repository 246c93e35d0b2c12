"""How recipes fall into loads, and the plan of the room that is done first."""

from __future__ import annotations

from ....core.arithmetic import largest, total
from ....core.problem import OutOfRange, Refused
from ....core.steps import at_least, at_most, searched
from ...pot_loads import fewest_loads, skeins_that_fit
from ...ramp import minutes_of_clock
from ...schedule.plan import Plan, make_plan, retimed
from ...schedule.room import Recipe, Room, Step
from .asked import Pot, Pots
from .asked import Step as AskedStep

FIBER_TAKES = 0.76  # mL that a gram of wool takes up itself: 1 / 1.31 g/cm³
# What a step needs: a pot, a burner, hands.
NEEDS = {
    "nothing": (False, False, False),
    "pot": (True, False, False),
    "pot-hands": (True, False, True),
    "burner": (True, True, False),
    "burner-hands": (True, True, True),
    "hands": (False, False, True),
}


def answer(case: Pots) -> None:
    fits = _fits(case)
    _share_out(case, max(fits))
    case.plan = _plan(case, fits)
    case.opened = _clock(case.opens)
    case.loads = searched(
        len(case.plan.numbered),
        lambda loads: (at_least(loads, _least(case)),),
        lambda: _least(case),
    )
    case.dye_days = case.plan.dye_days
    if case.drying:
        case.drying_days = case.plan.drying_days
    case.bound = case.plan.bound.work
    case.work = searched(
        case.plan.work_end, lambda work: (at_least(work, case.bound),), lambda: case.bound
    )
    case.over = 100 * (case.work / case.bound - 1)
    case.fullest = max(load.skeins for load in case.plan.placing.loads)
    case.yarn_of_load = case.fullest * case.skein_mass
    case.bath_of_load = case.yarn_of_load * case.liquor_ratio / 1000


def _fits(case: Pots) -> list[int]:
    """Skeins that each pot takes."""
    fits = []
    for number, pot in enumerate(case.pots, 1):
        try:
            fits.append(
                skeins_that_fit(
                    float(pot.fill), float(case.skein_mass), float(case.liquor_ratio), FIBER_TAKES
                )
            )
        except OutOfRange as error:
            raise Refused(
                f"Pot {number}, filled to at most: {error.reason}.",
                Pots.pots.each(Pot.fill, row=number),
            ) from None
    return fits


def _share_out(case: Pots, most: int) -> None:
    case.all_skeins = total(recipe.skeins for recipe in case.recipes)
    case.largest_fill = largest(pot.fill for pot in case.pots) / 1000
    case.fit = searched(
        most,
        lambda fit: (at_most(fit * _liters_of_skein(case), case.largest_fill),),
        lambda: case.largest_fill / _liters_of_skein(case),
    )
    for recipe in case.recipes:
        recipe.least = fewest_loads(recipe.skeins, case.fit)


def _liters_of_skein(case: Pots) -> float:
    """A skein in its bath."""
    return case.skein_mass * (case.liquor_ratio + FIBER_TAKES) / 1000


def _least(case: Pots) -> float:
    """Loads that there are at least: no two recipes share a pot."""
    return total(recipe.least for recipe in case.recipes)


def _plan(case: Pots, fits: list[int]) -> Plan:
    """The plan that is done first; where roughness is carried, that plan with other minutes."""
    done = tuple(
        Step(step.name or f"step {number}", float(step.minutes), *NEEDS[step.needs])
        for number, step in enumerate(case.steps, 1)
    )
    wanted = [
        Recipe(recipe.name or f"recipe {number}", int(recipe.skeins), done)
        for number, recipe in enumerate(case.recipes, 1)
    ]
    drying, day, rail = float(case.drying), float(case.day), int(case.rail)
    known = case.settled(Pots.chosen)
    try:
        if known:
            return retimed(known, wanted, drying, day)
        room = Room(tuple(fits), int(case.burners), int(case.hands), day, rail, drying)
        case.chosen = make_plan(wanted, room)
    except OutOfRange as error:
        raise Refused(
            f"This room: {error.reason or 'no plan can be made; change pots, steps or hours'}.",
            Pots.steps.each(AskedStep.minutes, row=1),
        ) from None
    return case.chosen


def _clock(text: str) -> int:
    try:
        return minutes_of_clock(text)
    except OutOfRange:
        raise Refused("The day begins at: give a time of day such as 8:00.", Pots.opens) from None
