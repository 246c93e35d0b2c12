"""Sets of skeins in steps: even to the eye, beside equal percentages and a geometric ladder, and as
they can really be weighed."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import accumulate

from ...core.arithmetic import mean
from ...core.color import Color, from_lab
from ...core.problem import OutOfRange, require
from .difference import ciede2000
from .kubelka_munk import MOST_PERCENT, Palette
from .path import Path, Recipe, interpolated

FEWEST, MOST = 2, 60
EVEN = 3.0  # percent: a difference within this of the mean counts as even
# percent at worst, 3 for every second dye: steps even in three channels, seen at every wavelength
# (tests/against/test_against_spectra.py)
UNEVEN_BY_CHANNELS = 13.0
# percent, at which the search stops: well inside, so that a nudged input still gives an even set
AIM = 0.05
ROUNDS = 60


@dataclass(frozen=True)
class Ladder:
    """A set of skeins: the recipe (percent of each dye), the color of each, and CIEDE2000
    from each to the next."""

    recipes: tuple[Recipe, ...]
    colors: tuple[Color, ...]
    differences: tuple[float, ...]

    @property
    def smallest(self) -> float:
        return min(self.differences)

    @property
    def largest(self) -> float:
        return max(self.differences)

    @property
    def mean(self) -> float:
        return sum(self.differences) / len(self.differences)

    @property
    def unevenness(self) -> float:
        """Percent by which the difference farthest from the mean departs from it."""
        return unevenness(self.differences)

    def grams(self, fiber_grams: float) -> list[float]:
        """Grams of each dye for the whole set, with so much dry fiber in each shade."""
        return [
            sum(recipe[dye] for recipe in self.recipes) * fiber_grams / 100
            for dye in range(len(self.recipes[0]))
        ]


def unevenness(differences: Sequence[float]) -> float:
    """Percent by which the difference farthest from the mean departs from it.

    differences  from each skein to the next, one or more, 0 or more each
    Raises OutOfRange without any, or if all are 0.
    Source: arithmetic.
    """
    middle = mean(differences) if differences else 0.0
    if not middle > 0:
        raise OutOfRange("differences", middle, reason="all skeins of the set are the same color")
    return off_by(farthest(differences, middle), middle)


def farthest(differences: Sequence[float], middle: float) -> float:
    """The difference that departs most from another one.

    differences  one or more
    middle       what they are compared with, not 0
    Raises OutOfRange without any.
    Source: arithmetic.
    """
    require("differences", len(differences), 1)
    return max(differences, key=lambda each: abs(each / middle - 1))


def off_by(difference: float, middle: float) -> float:
    """Percent by which a difference departs from another one.

    difference  any
    middle      what it is compared with, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("middle", middle, above=0.0)
    return 100 * abs(difference / middle - 1)


def ladder_of(palette: Palette, recipes: Sequence[Recipe]) -> Ladder:
    """The colors of some recipes, and the differences between neighbors.

    palette  fiber and dyes
    recipes  percent of each dye, two or more recipes
    Raises OutOfRange for fewer.
    Source: km-application-note (colors) and sharma-2005 (differences).
    """
    if len(recipes) < FEWEST:
        raise OutOfRange("recipes", len(recipes), FEWEST)
    labs = [palette.lab(recipe) for recipe in recipes]
    return Ladder(
        tuple(recipes), tuple(from_lab(*lab) for lab in labs), tuple(map(ciede2000, labs, labs[1:]))
    )


def even_ladder(path: Path, count: int) -> Ladder:
    """Skeins from one end of a path to the other, the difference between
    neighbors equal within 3 percent.

    The path's own measure gives the first places; as a step cuts across the path's bends, places
    are then moved until steps are equal.
    path   through recipes
    count  of skeins, 2 to 60
    Raises OutOfRange outside these, or if the path bends so that no equal steps are found.
    Source: sharma-2005 (differences); common practice (equal differences look even).
    """
    _require_count(count)
    places = [at / (count - 1) for at in range(count)]
    wanted = places
    for turn in range(ROUNDS):
        recipes = [path.at(place) for place in places]
        labs = [path.palette.lab(recipe) for recipe in recipes]
        differences = list(map(ciede2000, labs, labs[1:]))
        if unevenness(differences) <= AIM:
            return ladder_of(path.palette, recipes)
        way = list(accumulate(differences, initial=0.0))
        pull = (
            1.0 if turn < ROUNDS / 2 else 0.4
        )  # full steps settle nearly always at once; where they swing to and fro, shorter ones do
        places = [
            place + pull * (interpolated(share * way[-1], way, places) - place)
            for share, place in zip(wanted, places)
        ]
    if unevenness(differences) <= EVEN:
        return ladder_of(path.palette, recipes)
    raise OutOfRange(
        "count",
        count,
        reason=(
            "this way from color to color turns back on itself: no equal steps were found; take"
            " more skeins or another way"
        ),
    )


