"""Draw-downs as a weaver draws them: typed by hand from the definition of each weave, last pick on top, X where the warp lies on top.

For the weaves of one heddle: end 1 stands in a slot, end 2 in a hole, and so on. Up raises the holes, down leaves the slots on top, on
edge only the slots on the stick, flat the holes and the slots on the stick.
"""

DRAWN = {
    "plain": (
        """
        X.
        .X"""
    ),
    "weft-floats": (
        """
        X.X.
        .X.X
        X...
        .X.X"""
    ),
    "warp-floats": (
        """
        .X.X
        X.X.
        XX.X
        X.X."""
    ),
    "offset-floats": (
        """
        X.X.
        .X.X
        ..X.
        .X.X
        X.X.
        .X.X
        X...
        .X.X"""
    ),
    "waffle": (
        """
        X.X.
        XX.X
        X.X.
        X...
        .X.X
        X..."""
    ),
    "lace": (
        """
        X.X.X.
        .X.X.X
        X.....
        .X.X.X
        X.....
        .X.X.X"""
    ),
    "hopsack": (
        """
        ..XX
        ..XX
        XX..
        XX.."""
    ),
    "twill-2-1": (
        """
        X.X
        .XX
        XX."""
    ),
    "twill-2-2": (
        """
        X..X
        ..XX
        .XX.
        XX.."""
    ),
    "twill-3-1": (
        """
        XX.X
        X.XX
        .XXX
        XXX."""
    ),
    "herringbone": (
        """
        X..X.XX.
        ..XX..XX
        .XX.X..X
        XX..XX.."""
    ),
    "waffle-point": (
        """
        .X...X
        X.X.X.
        XX.X.X
        X.X.X.
        .X...X
        X....."""
    ),
}

# Longest floats counted by eye in the drawings repeated: warp on the face, warp on the back, weft on the face, weft on the back.
COUNTED = {
    "plain": (1, 1, 1, 1),
    "weft-floats": (1, 3, 3, 1),
    "warp-floats": (3, 1, 1, 3),
    "offset-floats": (1, 3, 3, 1),
    "waffle": (5, 3, 3, 3),
    "lace": (1, 5, 5, 1),
    "hopsack": (2, 2, 2, 2),
    "twill-2-1": (2, 1, 1, 2),
    "twill-2-2": (2, 2, 2, 2),
    "twill-3-1": (3, 1, 1, 3),
    "herringbone": (2, 2, 2, 2),
    "waffle-point": (3, 5, 5, 3),
}


def repeat_of(drawing: str) -> tuple[str, ...]:
    """A drawing as the package has it: first pick first."""
    lines = [line.strip() for line in drawing.strip().splitlines()]
    return tuple(line.replace("X", "1").replace(".", "0") for line in reversed(lines))
