"""Three skeins of one lot: as few spots, as many as meant, and as many spots as chance alone
brings.
"""

from ...core.answer import Picture
from ...core.picture import INK, MADDER, SHEET, SOFT, Drawing

MOST_DRAWN = 600  # spots in the fullest band; above that one drawn spot stands for several
WIDE, HIGH, LEFT = 332, 46, 14


def speckle_picture(fewest: int, expected: float, most: int) -> Picture:
    """Bands of yarn with their spots, each scattered anew.

    fewest, expected, most  spots on a skein (see speckle.spots_range)
    Raises nothing.
    """
    for_each = -(-most // MOST_DRAWN) or 1
    drawing = Drawing(3 * (HIGH + 30) + (24 if for_each > 1 else 4))
    seed, y = 1, 6
    for words, count in (("few", fewest), ("as meant", round(expected)), ("many", most)):
        drawing.rect(LEFT, y, WIDE, HIGH, fill=SHEET, stroke=SOFT)
        spots = []
        for _ in range(round(count / for_each)):
            seed = (
                seed * 16807 % 2147483647
            )  # the minimal standard generator: the same picture each time
            across = seed / 2147483647
            seed = seed * 16807 % 2147483647
            spots.append(
                (LEFT + 2 + across * (WIDE - 7), y + 2 + seed / 2147483647 * (HIGH - 7), 3, 3)
            )
        drawing.boxes(spots, fill=MADDER)
        drawing.text(LEFT, y + HIGH + 17, f"{words}: {count} spots", size=13, fill=INK)
        y += HIGH + 30
    if for_each > 1:
        drawing.text(LEFT, y + 10, f"One drawn spot stands for {for_each}.", size=13)
    return drawing.picture(
        "Skeins of one lot",
        f"With {expected:.0f} spots meant, 19 skeins in 20 have {fewest} to {most} by chance"
        " alone.",
    )
