"""The best plan found for the dye room, what stands where in it, and the bound beside it.

Few orders of the loads are tried with two rules for hands, and the plan that is done first is kept;
no chance is used, so the same room always gives the same plan.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from math import ceil, floor

from ...core.problem import OutOfRange
from .bound import Bound, lower_bound
from .loads import ways_to_share, with_steps
from .place import Placing, hang
from .room import DAY, MOST_LOADS, NOISE, Load, Recipe, Room, Step, check_room


@dataclass(frozen=True)
class Placed:
    """One step of one load: from start to end, in which pot, on which burner, by whose hands (each
    counted from 1; None: none)."""

    load: int
    step: Step
    start: float
    end: float
    pot: int | None
    burner: int | None
    hands: int | None


@dataclass(frozen=True, eq=False)
class Plan:
    """A plan: its loads, numbered from 1 in the order in which they go into a
    pot, each with its place.

    order       the loads' places in the list they were made from, in the order they were placed
    after_last  whether what follows the pot was placed when all pots had been: pots are
                filled first, hands come second
    """

    recipes: tuple[Recipe, ...]
    room: Room
    order: tuple[int, ...]
    after_last: bool
    placing: Placing

    @cached_property
    def numbered(self) -> tuple[int, ...]:
        """The loads in the order in which they go into a pot."""
        return tuple(
            sorted(
                range(len(self.placing.loads)),
                key=lambda place: (self.in_pot(place)[0], self.placing.pot_of[place]),
            )
        )

    @cached_property
    def hung(self) -> tuple[tuple[float, float], ...]:
        """From when to when each load hangs, in the order of the loads as placed; empty
        where drying is left out."""
        if not self.room.drying:
            return ()
        starts = hang(self.placing.ready, [load.skeins for load in self.placing.loads], self.room)
        return tuple((start, start + self.room.drying) for start in starts)

    @cached_property
    def bound(self) -> Bound:
        return lower_bound(self.recipes, self.room)

    @property
    def work_end(self) -> float:
        """The end of all work before drying, min."""
        return max(self.placing.ready)

    @cached_property
    def end(self) -> float:
        """The end of everything, min."""
        return max((end for _, end in self.hung), default=self.work_end)

    @property
    def dye_days(self) -> int:
        """Working days until the last load is rinsed."""
        return day_of(self.work_end)

    @property
    def drying_days(self) -> int:
        """Days more until the last one is dry."""
        return ceil((self.end - self.work_end) / DAY - NOISE)

    def in_pot(self, place: int) -> tuple[float, float]:
        """From when to when a load holds its pot."""
        load, places = self.placing.loads[place], self.placing.places[place]
        return (
            places[load.first_pot].start,
            places[load.last_pot].start + load.stretches[load.last_pot].minutes,
        )

    @cached_property
    def steps(self) -> tuple[Placed, ...]:
        """Every step of every load, in order of time."""
        found = []
        for number, place in enumerate(self.numbered, 1):
            for stretch, at in zip(self.placing.loads[place].stretches, self.placing.places[place]):
                start, hands = at.start, iter(at.hands)
                for step in stretch.steps:
                    pot = self.placing.pot_of[place] + 1 if step.pot or step.burner else None
                    found.append(
                        Placed(
                            number,
                            step,
                            start,
                            start + step.minutes,
                            pot,
                            None if at.burner is None or not step.burner else at.burner + 1,
                            next(hands) + 1 if step.hands else None,
                        )
                    )
                    start += step.minutes
        return tuple(sorted(found, key=lambda one: (one.start, one.load)))


def day_of(minute: float) -> int:
    """The day, from 1, on which something is over; what is over at midnight
    belongs to the day before."""
    return max(floor(minute / DAY - NOISE), 0) + 1


def worked(minute: float, day: float) -> float:
    """Working minutes gone by at a time on the plan's clock."""
    days = floor(minute / DAY)
    return days * day + min(minute - days * DAY, day)


def make_plan(recipes: Sequence[Recipe], room: Room) -> Plan:
    """The best plan found.

    Raises OutOfRange, in one plain line, where a stretch is longer than the day, a load is larger
    than the rail, or there is nothing to dye.
    """
    check_room(recipes, room)
    recipes, bound = tuple(recipes), lower_bound(recipes, room)
    tried = []
    for loads in ways_to_share(recipes, room):
        if len(loads) > MOST_LOADS:
            raise OutOfRange(
                "skeins",
                len(loads),
                reason=(
                    f"{len(loads)} loads are more than the {MOST_LOADS} that a plan is made for;"
                    " plan them in parts"
                ),
            )
        for order in _orders(loads):
            for after_last in (True, False):
                plan = Plan(
                    recipes, room, order, after_last, _placed(loads, room, order, after_last)
                )
                if plan.work_end <= bound.work + NOISE and plan.end <= bound.end + NOISE:
                    return plan  # nothing beats it
                tried.append(plan)
    return min(tried, key=lambda plan: (plan.dye_days, plan.end, plan.work_end))


def retimed(
    plan: Plan, recipes: Sequence[Recipe], drying: float | None = None, day: float | None = None
) -> Plan:
    """The same plan with other minutes: the same loads in the same pots in the same order, so that
    roughness of a step's minutes is the spread of one plan.

    recipes  the same recipes with other minutes;  drying, day  as in Room; None keeps them
    Raises OutOfRange as make_plan does.
    """
    room = Room(
        plan.room.pots,
        plan.room.burners,
        plan.room.hands,
        plan.room.day if day is None else day,
        plan.room.rail,
        plan.room.drying if drying is None else drying,
    )
    check_room(recipes, room)
    loads = with_steps(plan.placing.loads, recipes)
    return Plan(
        tuple(recipes),
        room,
        plan.order,
        plan.after_last,
        _placed(loads, room, plan.order, plan.after_last, plan.placing.pot_of),
    )


def _orders(loads: Sequence[Load]) -> list[tuple[int, ...]]:
    """As listed; the longest first; the fullest first (a full rail is emptied in larger steps).
    Orders that differ in nothing are left out."""
    listed = range(len(loads))
    minutes = [sum(stretch.minutes for stretch in load.stretches) for load in loads]
    orders = [
        tuple(listed),
        tuple(sorted(listed, key=lambda place: (-minutes[place], place))),
        tuple(sorted(listed, key=lambda place: (-loads[place].skeins, place))),
    ]
    like = [[(loads[place].stretches, loads[place].skeins) for place in order] for order in orders]
    return [order for place, order in enumerate(orders) if like[place] not in like[:place]]


def _placed(
    loads: Sequence[Load],
    room: Room,
    order: Sequence[int],
    after_last: bool,
    pots: Sequence[int] | None = None,
) -> Placing:
    placing = Placing(loads, room)
    for place in order:
        placing.into_pot(place, None if pots is None else pots[place])
        if not after_last:
            placing.after_pot(place)
    if after_last:
        for place in sorted(order, key=lambda place: (placing.ready[place], place)):
            placing.after_pot(place)
    return placing
