"""A pair of mittens: cuff, hand with a narrowing tip, thumb."""

from __future__ import annotations

from ...core.problem import Refused
from ..shapes import rectangle, tapered
from .measure import Made, found, measure, piece

MAKES = {Made.make: ("mittens",)}


class MittensMeasures(Made):
    """A hand and a cuff, cm."""

    hand = measure(
        "Around the mitten at the hand",
        "21 cm",
        "60 cm",
        ("12 cm", "28 cm"),
        MAKES,
        "Around the hand without the thumb, and 1 cm more.",
        least="5 cm",
        rough="0.5 cm",
    )
    hand_length = measure(
        "Hand, wrist to fingertips",
        "19 cm",
        "50 cm",
        ("8 cm", "24 cm"),
        MAKES,
        least="4 cm",
        rough="0.5 cm",
    )
    cuff = measure(
        "Cuff, length", "8 cm", "60 cm", ("3 cm", "15 cm"), MAKES, least="0 cm", rough="0.5 cm"
    )

    tip = found("Narrowing tip, length (common practice)")
    cuffs_area = piece("Both cuffs")
    hands_area = piece("Both hands with their tips")
    thumbs_area = piece("Both thumbs")


def cloth(case: MittensMeasures) -> tuple[float, ...]:
    """The pieces of a pair of mittens, cm²."""
    hand, length = case.hand, case.hand_length
    case.tip = hand / 4
    if case.tip > length:
        raise Refused(
            f"Hand, wrist to fingertips: the narrowing tip alone takes {case.tip:.3g} cm; give a"
            " longer hand.",
            MittensMeasures.hand_length,
        )
    case.cuffs_area = 2 * rectangle(hand, case.cuff)
    case.hands_area = 2 * (rectangle(hand, length - case.tip) + tapered(hand, 0.0, case.tip))
    # A thumb is 0.4 of the girth around and a third of the hand long: common practice.
    case.thumbs_area = 2 * rectangle(0.4 * hand, 0.33 * length)
    return case.cuffs_area, case.hands_area, case.thumbs_area
