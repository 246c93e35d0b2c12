"""From colors back to dye: the recipe nearest to a color, and the nudge that brings a new lot
nearer to an old one.

K/S is linear in dye, so a change of recipe is a small system of equations: one for each channel,
weighted by how much a little K/S there moves the color in CIELAB, solved by least squares with a
lower bound for each dye. The undyed fiber cancels in a nudge: only what one percent of each dye
adds is used, so that a base or bath that took the recipe differently is allowed for.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import product

from ...core.color import Color
from ...core.problem import OutOfRange, require
from .channels import Three, lab_of
from .difference import between
from .kubelka_munk import MOST_PERCENT, Palette, absorption, color_from, reflectance

# Of the largest term: keeps two dyes of nearly one color from being traded against each other in
# huge amounts
STEADY = 1e-8
LITTLE = 0.02  # % of a dye: a change of less than this is small whatever was there
NUDGE = 1e-4  # of K/S, for the slope of the color


@dataclass(frozen=True)
class Nudge:
    """A changed recipe: change in percent of each dye, the whole new recipe, the color it should
    give, CIEDE2000 to the goal before and after.
    """

    changes: tuple[float, ...]
    recipe: tuple[float, ...]
    color: Color
    before: float
    after: float


def nudge(
    palette: Palette, recipe: Sequence[float], old: Color, new: Color, only_add: bool = False
) -> Nudge:
    """The change of recipe that should bring the next lot from the new lot's color to the old
    lot's.

    palette   fiber and dyes; one dye alone may stand for the whole recipe, made weaker or stronger
    recipe    percent of each dye that the new lot was dyed with, 0 to 20
    old       color of the old lot, the goal
    new       color of the new lot; both seen in the same way
    only_add  whether dye can only be added, because the new lot itself goes back into the pot
    Raises OutOfRange for a recipe outside these.
    Source: km-application-note (K/S linear in dye); common practice (least squares).
    """
    if len(recipe) != len(palette.dyes):
        raise OutOfRange("recipe", len(recipe), reason="the recipe needs a percent for each dye")
    for percent in recipe:
        require("recipe", percent, 0.0, MOST_PERCENT)
    goal, found = absorption(old), absorption(new)
    lows = [0.0 if only_add else -percent for percent in recipe]
    changes = _nearest(palette.dyes, goal, [there - here for there, here in zip(goal, found)], lows)
    color = color_after(palette, new, changes)
    before, after = between(new, old), between(color, old)
    if after >= before:  # nothing that may be done helps
        changes, color, after = (0.0,) * len(recipe), new, before
    return Nudge(
        changes,
        tuple(percent + change for percent, change in zip(recipe, changes)),
        color,
        before,
        after,
    )


def color_after(palette: Palette, new: Color, changes: Sequence[float]) -> Color:
    """The color of a lot once its recipe is changed.

    palette  fiber and dyes
    new      color of the lot
    changes  percent of each dye, more or less
    Raises OutOfRange unless there is one for each dye.
    Source: km-application-note (K/S linear in dye).
    """
    if len(changes) != len(palette.dyes):
        raise OutOfRange("changes", len(changes), reason="a percent for each dye is needed")
    if not any(changes):
        return new
    return color_from(
        [
            here + sum(change * dye[at] for change, dye in zip(changes, palette.dyes))
            for at, here in enumerate(absorption(new))
        ]
    )


def gentlest_nudge(
    palette: Palette,
    recipe: Sequence[float],
    old: Color,
    new: Color,
    only_add: bool = False,
    enough: float = 1.0,
) -> Nudge:
    """The smallest change of recipe that brings the next lot near enough: some dyes of like color
    could trade places in large amounts for no visible gain, so every choice of dyes to change
    is tried and the one that changes them least, for their depth, is kept.

    palette   fiber and dyes
    recipe    percent of each dye that the new lot was dyed with, 0 to 20
    old       color of the old lot, the goal
    new       color of the new lot; both seen in the same way
    only_add  whether dye can only be added
    enough    CIEDE2000 that is near enough, 0 to 100; where none gets so near, the nearest counts
    Raises OutOfRange for a recipe outside these.
    Source: as nudge (km-application-note); common practice (change as little as will do).
    """
    require("enough", enough, 0.0, 100.0)
    whole = nudge(palette, recipe, old, new, only_add)
    found = [whole]
    for chosen in product((False, True), repeat=len(recipe)):
        if any(chosen) and not all(chosen):
            some = nudge(
                Palette(
                    palette.undyed, tuple(dye for dye, use in zip(palette.dyes, chosen) if use)
                ),
                [percent for percent, use in zip(recipe, chosen) if use],
                old,
                new,
                only_add,
            )
            given = iter(some.changes)
            changes = tuple(next(given) if use else 0.0 for use in chosen)
            found.append(
                Nudge(
                    changes,
                    tuple(percent + change for percent, change in zip(recipe, changes)),
                    some.color,
                    some.before,
                    some.after,
                )
            )
    reached = max(enough, min(each.after for each in found) + 1e-9)
    return min(
        (each for each in found if each.after <= reached),
        key=lambda each: sum(
            abs(change) / max(percent, LITTLE) for change, percent in zip(each.changes, recipe)
        ),
    )


def _nearest(
    dyes: Sequence[Three], goal: Three, wanted: Sequence[float], lows: Sequence[float]
) -> tuple[float, ...]:
    """Amounts of dye, none under its low, whose K/S comes nearest to wanted as the eye sees it at
    the goal.

    With three dyes at most every choice of dyes that stand at their low can be tried: eight small
    systems of equations.
    """
    slopes = _slopes(goal)
    columns = [
        [sum(slope[axis] * each for slope, each in zip(slopes, dye)) for axis in range(3)]
        for dye in dyes
    ]
    aim = [sum(slope[axis] * each for slope, each in zip(slopes, wanted)) for axis in range(3)]
    best, least = tuple(max(low, 0.0) for low in lows), None
    for held in product((False, True), repeat=len(dyes)):
        free = [at for at, fixed in enumerate(held) if not fixed]
        amounts = [low if fixed else 0.0 for low, fixed in zip(lows, held)]
        rest = [
            aim[axis] - sum(amount * column[axis] for amount, column in zip(amounts, columns))
            for axis in range(3)
        ]
        for at, amount in zip(free, _least_squares([columns[at] for at in free], rest)):
            amounts[at] = amount
        if any(amount < low - 1e-12 for amount, low in zip(amounts, lows)):
            continue
        missed = sum(
            (aim[axis] - sum(amount * column[axis] for amount, column in zip(amounts, columns)))
            ** 2
            for axis in range(3)
        )
        if least is None or missed < least:
            best, least = tuple(max(amount, low) for amount, low in zip(amounts, lows)), missed
    return best


def _slopes(absorbed: Three) -> list[list[float]]:
    """For each channel, how L*, a* and b* move with its K/S."""
    here = lab_of(*map(reflectance, absorbed))
    slopes = []
    for at, q in enumerate(absorbed):
        by = NUDGE * (1 + q)
        moved = lab_of(
            *(
                reflectance(each + by if place == at else each)
                for place, each in enumerate(absorbed)
            )
        )
        slopes.append([(there - was) / by for there, was in zip(moved, here)])
    return slopes


def _least_squares(columns: Sequence[Sequence[float]], aim: Sequence[float]) -> list[float]:
    """Amounts of columns that come nearest to aim, by the normal equations and elimination."""
    size = len(columns)
    rows = [
        [sum(a * b for a, b in zip(one, other)) for other in columns]
        + [sum(a * b for a, b in zip(one, aim))]
        for one in columns
    ]
    steady = STEADY * max((rows[at][at] for at in range(size)), default=0.0)
    for at in range(size):
        rows[at][at] += steady
    for at in range(size):
        for below in range(at + 1, size):
            share = rows[below][at] / rows[at][at]
            rows[below] = [b - share * a for a, b in zip(rows[at], rows[below])]
    amounts = [0.0] * size
    for at in reversed(range(size)):
        amounts[at] = (
            rows[at][size] - sum(rows[at][right] * amounts[right] for right in range(at + 1, size))
        ) / rows[at][at]
    return amounts
