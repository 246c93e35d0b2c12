"""Colors of yarn told apart without color: each has a line of its own, black or white, whichever
is seen on it.
"""

from ..color import lab_from_hex

DASHES = (None, "", "2 3", "7 4", "1 6", "9 3 2 3", "4 8", "2 2 7 2")  # the first color has none


def dash_of(place: int) -> str | None:
    """The dashes of the color at a place (from 0) of a list; None for no line."""
    return DASHES[place % len(DASHES)]


def against(color: str) -> str:
    """Black on a light color, white on a dark one: a color of the yarn is the same in every
    scheme.
    """
    return "#000000" if lab_from_hex(color.lstrip("#"))[0] > 50 else "#ffffff"
