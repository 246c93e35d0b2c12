"""A new or special base against the usual one: how much more or less dye it needs, what wet and
heat do to it, and go or no-go.
"""

from collections.abc import Sequence

from ..core.arithmetic import largest, smallest
from ..core.problem import require

# Our own edges, to be moved by experience (common practice, no source): a depth factor within the
# first of 1 needs no change, within the second a changed recipe, beyond it another test; the
# factors of one recipe's dyes further apart than the third turn its hue.
AS_USUAL, CHANGED, HUE_TURNS = 1.05, 1.5, 1.10
# % of length or weight, our own: up to the first no word is needed, up to the second the label says
# so, beyond it no-go.
LITTLE_CHANGE, MUCH_CHANGE = 3.0, 10.0
WORDS = ("go", "go with changes", "no-go")


def depth_factor(depth_new: float, depth_usual: float) -> float:
    """How many times the usual depth the new base needs, from two samples that look alike.

    depth_new    % on the new base, above 0 to 20
    depth_usual  % on the usual base, above 0 to 20
    Raises OutOfRange outside these.
    Source: definition of the depth factor.
    """
    require("depth_new", depth_new, 0.0, 20.0, above=0.0)
    require("depth_usual", depth_usual, 0.0, 20.0, above=0.0)
    return depth_new / depth_usual


def factored_depth(depth: float, factor: float) -> float:
    """Depth, %, of one dye for the new base.

    depth   % on the usual base, 0 to 20
    factor  0.05 to 20 (see depth_factor)
    Raises OutOfRange outside these.
    Source: definition of the depth factor.
    """
    require("depth", depth, 0.0, 20.0)
    require("factor", factor, 0.05, 20.0)
    return depth * factor


def change_percent(before: float, after: float) -> float:
    """Change of length or weight, %; below 0 it shrank or lost weight.

    before  above 0
    after   0 or more, in the same unit
    Raises OutOfRange outside these.
    Source: definition.
    """
    require("before", before, above=0.0)
    require("after", after, 0.0)
    return 100 * (after - before) / before


def factors_apart(factors: Sequence[float]) -> float:
    """How far apart the factors of one recipe's dyes are: the largest over the smallest. At 1 the
    shade keeps its hue.

    factors  at least one, each 0.05 to 20
    Raises OutOfRange outside these.
    Source: definition.
    """
    require("factors", len(factors), 1)
    for factor in factors:
        require("factors", factor, 0.05, 20.0)
    return largest(factors) / smallest(factors)


def dye_verdict(factors: Sequence[float]) -> str:
    """What the depth factors mean: one of WORDS.

    factors  one for each dye tested, each 0.05 to 20
    Raises OutOfRange outside these.
    Source: common practice (our own edges: AS_USUAL, CHANGED and HUE_TURNS).
    """
    apart = factors_apart(factors)
    worst = max(max(factor, 1 / factor) for factor in factors)
    if worst > CHANGED:
        return WORDS[2]
    return WORDS[0] if worst <= AS_USUAL and apart <= HUE_TURNS else WORDS[1]


def change_verdict(change: float) -> str:
    """What a change of length or weight means: one of WORDS.

    change  %, -100 to 1,000 (see change_percent)
    Raises OutOfRange outside these.
    Source: common practice (our own edges: LITTLE_CHANGE and MUCH_CHANGE).
    """
    require("change", change, -100.0, 1000.0)
    return (
        WORDS[0]
        if abs(change) <= LITTLE_CHANGE
        else WORDS[1]
        if abs(change) <= MUCH_CHANGE
        else WORDS[2]
    )


def worst_verdict(verdicts: Sequence[str]) -> str:
    """The worst of several verdicts; "go" of none.

    verdicts  each one of WORDS
    Raises ValueError for another word.
    Source: common practice (one no-go is enough).
    """
    return WORDS[max((WORDS.index(word) for word in verdicts), default=0)]
