"""A pair of mittens: cuff, hand with a narrowing tip, thumb."""

from ...core.problem import Refused
from ...core.units import LENGTH
from ..shapes import rectangle, tapered
from . import Cloth
from .measure import measure, piece

MAKES = {"make": ("mittens",)}
INPUTS = (
    measure(
        "hand",
        "Around the mitten at the hand",
        "21 cm",
        "60 cm",
        ("12 cm", "28 cm"),
        MAKES,
        "Around the hand without the thumb, and 1 cm more.",
        least="5 cm",
        rough="0.5 cm",
    ),
    measure(
        "hand_length",
        "Hand, wrist to fingertips",
        "19 cm",
        "50 cm",
        ("8 cm", "24 cm"),
        MAKES,
        least="4 cm",
        rough="0.5 cm",
    ),
    measure(
        "cuff",
        "Cuff, length",
        "8 cm",
        "60 cm",
        ("3 cm", "15 cm"),
        MAKES,
        least="0 cm",
        rough="0.5 cm",
    ),
)


def cloth(w, m: dict) -> Cloth:
    """The pieces of a pair of mittens, from their measures m in cm."""
    hand, length = m["hand"], m["hand_length"]
    tip = w.step(
        "tip", "hand / 4", hand / 4, LENGTH, "cm", "Narrowing tip, length (common practice)"
    )
    if tip > length:
        raise Refused(
            f"Hand, wrist to fingertips: the narrowing tip alone takes {tip:.3g} cm; give a longer"
            " hand.",
            "hand_length",
        )
    cuffs = piece(w, "cuffs_area", "2 * hand * cuff", 2 * rectangle(hand, m["cuff"]), "Both cuffs")
    hands = piece(
        w,
        "hands_area",
        "2 * hand * (hand_length - tip) + hand * tip",
        2 * (rectangle(hand, length - tip) + tapered(hand, 0.0, tip)),
        "Both hands with their tips",
    )
    # A thumb is 0.4 of the girth around and a third of the hand long: common practice.
    thumbs = piece(
        w,
        "thumbs_area",
        "2 * (0.4 * hand) * (0.33 * hand_length)",
        2 * rectangle(0.4 * hand, 0.33 * length),
        "Both thumbs",
    )
    return Cloth((cuffs, hands, thumbs), m | {"tip": tip})
