"""A pair of socks: leg, foot, and a heel and a toe that reach a quarter of the girth each."""

from ...core.card import Input
from ...core.problem import Refused
from ...core.units import LENGTH, PERCENT
from ..shapes import rectangle, short_row_pocket
from . import Cloth
from .measure import measure, piece

MAKES = {"make": ("socks",)}
INPUTS = (
    measure(
        "foot_length",
        "Foot, heel to toe",
        "25 cm",
        "45 cm",
        ("11 cm", "30 cm"),
        MAKES,
        "Standing, the longer foot.",
        least="6 cm",
        rough="0.5 cm",
    ),
    measure(
        "foot_girth",
        "Around the foot",
        "23 cm",
        "45 cm",
        ("12 cm", "28 cm"),
        MAKES,
        "Around the ball of the foot.",
        least="6 cm",
        rough="0.5 cm",
    ),
    measure(
        "leg",
        "Leg, top to heel",
        "18 cm",
        "80 cm",
        ("5 cm", "40 cm"),
        MAKES,
        "With the ribbing or hem; a folded hem counts twice.",
        least="0 cm",
    ),
    Input(
        PERCENT,
        "Smaller than the foot by",
        default="10 %",
        allowed=("-20 %", "30 %"),
        usual=("5 %", "15 %"),
        rough="2 %",
        when=MAKES,
        measure="Around; the length is taken off by the same share.",
        name="sock_ease",
    ),
)


def cloth(w, m: dict) -> Cloth:
    """The pieces of a pair of socks, from the foot's measures m in cm."""
    smaller = 1 - m["sock_ease"] / 100
    around = w.step(
        "sock_around",
        "foot_girth * (1 - sock_ease / 100)",
        m["foot_girth"] * smaller,
        LENGTH,
        "cm",
        "Around the sock",
    )
    pocket = w.step(
        "pocket",
        "sock_around / 4",
        around / 4,
        LENGTH,
        "cm",
        "Heel, and toe, depth (common practice)",
    )
    foot = w.step(
        "foot",
        "foot_length * (1 - sock_ease / 100) - 2 * pocket",
        m["foot_length"] * smaller - 2 * pocket,
        LENGTH,
        "cm",
        "Foot between heel and toe",
    )
    if foot < 0:
        raise Refused(
            "Foot, heel to toe: heel and toe alone are longer; give a longer or a slimmer foot.",
            "foot_length",
        )
    legs = piece(
        w, "legs_area", "2 * sock_around * leg", 2 * rectangle(around, m["leg"]), "Both legs"
    )
    pockets = piece(
        w,
        "pockets_area",
        "4 * (2 / 3) * sock_around * pocket",
        4 * short_row_pocket(around, pocket),
        "Both heels, both toes",
    )
    feet = piece(w, "feet_area", "2 * sock_around * foot", 2 * rectangle(around, foot), "Both feet")
    return Cloth((legs, pockets, feet), m | {"sock_around": around, "pocket": pocket, "foot": foot})
