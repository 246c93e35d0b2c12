"""How a wall chart shows where a value comes from: a mark behind it, and the marks' meaning under
the table.
"""

from .number import write_number, write_plain

MARKS = {
    "read": "",
    "secondary": "*",
    "memory": "†",
    "computed": "‡",
    "practice": "§",
    "unknown": "",
}
MEANING = {
    "read": "Unmarked: read in the source.",
    "secondary": "* read in a page that quotes the source.",
    "memory": "† from memory, unverified.",
    "computed": "‡ computed here from the definition.",
    "practice": "§ common practice, no published source.",
}


def marked(value: str | float | None, status: str, decimals: int | None = None) -> str:
    """A table cell with its mark; an empty cell is a dash."""
    if value == "" or value is None:
        return "–"
    if isinstance(value, float):
        value = write_plain(value) if decimals is None else write_number(value, decimals)
    return value + MARKS[status]


def meaning(*statuses: str) -> str:
    """The meaning of the marks in use, in one order."""
    return " ".join(words for status, words in MEANING.items() if status in statuses)
