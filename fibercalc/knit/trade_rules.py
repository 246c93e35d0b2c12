"""Two rules of the trade for the yarn in plain knitting. They know nothing of each other or of
the loop model, so they check it.
"""

from math import pi

from ..core.problem import require
from ..core.units import METERS_PER_INCH, METERS_PER_YARD


def length_by_area_rule(area: float, stitches: float) -> float:
    """Length of yarn for an area of plain knitting, m, by the rule yards = length x width x
    stitches per inch / 6, all in inches.

    area      cm², above 0
    stitches  per cm, above 0
    Raises OutOfRange outside these. It is the fully relaxed loop model with one constant more
    (6.0 for 5.5).
    Source: trade page (trade-page-yardage).
    """
    require("area", area, above=0.0)
    require("stitches", stitches, above=0.0)
    square_inch = (100 * METERS_PER_INCH) ** 2
    return area / square_inch * (stitches * 100 * METERS_PER_INCH) / 6 * METERS_PER_YARD


def length_by_needle_rule(count: float, needle: float) -> float:
    """Length of yarn for so many stitches, m, by the rule meters = pi x needle in mm x stitches x
    1.5 / 1,000.

    count   stitches in all, 0 or more
    needle  diameter, mm, 1 to 60
    Raises OutOfRange outside these.
    Source: trade page (trade-page-yardage).
    """
    require("count", count, 0.0)
    require("needle", needle, 1.0, 60.0)
    return pi * needle * count * 1.5 / 1000
