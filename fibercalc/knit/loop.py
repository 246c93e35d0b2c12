"""How much yarn plain knitting takes: the length of one stitch, and of the yarn in an area, from
the gauge or from the yarn alone.

Plain knitted cloth at rest keeps fixed proportions: courses c = Kc / l, wales w = Kw / l and
stitches on an area c w = Ks / l², with l the length of yarn in one stitch. The constants belong
to a state of rest (wash/tables/munden-constants.csv). From a measured gauge the form with both
counts is used, since hand-knit gauges seldom have the proportions of the constants.
"""

from ..core.arithmetic import sqrt
from ..core.problem import require

FEWEST, MOST = 0.2, 40.0  # stitches or rows per cm: from arm knitting to the finest machine

# sqrt(tex) / l with l in mm, for hand knitting at the council's gauges: computed from those gauges
# with the constants above.
LOOSEST, USUAL, TIGHTEST = 1.0, 1.12, 1.25
# What is worked tighter or looser than the band says: common practice, no source.
TIGHTNESS_OF = {"socks": 1.25, "mittens": 1.2, "shawl": 0.9}


def stitch_length(stitches: float, rows: float, loop_constant: float) -> float:
    """Length of yarn in one stitch of plain knitting, m.

    stitches       per cm, 0.2 to 40
    rows           per cm, 0.2 to 40
    loop_constant  Ks of the state in which the gauge was measured, 10 to 40
    Raises OutOfRange outside these. The model is good to about 10 % on hand gauges.
    Source: Munden 1959 (munden-1959, from memory), l = sqrt(Ks / S).
    """
    _require_gauge(stitches, rows, loop_constant)
    return sqrt(loop_constant / (stitches * rows)) / 100


def yarn_on_area(stitches: float, rows: float, loop_constant: float) -> float:
    """Length of yarn in an area of plain knitting, cm per cm² (which is 100 m per m²).

    stitches       per cm, 0.2 to 40
    rows           per cm, 0.2 to 40
    loop_constant  Ks of the state in which the gauge was measured, 10 to 40
    Raises OutOfRange outside these. The model is good to about 10 % on hand gauges.
    Source: Munden 1959 (munden-1959, from memory), Y = S l = sqrt(Ks S).
    """
    _require_gauge(stitches, rows, loop_constant)
    return sqrt(loop_constant * stitches * rows)


def stitch_length_from_tightness(tex: float, tightness: float) -> float:
    """Length of yarn in one stitch, m, as hand knitters usually work a yarn of that thickness.

    tex        linear density of the yarn, g per 1,000 m, 1 to 100,000
    tightness  sqrt(tex) / l with l in mm, 0.5 to 3; hand knitting at the council's gauges lies at
               1.0 to 1.25
    Raises OutOfRange outside these.
    Source: definition of the tightness factor; its usual values computed from the council's
    gauges (craft-yarn-council).
    """
    require("tex", tex, 1.0, 100_000.0)
    require("tightness", tightness, 0.5, 3.0)
    return sqrt(tex) / tightness / 1000


def yarn_on_area_from_stitch(stitch: float, loop_constant: float) -> float:
    """Length of yarn in an area of plain knitting, cm per cm², from the length of one stitch.

    stitch         m, above 0
    loop_constant  Ks of the state of rest meant, 10 to 40
    Raises OutOfRange outside these.
    Source: Munden 1959 (munden-1959, from memory), Y = S l with S = Ks / l².
    """
    require("stitch", stitch, above=0.0)
    require("loop_constant", loop_constant, 10.0, 40.0)
    return loop_constant / (stitch * 100)


def _require_gauge(stitches: float, rows: float, loop_constant: float) -> None:
    require("stitches", stitches, FEWEST, MOST)
    require("rows", rows, FEWEST, MOST)
    require("loop_constant", loop_constant, 10.0, 40.0)
