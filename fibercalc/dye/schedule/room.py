"""What a plan is made from: the room, the steps, and the loads with their stretches of steps that
nothing may come between.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from ...core.problem import OutOfRange, require
from ..pot_loads import MOST_SKEINS

DAY = 1440.0  # min
NOISE = 1e-6  # min: far below what anybody times
MOST_LOADS = 120
MOST_MINUTES = 7 * DAY
MOST_OF_ANYTHING = 20


@dataclass(frozen=True)
class Step:
    """One thing done to a load: its minutes and what it occupies; what is on a burner is in a
    pot. Hands and burner mean working hours; a soak, or a bath that cools on its own, may run
    on overnight.
    """

    name: str
    minutes: float
    pot: bool = False
    burner: bool = False
    hands: bool = False


@dataclass(frozen=True)
class Recipe:
    """Skeins of one color and the steps they go through."""

    name: str
    skeins: int
    steps: tuple[Step, ...]


@dataclass(frozen=True)
class Room:
    """What there is to work with.

    pots    skeins each pot takes;  burners, hands  how many
    day     working minutes of a day
    rail    skeins that can hang at once;  drying  minutes they hang (0: drying is left out)
    """

    pots: tuple[int, ...]
    burners: int
    hands: int
    day: float
    rail: int = 0
    drying: float = 0.0

    @property
    def largest(self) -> int:
        return max(self.pots)


@dataclass(frozen=True)
class Stretch:
    """Steps that follow one another without a break: from filling a pot to turning its burner
    off, else one step alone.

    burner   (offset, minutes) on the burner, or None
    hands    (offset, minutes) of each step that needs hands
    working  must lie within one working day; otherwise only its beginning must
    """

    steps: tuple[Step, ...]
    minutes: float
    pot: bool
    burner: tuple[float, float] | None
    hands: tuple[tuple[float, float], ...]

    @property
    def working(self) -> bool:
        return self.burner is not None or bool(self.hands)


@dataclass(frozen=True)
class Load:
    """One pot full: the place of its recipe, its skeins, its stretches, and which of them is the
    first and the last in a pot.
    """

    recipe: int
    skeins: int
    stretches: tuple[Stretch, ...]
    first_pot: int
    last_pot: int


def stretches_of(steps: Sequence[Step]) -> tuple[Stretch, ...]:
    """Steps gathered into stretches; a step of no minutes is left out.

    What is put into a pot by hand just before its burner is lit belongs to that stretch: a pot
    with dye and yarn in it does not wait cold overnight. A soak in the pot may.
    """
    groups: list[list[Step]] = []
    for step in steps:
        if step.minutes <= 0:
            continue
        own = [step]
        while (
            step.burner
            and groups
            and (
                own[0].burner
                if groups[-1][-1].burner
                else groups[-1][-1].pot and groups[-1][-1].hands
            )
        ):
            own = groups.pop() + own
        groups.append(own)
    return tuple(_stretch(tuple(group)) for group in groups)


def _stretch(steps: tuple[Step, ...]) -> Stretch:
    burning, hands, at = [], [], 0.0
    for step in steps:
        if step.hands:
            hands.append((at, step.minutes))
        if step.burner:
            burning.append((at, step.minutes))
        at += step.minutes
    burner = (burning[0][0], sum(minutes for _, minutes in burning)) if burning else None
    return Stretch(steps, at, any(step.pot or step.burner for step in steps), burner, tuple(hands))


def check_room(recipes: Sequence[Recipe], room: Room) -> None:
    """Raise OutOfRange, in one plain line, where no plan can be made."""
    require("day", room.day, 1.0, DAY)
    for name, count in (("pots", len(room.pots)), ("burners", room.burners), ("hands", room.hands)):
        require(name, count, 1, MOST_OF_ANYTHING)
    require("pots", min(room.pots), 1, MOST_SKEINS)
    require("drying", room.drying, 0.0, MOST_MINUTES)
    require("recipes", len(recipes), 1, MOST_LOADS)
    require("skeins", sum(recipe.skeins for recipe in recipes), 1, MOST_SKEINS)
    if room.drying and room.rail < room.largest:
        raise OutOfRange(
            "rail",
            room.rail,
            reason=(
                f"a rail for {room.rail} skeins does not take a load of {room.largest}; lengthen"
                " the rail or dye smaller loads"
            ),
        )
    for steps in {recipe.steps for recipe in recipes}:
        _check_steps(steps, room)


def _check_steps(steps: tuple[Step, ...], room: Room) -> None:
    for step in steps:
        require("minutes", step.minutes, 0.0, MOST_MINUTES)
    stretches = stretches_of(steps)
    if not any(stretch.pot for stretch in stretches):
        raise OutOfRange("steps", len(steps), reason="no step is done in a pot; mark at least one")
    for stretch in stretches:
        if stretch.working and stretch.minutes > room.day + NOISE:
            names = " and ".join(step.name for step in stretch.steps)
            without = " without a break" if len(stretch.steps) > 1 else ""
            raise OutOfRange(
                "minutes",
                stretch.minutes,
                reason=(
                    f"{names} takes {stretch.minutes:g} min{without} and the working day has"
                    f" {room.day:g} min; nothing on a burner is left overnight"
                ),
            )
