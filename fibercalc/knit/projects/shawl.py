"""Shawls, by how their rows grow: the finished, blocked outline gives the area."""

from __future__ import annotations

from math import pi

from ...core.card import CHOICE, Input, Option
from ..shapes import circle_around, segment, tapered
from .measure import Made, measure, piece

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

MAKES = {Made.make: ("shawl",)}


class ShawlMeasures(Made):
    """A shawl, blocked, cm."""

    shape = Input[str](
        CHOICE,
        "Shape",
        default=TOP,
        when=MAKES,
        options=tuple(Option(value, label) for value, label in LABELS.items()),
    )
    span = measure(
        "Wingspan, or across",
        "160 cm",
        "400 cm",
        ("60 cm", "260 cm"),
        MAKES,
        "The longest edge, or straight across a circle, blocked.",
    )
    depth = measure(
        "Depth",
        "70 cm",
        "300 cm",
        ("20 cm", "130 cm"),
        MAKES | {shape: (TOP, CORNER, WING, CRESCENT)},
        "At its deepest, straight from the longest edge.",
    )

    shawl_area = piece("Shawl")


def cloth(case: ShawlMeasures) -> tuple[float, ...]:
    """A shawl's one piece, cm²."""
    if case.shape in ROUND:
        circle = circle_around(pi * case.span)
        case.shawl_area = circle if case.shape == CIRCLE else circle / 2
    elif case.shape == CRESCENT:
        case.shawl_area = segment(case.span, case.depth)
    else:
        case.shawl_area = tapered(case.span, 0.0, case.depth)
    return (case.shawl_area,)
