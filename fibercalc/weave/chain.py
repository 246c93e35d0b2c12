"""The chain of sizes: from the cloth that is wanted back to the loom and the yarn, each loss
divided out in its own place.

Each percentage is of another thing. Shrinkage is of the cloth before washing, draw-in of the
width in the heddle, take-up of the yarn. None is ever added: 20 % lost of 12.5 in leaves 10 in,
while 10 in and 20 % on top leave 9.6.
"""

from math import floor

from ..core.problem import require
from ..wash.shrink import size_after, size_before

MOST = 60.0  # %: beyond lies a slip of the pen


def width_in_heddle(finished: float, shrink: float, draw_in: float) -> float:
    """Width that the ends take in the heddle or reed, in the unit of finished.

    finished  width wanted after washing, above 0
    shrink    % of the width before washing, -100 (growth) to 90
    draw_in   % of the width in the heddle, 0 to 60
    Raises OutOfRange outside these.
    Source: trade practice, divided out in turn (trade-pages-warp).
    """
    require("draw_in", draw_in, 0.0, MOST)
    return size_before(finished, shrink) / (1 - draw_in / 100)


def width_off_loom(heddle_width: float, draw_in: float) -> float:
    """Width of the cloth on the loom and off it, before washing, in the unit of heddle_width.

    heddle_width  width of the ends in the heddle, above 0
    draw_in       % of it, 0 to 60
    Raises OutOfRange outside these.
    Source: definition (draw-in is a share of the width in the heddle).
    """
    require("heddle_width", heddle_width, above=0.0)
    require("draw_in", draw_in, 0.0, MOST)
    return heddle_width * (1 - draw_in / 100)


def finished_width(heddle_width: float, shrink: float, draw_in: float) -> float:
    """Width after washing of what stands so wide in the heddle: the way back from width_in_heddle.

    heddle_width  width of the ends in the heddle, above 0
    shrink        % of the width before washing, -100 to 90
    draw_in       % of the width in the heddle, 0 to 60
    Raises OutOfRange outside these.
    Source: trade practice (trade-pages-warp).
    """
    return size_after(width_off_loom(heddle_width, draw_in), shrink)


def warp_for_woven(woven: float, take_up: float) -> float:
    """Warp yarn that so much woven length takes, in the unit of woven.

    woven    length as measured on the loom, 0 or more
    take_up  % of the warp yarn that goes into its waves, 0 to 60
    Raises OutOfRange outside these.
    Source: definition (take-up is a share of the yarn), trade-pages-warp.
    """
    require("woven", woven, 0.0)
    require("take_up", take_up, 0.0, MOST)
    return woven / (1 - take_up / 100)


def woven_from_warp(warp: float, take_up: float) -> float:
    """Length that so much warp weaves, in the unit of warp: the way back from warp_for_woven.

    warp     length of warp yarn, 0 or more
    take_up  % of it, 0 to 60
    Raises OutOfRange outside these.
    Source: definition (take-up is a share of the yarn).
    """
    require("warp", warp, 0.0)
    require("take_up", take_up, 0.0, MOST)
    return warp * (1 - take_up / 100)


def pick_length(heddle_width: float, take_up: float) -> float:
    """Weft yarn in one pick, in the unit of heddle_width.

    heddle_width  width of the ends in the heddle, above 0; a pick is laid in that wide
    take_up       % of the weft yarn for its waves, turns and joins, 0 to 60
    Raises OutOfRange outside these.
    Source: trade practice (trade-pages-warp).
    """
    require("heddle_width", heddle_width, above=0.0)
    return warp_for_woven(heddle_width, take_up)


def whole_picks(length: float, per_cm: float) -> int:
    """Picks in a length, to the nearest whole one.

    length  cm woven, 0 or more
    per_cm  picks in a centimeter, above 0
    Raises OutOfRange outside these.
    Source: arithmetic (rounded).
    """
    require("length", length, 0.0)
    require("per_cm", per_cm, above=0.0)
    return floor(length * per_cm + 0.5)


def take_up_from_crimp(crimp: float) -> float:
    """Take-up, % of the yarn, from crimp, % of the cloth: t = c / (1 + c).

    crimp  %, 0 to 150
    Raises OutOfRange outside this.
    Source: definition (Peirce's crimp is of the cloth; peirce-1937).
    """
    require("crimp", crimp, 0.0, 150.0)
    return 100 * crimp / (100 + crimp)


def crimp_from_take_up(take_up: float) -> float:
    """Crimp, % of the cloth, from take-up, % of the yarn: c = t / (1 - t).

    take_up  %, 0 to 60
    Raises OutOfRange outside this.
    Source: definition (Peirce's crimp is of the cloth; peirce-1937).
    """
    require("take_up", take_up, 0.0, MOST)
    return 100 * take_up / (100 - take_up)
