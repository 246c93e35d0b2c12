"""What is left in the bath, how many rinses are still to come, and why color comes off.

A rinse leaves a share of the color behind, its carry-over, so the color falls by the same factor
each time and its logarithm by the same step. A carry-over well above what the water held by the
yarn explains means that the yarn itself gives off dye.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import ceil

from ..core.arithmetic import exp, ln, mean, sqrt, total
from ..core.problem import OutOfRange, require
from ..core.table import SourcedTable, read_table
from ..yarn.student_t import quantile

YES, NO, UNKNOWN = "yes", "no", "not known"
NORMAL_95 = 1.96


@dataclass(frozen=True)
class CarryOver:
    """How much of the color one rinse leaves.

    share      % of the color that the next rinse still has, fitted
    low, high  its likely range, %; high may reach 100 and above, and then rinsing
               may not be helping at all
    last       color at the last rinse on the fitted line, in the readings' unit
    """

    share: float
    low: float
    high: float
    last: float


def left_from_ladder(jar: float, step: float = 2.0) -> float:
    """Color left, % of the starting bath, from the jar of a dilution ladder that
    it matches: 100 / step^jar.

    jar   0 for the starting bath, 1 for it thinned once, and so on; halves
          between two jars; 0 to 20
    step  times that each jar is thinner than the last, above 1 to 10
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("jar", jar, 0.0, 20.0)
    require("step", step, 1.0, 10.0, above=1.0)
    left: float = 100 / step**jar
    return left


def ladder_range(jar: float, step: float = 2.0) -> tuple[float, float]:
    """Least and most color left, %, when a match is sure to half a jar either way.

    jar   0 to 20, as in left_from_ladder
    step  above 1 to 10
    Raises OutOfRange outside these.
    Source: arithmetic; half a jar is common practice.
    """
    left = left_from_ladder(jar, step)
    return left / sqrt(step), min(left * sqrt(step), 100.0)


def exhaustion(left: float) -> float:
    """Share of the dye, %, that went onto the fiber: E = 100 - left.

    left  % of the dye still in the bath, 0 to 100
    Raises OutOfRange outside this: more than was put in is a wrong reading.
    Source: dyeing-textbook (from memory).
    """
    require("left", left, 0.0, 100.0)
    return 100 - left


def dye_left(mass: float, depth: float, left: float) -> float:
    """Dye left in the bath, g: W P / 100 x left / 100.

    mass   g of fiber, above 0 to 100,000
    depth  % of the fiber's weight, all dyes, 0 to 100
    left   % of the dye still in the bath, 0 to 100
    Raises OutOfRange outside these.
    Source: dyeing-textbook (from memory).
    """
    require("mass", mass, 0.0, 1e5, above=0.0)
    require("depth", depth, 0.0, 100.0)
    require("left", left, 0.0, 100.0)
    return mass * depth / 100 * left / 100


def carry_over_of_water(held: float, rinse: float) -> float:
    """Carry-over, %, when the only color is that of the liquor the yarn
    holds: held / (held + rinse).

    held   mL of liquor in the squeezed yarn, above 0
    rinse  mL of clean water, 0 or more
    Raises OutOfRange outside these.
    Source: definition (the dye is spread through both).
    """
    require("held", held, above=0.0)
    require("rinse", rinse, 0.0)
    return 100 * held / (held + rinse)


def slope_of_fall(readings: Sequence[tuple[float, float]]) -> float:
    """What the natural logarithm of the color changes by from rinse to rinse: the
    slope of a least-squares line.

    readings  (number of the rinse, color in any unit above 0) each, two or more different rinses
    Raises OutOfRange outside these.
    Source: definition (least squares).
    """
    if len({rinse for rinse, _ in readings}) < 2:
        raise OutOfRange(
            "readings", len(readings), 2, None, "give the color of at least two rinses"
        )
    for rinse, color in readings:
        require("rinse", rinse, 0.0, 1000.0)
        require("color", color, above=0.0)
    middle = mean(rinse for rinse, _ in readings)
    # A rinse in the middle weighs nothing.
    weighed = [(rinse - middle) * ln(color) for rinse, color in readings if rinse != middle]
    return sum(weighed) / _spread(readings)


def _spread(readings: Sequence[tuple[float, float]]) -> float:
    middle = mean(rinse for rinse, _ in readings)
    return total((rinse - middle) ** 2 for rinse, _ in readings)


