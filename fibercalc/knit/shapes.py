"""Areas of knitted shapes. Lengths in any one unit; the area is in its square.

A crown, a toe or a mitten's tip is worked in narrowing rounds: its area is that of the triangle
into which its rounds would unroll.
"""

from math import pi

from ..core.problem import require


def rectangle(width: float, length: float) -> float:
    """Area of a rectangle, or of a tube that is so long and measures width around.

    width  0 or more
    length  0 or more
    Raises OutOfRange outside these.
    Source: geometry.
    """
    _lengths(width=width, length=length)
    return width * length


def tapered(start: float, end: float, length: float) -> float:
    """Area of a piece or tube whose width goes evenly from start to end over its length: a
    sleeve, a yoke, a crown (end 0).

    start  0 or more
    end  0 or more
    length  0 or more
    Raises OutOfRange outside these.
    Source: geometry.
    """
    _lengths(start=start, end=end, length=length)
    return (start + end) / 2 * length


def circle_around(around: float) -> float:
    """Area of the circle that measures so much around.

    around  0 or more
    Raises OutOfRange outside this.
    Source: geometry.
    """
    _lengths(around=around)
    return around**2 / 4 / pi


def segment(chord: float, depth: float) -> float:
    """Area of a flat bow with a straight chord and a parabola's curve: a crescent shawl laid with
    its neck edge straight.

    chord  0 or more
    depth  0 or more
    Raises OutOfRange outside these.
    Source: geometry (two thirds of the rectangle around it).
    """
    _lengths(chord=chord, depth=depth)
    return 2 * chord * depth / 3


def short_row_pocket(around: float, depth: float) -> float:
    """Area of one short-row heel or toe: worked over half the round, narrowed to a third of that
    and widened again.

    around  length of the round, 0 or more
    depth   how far it reaches from the fold, 0 or more
    Raises OutOfRange outside these.
    Source: geometry; narrowing to a third is common practice.
    """
    _lengths(around=around, depth=depth)
    return 2 * tapered(around / 2, around / 6, depth)


def _lengths(**given: float) -> None:
    for name, value in given.items():
        require(name, value, 0.0)
