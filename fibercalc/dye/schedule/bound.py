"""What no plan can beat: for each thing that can run short, the earliest end of all work.

Each bound leaves out every limit but one, so the largest of them still holds. Source: arithmetic
(counting, as for any workshop).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, floor

from ..pot_loads import loads_needed
from .place import in_hours
from .room import DAY, NOISE, Recipe, Room, Stretch, stretches_of


@dataclass(frozen=True)
class Bound:
    """What no plan can beat: the end of all work before drying, the end of drying,
    and what sets each of them.

    work, end        minutes on the plan's clock
    by_work, by_end  the name of what sets it: "one load", "pots", "burners", "hands" or "rail"
    """

    work: float
    by_work: str
    end: float
    by_end: str


@dataclass(frozen=True)
class _Chain:
    """One recipe's minutes, by what they need.

    alone              its end with the whole room to itself
    head, tail, total  before the first minute that needs a pot, a burner or hands, after the last,
                       and in all (a pot also waits)
    fire               the longest it is on a burner without a break
    round              the stretch that holds this;  before, after  what its
                       pot does before and after it
    first              the first stretch with a burner begins
    """

    alone: float
    head: dict[str, float]
    tail: dict[str, float]
    total: dict[str, float]
    fire: float
    round: float
    before: float
    after: float
    first: float


def lower_bound(recipes: Sequence[Recipe], room: Room) -> Bound:
    """The bounds of a list of recipes in a room. The fewest loads are counted, as if every pot were
    as large as the largest."""
    chains = [_chain(recipe, room) for recipe in recipes]
    counts = [loads_needed([recipe.skeins], room.largest) for recipe in recipes]
    found = {"one load": max(chain.alone for chain in chains)}
    loads, skeins = sum(counts), sum(recipe.skeins for recipe in recipes)
    found["pots"] = max(
        _in_pots(chains, counts, len(room.pots)),
        _rounds(chains, loads, len(room.pots), room.day, True),
        _rounds(chains, skeins, sum(room.pots), room.day, True),
    )
    found["burners"] = max(
        _shared(chains, counts, room.day, room.burners, "burners"),
        _rounds(chains, loads, room.burners, room.day, False),
    )
    found["hands"] = _shared(chains, counts, room.day, room.hands, "hands")
    by_work = max(found, key=found.__getitem__)
    work = found[by_work]
    if not room.drying:
        return Bound(work, by_work, work, by_work)
    rail = min(chain.alone for chain in chains) + room.drying * skeins / room.rail
    return (
        Bound(work, by_work, work + room.drying, by_work)
        if work + room.drying >= rail
        else Bound(work, by_work, rail, "rail")
    )


def _chain(recipe: Recipe, room: Room) -> _Chain:
    stretches = stretches_of(recipe.steps)
    ends = [0.0]
    for stretch in stretches:
        ends.append(ends[-1] + stretch.minutes)
    whole = ends[-1]
    spans = {
        "pots": [
            (ends[place], stretch.minutes) for place, stretch in enumerate(stretches) if stretch.pot
        ],
        "burners": [
            (ends[place] + stretch.burner[0], stretch.burner[1])
            for place, stretch in enumerate(stretches)
            if stretch.burner
        ],
        "hands": [
            (ends[place] + offset, minutes)
            for place, stretch in enumerate(stretches)
            for offset, minutes in stretch.hands
        ],
    }
    head = {kind: found[0][0] if found else 0.0 for kind, found in spans.items()}
    tail = {kind: whole - sum(found[-1]) if found else 0.0 for kind, found in spans.items()}
    total = {kind: sum(minutes for _, minutes in found) for kind, found in spans.items()}
    total["pots"] = whole - head["pots"] - tail["pots"]
    fires = [
        (stretch.burner[1], ends[place], stretch.minutes)
        for place, stretch in enumerate(stretches)
        if stretch.burner
    ]
    fire, start, longest = max(fires, default=(0.0, head["pots"], 0.0))
    first = min((begin for _, begin, _ in fires), default=0.0)
    before = start - head["pots"]
    return _Chain(
        _alone(stretches, room.day),
        head,
        tail,
        total,
        fire,
        longest,
        before,
        total["pots"] - before - longest,
        first,
    )


def _alone(stretches: Sequence[Stretch], day: float) -> float:
    """The end of one load that has the whole room to itself."""
    at = 0.0
    for stretch in stretches:
        at = in_hours(at, stretch.minutes if stretch.working else 0.0, day) + stretch.minutes
    return at


def _in_pots(chains: Sequence[_Chain], counts: Sequence[int], pots: int) -> float:
    """Pots may stand overnight, so this counts by the clock."""
    work = sum(chain.total["pots"] * count for chain, count in zip(chains, counts))
    return (
        min(chain.head["pots"] for chain in chains)
        + work / pots
        + min(chain.tail["pots"] for chain in chains)
    )


def _shared(
    chains: Sequence[_Chain], counts: Sequence[int], day: float, units: int, kind: str
) -> float:
    """Work that only goes on in working hours, shared evenly among those that can do it."""
    busy = [chain for chain in chains if chain.total[kind] > 0]
    if not busy:
        return 0.0
    work = sum(chain.total[kind] * count for chain, count in zip(chains, counts)) / units
    return _after_work(min(chain.head[kind] for chain in busy), work, day) + min(
        chain.tail[kind] for chain in busy
    )


def _after_work(start: float, work: float, day: float) -> float:
    """When so many working minutes have gone by since a time."""
    morning = floor(start / DAY) * DAY
    left = max(day - (start - morning), 0.0)
    if work <= left + NOISE:
        return start + work
    days = ceil((work - left) / day - NOISE)
    return morning + days * DAY + (work - left - (days - 1) * day)


def _rounds(
    chains: Sequence[_Chain], needed: int, a_round: int, day: float, in_pots: bool
) -> float:
    """A stretch on a burner is not broken by the night: so many whole rounds fit in a day. For pots
    the round begins when the pot is filled, and between two rounds lies what the pot does after one
    load and before another. needed and a_round count the same thing: loads, or skeins."""
    stretch = min(chain.round if in_pots else chain.fire for chain in chains)
    if stretch <= 0:
        return 0.0
    between = (
        min(chain.after for chain in chains) + min(chain.before for chain in chains)
        if in_pots
        else 0.0
    )
    head = min(chain.first if in_pots else chain.head["burners"] for chain in chains)

    def fits(minutes: float) -> int:
        return a_round * max(0, floor((minutes + between + NOISE) / (stretch + between)))

    first = fits(day - head)
    days = 1 if needed <= first else 1 + ceil((needed - first) / fits(day))
    last = needed - (first + (days - 2) * fits(day) if days > 1 else 0)
    rounds = ceil(last / a_round)
    return (
        (days - 1) * DAY
        + (head if days == 1 else 0.0)
        + rounds * stretch
        + (rounds - 1) * between
        + min(chain.tail["burners"] for chain in chains)
    )
