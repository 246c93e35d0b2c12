"""Cloth as it will look: one piece thread by thread, and all pieces of a warp side by side, on the
loom and washed.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from ...core.answer import Picture
from ...core.picture import INK, SOFT, Drawing, Grid, against, dash_of
from ...core.units import LENGTH
from ..draft.piece import Section
from ..draft.repeat import WARP, WEFT, columns_of, rows_of
from .key import Palette, color_key

MOST_DRAWN = 400  # ends and picks: finer than a screen shows
LEFT, RIGHT, BAR = 22, 354, 12  # bars of the warp and weft order stand above and left of the cloth
TALLEST, TALLEST_PIECE = 430, 150
BARS = (100, 50, 20, 10, 5, 2)  # of the scale
SHADE = 0.16  # of black in warp that lies on top


@dataclass(frozen=True)
class Cloth:
    """One piece, ready to be drawn: its name, its sections, the runs (color, threads) of warp and
    weft, and its size in cm on the loom and washed.
    """

    name: str
    sections: tuple[Section, ...]
    warp: tuple[tuple[int, int], ...]
    weft: tuple[tuple[int, int], ...]
    loom: tuple[float, float]
    washed: tuple[float, float]

    @cached_property
    def ends(self) -> int:
        return sum(count for _, count in self.warp)

    @cached_property
    def picks(self) -> int:
        return sum(count for _, count in self.weft)


def threads_picture(
    cloth: Cloth, palette: Palette, size: tuple[float, float], words: str
) -> Picture:
    """One piece, each thread drawn, first pick at the bottom, at the proportions of size; more than
    400 threads either way are cut. Warp on top is a shade darker than its color.

    cloth    the piece
    palette  its colors
    size     width and length in cm: on the loom, or washed
    words    what the size is, "washed: 32 x 63 cm"
    Raises nothing.
    """
    ends, picks = min(cloth.ends, MOST_DRAWN), min(cloth.picks, MOST_DRAWN)
    across, up = size[0] / cloth.ends, size[1] / cloth.picks
    scale = min((RIGHT - LEFT) / (across * ends), TALLEST / (up * picks))
    wide, high = scale * across * ends, scale * up * picks
    top, left = BAR + 12.0, (LEFT + RIGHT - wide) / 2
    bottom = top + high
    warp, weft = _cut(cloth.warp, ends), _cut(cloth.weft, picks)
    shown = sorted({color for color, _ in warp + weft})
    drawing = Drawing(bottom + 46 + 24 * -(-len(shown) // 2))
    grid = Grid(drawing, left, bottom, wide / ends, high / picks)
    for color in shown:
        grid.boxes(
            [(0, first, ends, count) for each, first, count in _placed(weft) if each == color],
            palette[color].hex,
        )
    _warp(grid, cloth.sections, warp, picks, palette)
    drawing.rect(left, top, wide, high)
    for color, first, count in _placed(warp):
        _bar(
            drawing,
            palette[color].hex,
            color,
            left + wide * first / ends,
            top - BAR - 4,
            wide * count / ends,
            BAR,
        )
    for color, first, count in _placed(weft):
        _bar(
            drawing,
            palette[color].hex,
            color,
            left - BAR - 4,
            bottom - high * (first + count) / picks,
            BAR,
            high * count / picks,
        )
    cut = "" if (ends, picks) == (cloth.ends, cloth.picks) else f" of {cloth.ends} × {cloth.picks}"
    drawing.text(left, bottom + 17, f"{ends} ends × {picks} picks{cut}", size=13, fill=SOFT)
    drawing.text(left, bottom + 34, words, size=13, fill=SOFT)
    color_key(drawing, bottom + 42, palette, shown)
    counts = ", ".join(
        f"{palette[color].name} {sum(n for c, n in warp if c == color)} ends and"
        f" {sum(n for c, n in weft if c == color)} picks"
        for color in shown
    )
    return drawing.picture(
        f"{cloth.name}, thread by thread",
        f"{cloth.name}: {ends} ends by {picks} picks, {words}. {counts}.",
    )


def _warp(
    grid: Grid,
    sections: Sequence[Section],
    warp: Sequence[tuple[int, int]],
    picks: int,
    palette: Palette,
) -> None:
    """The warp over the weft: for each section one path for each color and each kind of column, a
    shade darker than its yarn, so that the weave is seen where warp and weft are of one color. (A
    shade laid over all of it takes the browser twice as long to draw.)
    """
    first = 0
    for section in sections:
        last = min(first + section.picks, picks)
        if last <= first:
            break
        columns = columns_of(
            rows_of(section.repeat, len(section.repeat[0]), len(section.repeat), section.first)
        )
        kinds: dict[tuple[int, str], list[int]] = {}
        for color, begin, count in _placed(warp):
            for end in range(begin, begin + count):
                kinds.setdefault((color, columns[end % len(columns)]), []).append(end)
        for (color, column), places in kinds.items():
            if WARP in column:
                grid.columns(places, first, last, dashes(column), shaded(palette[color].hex))
        first = last


def shaded(color: str) -> str:
    """A screen color ("#6b7f8f") with some black in it."""
    return "#" + "".join(
        f"{round(int(color[at : at + 2], 16) * (1 - SHADE)):02x}" for at in (1, 3, 5)
    )


def dashes(column: str) -> list[int]:
    """A column of a repeat as rows shown and rows not shown, in turn; nothing for one that is
    always shown.
    """
    if WEFT not in column:
        return []
    runs, sign = [], WARP
    while column:
        run = len(column) - len(column.lstrip(sign))
        runs.append(run)
        column, sign = column[run:], WEFT if sign == WARP else WARP
    return (
        runs + [0] if len(runs) % 2 else runs
    )  # an odd list would be read twice over, shown and hidden changed about


def _cut(runs: Sequence[tuple[int, int]], most: int) -> list[tuple[int, int]]:
    return [
        (color, min(count, most - first)) for color, first, count in _placed(runs) if first < most
    ]


def _placed(runs: Sequence[tuple[int, int]]) -> list[tuple[int, int, int]]:
    """(color, first thread, threads) of each run."""
    placed, first = [], 0
    for color, count in runs:
        placed.append((color, first, count))
        first += count
    return placed


def _bar(
    drawing: Drawing, fill: str, color: int, x: float, y: float, wide: float, high: float
) -> None:
    """A stretch of the warp or weft order, with the line that tells its color without color."""
    drawing.rect(x, y, wide, high, fill=fill, stroke="none")
    if (dash := dash_of(color)) is not None:
        line = (
            [(x, y + high / 2), (x + wide, y + high / 2)]
            if wide >= high or high <= BAR
            else [(x + wide / 2, y), (x + wide / 2, y + high)]
        )
        drawing.strokes([line], stroke=against(fill), width=1.6, dash=dash)


def pieces_picture(
    cloths: Sequence[Cloth], palette: Palette, shown: int, unit: str = "cm"
) -> Picture:
    """All pieces side by side at one scale, on the loom above and washed below; colors mixed as
    they are seen from afar.

    cloths   the pieces, 1 to 12
    palette  their colors
    shown    the piece (from 0) that is drawn thread by thread elsewhere: its number is bold
    unit     cm or in, of the scale and of the sizes in words
    Raises nothing.
    """
    gap = 6.0
    wide, high = (
        sum(cloth.loom[0] for cloth in cloths),
        max(max(cloth.loom[1], cloth.washed[1]) for cloth in cloths),
    )
    scale = min(
        (348 - gap * (len(cloths) - 1)) / max(wide, sum(cloth.washed[0] for cloth in cloths)),
        TALLEST_PIECE / high,
        8.0,
    )
    heights = [
        scale * max(cloth.loom[1] for cloth in cloths),
        scale * max(cloth.washed[1] for cloth in cloths),
    ]
    used = sorted({color for cloth in cloths for color, _ in cloth.warp + cloth.weft})
    drawing = Drawing(sum(heights) + 2 * 44 + 30 + 24 * -(-len(used) // 2))
    top = 4.0
    for title, tall, size in (
        ("On the loom, drawn in", heights[0], "loom"),
        ("Washed", heights[1], "washed"),
    ):
        drawing.text(6, top + 12, title, bold=True)
        left, bottom = 6.0, top + 22 + tall
        for number, cloth in enumerate(cloths):
            across, along = (scale * side for side in getattr(cloth, size))
            _from_afar(drawing, cloth, palette, left, bottom, across, along)
            drawing.text(
                left + across / 2,
                bottom + 15,
                str(number + 1),
                anchor="middle",
                size=13,
                bold=number == shown,
            )
            left += across + gap
        top = bottom + 22
    one = LENGTH.unit(unit).factor * 100  # cm
    length = one * (bar := next((bar for bar in BARS if bar * one * scale <= 110), 1))
    drawing.strokes(
        [
            [(6, top + 6), (6 + length * scale, top + 6)],
            [(6, top + 2), (6, top + 10)],
            [(6 + length * scale, top + 2), (6 + length * scale, top + 10)],
        ],
        width=1.4,
    )
    drawing.text(14 + length * scale, top + 11, f"{bar} {unit}", size=13)
    color_key(drawing, top + 18, palette, used)
    sizes = "; ".join(
        f"{number} {cloth.name}: {cloth.loom[0] / one:.1f} by {cloth.loom[1] / one:.1f} {unit} on"
        f" the loom, {cloth.washed[0] / one:.1f} by {cloth.washed[1] / one:.1f} {unit} washed"
        for number, cloth in enumerate(cloths, 1)
    )
    return drawing.picture("All pieces of the warp at one scale", f"{sizes}.")


def _from_afar(
    drawing: Drawing,
    cloth: Cloth,
    palette: Palette,
    left: float,
    bottom: float,
    wide: float,
    high: float,
) -> None:
    """A piece as bands of weft with the warp's stripes over them, each as strong as its share of
    the face.
    """
    grid = Grid(drawing, left, bottom, wide / cloth.ends, high / cloth.picks)
    weft, warp = _placed(cloth.weft), _placed(cloth.warp)
    for color in sorted({each for each, _, _ in weft}):
        grid.boxes(
            [(0, first, cloth.ends, count) for each, first, count in weft if each == color],
            palette[color].hex,
        )
    first = 0
    faces: dict[float, list[tuple[int, int]]] = {}  # both hems are of one face
    for section in cloth.sections:
        face = "".join(section.repeat)
        faces.setdefault(face.count(WARP) / len(face), []).append((first, section.picks))
        first += section.picks
    for share, stretches in faces.items():
        for color in sorted({each for each, _, _ in warp}):
            grid.boxes(
                [
                    (begin, first, count, picks)
                    for first, picks in stretches
                    for each, begin, count in warp
                    if each == color
                ],
                palette[color].hex,
                opacity=share,
            )
    drawing.rect(left, bottom - high, wide, high, stroke=INK, stroke_width=0.8)
