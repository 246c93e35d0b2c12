"""Charts of care: what the words and symbols mean, what fibers and dyes bear."""

from typing import Any

from ...core.answer import Table
from ...core.marks import MARKS, meaning
from ...core.table import read_table

SHORT = {
    "wash": ("no", "hand", "30 very mild", "30 mild", "40 mild", "40", "60"),
    "bleach": ("no", "oxygen", "any"),
    "tumble": ("no tumbling", "tumble low", "tumble"),
    "dry": ("flat, shade", "flat", "line"),
    "iron": ("no", "110 °C", "150 °C", "200 °C"),
    "clean": ("no", "mild", "yes"),
}


def care_words() -> list[Table]:
    """Care words from the gentlest to the strongest, with their symbols told in words.

    Source: ISO 3758 (iso-3758, as printed on makers' pages).
    """
    table = read_table("wash", "care-words")
    rows = tuple(
        (row["treatment"], row["words"] + MARKS[row["status"]], row["symbol"]) for row in table.rows
    )
    return [
        Table(
            "Care words and what their symbols look like",
            ("Treatment", "Words", "Symbol"),
            rows,
            table.note + " " + meaning("secondary"),
            (table.source,),
        )
    ]


def care_fibers() -> list[Table]:
    """What each fiber bears.

    Source: common practice.
    """
    return [
        _levels(
            "care-fibers",
            ("wash", "bleach", "dry", "iron", "clean"),
            ("Fiber", "Wash", "Bleach", "Dry", "Iron", "Dry clean", "Why"),
        )
    ]


def care_dyes() -> list[Table]:
    """What each class of dye bears, and what finishes bear.

    Source: common practice.
    """
    return [
        _levels("care-dyes", ("wash", "bleach", "dry"), ("Dye", "Wash", "Bleach", "Dry", "Why")),
        _levels(
            "care-finishes",
            ("wash", "dry", "iron", "clean"),
            ("Finish or trim", "Wash", "Dry", "Iron", "Dry clean", "Why"),
        ),
    ]


def _levels(name: str, treatments: tuple[str, ...], columns: tuple[str, ...]) -> Table:
    table = read_table("wash", name)
    rows = tuple(
        (
            row["label"] + MARKS[row["status"]],
            *(_short(row, each) for each in treatments),
            row["why"] or "–",
        )
        for row in table.rows
    )
    return Table(
        table.title, columns, rows, table.note + " " + meaning("practice"), (table.source,)
    )


def _short(row: dict[str, Any], treatment: str) -> str:
    """A level in a word or two; a dryer stands with the way of drying."""
    if row[treatment] == "":
        return "–"
    words = SHORT[treatment][int(row[treatment])]
    return (
        f"{words}, {_short(row, 'tumble')}"
        if treatment == "dry" and row.get("tumble", "") != ""
        else words
    )
