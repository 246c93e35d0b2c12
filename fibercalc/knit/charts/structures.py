"""Charts of structures: how much yarn they take beside plain stocking stitch, and the loop
constants behind the model."""

from typing import Any

from ...core.answer import Picture, Table
from ...core.marks import MARKS, marked, meaning
from ...core.picture import INDIGO_WASH, INK, LINE, SOFT, Drawing, Scale
from ...core.table import read_table, status_of

LEAST, MOST = 0.4, 2.0
PITCH = 32  # of the picture's rows
WEIGH = "weigh a swatch"


def structures() -> list[Picture | Table]:
    """Yarn for an area of each structure, as a range, times that of plain stocking stitch.

    Source: common practice; the loop constants for what a float takes (munden-1959).
    """
    table = read_table("knit", "structure-factors")
    rows = tuple(
        (row["label"] + MARKS[row["status"]], _factor(row), row["note"]) for row in table.rows
    )
    return [
        _ranges(table.rows),
        Table(
            "Times the yarn of plain stocking stitch, for the same area",
            ("Structure", "Range (middle)", "Why, and what moves it"),
            rows,
            table.note + " " + meaning("computed", "practice"),
            ("common-practice", "munden-1959"),
        ),
    ]


def loop_constants() -> list[Table]:
    """Constants of plain knitting in its three states of rest.

    Source: Munden 1959 (munden-1959, from memory); gate-textile-2015 for the fully relaxed pair.
    """
    table = read_table("wash", "munden-constants")
    rows = tuple(
        (
            row["label"],
            *(marked(row[column], status_of(row, column), 1) for column in ("Kc", "Kw", "Ks")),
        )
        for row in table.rows
    )
    return [
        Table(
            "Loop constants of plain knitting",
            ("State", "Kc, rows", "Kw, stitches", "Ks, both"),
            rows,
            "Rows in a cm = Kc / loop length in cm; stitches in a cm = Kw / loop length; both"
            " counts multiplied = Ks / loop length squared. "
            + table.note
            + " "
            + meaning("secondary", "memory", "computed"),
            ("munden-1959", "gate-textile-2015", "knitting-science-notes"),
        )
    ]


def _factor(row: dict[str, Any]) -> str:
    if not isinstance(row["middle"], float):
        return WEIGH
    return (
        f"{row['low']:.2f}\u2011{row['high']:.2f}\u00a0({row['middle']:.2f})"
        if row["low"] < row["high"]
        else f"{row['middle']:g}"
    )


def _short(row: dict[str, Any]) -> str:
    label: str = row["label"]
    return label.partition(",")[0].partition(" (")[0]


def _ranges(rows: tuple[dict[str, Any], ...]) -> Picture:
    known = [row for row in rows if isinstance(row["middle"], float)]
    drawing = Drawing(len(known) * PITCH + 68)
    scale = Scale(LEAST, MOST, 12, 348)
    bottom = len(known) * PITCH + 8
    for tick in (0.5, 1.0, 1.5, 2.0):
        drawing.line(scale(tick), 6, scale(tick), bottom, stroke=INK if tick == 1.0 else LINE)
        drawing.text(scale(tick), bottom + 17, f"{tick:g}", anchor="middle", fill=SOFT)
    drawing.text(
        scale(1.2), bottom + 34, "times the yarn of stocking stitch", anchor="middle", fill=SOFT
    )
    said = []
    for place, row in enumerate(known):
        top, short = 6 + place * PITCH, _short(row)
        drawing.text(12, top + 13, short, halo=True)
        drawing.rect(
            scale(row["low"]),
            top + 17,
            scale(row["high"]) - scale(row["low"]),
            10,
            fill=INDIGO_WASH,
        )
        drawing.line(scale(row["middle"]), top + 15, scale(row["middle"]), top + 29, width=3)
        said.append(f"{short} {row['low']:g} to {row['high']:g}, middle {row['middle']:g}")
    unknown = " and ".join(_short(row) for row in rows if row not in known)
    drawing.text(12, bottom + 56, f"{unknown}: {WEIGH}")
    said.append(f"{unknown}: no value, {WEIGH}")
    return drawing.picture(
        "Yarn for the same area: range and middle, all but the first from common practice",
        "Bars: " + "; ".join(said) + ".",
    )
