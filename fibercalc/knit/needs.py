"""What a piece of cloth needs, by four ways of knowing, and how far each may be off.

The half-widths of the errors are common practice (no source), stated as 95 % and shown on the
page; a weighed swatch has the least.
"""

from collections.abc import Sequence
from math import sqrt

from ..core.problem import require
from .loop import LOOSEST, TIGHTEST, USUAL

KNITTER_ERROR = 0.09  # a whole garment against its washed swatch: tension, blocking, joins
LOOP_ERROR = (
    0.10  # the loop model on hand gauges, whose proportions are seldom those of the constants
)
# A knitter may work a yarn anywhere between the loosest and the tightest usual: a uniform part, as
# the 95 % half-width of its deviation.
TIGHTNESS_ERROR = 1.96 * (TIGHTEST - LOOSEST) / 2 / sqrt(3) / USUAL

BUFFERS = {
    "none": (1.0, 0.0),
    "unknown": (1.05, 0.05),
    "held": (1.10, 0.05),
}  # what a printed figure holds over the need, and its half-width


def length_by_swatch(area: float, swatch_area: float, swatch_mass: float, tex: float) -> float:
    """Length of yarn in a piece of cloth, m, from a weighed swatch of the same cloth.

    area         of the piece, cm², above 0
    swatch_area  cm², above 0
    swatch_mass  g, above 0
    tex          linear density of the yarn, g per 1,000 m, above 0
    Raises OutOfRange outside these.
    Source: common practice (cloth, weight and yarn are proportional).
    """
    for name, value in (
        ("area", area),
        ("swatch_area", swatch_area),
        ("swatch_mass", swatch_mass),
        ("tex", tex),
    ):
        require(name, value, above=0.0)
    return swatch_mass / swatch_area * area / tex * 1000


def length_by_loop(area: float, yarn_on_area: float, factor: float) -> float:
    """Length of yarn in a piece of cloth, m, from what the loops of plain knitting take.

    area          of the piece, cm², above 0
    yarn_on_area  of plain knitting, cm per cm², above 0
    factor        yarn of this structure against plain, above 0
    Raises OutOfRange outside these.
    Source: Munden 1959 (munden-1959) for plain; factors by structure-factors.csv.
    """
    for name, value in (("area", area), ("yarn_on_area", yarn_on_area), ("factor", factor)):
        require(name, value, above=0.0)
    return yarn_on_area * area * factor / 100


def combined(errors: Sequence[float]) -> float:
    """Independent errors as one.

    errors  each a share of the value, 0 or more
    Source: first-order propagation, as everywhere in the book (core.spread).
    """
    return sqrt(sum(error * error for error in errors))
