"""Grades of the gray scales from two colors: 5 is no difference, 1 the worst, half grades between.

The steps for a change of color were read in the standard; those for staining and both formulas are
from memory, and they agree with one another (shared/checks/wash.toml). The formula for a change
wants a weighted difference for chromatic colors, which was not trusted to memory: plain CIELAB
difference stands in its place. The two are equal where only lightness changes.
"""

from math import floor, log2

from ..core.arithmetic import largest, ln, sqrt
from ..core.color import Color
from ..core.problem import OutOfRange, require
from ..core.traced import named

BEST, WORST = 5.0, 1.0
LOG2 = named("log2", log2)
MOST = 200.0  # CIELAB: wider apart than white and black


def color_difference(one: Color, other: Color) -> float:
    """Plain CIELAB difference of two colors: the distance in L*, a*, b*.

    one    a color
    other  the other; which is first does not matter
    Raises nothing.
    Source: CIE 15 (cie-15, from memory), CIELAB 1976.
    """
    return distance(one.lightness - other.lightness, one.a - other.a, one.b - other.b)


def distance(lightness: float, a: float, b: float) -> float:
    """Plain CIELAB difference from its three parts.

    lightness  part in L*, any number
    a          part in a*, green to red, any number
    b          part in b*, blue to yellow, any number
    Raises OutOfRange for what is no number.
    Source: CIE 15 (cie-15, from memory), CIELAB 1976.
    """
    for name, part in (("lightness", lightness), ("a", a), ("b", b)):
        require(name, part)
    return sqrt(lightness**2 + a**2 + b**2)


def change_grade(difference: float) -> float:
    """Grade for a change of color, with decimals, 1 to 5.

    5 - d / 1.7 up to 3.4, beyond it 5 - ln(d / 0.85) / ln 2, which is 5 - log2(d / 0.85).
    difference  CIELAB, 0 to 200; exact for a change of lightness alone, approximate for any other
    Raises OutOfRange outside this.
    Source: ISO 105-A05 (iso-105-a05, from memory); it gives the steps of A02 (iso-105-a02), which
    were read, within 0.05 of a grade.
    """
    require("difference", difference, 0.0, MOST)
    return _held(5 - difference / 1.7 if difference <= 3.4 else 5 - LOG2(difference / 0.85))


def staining_difference(difference: float, lightness: float) -> float:
    """The weighted difference that staining is graded by: d - 0.4 sqrt(d² - l²).

    difference  CIELAB difference of the white cloth before and after, 0 to 200
    lightness   its part in lightness L*, in size no more than the difference
    Raises OutOfRange outside these.
    Source: ISO 105-A04 (iso-105-a04, from memory).
    """
    require("difference", difference, 0.0, MOST)
    if not abs(lightness) <= difference * (1 + 1e-12):
        raise OutOfRange("lightness", lightness, -difference, difference)
    return difference - 0.4 * sqrt(max(difference**2 - lightness**2, 0.0))


def staining_grade(weighted: float) -> float:
    """Grade for staining, with decimals, 1 to 5.

    6.1 - 1.45 ln(d), and 5 - 0.23 d where that gives more than 4.
    weighted  from staining_difference, 0 to 200
    Raises OutOfRange outside this.
    Source: ISO 105-A04 (iso-105-a04, from memory); it agrees with the recalled steps of A03
    (iso-105-a03) within 0.03 of a grade.
    """
    require("weighted", weighted, 0.0, MOST)
    slight = weighted == 0 or 6.1 - 1.45 * ln(weighted) > 4
    return _held(5 - 0.23 * weighted if slight else 6.1 - 1.45 * ln(weighted))


def half_grade(grade: float) -> float:
    """The grade that is reported: the nearest half, 4.75 and up is 5, 4.25 to 4.74 is 4-5.

    grade  1 to 5
    Raises OutOfRange outside this.
    Source: ISO 105-A04 (iso-105-a04, from memory).
    """
    require("grade", grade, WORST, BEST)
    return floor(2 * grade + 0.5 + 1e-9) / 2


def grade_words(grade: float) -> str:
    """A half grade as it is written: "4-5", "3".

    grade  1 to 5, brought to the nearest half
    Raises OutOfRange outside this.
    Source: ISO 105-A02 (iso-105-a02): half steps stand between two whole ones.
    """
    half = half_grade(grade)
    return f"{half:.0f}" if half == int(half) else f"{half - 0.5:.0f}-{half + 0.5:.0f}"


def _held(grade: float) -> float:
    return largest(grade, WORST)
