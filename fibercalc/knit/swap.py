"""One yarn in place of another: by length, with their thickness compared."""

from ..core.arithmetic import sqrt
from ..core.problem import require

CLOSE, APART = (
    0.07,
    0.20,
)  # grist apart by less is "much the same", by more "another thickness" (common practice)


def grist_ratio(length: float, mass: float, other_length: float, other_mass: float) -> float:
    """Length per weight of one yarn over that of another; above 1 the first is finer.

    length  m, above 0
    mass  g, above 0
    other_length  m, above 0
    other_mass  g, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    for name, value in (
        ("length", length),
        ("mass", mass),
        ("other_length", other_length),
        ("other_mass", other_mass),
    ):
        require(name, value, above=0.0)
    return (length / mass) / (other_length / other_mass)


def tightness(tex: float, stitch: float) -> float:
    """How full the loops are: sqrt(tex) over the length of yarn in a stitch in mm. Hand knitting
    lies near 1.0 to 1.25.

    tex     g per 1,000 m, above 0
    stitch  m, above 0
    Raises OutOfRange outside these.
    Source: definition of the tightness factor (textile handbooks).
    """
    require("tex", tex, above=0.0)
    require("stitch", stitch, above=0.0)
    return sqrt(tex) / (1000 * stitch)
