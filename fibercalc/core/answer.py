"""What a card gives back beside its numbers: tables, pictures, cautions, and the whole answer as
plain data.
"""

from dataclasses import dataclass
from typing import Any


@dataclass(frozen=True)
class Table:
    """A table of plain texts; numbers are already written. sources are ids; note stands under the
    table.
    """

    title: str
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    note: str = ""
    sources: tuple[str, ...] = ()

    def as_json(self) -> dict[str, Any]:
        return {
            "title": self.title,
            "columns": list(self.columns),
            "rows": [list(row) for row in self.rows],
            "note": self.note,
        }


@dataclass(frozen=True)
class Picture:
    """A drawing with the words that stand for it where it cannot be seen."""

    title: str
    alt: str
    svg: str
    height: float = 0.0  # in drawing units, 360 of which are its width

    def as_json(self) -> dict[str, Any]:
        return {"title": self.title, "alt": self.alt, "svg": self.svg}


@dataclass(frozen=True)
class Answer:
    """Everything a card answers; as_json is the contract that the command line and the page build
    on.
    """

    card: str
    version: str
    inputs: dict[str, Any]
    answer: str
    results: dict[str, Any]
    working: list[dict[str, Any]]
    basis: dict[str, Any]
    sources: list[str]
    cautions: list[str]
    notes: list[str]
    pictures: list[dict[str, Any]]
    tables: list[dict[str, Any]]

    def as_json(self) -> dict[str, Any]:
        return {name: getattr(self, name) for name in self.__dataclass_fields__}
