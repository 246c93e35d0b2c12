"""Chart of needle sizes: millimeters, US and old UK numbers, Japanese numbers."""

from itertools import zip_longest
from typing import Any

from ...core.answer import Table
from ...core.marks import marked, meaning
from ...core.table import read_table

NAMES = ("mm", "US", "Old UK")
MISSING = ("–",) * len(NAMES)
JAPANESE = 8  # rows: numbers 0 to 7 on the left, 8 to 15 on the right


def needle_sizes() -> list[Table]:
    """Needles by millimeters with the names that other countries print, fine ones beside large ones
    so that all stand on one page.

    Source: trade pages (trade-page-needles); below 2 mm from memory (trade-memory).
    """
    table = read_table("knit", "needle-sizes")
    cells = [
        (marked(row["mm"], row["status"]), _name(row, "us"), _name(row, "uk")) for row in table.rows
    ]
    half = (len(cells) + 1) // 2
    rows = tuple(
        fine + large for fine, large in zip_longest(cells[:half], cells[half:], fillvalue=MISSING)
    )
    notes = " ".join(f"{row['mm']:g} mm: {row['note']}." for row in table.rows if row["note"])
    japanese = tuple(
        (f"{number}", _japanese(number), f"{number + JAPANESE}", _japanese(number + JAPANESE))
        for number in range(JAPANESE)
    )
    return [
        Table(
            "Needle sizes",
            (*NAMES, *NAMES),
            rows,
            f"{table.note} {notes} A mark is for its whole line: {meaning('secondary', 'memory')}",
            ("trade-page-needles", "trade-memory"),
        ),
        Table(
            "Japanese needle numbers",
            ("Number", "mm", "Number", "mm"),
            japanese,
            "2.1 + 0.3 x number. " + meaning("secondary"),
            ("trade-page-needles",),
        ),
    ]


def _japanese(number: int) -> str:
    return marked(round(2.1 + 0.3 * number, 1), "secondary")


def _name(row: dict[str, Any], column: str) -> str:
    """`US 1.5` without its country, which the column's head says."""
    size: str = row[column]
    return size.partition(" ")[2] or "–"
