"""The nine steps of a gray scale as pairs of grays, and where one's own two colors stand among
them.
"""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.color import from_lab
from ...core.picture import INK, MADDER, SOFT, Drawing

LEFT, EACH, TOP, HIGH = 9, 38, 22, 58
# L* that the pairs start from: a gray for change, a white for staining (our own, to be looked at).
DARK, WHITE = 40.0, 94.0


def gray_pairs(
    steps: Sequence[tuple[str, float]],
    low: float,
    high: float,
    staining: bool,
    colors: tuple[str, str] | None,
) -> Picture:
    """Nine pairs from 5 to 1, the span of the own grade as a bar below, and the own two colors
    where they are known.

    steps     (step as written, CIELAB difference) from the best to the worst
    low       lower end of the own grade, 1 to 5
    high      upper end of it
    staining  whether white is what changes
    colors    screen colors before and after, or None
    Raises nothing.
    """
    drawing = Drawing(TOP + HIGH + (86 if colors else 46))
    start = WHITE if staining else DARK
    for place, (words, difference) in enumerate(steps):
        x = LEFT + EACH * place
        first, second = (
            from_lab(start, 0, 0),
            from_lab(start - difference if staining else start + difference, 0, 0),
        )
        drawing.rect(x + 1, TOP, EACH - 2, HIGH / 2, fill=first.hex, stroke="none")
        drawing.rect(x + 1, TOP + HIGH / 2, EACH - 2, HIGH / 2, fill=second.hex, stroke="none")
        drawing.rect(x + 1, TOP, EACH - 2, HIGH, stroke=SOFT, stroke_width=0.6)
        drawing.text(x + EACH / 2, TOP - 7, words, anchor="middle", size=13, bold=True)

    def at(grade: float) -> float:
        return LEFT + EACH / 2 + EACH * 2 * (5 - grade)

    y = TOP + HIGH + 10
    drawing.line(at(high), y, max(at(low), at(high) + 3), y, stroke=MADDER, width=7)
    drawing.text(
        (at(high) + at(low)) / 2, y + 20, "yours", anchor="middle", size=13, fill=INK, halo=True
    )
    if colors:
        for place, (words, color) in enumerate(zip(("before", "after"), colors)):
            x = LEFT + 171 * place
            drawing.rect(x, y + 32, 171, 24, fill=color, stroke="none")
            drawing.text(x + 4, y + 71, words, size=13, fill=SOFT)
        drawing.rect(LEFT, y + 32, 342, 24, stroke=SOFT, stroke_width=0.6)
    kind = "staining" if staining else "change"
    return drawing.picture(
        f"Steps of the gray scale for {kind}, as a screen shows them",
        f"Nine pairs of grays from grade 5 to grade 1; yours lies between grade {low:.1f} and"
        f" {high:.1f}.",
    )
