"""Charts of thickness: weight classes with their overlap drawn, and what a wrap count says under
each convention.
"""

from typing import Any

from ...core.answer import Picture, Table
from ...core.marks import MARKS, marked, meaning
from ...core.number import write_number
from ...core.picture import INDIGO_WASH, INK, LINE, SOFT, Drawing, Scale
from ...core.table import read_table
from ..count import count_from_count
from ..weight_class import COUNCIL, PLY_TERMS
from ..weight_class import weight_classes as published_classes
from ..wrapping import wrap_conventions, wraps_from_yards_per_pound, yards_per_pound_from_wraps

MOST_DRAWN = 42.0  # wraps per inch at the right edge; lace is open above
COUNTS = (5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 20, 24, 28, 32, 36, 40)


def weight_classes() -> list[Picture | Table]:
    """The council's classes and the ply names, with the overlap of their wraps drawn.

    Source: Craft Yarn Council (craft-yarn-council); trade pages (trade-page-spinners,
    trade-page-ply-terms).
    """
    council, plies = read_table("yarn", COUNCIL), read_table("yarn", PLY_TERMS)
    numbers = tuple(
        (
            f"{row['number']:.0f} {row['name']}",
            _either(row, "stitches", row["status"]),
            _either(row, "needle_mm", row["needle_status"]),
            _either(row, "us_needle", row["needle_status"]),
            marked(row["wraps"], row["status"]),
            marked(row["grist"], row["status"]),
        )
        for row in council.rows
    )
    names = tuple(
        (row["name"], marked(row["wraps"], row["status"]), marked(row["grist"], row["status"]))
        for row in plies.rows
    )
    return [
        _overlap(
            "Wraps per inch of each class: where bars overlap, a yarn is all of them", COUNCIL
        ),
        Table(
            "Yarn weight classes",
            (
                "Class",
                "Stitches in 4 in (10 cm)",
                "Needle, mm",
                "US needle",
                "Wraps per inch",
                "yd/lb (spinners)",
            ),
            numbers,
            council.note
            + " Lace gauge is nominal: it is worked on larger needles. "
            + meaning("secondary", "memory"),
            ("craft-yarn-council", "trade-page-spinners"),
        ),
        Table(
            "Ply names (UK, Australia, New Zealand)",
            ("Name", "Wraps per inch", "m/100 g"),
            names,
            plies.note + " " + meaning("secondary"),
            ("trade-page-ply-terms",),
        ),
    ]


def wrapping() -> list[Table]:
    """The three conventions, and the band of yards per pound that a wrap count allows under each.

    Source: trade pages (trade-page-spinners, trade-page-weavers).
    """
    table = wrap_conventions()
    ways = tuple(
        (
            row["label"] + MARKS[row["status"]],
            f"{row['low']:.2f}",
            f"{row['middle']:.2f}",
            f"{row['high']:.2f}",
            row["evidence"],
            (
                f"{wraps_from_yards_per_pound(1900, row['low']):.0f} to"
                f" {wraps_from_yards_per_pound(1900, row['high']):.0f}"
            ),
        )
        for row in table.rows
    )
    bands = tuple((f"{wraps}", *(_band(wraps, row) for row in table.rows)) for wraps in COUNTS)
    return [
        Table(
            "Three ways to wrap",
            (
                "How it is wrapped",
                "k, low",
                "k, middle",
                "k, high",
                "Evidence",
                "1,900 yd/lb wraps to",
            ),
            ways,
            "Wraps per inch = k x square root of yards per pound. "
            + table.note
            + " "
            + meaning("secondary"),
            ("trade-page-spinners", "trade-page-weavers"),
        ),
        Table(
            "What a wrap count says of the put-up, m/100 g",
            ("Wraps per inch", *(row["label"].partition(",")[0] for row in table.rows)),
            bands,
            "Low to high end of each convention. A band this wide sorts yarn; it does not replace a"
            " scale and a measured length. Never use a relaxed hand-wrap count as a sett. Computed"
            " from the three k above.",
            ("trade-page-spinners", "trade-page-weavers"),
        ),
    ]


def _band(wraps: float, row: dict[str, Any]) -> str:
    ends = (
        count_from_count(yards_per_pound_from_wraps(wraps, row[k]), "yd/lb", "m/100 g")
        for k in ("high", "low")
    )
    return " to ".join(write_number(end, 0 if end >= 10 else 1) for end in ends)


def _either(row: dict[str, Any], column: str, status: str) -> str:
    """A cell with its mark, and beside it the other figure in print where the editions disagree."""
    cell, other = marked(row[column], status), row[f"{column}_memory"]
    return f"{cell} or {marked(other, 'memory')}" if other else cell


def _overlap(title: str, published_list: str) -> Picture:
    classes = published_classes(published_list)
    drawing = Drawing(len(classes) * 26 + 50)
    scale = Scale(0, MOST_DRAWN, 100, 350)
    bottom = len(classes) * 26 + 14
    for tick in (0, 10, 20, 30, 40):
        drawing.line(scale(tick), 6, scale(tick), bottom, stroke=LINE)
        drawing.text(scale(tick), bottom + 16, f"{tick}", anchor="middle", fill=SOFT)
    drawing.text(scale(20), bottom + 33, "wraps per inch", anchor="middle", fill=SOFT)
    said = []
    for place, one in enumerate(classes):
        top = 10 + place * 26
        low, high = one.wraps_low or 0, one.wraps_high or MOST_DRAWN
        drawing.text(92, top + 14, one.name, anchor="end")
        drawing.rect(
            scale(low), top + 2, scale(high) - scale(low), 15, fill=INDIGO_WASH, stroke=INK
        )
        said.append(f"{one.name} {low:g} to {'more' if one.wraps_high is None else f'{high:g}'}")
    return drawing.picture(title, "Bars over wraps per inch: " + "; ".join(said) + ".")
