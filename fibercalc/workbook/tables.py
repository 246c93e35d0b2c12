"""Records of one kind as a table for a spreadsheet (CSV)."""

import csv
import io
from typing import Any

from ..core.card import Rows
from .kind import Kind
from .records import title_of, without_row

RISKY = ("=", "+", "-", "@", "\t", "\r")  # a spreadsheet would read such a cell as a formula


def csv_text(kind: Kind, records: list[dict[str, Any]], titles: dict[str, str]) -> str:
    """One line for each record, one column for each field; a list takes as many columns as its
    longest needs.

    titles  id -> name of every record, so that a reference can be read
    """
    longest = {
        item.name: max((each["rows"].get(item.name, 0) for each in records), default=0)
        for item in kind.fields
        if isinstance(item, Rows)
    }
    columns: list[tuple[str, str]] = []
    for item in kind.fields:
        if isinstance(item, Rows):
            columns += [
                (f"{item.name}.{row}.{each.name}", f"{item.one} {row}: {each.label}")
                for row in range(1, longest[item.name] + 1)
                for each in item.fields
            ]
        else:
            columns.append((item.name, item.label))
    made = io.StringIO()
    table = csv.writer(made, lineterminator="\r\n")
    table.writerow([plain(head) for head in ("id", "changed", *(label for _, label in columns))])
    for record in sorted(records, key=title_of):
        table.writerow(
            [
                plain(cell)
                for cell in (
                    record["id"],
                    record["changed"],
                    *(_cell(kind, record, name, titles) for name, _ in columns),
                )
            ]
        )
    return made.getvalue()


def _cell(kind: Kind, record: dict[str, Any], name: str, titles: dict[str, str]) -> str:
    text: str = record["values"].get(name, "")
    return titles.get(text, text) if without_row(name) in kind.refers else text


def plain(text: str) -> str:
    """A cell that no spreadsheet takes for a formula."""
    return f"'{text}" if text.startswith(RISKY) else text
