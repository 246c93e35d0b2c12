"""How much of the cloth its threads cover, and when no more go in: Peirce's cover factor and his
jammed plain weave.
"""

from ..core.arithmetic import sqrt
from ..core.problem import require

TOUCHING = 28.0  # Peirce's K where threads lie side by side: 28 diameters to the inch of count 1


def cover_factor(threads_per_inch: float, cotton_count: float) -> float:
    """Peirce's cover factor of one set of threads: threads per inch over the square root of the
    cotton count. Threads touch at 28.

    threads_per_inch  ends or picks in an inch, above 0
    cotton_count      Ne of their yarn, above 0
    Raises OutOfRange outside these.
    Source: Peirce 1937 (peirce-1937).
    """
    require("threads_per_inch", threads_per_inch, above=0.0)
    require("cotton_count", cotton_count, above=0.0)
    return threads_per_inch / sqrt(cotton_count)


def touching_per_inch(cotton_count: float) -> float:
    """Threads side by side in an inch after Peirce: 28 x square root of the cotton count.

    cotton_count  Ne of the yarn, above 0
    Raises OutOfRange outside this.
    Source: Peirce 1937 (peirce-1937).
    """
    require("cotton_count", cotton_count, above=0.0)
    return TOUCHING * sqrt(cotton_count)


def cloth_cover(warp_cover: float, weft_cover: float) -> float:
    """Cover factor of the cloth: both together less what lies twice, K1 + K2 - K1 K2 / 28.

    warp_cover  K of the warp, 0 to 28
    weft_cover  K of the weft, 0 to 28
    Raises OutOfRange outside these.
    Source: Peirce 1937 (peirce-1937); the formula for both together is from memory.
    """
    require("warp_cover", warp_cover, 0.0, TOUCHING)
    require("weft_cover", weft_cover, 0.0, TOUCHING)
    return warp_cover + weft_cover - warp_cover * weft_cover / TOUCHING


def left_to_bend(ends_per_inch: float, warp_diameter: float, weft_diameter: float) -> float:
    """What plain-woven ends at a sett leave for the picks to bend, both ways jammed; 1 is all.

    ends_per_inch  ends in an inch, above 0
    warp_diameter  inches, above 0
    weft_diameter  inches, above 0
    sqrt(1 - (p1 / D)^2) + sqrt(1 - (p2 / D)^2) = 1, p the spacing of ends and picks, D both
    diameters together: this is one less the first.
    Raises OutOfRange outside these.
    Source: Peirce 1937 (peirce-1937): read for the square cloth (p / D = 0.866), the form for
    unequal setts is from memory.
    """
    require("ends_per_inch", ends_per_inch, above=0.0)
    require("warp_diameter", warp_diameter, above=0.0)
    require("weft_diameter", weft_diameter, above=0.0)
    spacing = 1 / (ends_per_inch * (warp_diameter + weft_diameter))
    if spacing >= 1:  # so far apart that a pick passes between them without bending round both
        return 1.0
    return 1 - sqrt(1 - spacing**2)


def closest_picks(
    ends_per_inch: float, warp_diameter: float, weft_diameter: float, left: float | None = None
) -> float:
    """Most picks in an inch of a plain weave at a given sett: jammed by Peirce's geometry, or
    picks touching, whichever is fewer.

    ends_per_inch  ends in an inch, above 0, no closer than the threads' own diameters
    warp_diameter  inches, above 0
    weft_diameter  inches, above 0
    left           what the ends leave for the picks to bend, where it is known (left_to_bend)
    Raises OutOfRange outside these.
    Source: Peirce 1937 (peirce-1937): read for the square cloth (p / D = 0.866), the form for
    unequal setts is from memory.
    """
    require("warp_diameter", warp_diameter, above=0.0)
    require("weft_diameter", weft_diameter, above=0.0)
    if left is None:
        left = left_to_bend(ends_per_inch, warp_diameter, weft_diameter)
    require("ends_per_inch", ends_per_inch, 0.0, 1 / warp_diameter, above=0.0)
    jammed = (warp_diameter + weft_diameter) * sqrt(1 - left**2)
    return 1 / max(jammed, weft_diameter)
