"""How long hot water takes to burn skin deeply: between published thresholds only."""

from functools import cache

from ..core.arithmetic import exp, ln
from ..core.problem import require
from ..core.table import read_table

CHILD = 0.5  # of an adult's time (scald-children)
# °C: what goes in by hand waits for this, well under the lowest published
# threshold; common practice
HANDS = 40.0


@cache
def _points() -> tuple[tuple[float, float], ...]:
    return tuple((row["celsius"], row["seconds"]) for row in read_table("safe", "burn-times").rows)


def coolest() -> float:
    """The lowest temperature for which a threshold was found, °C.

    Source: moritz-henriques (44 °C, irreversible damage within 6 hours).
    """
    return _points()[0][0]


def hottest() -> float:
    """The temperature from which a deep burn takes 1 s or less, °C.

    Source: childrens-alabama (155 °F, 1 second).
    """
    return _points()[-1][0]


def at_most(celsius: float) -> bool:
    """Whether the published time at a temperature is a bound ("under 3 s") or the last one, so that
    "or less" belongs behind it.

    celsius  of the bath
    Source: childrens-alabama (from 140 °F).
    """
    first_bound: float = min(
        row["celsius"] for row in read_table("safe", "burn-times").rows if row["under"]
    )
    return celsius >= first_bound


def neighbors(celsius: float) -> tuple[int, int]:
    """Rows of the table of burn times between which a temperature lies, counted from 0.

    celsius  from coolest() to hottest()
    Raises OutOfRange outside the published thresholds: nothing is guessed there.
    Source: cpsc-tap-water.
    """
    points = _points()
    require("celsius", celsius, points[0][0], points[-1][0])
    upper = next(place for place, (at, _) in enumerate(points) if place and celsius <= at)
    return upper - 1, upper


def burn_time(celsius: float) -> float:
    """Contact time to a deep burn of an adult's skin, s; the logarithm of the time runs straight
    between two published thresholds.

    celsius  from coolest() up; from hottest() up the time is the last one published, "1 s or less"
    Raises OutOfRange below the lowest published threshold: nothing is guessed there.
    Source: cpsc-tap-water, childrens-alabama, burn-foundation, moritz-henriques.
    """
    require("celsius", celsius, _points()[0][0])
    if celsius >= _points()[-1][0]:
        return _points()[-1][1]
    below, above = neighbors(celsius)
    (cool, long), (hot, short) = _points()[below], _points()[above]
    return time_between(celsius, cool, long, hot, short)


def time_between(
    celsius: float, cooler: float, at_cooler: float, hotter: float, at_hotter: float
) -> float:
    """Contact time to a deep burn between two thresholds, s: its logarithm runs straight.

    celsius    of the bath, from cooler to hotter
    cooler     °C of one threshold
    at_cooler  its time, s, above 0
    hotter     °C of the other, above cooler
    at_hotter  its time, s, above 0
    Raises OutOfRange outside these.
    Source: common practice (a straight line in the logarithm).
    """
    require("celsius", celsius, cooler, hotter)
    require("hotter", hotter, above=cooler)
    require("at_cooler", at_cooler, above=0.0)
    require("at_hotter", at_hotter, above=0.0)
    share = (celsius - cooler) / (hotter - cooler)
    return exp(ln(at_cooler) + share * (ln(at_hotter) - ln(at_cooler)))
