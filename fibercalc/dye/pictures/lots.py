"""Colors of lots side by side, touching, as they would be compared in the hand."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.color import Color
from ...core.picture import INK, SOFT, Drawing

LEFT, WIDE, HIGH = 6, 348, 84


def lots_picture(
    names: Sequence[str], colors: Sequence[Color], differences: Sequence[str]
) -> Picture:
    """Two or three lots, edge to edge, each with its lightness as number and bar, and the words
    for their differences beneath.

    names        of the lots, short; longer than fifteen characters are cut
    colors       their colors, in the same order
    differences  lines of words beneath, up to forty-six characters each
    Raises nothing.
    """
    each = WIDE / len(colors)
    drawing = Drawing(HIGH + 88 + 20 * len(differences))
    for at, (name, color) in enumerate(zip(names, colors)):
        x = LEFT + each * at
        drawing.text(
            x + each / 2,
            16,
            name if len(name) <= 15 else name[:14] + "…",
            anchor="middle",
            size=13,
            bold=True,
        )
        drawing.rect(
            x, 24, LEFT + WIDE - x, HIGH, fill=color.hex, stroke="none"
        )  # to the end, under the next: no seam of paper shows
        y = 24 + HIGH + 8
        drawing.boxes([(x + 3, y, (each - 6) * color.lightness / 100, 8)], INK)
        drawing.rect(x + 3, y, each - 6, 8, stroke=SOFT, stroke_width=0.6)
        drawing.text(x + each / 2, y + 25, f"L* {color.lightness:.0f}", anchor="middle", size=13)
        drawing.text(
            x + each / 2,
            y + 42,
            f"a* {color.a:.0f}, b* {color.b:.0f}".replace("-0,", "0,").replace("-", "−"),
            anchor="middle",
            size=12,
            fill=SOFT,
        )
    drawing.rect(LEFT, 24, WIDE, HIGH, stroke=INK, stroke_width=0.8)
    for at, words in enumerate(differences):
        drawing.text(LEFT, HIGH + 94 + 20 * at, words, size=13)
    said = "; ".join(
        f"{name}: lightness {color.lightness:.0f}" for name, color in zip(names, colors)
    )
    return drawing.picture("The lots side by side", f"{said}. " + ". ".join(differences))