def fit_carry_over(
    readings: Sequence[tuple[float, float]], reading_error: float = 0.0, slope: float | None = None
) -> CarryOver:
    """Carry-over from readings of several rinses: a least-squares line through
    the logarithms of the color.

    readings       (number of the rinse, color in any unit above 0) each,
                   two or more different rinses
    reading_error  % either way of one reading, 0 to 200: the least spread that is believed
    slope          of that line, where it is known already (see slope_of_fall)
    Raises OutOfRange outside these.
    Source: definition (least squares; the range of the slope by Student's t with two
    numbers less than readings).
    """
    require("reading_error", reading_error, 0.0, 200.0)
    slope = slope_of_fall(readings) if slope is None else slope
    count, spread = len(readings), _spread(readings)
    middle = mean(rinse for rinse, _ in readings)
    level = mean(ln(color) for _, color in readings)
    # A reading's error is uniform, so its standard deviation is the half-width over root three.
    half = NORMAL_95 * ln(1 + reading_error / 100) / sqrt(3 * spread)
    if count > 2:
        rest = total(
            (ln(color) - level - slope * (rinse - middle)) ** 2 for rinse, color in readings
        )
        half = max(half, quantile(97.5, count - 2) * sqrt(rest / (count - 2) / spread))
    last = max(rinse for rinse, _ in readings)
    half = min(half, 50.0)  # beyond any meaning; keeps the powers finite
    return CarryOver(
        100 * exp(slope),
        100 * exp(slope - half),
        100 * exp(slope + half),
        exp(level + slope * (last - middle)),
    )


def rinses_needed(now: float, wanted: float, carry_over: float) -> float:
    """Rinses still to come, with the part of one: ln(c0 / c) / ln(1 / carry-over); 0
    when it is there already.

    now         color of the last rinse, above 0
    wanted      color that is good enough, above 0, in the same unit
    carry_over  % of the color that a rinse leaves, above 0 to below 100
    Raises OutOfRange outside these; a color that does not fall is refused with the reason.
    Source: definition (the same share is left each time).
    """
    require("now", now, above=0.0)
    require("wanted", wanted, above=0.0)
    if carry_over >= 100:
        raise OutOfRange(
            "carry_over",
            carry_over,
            0.0,
            100.0,
            "the rinses do not get paler: the yarn gives off dye, and rinsing alone will not"
            " end it",
        )
    require("carry_over", carry_over, 0.0, 100.0, above=0.0)
    return max(ln(now / wanted) / ln(100 / carry_over), 0.0)


def whole_rinses(rinses: float) -> int:
    """Rinses to do: up to the next whole one.

    rinses  0 or more
    Raises OutOfRange below 0.
    Source: arithmetic.
    """
    require("rinses", rinses, 0.0)
    return ceil(rinses - 1e-9)


def yarn_gives_off(fitted_low: float, expected: float) -> bool:
    """Whether the yarn itself gives off dye: even the low end of the fitted carry-over is above
    that of the water it holds.

    fitted_low  %, 0 or more (see fit_carry_over)
    expected    %, 0 or more (see carry_over_of_water)
    Raises OutOfRange below 0.
    Source: common practice.
    """
    require("fitted_low", fitted_low, 0.0)
    require("expected", expected, 0.0)
    return fitted_low > expected


def bleed_symptoms() -> SourcedTable:
    """What to look at when color comes off: id and question.

    Source: common practice (no published source).
    """
    return read_table("dye", "bleed-symptoms")


def bleed_causes() -> SourcedTable:
    """Causes with their scores for each symptom, and what to try.

    Source: common practice (our own scores).
    """
    return read_table("dye", "bleed-causes")


def likely_causes(observed: Mapping[str, str]) -> list[tuple[str, float]]:
    """Causes that the signs speak for, with their points, the likeliest first; those
    with no points are left out.

    observed  "yes", "no" or "not known" by symptom; a symptom left out is not known
    Raises KeyError for a symptom that is not listed; ValueError for another word.
    Source: common practice (our own scores; they order, they are no odds).
    """
    known = {row["symptom"] for row in bleed_symptoms().rows}
    for symptom, word in observed.items():
        if symptom not in known:
            raise KeyError(symptom)
        if word not in (YES, NO, UNKNOWN):
            raise ValueError(word)
    sign = {YES: 1, NO: -1, UNKNOWN: 0}
    points = [
        (row["cause"], sum(sign[word] * row[symptom] for symptom, word in observed.items()))
        for row in bleed_causes().rows
    ]
    return sorted((pair for pair in points if pair[1] > 0), key=lambda pair: -pair[1])


def lint_or_dye(fibers_seen: str, cloth_stain: str) -> str:
    """Whether a damp white cloth met loose fiber or dye: "lint", "dye", "both",
    "neither" or "not known".

    fibers_seen  colored hairs on the cloth: "yes", "no" or "not known"
    cloth_stain  an even stain under them: "yes", "no" or "not known"
    Raises ValueError for another word.
    Source: common practice.
    """
    for word in (fibers_seen, cloth_stain):
        if word not in (YES, NO, UNKNOWN):
            raise ValueError(word)
    if UNKNOWN in (fibers_seen, cloth_stain):
        return UNKNOWN
    return {(YES, YES): "both", (YES, NO): "lint", (NO, YES): "dye", (NO, NO): "neither"}[
        fibers_seen, cloth_stain
    ]
