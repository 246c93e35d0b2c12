"""How the skeins of each color are shared out over pots that may differ in size."""

from collections.abc import Sequence

from ..pot_loads import even_loads
from .room import Load, Recipe, Room, stretches_of


def ways_to_share(recipes: Sequence[Recipe], room: Room) -> list[list[Load]]:
    """Every way worth trying, without repeats: loads for the largest pot, loads that every pot
    takes, and pots filled in turn.
    """
    sizes = sorted(room.pots, reverse=True)
    ways = [[even_loads(recipe.skeins, sizes[0]) for recipe in recipes]]
    if sizes[-1] != sizes[0]:
        ways += [
            [even_loads(recipe.skeins, sizes[-1]) for recipe in recipes],
            [_in_turn(recipe.skeins, sizes) for recipe in recipes],
        ]
    kept = [way for place, way in enumerate(ways) if way not in ways[:place]]
    return [
        [
            load
            for place, (recipe, counts) in enumerate(zip(recipes, way))
            for load in _loads(place, recipe, counts)
        ]
        for way in kept
    ]


def _in_turn(skeins: int, sizes: Sequence[int]) -> list[int]:
    """Each pot filled in turn, the largest first, until none are left."""
    counts, turn = [], 0
    while skeins > 0:
        counts.append(min(skeins, sizes[turn % len(sizes)]))
        skeins -= counts[-1]
        turn += 1
    return counts


def _loads(place: int, recipe: Recipe, counts: Sequence[int]) -> list[Load]:
    stretches = stretches_of(recipe.steps)
    in_pot = [number for number, stretch in enumerate(stretches) if stretch.pot]
    return [Load(place, count, stretches, in_pot[0], in_pot[-1]) for count in counts]


def with_steps(loads: Sequence[Load], recipes: Sequence[Recipe]) -> list[Load]:
    """The same loads with their recipes' steps as they are now."""
    return [_loads(load.recipe, recipes[load.recipe], [load.skeins])[0] for load in loads]
