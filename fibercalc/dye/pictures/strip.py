"""A set of dyed skeins as swatches: one strip with its doses, or several ways of stepping beneath
one another.

A swatch is never the only bearer of a fact: steps are numbered, lightness is a bar, and
differences are bars on one scale.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from ...core.answer import Picture
from ...core.color import Color
from ...core.picture import INDIGO, INK, LINE, SOFT, Drawing, Scale

ACROSS = 6  # swatches in a row
LEFT, RIGHT = 6, 354
SWATCH, ROW = 30, 64


def strip_picture(
    colors: Sequence[Color], doses: Sequence[str], said: str = "dye, % of dry fiber"
) -> Picture:
    """Every skein of a set: its number, its dose, its color and a bar for its lightness.

    colors  of the skeins, in order, up to 60
    doses   for each the words beneath it, up to five characters ("1.92"); of one step for each
            skein
    said    what the doses are
    Raises nothing.
    """
    rows = -(-len(colors) // ACROSS)
    drawing = Drawing(26 + ROW * rows)
    drawing.text(LEFT, 14, f"Number and {said}; bar: lightness", size=13, fill=SOFT)
    pitch = (RIGHT - LEFT + 4) / ACROSS
    wide = pitch - 4
    bars = []
    for at, (color, dose) in enumerate(zip(colors, doses)):
        x, y = LEFT + pitch * (at % ACROSS), 24 + ROW * (at // ACROSS)
        drawing.rect(x, y, wide, SWATCH, fill=color.hex, stroke=INK, stroke_width=0.8)
        drawing.text(x, y + SWATCH + 24, str(at + 1), size=12, bold=True)
        drawing.text(x + wide, y + SWATCH + 24, dose, anchor="end", size=12)
        bars.append((x, y + SWATCH + 4, wide * color.lightness / 100, 6))
    drawing.strokes(
        [
            [(x, y), (x + wide, y), (x + wide, y + high), (x, y + high), (x, y)]
            for x, y, _, high in bars
        ],
        stroke=SOFT,
        width=0.6,
    )
    drawing.boxes(bars, INK)
    words = "; ".join(
        f"{at + 1}: {dose}, lightness {color.lightness:.0f}"
        for at, (color, dose) in enumerate(zip(colors, doses))
    )
    return drawing.picture("The set, skein by skein", f"{said[0].upper()}{said[1:]}: {words}.")


@dataclass(frozen=True)
class Strip:
    """One way of stepping: its name, its colors and the difference from each skein to the next."""

    name: str
    colors: Sequence[Color]
    differences: Sequence[float]

    @property
    def words(self) -> str:
        low, high = (f"{edge:.1f}" for edge in (min(self.differences), max(self.differences)))
        return (
            f"{self.name}: steps of {low}"
            if low == high
            else f"{self.name}: steps of {low} to {high}"
        )


def strips_compared(strips: Sequence[Strip]) -> Picture:
    """Ways of stepping beneath one another, each with a bar for every difference on one scale.

    strips  one to four, of the same number of skeins
    Raises nothing.
    """
    top = max(max(strip.differences) for strip in strips)
    high = 112
    drawing = Drawing(high * len(strips) + 22)
    for place, strip in enumerate(strips):
        y = high * place
        drawing.text(LEFT, y + 16, strip.words, bold=place == 0)
        wide = (RIGHT - LEFT) / len(strip.colors)
        for at, color in enumerate(strip.colors):
            left = LEFT + wide * at
            drawing.rect(
                left, y + 24, RIGHT - left, 28, fill=color.hex, stroke="none"
            )  # to the end, under the next: no seam of paper shows
        drawing.rect(LEFT, y + 24, RIGHT - LEFT, 28, stroke=INK, stroke_width=0.8)
        tall = Scale(0.0, max(top, 1e-9), 0.0, 36.0)
        floor = y + 96
        middle = floor - tall(sum(strip.differences) / len(strip.differences))
        bar = max(min(0.5 * wide, 10), 1.2)
        # A bar stands under the edge where two swatches meet.
        drawing.boxes(
            [
                (LEFT + wide * (at + 1) - bar / 2, floor - tall(each), bar, tall(each))
                for at, each in enumerate(strip.differences)
            ],
            INDIGO,
        )
        drawing.line(LEFT, floor, RIGHT, floor, stroke=LINE)
        drawing.line(LEFT, middle, RIGHT, middle, stroke=INK, dash="4 3")
    drawing.text(
        LEFT,
        high * len(strips) + 12,
        "bars: difference to the next; dashes: their mean",
        size=13,
        fill=SOFT,
    )
    return drawing.picture(
        "Ways of stepping compared",
        "; ".join(strip.words for strip in strips) + " (CIEDE2000 from each skein to the next).",
    )
