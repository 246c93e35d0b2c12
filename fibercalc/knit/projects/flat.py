"""Straight pieces: a tube (cowl), a rectangle (scarf, wrap, blanket)."""

from ..shapes import rectangle
from . import Cloth
from .measure import measure, piece

TUBE, FLAT = {"make": ("cowl",)}, {"make": ("scarf", "blanket")}
INPUTS = (
    measure("around", "Around", "60 cm", "400 cm", ("20 cm", "160 cm"), TUBE),
    measure("height", "Height", "25 cm", "300 cm", ("8 cm", "100 cm"), TUBE),
    measure("width", "Width", "30 cm", "400 cm", ("10 cm", "200 cm"), FLAT),
    measure("length", "Length", "180 cm", "1000 cm", ("50 cm", "250 cm"), FLAT),
)


def tube(w, m: dict) -> Cloth:
    """A tube, from its measures m in cm."""
    return Cloth(
        (piece(w, "tube_area", "around * height", rectangle(m["around"], m["height"]), "Tube"),), m
    )


def flat(w, m: dict) -> Cloth:
    """A rectangle, from its measures m in cm."""
    return Cloth(
        (
            piece(
                w, "cloth_area", "width * length", rectangle(m["width"], m["length"]), "Rectangle"
            ),
        ),
        m,
    )
