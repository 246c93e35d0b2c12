"""Straight pieces: a tube (cowl), a rectangle (scarf, wrap, blanket)."""

from __future__ import annotations

from ..shapes import rectangle
from .measure import Made, measure, piece

TUBE, FLAT = {Made.make: ("cowl",)}, {Made.make: ("scarf", "blanket")}


class FlatMeasures(Made):
    """A tube or a rectangle, cm."""

    around = measure("Around", "60 cm", "400 cm", ("20 cm", "160 cm"), TUBE)
    height = measure("Height", "25 cm", "300 cm", ("8 cm", "100 cm"), TUBE)
    width = measure("Width", "30 cm", "400 cm", ("10 cm", "200 cm"), FLAT)
    length = measure("Length", "180 cm", "1000 cm", ("50 cm", "250 cm"), FLAT)

    tube_area = piece("Tube")
    cloth_area = piece("Rectangle")


def tube(case: FlatMeasures) -> tuple[float, ...]:
    """The one piece of a tube, cm²."""
    case.tube_area = rectangle(case.around, case.height)
    return (case.tube_area,)


def flat(case: FlatMeasures) -> tuple[float, ...]:
    """The one piece of a rectangle, cm²."""
    case.cloth_area = rectangle(case.width, case.length)
    return (case.cloth_area,)
