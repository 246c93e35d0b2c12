"""One label as data, and its layout: every line's place and size. Words that are too long get
smaller letters, and are refused at the least size.
"""

from dataclasses import dataclass, field
from typing import Any

from .face import MM_PER_POINT, text_width

# Pt: nothing on a label is smaller; a little over 6, since sizes in a printed file are rounded
LEAST = 6.1
LEADING = 1.2  # from one line to the next, in sizes of the letters
RISE, FALL = (
    0.78,
    0.24,
)  # how far letters reach over and under their line, in sizes: capitals with accents, and tails
STEPS = tuple(
    1 - step / 40 for step in range(25)
)  # what the letters of an area are tried at, all together


class TooLong(ValueError):
    """Words do not fit on a label at the least size. what names them."""

    def __init__(self, what: str):
        self.what = what
        super().__init__(f"{what} does not fit")


@dataclass(frozen=True)
class Block:
    """Words that stand together. what they are called when they do not fit; size in pt as wished;
    gap, mm, above; at most so many lines.
    """

    what: str
    words: str
    size: float
    bold: bool = False
    gap: float = 0.8
    lines: int = 6
    least: float = LEAST


@dataclass(frozen=True)
class Area:
    """A box, mm from the label's top left, filled with blocks from its top; anchor is start or
    middle; centered blocks stand in the middle of its height.
    """

    x: float
    y: float
    width: float
    height: float
    blocks: tuple[Block, ...]
    anchor: str = "start"
    centered: bool = False


@dataclass(frozen=True)
class Code:
    """A place for a QR code, with its white edge, mm. about says what it leads to, for whoever
    knows addresses; address is the box for it in letters.
    """

    x: float
    y: float
    side: float
    about: tuple[tuple[str, Any], ...]
    address: tuple[float, float, float, float]


@dataclass(frozen=True)
class Label:
    """One label: width and height, mm; its areas; codes; rules (x1, y1, x2, y2), dashed ones
    where it is folded; a hole (x, y, radius).
    """

    name: str
    width: float
    height: float
    areas: tuple[Area, ...]
    codes: tuple[Code, ...] = ()
    rules: tuple[tuple[float, float, float, float], ...] = ()
    folds: tuple[tuple[float, float, float, float], ...] = ()
    hole: tuple[float, float, float] | None = None
    round: bool = False


@dataclass(frozen=True)
class Line:
    """A line in its place: x of its anchor and y of its foot, mm; size in pt; wide is what it
    takes at most, mm.
    """

    x: float
    y: float
    words: str
    size: float
    bold: bool
    anchor: str
    wide: float


@dataclass(frozen=True)
class Laid:
    """A label laid out: its lines, and what had to be made smaller than wished, by name."""

    label: Label
    lines: tuple[Line, ...]
    shrunk: tuple[str, ...] = field(default=())


def laid_out(label: Label) -> Laid:
    """Every line of a label. Raises TooLong for the longest words of an area that cannot hold its
    blocks at the least size.
    """
    lines, shrunk = [], []
    for area in label.areas:
        found, smaller = fitted(area)
        lines += found
        shrunk += smaller
    return Laid(label, tuple(lines), tuple(dict.fromkeys(shrunk)))


def smallest(laid: Laid) -> float:
    """The smallest letters of a label, pt; 0 where it has none."""
    return min((line.size for line in laid.lines), default=0.0)


def fitted(area: Area) -> tuple[list[Line], list[str]]:
    """The lines of an area, and the names of blocks made smaller than wished. Raises TooLong."""
    blocks = [block for block in area.blocks if block.words.strip()]
    for step in STEPS:
        made, height = [], 0.0
        for block in blocks:
            size, words = _block(
                block, area.width, max(block.size * step, min(block.least, block.size))
            )
            if not words:
                break
            made.append((block, size, words))
            height += (block.gap if len(made) > 1 else 0.0) + len(
                words
            ) * size * LEADING * MM_PER_POINT
        if len(made) == len(blocks) and height <= area.height + 1e-9:
            return _placed(area, made, height), [
                block.what for block, size, _ in made if size < block.size - 1e-9
            ]
    raise TooLong(
        max(
            blocks,
            key=lambda block: text_width(block.words, min(block.least, block.size)) / block.lines,
        ).what
    )


def _block(block: Block, width: float, size: float) -> tuple[float, list[str]]:
    """The size, from the one given down, at which a block takes no more lines than it may; no
    lines where there is none.
    """
    least = min(block.least, size)
    while True:
        words = wrapped(block.words, width, size, block.bold)
        if len(words) <= block.lines:
            return size, words
        if size <= least:
            return size, []
        size = max(size - 0.25, least)


def wrapped(words: str, width: float, size: float, bold: bool = False) -> list[str]:
    """Lines no wider than width, mm, broken at spaces; a word that is wider by itself is broken
    after a hyphen or slash, else between letters.
    """
    lines, line = [], ""
    for word in words.split(" "):
        if not word:
            continue
        longer = f"{line} {word}" if line else word
        if text_width(longer, size, bold) <= width:
            line = longer
            continue
        if line:
            lines.append(line)
        line = ""
        for letter in word:
            if line and text_width(line + letter, size, bold) > width:
                cut = max(line.rfind(mark) for mark in "-/") + 1 or len(line)
                lines.append(line[:cut])
                line = line[cut:]
            line += letter
    return [*lines, line] if line else lines


def _placed(area: Area, made: list[tuple[Block, float, list[str]]], height: float) -> list[Line]:
    y = area.y + (max(area.height - height, 0.0) / 2 if area.centered else 0.0)
    x = area.x + (area.width / 2 if area.anchor == "middle" else 0.0)
    placed = []
    for at, (block, size, words) in enumerate(made):
        y += block.gap if at else 0.0
        step = size * LEADING * MM_PER_POINT
        for line in words:
            foot = y + (step + (RISE - FALL) * size * MM_PER_POINT) / 2
            placed.append(
                Line(
                    x, foot, line, size, block.bold, area.anchor, text_width(line, size, block.bold)
                )
            )
            y += step
    return placed
