"""Tables of published values, kept as CSV files that name their own source.

A table file opens with header lines `# key: value` (title, source, where, units, note), then a plain CSV. A column named
`status` says for each row how its values were obtained, by a key of STATUS_WORDS; a column may have a status of its own, named
`<column>_status`. Rows are looked up by name; there is no row beyond the last, so an unknown name is an error and never the
nearest value.
"""

from dataclasses import dataclass
from functools import cache
from importlib import import_module
from os.path import dirname, join

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
    """One published table: its title, source id, place in the source, units, note, columns and rows (text and floats)."""

    name: str
    title: str
    source: str
    where: str
    units: str
    note: str
    columns: tuple[str, ...]
    rows: tuple[dict, ...]

    def row(self, column: str, value: str | float) -> dict:
        """The one row whose column holds value. Raises KeyError naming the table when there is none."""
        for row in self.rows:
            if row[column] == value:
                return row
        raise KeyError(f"{self.title}: no row with {column} = {value}")


def status_of(row: dict, column: str) -> str:
    """How one cell is known: by its column's own status where it has one, else by its row's; "" where neither says."""
    return row.get(f"{column}_status") or row.get("status", "")


@cache
def read_table(chapter: str, name: str) -> SourcedTable:
    """Read fibercalc/<chapter>/tables/<name>.csv. Raises ValueError for a missing header line or an unknown status."""
    import csv  # only where a card looks something up

    package = import_module(f"fibercalc.{chapter}")
    # The loader reads from a folder and from a zip alike; importlib.resources would cost a third of a cold start.
    data = package.__loader__.get_data(join(dirname(package.__file__), "tables", f"{name}.csv"))
    lines = data.decode("utf-8").splitlines()
    header = {}
    while lines and lines[0].startswith("#"):
        key, _, value = lines.pop(0)[1:].partition(":")
        header[key.strip()] = value.strip()
    missing = {"title", "source", "where", "units"} - header.keys()
    if missing:
        raise ValueError(f"table {name}: header line missing: {', '.join(sorted(missing))}")
    rows = tuple({key: _cell(value) for key, value in row.items()} for row in csv.DictReader(lines))
    for row in rows:
        for key, value in row.items():
            if key == "status" or key.endswith("_status"):
                if value not in STATUS_WORDS and value != "":
                    raise ValueError(f"table {name}: unknown status {value}")
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


def _cell(text: str | None):
    text = (text or "").strip()
    try:
        return float(text)
    except ValueError:
        return text
