"""Chart of needle sizes: millimeters, US and old UK numbers, Japanese numbers."""

from ...core.answer import Table
from ...core.marks import marked, meaning
from ...core.number import write_plain
from ...core.table import read_table

FIRST_LARGE = 6.0  # mm: where the list is cut so that each half can be read from across a room
JAPANESE = range(16)


def needle_sizes() -> list[Table]:
    """Needles by millimeters with the names that other countries print.

    Source: trade pages (trade-page-needles); below 2 mm from memory (trade-memory).
    """
    table = read_table("knit", "needle-sizes")
    rows = [(row["mm"], (marked(row["mm"], row["status"]), _name(row, "us"), _name(row, "uk"), row["note"] or "–")) for row in table.rows]
    columns = ("mm", "US", "Old UK and Canada", "Note")
    japanese = tuple((f"{number}", f"{write_plain(round(2.1 + 0.3 * number, 1))}*") for number in JAPANESE)
    return [
        Table("Needle sizes below 6 mm", columns, tuple(cells for mm, cells in rows if mm < FIRST_LARGE), table.note + " " + meaning("secondary", "memory"),
              ("trade-page-needles", "trade-memory")),
        Table("Needle sizes from 6 mm", columns, tuple(cells for mm, cells in rows if mm >= FIRST_LARGE), meaning("secondary"), ("trade-page-needles",)),
        Table("Japanese needle numbers", ("Number", "mm"), japanese, "2.1 + 0.3 x number. " + meaning("secondary"), ("trade-page-needles",)),
    ]


def _name(row: dict, column: str) -> str:
    """`US 1.5` without its country, which the column's head says."""
    return marked(row[column].partition(" ")[2], row["status"])
