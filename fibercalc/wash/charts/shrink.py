"""Charts of shrinkage: what washing takes, what to make for a size, what relaxing
does to plain knitting."""

from typing import Any

from ...core.answer import Picture, Table
from ...core.marks import MARKS, meaning
from ...core.number import write_number, write_plain
from ...core.picture import INDIGO, INDIGO_WASH, LINE, SOFT, Drawing, Scale
from ...core.table import read_table
from ..relaxed import relaxed_change
from ..shrink import area_change, size_before

PITCH, MOST = 40, 55.0
SHRINKS = (2, 4, 5, 6, 8, 10, 12, 14, 15, 16, 18, 20, 22, 25, 30, 35, 40, 50)
SIZES = (10, 20, 30, 40, 50, 100)
CHANGES = (
    ("dry", "wet", "Rested off the needles, then soaked and dried flat"),
    ("wet", "full", "After that, washed and tumbled"),
    ("dry", "full", "Both together"),
)


def shrink_ranges() -> list[Picture | Table]:
    """Published and remembered ranges of shrinkage by fiber and structure.

    Source: each row of the table its own (wool-flat-knits, cotton-jersey-graph,
    trade-page-shrinkage, munden-1959, trade-memory).
    """
    table = read_table("wash", "shrink-ranges")
    rows = tuple(
        (row["label"], _range(row, "length"), _range(row, "width"), row["what"])
        for row in table.rows
    )
    sources = tuple(dict.fromkeys(row["source"] for row in table.rows))
    return [
        _bars(table.rows),
        Table(
            "Shrinkage in % of the size before washing",
            ("Cloth", "Length", "Width", "Of what"),
            rows,
            table.note + " " + meaning("read", "secondary", "memory", "computed"),
            sources,
        ),
    ]


def size_to_make() -> list[Table]:
    """Size before washing for a size wanted, by shrinkage.

    Source: arithmetic from ISO 5077 (iso-5077).
    """
    rows = tuple(
        (
            f"{shrink} %",
            *(write_number(size_before(size, shrink), 1) for size in SIZES),
            f"{write_number(100 * (size_before(1, shrink) - 1), 1)} %",
        )
        for shrink in SHRINKS
    )
    return [
        Table(
            "Make this much for a washed size of",
            ("Shrinks by", *(str(size) for size in SIZES), "That is more by"),
            rows,
            "In any unit: make = wanted / (1 - shrinkage / 100). What is lost is a percent of the"
            " size before, so more must be added than is lost. Computed here.",
            ("iso-5077", "arithmetic"),
        )
    ]


def relaxation() -> list[Table]:
    """What relaxing does to plain wool knitting, by its constants.

    Source: Munden 1959 (munden-1959, from memory); gate-textile-2015 for the fully relaxed pair.
    """
    table, rows = read_table("wash", "munden-constants"), []
    for before, after, words in CHANGES:
        one, other = table.row("state", before), table.row("state", after)
        width, height = (
            relaxed_change(one["Kw"], other["Kw"]),
            relaxed_change(one["Kc"], other["Kc"]),
        )
        rows.append(
            (
                words,
                *(
                    f"{write_number(change, 1)} %{MARKS['computed']}"
                    for change in (width, height, area_change(height, width))
                ),
            )
        )
    return [
        Table(
            "Plain wool knitting, as its strain goes out",
            ("Step", "Width", "Height", "Area"),
            tuple(rows),
            "Computed from loop constants that are from memory; superwash wool, alpaca, silk and"
            " cotton may grow where wool shrinks. " + meaning("computed"),
            ("munden-1959", "gate-textile-2015"),
        )
    ]


def _range(row: dict[str, Any], way: str) -> str:
    low, high, mark = row[f"{way}_low"], row[f"{way}_high"], MARKS[row[f"{way}_status"]]
    if low == "" and high == "":
        return "–"
    if high == "":
        return f"over {write_plain(low)}{mark}"
    return (
        f"about {write_plain(low)}" if low == high else f"{write_plain(low)}-{write_plain(high)}"
    ) + mark


def _bars(rows: tuple[dict[str, Any], ...]) -> Picture:
    drawing = Drawing(len(rows) * PITCH + 62)
    scale = Scale(0, MOST, 12, 348)
    bottom = len(rows) * PITCH + 6
    for tick in (0, 10, 20, 30, 40, 50):
        drawing.line(scale(tick), 4, scale(tick), bottom, stroke=LINE)
        drawing.text(scale(tick), bottom + 17, f"{tick} %", anchor="middle", fill=SOFT)
    drawing.rect(12, bottom + 30, 16, 9, fill=INDIGO, stroke=INDIGO)
    drawing.text(34, bottom + 40, "length")
    drawing.rect(112, bottom + 30, 16, 9, fill=INDIGO_WASH, stroke=INDIGO)
    drawing.text(134, bottom + 40, "width")
    said = []
    for place, row in enumerate(rows):
        top = 4 + place * PITCH
        drawing.text(12, top + 13, row["label"][:46], size=13, halo=True)
        for way, fill, y in (("length", INDIGO, top + 17), ("width", INDIGO_WASH, top + 27)):
            low, high = row[f"{way}_low"], row[f"{way}_high"]
            if low == "":
                continue
            open_end = high == ""
            left, right = scale(low), scale(MOST if open_end else high)
            drawing.rect(
                left,
                y,
                max(right - left, 3),
                8,
                fill=fill if not open_end else "none",
                stroke=INDIGO,
            )
            said.append(f"{row['label']}, {way} {_range(row, way)} %")
    return drawing.picture(
        "What washing takes, each direction",
        "Bars: " + "; ".join(said) + ". An open bar has no upper end.",
    )
