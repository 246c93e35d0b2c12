"""A piece woven in stripes of leftovers: where each stripe lies, and how many pieces are alike."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INK, LINE, SHEET, SOFT, Drawing, against, dash_of
from .key import Palette, color_key

LEFT, TOP, TALL, MOST_WIDE, LABELS = 8, 10, 146, 150, 13


def piece_of_stripes(
    runs: Sequence[tuple[int, int]],
    yarns: Palette,
    hem: int,
    pieces: int,
    width: float,
    length: float,
) -> Picture:
    """One piece, its first pick at the bottom, width along the width of the sheet; the main yarn is
    left white.

    runs    (color, picks) between the hems, color -1 for the main yarn, as weft_left.laid_out
            gives them
    yarns   the colors
    hem     picks of each hem
    pieces  that are alike
    width   cm in the heddle
    length  cm of the piece once washed
    Raises nothing.
    """
    picks = sum(count for _, count in runs) + 2 * hem
    wide = min(MOST_WIDE, max(TALL * width / length, 24.0))
    used = sorted({color for color, _ in runs if color >= 0})
    labelled = _labelled(
        [TALL * (at + count / 2) / picks for color, at, count in _placed(runs, hem) if color >= 0]
    )
    keyed = not all(labelled)
    drawing = Drawing(TOP + TALL + 10 + keyed * 24 * -(-len(used) // 2))
    one, bottom = TALL / picks, TOP + TALL
    drawing.rect(LEFT, TOP, wide, TALL, fill=SHEET, stroke="none")
    marks = []
    for color, at, count in _placed(runs, hem):
        y, high = bottom - one * (at + count), one * count
        if color >= 0:
            drawing.rect(LEFT, y, wide, high, fill=yarns[color].hex, stroke="none")
            if (dash := dash_of(color)) is not None:
                drawing.strokes(
                    [[(LEFT, y + high / 2), (LEFT + wide, y + high / 2)]],
                    stroke=against(yarns[color].hex),
                    width=min(1.6, high / 2),
                    dash=dash,
                )
            marks.append((y + high / 2, f"{count} {yarns[color].name}"))
    for y in (bottom - one * hem, TOP + one * hem) if hem else ():
        drawing.line(LEFT, y, LEFT + wide, y, stroke=LINE, dash="4 3")
    drawing.rect(LEFT, TOP, wide, TALL, stroke=INK)
    for (y, words), named in zip(marks, labelled):
        if named:
            drawing.line(LEFT + wide, y, LEFT + wide + 10, y, width=0.8)
            drawing.text(
                LEFT + wide + 14, y + 5, words if len(words) <= 17 else words[:16] + "…", size=13
            )
    drawing.text(
        352,
        TOP + 10,
        f"{pieces} alike" if pieces > 1 else "1 piece",
        anchor="end",
        size=13,
        fill=SOFT,
    )
    if keyed:
        color_key(drawing, bottom + 12, yarns, used)
    said = ", ".join(
        f"{count} {yarns[color].name if color >= 0 else 'main yarn'}" for color, count in runs
    )
    return drawing.picture(
        "Stripes of each piece",
        "From the first pick:"
        f" {f'hem of {hem}, ' if hem else ''}{said}{f', hem of {hem}' if hem else ''} picks;"
        f" {pieces} {'pieces' if pieces > 1 else 'piece'} alike.",
    )


def _placed(runs: Sequence[tuple[int, int]], hem: int) -> list[tuple[int, int, int]]:
    """(color, first pick, picks) of each run between the hems."""
    placed, at = [], hem
    for color, count in runs:
        placed.append((color, at, count))
        at += count
    return placed


def _labelled(heights: Sequence[float]) -> list[bool]:
    """Which stripes have room for their own words, from the first up."""
    last: float = -LABELS
    kept: list[bool] = []
    for height in heights:
        kept.append(height - last >= LABELS + 1)
        last = height if kept[-1] else last
    return kept
