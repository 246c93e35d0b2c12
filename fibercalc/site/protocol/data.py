"""What questions and answers are made of."""

from typing import Literal, TypedDict

Texts = dict[str, str]
Counts = dict[str, int]


class Settings(TypedDict):
    """How numbers are written and read."""

    style: Literal["point", "comma"]
    system: Literal["both", "metric", "us"]
    money: str


class WorkbookRecord(TypedDict):
    """One saved record as a document. Python alone checks and migrates it; the browser looks at
    its id and gives it its revision.
    """

    id: str
    kind: str
    schema: int
    rev: str
    past: list[str]
    changed: str
    values: Texts
    rows: Counts


class BenchRecord(TypedDict):
    """A saved record. Python alone checks and migrates it; the page looks only at the settings
    among its values.
    """

    format: str
    schema: int
    values: Texts
    rows: Counts


class Step(TypedDict):
    """One of the cards before on the way here."""

    card: str
    query: str


class BaseLink(TypedDict):
    """A link for one base, as read; see fibercalc/workbook/base_link.py."""

    kind: Literal["none", "broken", "base"]
    grams: float
    meters: float
    weight_class: str
    name: str
    lot: str
    price: str
