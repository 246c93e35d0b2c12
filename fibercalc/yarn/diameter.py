"""Yarn diameter calculated from its count, three ways.

Which for what: the solid model when the fiber and how tightly it is packed are known (it is the
definition of packing fraction); Peirce for cotton and close-spun yarn inside cloth geometry;
Ashenhurst for setts, with the kind of yarn in its constant. None of them is what a relaxed hand
wrap measures: that is about twice as thick.
"""

from math import pi

from ..core.arithmetic import sqrt
from ..core.problem import require
from ..core.table import SourcedTable, read_table
from ..core.units import METERS_PER_INCH
from .count import COARSEST_TEX, FINEST_TEX, count_from_tex

MILLIMETERS_PER_INCH = 1000 * METERS_PER_INCH
PEIRCE_CONSTANT = (
    28.0  # diameters per inch of a cotton yarn of count 1; Peirce 1937, yarn volume 1.1 cm3/g
)


def ashenhurst_constants() -> SourcedTable:
    """Ashenhurst's constant for each kind of yarn, with every value printed for it.

    Source: Ashenhurst as quoted by trade pages (ashenhurst); Taylor 1909 (taylor-1909) for one row.
    """
    return read_table("yarn", "ashenhurst-constants")


def solid_diameter(tex: float, fiber_density: float, packing_fraction: float) -> float:
    """Diameter, mm, of a round yarn that is fiber in a known share of its volume.

    tex               g per 1,000 m, 0.001 to 10,000,000
    fiber_density     g/cm3, 0.8 to 3
    packing_fraction  share of the yarn's volume filled by fiber, 0.05 to 0.91 (0.907 is parallel
                      rods with no gaps left)
    Raises OutOfRange outside these.
    Source: arithmetic (area of a circle); typical packing 0.60 close-spun, 0.30 to 0.45 soft and
    woolen is from memory (trade-memory).
    """
    require("tex", tex, FINEST_TEX, COARSEST_TEX)
    require("fiber_density", fiber_density, 0.8, 3.0)
    require("packing_fraction", packing_fraction, 0.05, 0.91)
    area = tex / (1000 * fiber_density * packing_fraction)  # mm2
    return sqrt(4 * area / pi)


def peirce_diameter(tex: float) -> float:
    """Diameter, mm, after Peirce: 1 / (28 x square root of cotton count) inches. For cotton,
    moderately compressed.

    tex  g per 1,000 m, 0.001 to 10,000,000
    Raises OutOfRange outside this.
    Source: Peirce 1937 (peirce-1937).
    """
    return peirce_diameter_of_count(count_from_tex(tex, "Ne"))


def peirce_diameter_of_count(cotton_count: float) -> float:
    """Diameter, mm, after Peirce, of a yarn whose cotton count is known.

    cotton_count  hanks of 840 yd in a pound, above 0
    Raises OutOfRange when it is not above 0.
    Source: Peirce 1937 (peirce-1937).
    """
    require("cotton_count", cotton_count, above=0.0)
    return MILLIMETERS_PER_INCH / (PEIRCE_CONSTANT * sqrt(cotton_count))


def ashenhurst_diameters_per_inch(yards_per_pound: float, constant: float) -> float:
    """Diameters per inch after Ashenhurst: constant x square root of yards per pound.

    yards_per_pound  yd/lb, above 0 to 1,000,000
    constant         K for the kind of yarn, 0.7 to 1; see ashenhurst_constants
    Raises OutOfRange outside these.
    Source: Ashenhurst as quoted by trade pages (ashenhurst); Taylor 1909 (taylor-1909).
    """
    require("yards_per_pound", yards_per_pound, 0.0, 1_000_000.0, above=0.0)
    require("constant", constant, 0.7, 1.0)
    return constant * sqrt(yards_per_pound)


def diameter_from_diameters_per_inch(diameters_per_inch: float) -> float:
    """Diameter, mm, of a yarn of which so many lie side by side in an inch.

    diameters_per_inch  count per inch, above 0 to 10,000
    Raises OutOfRange outside this.
    Source: arithmetic (one inch shared out).
    """
    require("diameters_per_inch", diameters_per_inch, 0.0, 10_000.0, above=0.0)
    return MILLIMETERS_PER_INCH / diameters_per_inch
