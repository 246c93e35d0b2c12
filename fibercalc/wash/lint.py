"""Loose fiber told from loose dye: by what a white cloth shows, and by weights before and after."""

from ..core.arithmetic import largest
from ..core.problem import require

YES, NO, UNKNOWN = "yes", "no", "not known"
LINT, DYE, BOTH, NEITHER = "lint", "dye", "both", "neither"


def loss_percent(before: float, after: float) -> float:
    """Weight lost, % of the weight before; below 0 it grew heavier, which is moisture.

    before  g, dry and rested in the room, above 0
    after   g, rested in the same room as long, above 0
    Raises OutOfRange outside these.
    Source: definition.
    """
    require("before", before, above=0.0)
    require("after", after, above=0.0)
    return 100 * (before - after) / before


def dye_at_most(mass: float, depth: float) -> float:
    """All the dye there is in a piece, g: more than this cannot have come off as dye.

    mass   g of the piece, above 0
    depth  % of the fiber's weight, all dyes, 0 to 20
    Raises OutOfRange outside these.
    Source: arithmetic (a depth is dye on the weight of fiber).
    """
    require("mass", mass, above=0.0)
    require("depth", depth, 0.0, 20.0)
    return mass * depth / 100


def not_dye(lost: float, dye: float) -> float:
    """What of a loss cannot be dye, g: fiber, oil or dust; 0 where all of it could be dye.

    lost  g, any number
    dye   g of dye there is at most, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("lost", lost)
    require("dye", dye, 0.0)
    return largest(lost - dye, 0.0)


def what_comes_off(fibers: str, stain: str, water: str) -> str:
    """What the signs say comes off: "lint", "dye", "both", "neither" or "not known".

    An even stain, or water that stays colored once the fluff has settled, is dye; colored hairs
    are fiber.
    fibers  colored hairs on a damp white cloth or on tape: "yes", "no" or "not known"
    stain   an even stain on that cloth under them: "yes", "no" or "not known"
    water   colored water after an hour's soak, fluff settled: "yes", "no" or "not known"
    Raises ValueError for another word.
    Source: common practice.
    """
    for word in (fibers, stain, water):
        if word not in (YES, NO, UNKNOWN):
            raise ValueError(word)
    dye = YES if YES in (stain, water) else NO if (stain, water) == (NO, NO) else UNKNOWN
    if UNKNOWN in (fibers, dye):
        return UNKNOWN
    return {(YES, YES): BOTH, (YES, NO): LINT, (NO, YES): DYE, (NO, NO): NEITHER}[fibers, dye]
