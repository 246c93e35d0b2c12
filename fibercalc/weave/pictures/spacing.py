"""Ends cut across, to scale: touching, as close as the weave allows, and as set, with a pick of
plain weave between them.
"""

from collections.abc import Sequence
from math import cos, pi

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, SOFT, Drawing

LEFT, RIGHT, SHOWN, PITCH = 10, 350, 13.0, 72  # so many diameters stand across the picture


def ends_across(
    title: str, diameter: float, rows: Sequence[tuple[str, float, int]], said: str
) -> Picture:
    """One row for each setting.

    title     of the picture
    diameter  of the yarn, in any unit, above 0
    rows      (words, spacing of the ends in that unit, ends that a pick passes at once) each
    said      words for those who cannot see it
    """
    drawing = Drawing(len(rows) * PITCH + 8)
    scale = (RIGHT - LEFT) / (SHOWN * diameter)
    radius = diameter * scale / 2
    for number, (words, spacing, floats) in enumerate(rows):
        middle = number * PITCH + 46
        drawing.text(LEFT, middle - 26, words, size=13)
        step = max(spacing * scale, 2 * radius * 0.999)
        places = [
            LEFT + radius + place * step
            for place in range(int((RIGHT - LEFT - 2 * radius) / step + 1e-6) + 1)
        ]
        for x in places:
            drawing.circle(x, middle, radius, fill=INDIGO_WASH, stroke=INDIGO, width=1.5)
        if floats:
            half, high = floats * step, 1.15 * radius
            drawing.path(
                [
                    (x, middle - high * cos(pi * (x - places[0] - (floats - 1) * step / 2) / half))
                    for x in range(LEFT, RIGHT + 1, 3)
                ],
                stroke=SOFT,
                width=2,
            )
    return drawing.picture(title, said)
