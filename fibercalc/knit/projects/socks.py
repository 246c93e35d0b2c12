"""A pair of socks: leg, foot, and a heel and a toe that reach a quarter of the girth each."""

from __future__ import annotations

from ...core.card import Input
from ...core.problem import Refused
from ...core.units import PERCENT
from ..shapes import rectangle, short_row_pocket
from .measure import Made, found, measure, piece

MAKES = {Made.make: ("socks",)}


class SocksMeasures(Made):
    """A foot and a leg, cm."""

    foot_length = measure(
        "Foot, heel to toe",
        "25 cm",
        "45 cm",
        ("11 cm", "30 cm"),
        MAKES,
        "Standing, the longer foot.",
        least="6 cm",
        rough="0.5 cm",
    )
    foot_girth = measure(
        "Around the foot",
        "23 cm",
        "45 cm",
        ("12 cm", "28 cm"),
        MAKES,
        "Around the ball of the foot.",
        least="6 cm",
        rough="0.5 cm",
    )
    leg = measure(
        "Leg, top to heel",
        "18 cm",
        "80 cm",
        ("5 cm", "40 cm"),
        MAKES,
        "With the ribbing or hem; a folded hem counts twice.",
        least="0 cm",
    )
    sock_ease = Input[float](
        PERCENT,
        "Smaller than the foot by",
        default="10 %",
        allowed=("-20 %", "30 %"),
        usual=("5 %", "15 %"),
        rough="2 %",
        when=MAKES,
        measure="Around; the length is taken off by the same share.",
    )

    sock_around = found("Around the sock")
    pocket = found("Heel, and toe, depth (common practice)")
    foot = found("Foot between heel and toe")
    legs_area = piece("Both legs")
    pockets_area = piece("Both heels, both toes")
    feet_area = piece("Both feet")


def cloth(case: SocksMeasures) -> tuple[float, ...]:
    """The pieces of a pair of socks, cm²."""
    smaller = 1 - case.sock_ease / 100
    case.sock_around = case.foot_girth * smaller
    case.pocket = case.sock_around / 4
    case.foot = case.foot_length * smaller - 2 * case.pocket
    if case.foot < 0:
        raise Refused(
            "Foot, heel to toe: heel and toe alone are longer; give a longer or a slimmer foot.",
            SocksMeasures.foot_length,
        )
    case.legs_area = 2 * rectangle(case.sock_around, case.leg)
    case.pockets_area = 4 * short_row_pocket(case.sock_around, case.pocket)
    case.feet_area = 2 * rectangle(case.sock_around, case.foot)
    return case.legs_area, case.pockets_area, case.feet_area
