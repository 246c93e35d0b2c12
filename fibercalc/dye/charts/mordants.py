"""Chart of mordants: published ranges, the mark above which this book warns, and what stays in the bath."""

from ...core.answer import Table
from ...core.marks import MARKS, marked, meaning
from ...core.number import write_plain
from ...core.table import read_table, status_of
from .cells import named_sources

NOT_OFFERED = "none"


def mordants() -> list[Table]:
    """Mordants on the dry weight of fiber, with their upper marks; chrome is listed as not offered.

    Source: trade-page-mordants, mairet-1916, memory of textbooks (dyeing-textbook); metal contents computed.
    """
    table = read_table("safe", "mordants")
    offered = [row for row in table.rows if row["use"] != NOT_OFFERED]
    refused = [row for row in table.rows if row["use"] == NOT_OFFERED]
    rows = tuple((row["label"], _range(row), marked(row["upper_mark"], row["upper_status"]), row["mark_reason"]) for row in offered)
    rows += tuple((row["label"], "not offered", "0", row["mark_reason"].partition(": ")[2]) for row in refused)
    metals = tuple((row["label"], row["metal"], marked(row["metal_percent"], row["metal_status"]), row["note"]) for row in offered if row["metal"])
    return [
        Table("Mordants, % of dry fiber", ("Mordant", "Published", "Warn above", "Why"), rows,
              "Old books print more: alum 25, copper sulfate 15.6, dichromate 3. " + meaning("secondary", "memory", "practice"), named_sources(table, "common-practice")),
        Table("Metal in the mordant", ("Mordant", "Metal", "% of its weight", "Note"), metals,
              "A dash is a share that depends on what was bought. Computed from atomic weights, with the water that the crystals hold. " + meaning("computed"), ("arithmetic", *named_sources(table))),
    ]


def _range(row: dict) -> str:
    low, high = (write_plain(row[end]) + MARKS[status_of(row, end)] for end in ("low", "high"))
    if status_of(row, "low") == status_of(row, "high"):
        return f"{write_plain(row['low'])}-{high}"
    return f"{low}-{high}"
