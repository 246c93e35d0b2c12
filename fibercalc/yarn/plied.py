"""Plied yarn from its singles, and what plying takes up.

Take-up is the share of a single's length that is lost when it winds around the others. It is 0
when the count is nominal. Ply twist laid against the singles' twist also opens the singles, so a
measured take-up can be smaller than the helix alone says.
"""

from collections.abc import Sequence

from ..core.problem import OutOfRange, require

MOST_TAKE_UP = 50.0  # %; a ply that halves the length is no longer yarn


def plied_tex(singles: Sequence[float], take_up: float = 0.0) -> float:
    """Linear density of a plied yarn, tex: the singles added, and heavier by what plying takes up.

    singles  tex of each single, one or more, each above 0
    take_up  % of a single's length lost in plying, 0 to 50
    Raises OutOfRange for an empty list, a single not above 0, or take_up outside its range.
    Source: arithmetic (mass is kept, length is shortened).
    """
    _require_singles(singles, take_up)
    return sum(singles) / (1 - take_up / 100)


def plied_count(singles: Sequence[float], take_up: float = 0.0) -> float:
    """Count of a plied yarn in the same indirect system as its singles: one over the sum of one
    over each.

    singles  indirect count of each single (all in one system), one or more, each above 0
    take_up  % of a single's length lost in plying, 0 to 50
    Raises OutOfRange for an empty list, a single not above 0, or take_up outside its range.
    Source: Brooks, Cotton Manufacturing (brooks-cotton-manufacturing).
    """
    _require_singles(singles, take_up)
    return (1 - take_up / 100) / sum(1 / single for single in singles)


def _require_singles(singles: Sequence[float], take_up: float) -> None:
    if not singles:
        raise OutOfRange("singles", 0, 1, None, "none given; give one or more")
    for single in singles:
        require("singles", single, above=0.0)
    require("take_up", take_up, 0.0, MOST_TAKE_UP)
