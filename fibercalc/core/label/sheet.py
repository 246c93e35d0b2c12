"""Labels on paper: alone, or many on a sheet of A4 or US Letter, with room for a bar that shows
whether the printer kept the size.
"""

from dataclasses import dataclass
from math import floor

from .label import Laid

PAGES = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}  # mm
EDGE = 8.0  # mm that printers cannot be trusted with, and a little over
FOOT = 14.0  # mm at the bottom for the bar
ROUND_GAP = 2.0  # mm between round ones; straight ones share a cut
MOST = 600  # labels in one go


@dataclass(frozen=True)
class Precut:
    """A bought sheet of labels, by its measures in mm: left and top edge of the first label, from
    one label to the next across and down; places already used.
    """

    across: int
    rows: int
    left: float
    top: float
    step_across: float
    step_down: float
    used: int = 0

    def corners(self) -> list[tuple[float, float]]:
        """The top left corners of its places, row by row."""
        return [
            (self.left + column * self.step_across, self.top + row * self.step_down)
            for row in range(self.rows)
            for column in range(self.across)
        ]


@dataclass(frozen=True)
class Sheets:
    """What is printed: page is "a4", "letter" or "alone"; each label with its copies; everything
    moved right and down, mm; the bought sheet, where it is one.
    """

    page: str
    labels: tuple[tuple[Laid, int], ...]
    right: float = 0.0
    down: float = 0.0
    precut: Precut | None = None

    @property
    def count(self) -> int:
        return sum(copies for _, copies in self.labels)


def fits_on(page: str, width: float, height: float, gap: float = 0.0) -> tuple[int, int]:
    """How many labels go across and down a sheet, of a width and height in mm. Raises KeyError
    for a page that is not known.
    """
    wide, high = usable(page)
    return floor((wide + gap) / (width + gap) + 1e-9), floor((high + gap) / (height + gap) + 1e-9)


def usable(page: str) -> tuple[float, float]:
    """Width and height of a sheet, mm, without its edges and its foot."""
    wide, high = PAGES[page]
    return wide - 2 * EDGE, high - 2 * EDGE - FOOT


def grid(page: str, width: float, height: float, gap: float = 0.0) -> list[tuple[float, float]]:
    """The top left corners of the labels of one sheet, mm, row by row; the block of them stands
    in the middle of the sheet's width.
    """
    across, down = fits_on(page, width, height, gap)
    left = (PAGES[page][0] - across * (width + gap) + gap) / 2
    return [
        (left + column * (width + gap), EDGE + row * (height + gap))
        for row in range(down)
        for column in range(across)
    ]


def gap_of(laid: Laid) -> float:
    return ROUND_GAP if laid.label.round else 0.0


def has_foot(sheets: Sheets) -> bool:
    """Whether the bar at the foot has room: alone there is none, on a bought sheet only under its
    last row.
    """
    if sheets.page == "alone" or sheets.precut is None:
        return sheets.page != "alone"
    return (
        sheets.precut.corners()[-1][1] + sheets.labels[0][0].label.height
        <= PAGES[sheets.page][1] - EDGE - FOOT
    )


def leaves(sheets: Sheets) -> list[list[tuple[Laid, float, float]]]:
    """The pages: on each, labels with their top left corners, mm, moved as asked."""
    one_by_one = [laid for laid, copies in sheets.labels for _ in range(copies)]
    if sheets.page == "alone":
        return [[(laid, sheets.right, sheets.down)] for laid in one_by_one]
    first, used = one_by_one[0], 0
    places = grid(sheets.page, first.label.width, first.label.height, gap_of(first))
    if sheets.precut:
        places, used = sheets.precut.corners(), sheets.precut.used
    filled: list[list[tuple[Laid, float, float]]] = []
    for at, laid in enumerate(one_by_one, used):
        if at == used or at % len(places) == 0:
            filled.append([])
        x, y = places[at % len(places)]
        filled[-1].append((laid, x + sheets.right, y + sheets.down))
    return filled
