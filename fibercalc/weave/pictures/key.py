"""The colors of a cloth and their key, told apart without color too."""

from collections.abc import Sequence
from dataclasses import dataclass

from ...core.picture import Drawing, against, dash_of


@dataclass(frozen=True)
class Yarn:
    """One yarn of a cloth: its name with its letter and its screen color."""

    name: str
    hex: str


Palette = Sequence[Yarn]


def color_key(drawing: Drawing, top: float, palette: Palette, shown: Sequence[int]) -> None:
    """A swatch and a name for each color shown, two in a row, 24 units high."""
    for place, color in enumerate(shown):
        yarn, dash = palette[color], dash_of(color)
        x, y = 8 + place % 2 * 174, top + place // 2 * 24
        drawing.rect(x, y, 34, 16, fill=yarn.hex)
        if dash is not None:
            drawing.strokes(
                [[(x, y + 8), (x + 34, y + 8)]], stroke=against(yarn.hex), width=2, dash=dash
            )
        drawing.text(
            x + 42, y + 13, yarn.name if len(yarn.name) <= 15 else yarn.name[:14] + "…", size=13
        )