def equal_percent_ladder(path: Path, count: int) -> Ladder:
    """Skeins with equal percentages of dye between neighbors, leg by leg.

    path   through recipes
    count  of skeins, 2 to 60
    Raises OutOfRange outside this.
    Source: arithmetic.
    """
    _require_count(count)
    legs = len(path.through) - 1
    return ladder_of(path.palette, [path.at_leg(legs * at / (count - 1)) for at in range(count)])


def geometric_ratio(first: float, last: float, count: int) -> float:
    """The ratio between neighbors of a geometric ladder: (last / first) ^ (1 / (count - 1)).

    first  percent of dye on the first skein, above 0 to 20
    last   percent on the last, above 0 to 20
    count  of skeins, 2 to 60
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    _require_count(count)
    require("first", first, high=MOST_PERCENT, above=0.0)
    require("last", last, high=MOST_PERCENT, above=0.0)
    ratio: float = (last / first) ** (1 / (count - 1))
    return ratio


def geometric_ladder(palette: Palette, first: Recipe, last: Recipe, count: int) -> Ladder:
    """Skeins with an equal ratio of each dye between neighbors.

    palette  fiber and dyes
    first    percent of each dye on the first skein
    last     on the last
    count    of skeins, 2 to 60
    Raises OutOfRange outside these, or for a dye that stands at one end only: it has no ratio.
    Source: arithmetic.
    """
    _require_count(count)
    if any((a > 0) != (b > 0) for a, b in zip(first, last)):
        raise OutOfRange(
            "first", min(first, default=0.0), reason="a dye that one end lacks has no ratio"
        )
    ratios = [geometric_ratio(a, b, count) if a > 0 else 1.0 for a, b in zip(first, last)]
    return ladder_of(
        palette, [tuple(a * ratio**at for a, ratio in zip(first, ratios)) for at in range(count)]
    )


def weighed_ladder(
    palette: Palette, ladder: Ladder, fiber_grams: float, finest_grams: Sequence[float]
) -> Ladder:
    """A set as it can really be weighed or drawn up: every dose the nearest whole
    number of the finest steps.

    palette       fiber and dyes
    ladder        the set wished for
    fiber_grams   dry fiber in each shade, above 0 to 100,000 g
    finest_grams  for each dye the grams that one step of the scale holds, or one mark of the
                  syringe; above 0 to 100 g
    Raises OutOfRange outside these. A dose under half a step is rounded to no dye at all.
    Source: arithmetic.
    """
    require("fiber_grams", fiber_grams, high=1e5, above=0.0)
    if len(finest_grams) != len(palette.dyes):
        raise OutOfRange(
            "finest_grams",
            len(finest_grams),
            reason="each dye needs the finest step it can be measured in",
        )
    for finest in finest_grams:
        require("finest_grams", finest, high=100.0, above=0.0)
    percents = [100 * finest / fiber_grams for finest in finest_grams]
    return ladder_of(
        palette,
        [
            tuple(round(percent / least) * least for percent, least in zip(recipe, percents))
            for recipe in ladder.recipes
        ],
    )


def finest_by_stock(strength: float, finest_ml: float) -> float:
    """Grams of dye in the smallest volume that can be read off.

    strength   of the stock, above 0 to 50 g/100 mL
    finest_ml  volume between two marks, above 0 to 1,000 mL
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("strength", strength, high=50.0, above=0.0)
    require("finest_ml", finest_ml, high=1000.0, above=0.0)
    return strength * finest_ml / 100


def _require_count(count: int) -> None:
    require("count", count, FEWEST, MOST)
