"""Tables of published values, kept as CSV files that name their own source.

A table file opens with header lines `# key: value` (title, source, where, units, note), then a
plain CSV. A column named `status` says for each row how its values were obtained, by a key of
STATUS_WORDS; a column may have a status of its own, named `<column>_status`. Rows are looked up
by name; there is no row beyond the last, so an unknown name is an error and never the nearest
value.
"""

from dataclasses import dataclass
from functools import cache
from importlib import import_module
from os.path import dirname, join
from types import ModuleType
from typing import Any, Protocol, cast

STATUS_WORDS = {
    "read": "read in the source",
    "secondary": "read in a secondary page quoting the source",
    "memory": "from memory, unverified",
    "computed": "computed here from the definition",
    "practice": "common practice, no published source",
    "unknown": "no value was found: measure it",
}


@dataclass(frozen=True)
class SourcedTable:
    """One published table: its title, source id, place in the source, units, note, columns and
    rows (text and floats).
    """

    name: str
    title: str
    source: str
    where: str
    units: str
    note: str
    columns: tuple[str, ...]
    rows: tuple[dict[str, Any], ...]

    def row(self, column: str, value: str | float) -> dict[str, Any]:
        """The one row whose column holds value. Raises KeyError naming the table when there is
        none.
        """
        for row in self.rows:
            if row[column] == value:
                return row
        raise KeyError(f"{self.title}: no row with {column} = {value}")


def status_of(row: dict[str, Any], column: str) -> str:
    """How one cell is known: by its column's own status where it has one, else by its row's; ""
    where neither says.
    """
    status: str = row.get(f"{column}_status") or row.get("status", "")
    return status


class _Reads(Protocol):
    """A loader, of a folder or of a zip."""

    def get_data(self, path: str) -> bytes: ...


def data_in(package: ModuleType, *place: str) -> bytes:
    """A file of a package, read by its loader: from a folder and from a zip alike. Raises OSError.

    importlib.resources would cost a third of a cold start.
    """
    return cast(_Reads, package.__loader__).get_data(join(dirname(package.__file__ or ""), *place))


@cache
def read_table(chapter: str, name: str) -> SourcedTable:
    """Read fibercalc/<chapter>/tables/<name>.csv. Raises ValueError for a missing header line or
    an unknown status.
    """
    import csv  # only where a card looks something up

    package = import_module(f"fibercalc.{chapter}")
    lines = data_in(package, "tables", f"{name}.csv").decode("utf-8").splitlines()
    header = {}
    while lines and lines[0].startswith("#"):
        key, _, value = lines.pop(0)[1:].partition(":")
        header[key.strip()] = value.strip()
    missing = {"title", "source", "where", "units"} - header.keys()
    if missing:
        raise ValueError(f"table {name}: header line missing: {', '.join(sorted(missing))}")
    rows = tuple({key: _cell(value) for key, value in row.items()} for row in csv.DictReader(lines))
    for row in rows:
        for column, cell in row.items():
            known = cell == "" or cell in STATUS_WORDS
            if (column == "status" or column.endswith("_status")) and not known:
                raise ValueError(f"table {name}: unknown status {cell}")
    columns = tuple(rows[0]) if rows else ()
    return SourcedTable(
        name,
        header["title"],
        header["source"],
        header["where"],
        header["units"],
        header.get("note", ""),
        columns,
        rows,
    )


def _cell(text: str | None) -> str | float:
    text = (text or "").strip()
    try:
        return float(text)
    except ValueError:
        return text
