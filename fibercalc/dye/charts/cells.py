"""How the dye chapter's charts write ranges: one value where both ends agree, a mark behind it, a
dash where nothing is known."""

from typing import Any

from ...core.marks import MARKS
from ...core.number import write_plain
from ...core.table import SourcedTable


def between(low: Any, high: Any, status: str, unit: str = "") -> str:
    """`3.5-5†`, `4 %`, `up to 8 %†`, or a dash."""
    if high == "":
        return "–"
    ends = (
        f"up to {write_plain(high)}"
        if low == ""
        else write_plain(high)
        if low == high
        else f"{write_plain(low)}-{write_plain(high)}"
    )
    return f"{ends}\u00a0{unit}{MARKS[status]}" if unit else ends + MARKS[status]


def named_sources(table: SourcedTable, *more: str) -> tuple[str, ...]:
    """The sources of a table's rows and of the table itself, each once, with more
    that single columns name."""
    found = [row.get("source") or table.source for row in table.rows]
    return tuple(dict.fromkeys([*found, *more]))
