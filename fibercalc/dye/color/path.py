"""A way through recipes, and where on it the color has moved how far.

A path runs straight from recipe to recipe: from 0.08 to 1.92 % of one dye, from one dye over a
second to a third. Color moves along it unevenly: fast where there is little dye. So the path is
halved until no piece is longer than a difference that is just seen.
"""

from bisect import bisect_right
from collections.abc import Sequence

from ...core.problem import OutOfRange, require
from .channels import Three
from .difference import ciede2000
from .kubelka_munk import MOST_PERCENT, Palette

Recipe = tuple[float, ...]  # percent of each dye
PIECES = (
    6  # of each leg at first, so that a leg that comes back to its own color is seen to go away
)
LONGEST_PIECE = (
    2.0  # CIEDE2000: finer costs time in every answer, and the steps are measured anew anyway
)
SMALLEST_PIECE = 1e-6  # of a leg
NO_PATH = 0.05  # CIEDE2000 over the whole path; nobody sees less


class Path:
    """Recipes joined by straight legs; a place on it is a number from 0 to 1, in
    step with the color's way."""

    def __init__(self, palette: Palette, through: Sequence[Recipe]):
        """through: two or more recipes, each with a percent (0 to 20) for every dye. Raises
        OutOfRange for others, or if no color changes."""
        if len(through) < 2:
            raise OutOfRange("through", len(through), 2, reason="steps need two ends")
        for recipe in through:
            if len(recipe) != len(palette.dyes):
                raise OutOfRange(
                    "through", len(recipe), reason="every end needs a percent for each dye"
                )
            for percent in recipe:
                require("percent", percent, 0.0, MOST_PERCENT)
        self.palette, self.through = palette, [tuple(recipe) for recipe in through]
        self._marks, self._way = self._measured()
        if self._way[-1] < NO_PATH:
            raise OutOfRange(
                "through", self._way[-1], reason="the ends of the set are the same color"
            )

    def at_leg(self, mark: float) -> Recipe:
        """The recipe at a mark: 1.5 is half of the second leg, by percent of dye."""
        leg = min(int(mark), len(self.through) - 2)
        share = mark - leg
        return tuple(a + (b - a) * share for a, b in zip(self.through[leg], self.through[leg + 1]))

    def at(self, place: float) -> Recipe:
        """The recipe where the color has gone this share of its way."""
        return self.at_leg(interpolated(place * self._way[-1], self._way, self._marks))

    def _measured(self) -> tuple[list[float], list[float]]:
        """Marks along the path, and the way of the color to each."""
        legs = len(self.through) - 1
        pending = [(at / PIECES, self._lab(at / PIECES)) for at in range(legs * PIECES, 0, -1)]
        here, lab = 0.0, self._lab(0.0)
        marks, way = [here], [0.0]
        while pending:
            there, next_lab = pending[-1]
            apart = ciede2000(lab, next_lab)
            if apart > LONGEST_PIECE and there - here > SMALLEST_PIECE:
                between = (here + there) / 2
                pending.append((between, self._lab(between)))
                continue
            pending.pop()
            here, lab = there, next_lab
            marks.append(here)
            way.append(way[-1] + apart)
        return marks, way

    def _lab(self, mark: float) -> Three:
        return self.palette.lab(self.at_leg(mark))


def interpolated(wanted: float, over: Sequence[float], values: Sequence[float]) -> float:
    """The value at wanted, straight between neighbors; held to the ends.

    wanted  where
    over    rising numbers, two or more
    values  one for each of them
    Raises OutOfRange unless there are as many of both, two or more.
    Source: arithmetic.
    """
    if len(over) != len(values) or len(over) < 2:
        raise OutOfRange("over", len(over), 2, reason="interpolation needs two or more pairs")
    right = min(max(bisect_right(over, wanted), 1), len(over) - 1)
    low, high = over[right - 1], over[right]
    share = min(max((wanted - low) / (high - low), 0.0), 1.0) if high > low else 0.0
    return values[right - 1] + share * (values[right] - values[right - 1])
