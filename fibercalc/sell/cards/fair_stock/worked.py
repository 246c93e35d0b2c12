"""What a fair must bring in, how many to bring to it, and what that takes to carry."""

from __future__ import annotations

from math import ceil, floor

from ....core.arithmetic import smallest, total
from ....core.problem import OutOfRange, Refused
from ....core.steps import at_most, searched, solved
from ....core.traced import named
from ...demand import Demand, best_chance, demand_from_sales
from ...fair import change_due, crates_needed, notes_handed, skeins_in_crate
from ...money import cents
from ...pricing import break_even
from .asked import Fair, FairStock

CENTS = named("cents", cents)
MOST_SKEINS = 1_000_000  # more than this no fair sells; a plan beyond it is a slip of typing


def answer(case: FairStock) -> None:
    case.fixed = total(cost.amount for cost in case.costs)
    case.pay = case.days * case.hours / 60 * case.wage
    case.break_even = ceil(break_even(case.fixed, case.contribution))
    case.with_wage = ceil(break_even(case.fixed + case.pay, case.contribution))
    if case.with_wage > MOST_SKEINS:
        raise Refused(
            f"One skein leaves: so little that {case.with_wage:,} would have to sell; give more"
            f" here, or less for the fair and your hours, for at most {MOST_SKEINS:,} skeins.",
            FairStock.contribution,
        )
    case.demand = _demand(case)
    _find_bring(case)
    _find_load(case)
    case.notes = notes_handed(CENTS(case.price), CENTS(case.note))
    case.due = change_due(CENTS(case.price), CENTS(case.note), case.notes)
    case.float = case.cash_sales * case.due / 100


def _demand(case: FairStock) -> Demand:
    for number, fair in enumerate(case.past, 1):
        if fair.sold > fair.brought:
            raise Refused(
                f"Past fair {number}: {fair.sold} sold and {fair.brought} brought; no more can sell"
                " than were there.",
                FairStock.past.each(Fair.sold, row=number),
            )
    try:
        return demand_from_sales(
            [float(fair.sold) for fair in case.past],
            [float(fair.brought) for fair in case.past],
            float(case.usual_spread) / 100,
        )
    except OutOfRange as error:
        raise Refused(
            f"Past fairs: {error.reason or 'they tell nothing of demand'}.",
            FairStock.past.each(Fair.sold, row=1),
        ) from None


def _find_bring(case: FairStock) -> None:
    """How many to bring: the newsvendor's number, and the chances that go with it."""
    demand = case.demand
    enough_for = named("enough for", lambda chance: demand.count_for(min(max(chance, 0.01), 0.99)))
    chance_below = named("chance of demand under", demand.chance_enough)
    case.mean = demand.mean
    case.ratio = best_chance(case.contribution, case.home)
    case.wanted = solved(enough_for(case.ratio), lambda wanted: enough_for(case.ratio) - wanted)
    case.bring = max(floor(case.wanted + 0.5), 1)
    case.enough = 100 * chance_below(case.bring + 0.5)
    case.pays = (
        100 * (1 - chance_below(case.with_wage - 0.5)) if case.with_wage <= case.bring else 0.0
    )


def _find_load(case: FairStock) -> None:
    """Crates, and what they weigh."""
    volume, mass = case.skein_volume, case.skein_mass
    case.holds = searched(
        skeins_in_crate(volume, mass, case.crate_volume, case.crate_mass),
        lambda holds: (
            at_most(holds * volume, case.crate_volume),
            at_most(holds * mass, case.crate_mass),
        ),
        lambda: smallest(case.crate_volume / volume, case.crate_mass / mass),
    )
    case.crates = crates_needed(case.bring, case.holds)
    case.load = case.bring * mass
