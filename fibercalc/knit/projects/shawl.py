"""Shawls, by how their rows grow: the finished, blocked outline gives the area."""

from math import pi

from ...core.card import CHOICE, Input, Option
from ..shapes import circle_around, segment, tapered
from . import Cloth
from .measure import measure, piece

TOP, CORNER, WING, CRESCENT, HALF_CIRCLE, CIRCLE = (
    "top",
    "corner",
    "wing",
    "crescent",
    "half-circle",
    "circle",
)
LABELS = {
    TOP: "Triangle from the top center",
    CORNER: "Triangle from one corner",
    WING: "Wing: a long, lopsided triangle",
    CRESCENT: "Crescent",
    HALF_CIRCLE: "Half circle",
    CIRCLE: "Circle",
}
ROUND = (HALF_CIRCLE, CIRCLE)

MAKES = {"make": ("shawl",)}
INPUTS = (
    Input(
        CHOICE,
        "Shape",
        default=TOP,
        when=MAKES,
        options=tuple(Option(value, label) for value, label in LABELS.items()),
        name="shape",
    ),
    measure(
        "span",
        "Wingspan, or across",
        "160 cm",
        "400 cm",
        ("60 cm", "260 cm"),
        MAKES,
        "The longest edge, or straight across a circle, blocked.",
    ),
    measure(
        "depth",
        "Depth",
        "70 cm",
        "300 cm",
        ("20 cm", "130 cm"),
        MAKES | {"shape": (TOP, CORNER, WING, CRESCENT)},
        "At its deepest, straight from the longest edge.",
    ),
)


def cloth(w, m: dict) -> Cloth:
    """A shawl's one piece, from its measures m in cm."""
    shape, span, depth = m["shape"], m["span"], m["depth"]
    formula, area = {
        CIRCLE: ("pi * span ** 2 / 4", lambda: circle_around(pi * span)),
        HALF_CIRCLE: ("pi * span ** 2 / 8", lambda: circle_around(pi * span) / 2),
        CRESCENT: ("2 / 3 * span * depth", lambda: segment(span, depth)),
    }.get(shape, ("span * depth / 2", lambda: tapered(span, 0.0, depth)))
    return Cloth((piece(w, "shawl_area", formula, area(), LABELS[shape].partition(":")[0]),), m)
