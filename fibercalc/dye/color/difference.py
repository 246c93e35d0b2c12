"""How different two colors look: CIEDE2000, written out here rather than fetched.

A card with sixty steps asks for thousands of differences in one answer. A library would first
have to be loaded in the browser (about 0.4 s) and then takes three times as long for each; this
one is held against two of them, and against the authors' printed pairs.
"""

from collections.abc import Sequence
from math import atan2, cos, exp, hypot, pi, radians, sin, sqrt

from ...core.color import Color
from ...core.problem import OutOfRange

TWENTY_FIVE_TO_SEVENTH = 25.0**7
TURN = 2 * pi
DEGREES_6, DEGREES_30, DEGREES_63 = radians(6), radians(30), radians(63)


def ciede2000(first: Sequence[float], second: Sequence[float]) -> float:
    """Color difference CIEDE2000 with all three weights 1.

    first   L*, a* and b* of one color
    second  L*, a* and b* of the other; which is first does not matter
    Raises OutOfRange unless each is three finite numbers.
    Source: sharma-2005 (equations; its Table 1 rows are the checks).
    """
    if len(first) != 3 or len(second) != 3 or not abs(sum(first) + sum(second)) < 1e6:
        raise OutOfRange(
            "color", float("nan"), reason="a color is given by three numbers: lightness, a and b"
        )
    lightness1, a1, b1 = first
    lightness2, a2, b2 = second
    mean_chroma = (hypot(a1, b1) + hypot(a2, b2)) / 2
    stretch = 1.5 - 0.5 * _blue_part(mean_chroma)  # a* is stretched near gray
    a1, a2 = a1 * stretch, a2 * stretch
    chroma1, chroma2 = hypot(a1, b1), hypot(a2, b2)
    hue1 = atan2(b1, a1) % TURN if chroma1 else 0.0
    hue2 = atan2(b2, a2) % TURN if chroma2 else 0.0
    turn, mean_hue = hue2 - hue1, hue1 + hue2
    if chroma1 * chroma2 == 0:
        turn = 0.0  # a gray has no hue: the other's stands for both
    elif abs(turn) <= pi:
        mean_hue /= 2
    else:
        turn += TURN if turn < 0 else -TURN
        mean_hue = (mean_hue + (TURN if mean_hue < TURN else -TURN)) / 2
    mean_lightness, mean_chroma = (lightness1 + lightness2) / 2, (chroma1 + chroma2) / 2
    weight = (
        1
        - 0.17 * cos(mean_hue - DEGREES_30)
        + 0.24 * cos(2 * mean_hue)
        + 0.32 * cos(3 * mean_hue + DEGREES_6)
        - 0.20 * cos(4 * mean_hue - DEGREES_63)
    )
    from_middle = (mean_lightness - 50) ** 2
    by_lightness = (lightness2 - lightness1) / (1 + 0.015 * from_middle / sqrt(20 + from_middle))
    by_chroma = (chroma2 - chroma1) / (1 + 0.045 * mean_chroma)
    by_hue = 2 * sqrt(chroma1 * chroma2) * sin(turn / 2) / (1 + 0.015 * mean_chroma * weight)
    angle = 2 * DEGREES_30 * exp(-(((mean_hue * 180 / pi - 275) / 25) ** 2))
    crossed = -sin(angle) * 2 * _blue_part(mean_chroma) * by_chroma * by_hue
    return sqrt(max(by_lightness**2 + by_chroma**2 + by_hue**2 + crossed, 0.0))


def between(first: Color, second: Color) -> float:
    """CIEDE2000 between two colors.

    first   one color
    second  the other
    Raises nothing.
    Source: sharma-2005.
    """
    return ciede2000((first.lightness, first.a, first.b), (second.lightness, second.a, second.b))


def _blue_part(chroma: float) -> float:
    seventh = chroma**7
    return sqrt(seventh / (seventh + TWENTY_FIVE_TO_SEVENTH))
