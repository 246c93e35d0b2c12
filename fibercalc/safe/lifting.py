"""Recommended weight limit for lifting with two hands: the NIOSH equation, revised 1991."""

from ..core.arithmetic import largest
from ..core.problem import require
from ..core.table import read_table

LOAD = 23.0  # kg, the load constant: read (niosh-rwl-text)
LOW_HANDS = 75.0  # cm: hands below it are low: read (niosh-rwl-text)


def horizontal(distance: float) -> float:
    """Multiplier for how far in front the hands hold the load, no unit.

    distance  cm from between the ankles to between the hands, 0 or more; under 25 counts as 25,
              beyond 63 the multiplier is 0
    Raises OutOfRange below 0.
    Source: niosh-rwl-text (25 / H); the 63 cm: niosh-94-110.
    """
    require("distance", distance, 0.0)
    return 0.0 * distance if distance > 63.0 else 25.0 / largest(distance, 25.0)


def vertical(height: float) -> float:
    """Multiplier for the height of the hands, no unit.

    height  cm from the floor, 0 or more; beyond 175 the multiplier is 0
    Raises OutOfRange below 0.
    Source: niosh-rwl-text (1 - 0.003 |V - 75|).
    """
    require("height", height, 0.0)
    return 0.0 * height if height > 175.0 else 1.0 - 0.003 * abs(height - 75.0)


def travel(distance: float) -> float:
    """Multiplier for how far up or down the load goes, no unit.

    distance  cm, 0 or more; under 25 counts as 25, beyond 175 the multiplier is 0
    Raises OutOfRange below 0.
    Source: niosh-rwl-text (0.82 + 4.5 / D).
    """
    require("distance", distance, 0.0)
    return 0.0 * distance if distance > 175.0 else 0.82 + 4.5 / largest(distance, 25.0)


def twist(angle: float) -> float:
    """Multiplier for turning the trunk, no unit.

    angle  degrees from straight ahead, 0 or more; beyond 135 the multiplier is 0
    Raises OutOfRange below 0.
    Source: niosh-94-110 (1 - 0.0032 A); points read in a government fact sheet agree.
    """
    require("angle", angle, 0.0)
    return 0.0 * angle if angle > 135.0 else 1.0 - 0.0032 * angle


def frequency_row(per_minute: float) -> str:
    """Key of the row of the frequency table that counts: the next one with as many lifts or more.

    per_minute  lifts in a minute, 0 to 15
    Raises OutOfRange outside these: more than 15 a minute is outside the equation.
    Source: niosh-94-110.
    """
    require("per_minute", per_minute, 0.0, 15.0)
    key: str = next(
        row["key"]
        for row in read_table("safe", "lift-frequency").rows
        if row["per_minute"] >= per_minute - 1e-9
    )
    return key


def weight_limit(h: float, v: float, d: float, a: float, f: float, c: float) -> float:
    """Recommended weight limit, kg, from the six multipliers.

    h  horizontal, 0 to 1
    v  vertical, 0 to 1
    d  travel, 0 to 1
    a  twist, 0 to 1
    f  frequency, 0 to 1
    c  grip, 0 to 1
    Raises OutOfRange outside these.
    Source: niosh-rwl-text (23 kg times the six multipliers).
    """
    for name, value in {"h": h, "v": v, "d": d, "a": a, "f": f, "c": c}.items():
        require(name, value, 0.0, 1.0)
    return LOAD * h * v * d * a * f * c
