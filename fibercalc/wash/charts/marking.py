"""Chart of how a sample is marked and measured: the standard's way, and the way at home."""

from ...core.answer import Picture, Table
from ...core.marks import MARKS, meaning
from ...core.picture import INDIGO, INDIGO_WASH, INK, SOFT, Drawing
from ...core.table import read_table

SIDE, LEFT, TOP, EDGE = (
    220,
    70,
    22,
    22,
)  # the sample on the sheet: 500 mm across, marks 50 mm from its edges
PLACES = (0.0, 0.5, 1.0)


def marking() -> list[Picture | Table]:
    """Where the marks go on a sample, and how it is measured.

    Source: ISO 5077 (iso-5077, summary) with ISO 3759; ISO 139 for the air; AATCC TM135 for the
    mean; common practice at home.
    """
    table = read_table("wash", "measuring-rules")
    rows = tuple(
        (
            row["what"],
            row["standard"] + MARKS[row["standard_status"]],
            row["home"] + MARKS[row["status"]],
        )
        for row in table.rows
    )
    return [
        _sample(),
        Table(
            "A sample, marked and measured",
            ("What", "The standard", "At home"),
            rows,
            table.note + " " + meaning("read", "practice"),
            ("iso-5077", "iso-139", "aatcc-135", "common-practice"),
        ),
    ]


def _sample() -> Picture:
    drawing = Drawing(TOP + SIDE + 62)
    drawing.rect(LEFT, TOP, SIDE, SIDE, fill=INDIGO_WASH, stroke=INDIGO)
    inner = SIDE - 2 * EDGE
    for share in PLACES:
        x, y = LEFT + EDGE + share * inner, TOP + EDGE + share * inner
        drawing.line(x, TOP + EDGE, x, TOP + EDGE + inner, stroke=SOFT, dash="4 4")
        drawing.line(LEFT + EDGE, y, LEFT + EDGE + inner, y, stroke=SOFT, dash="4 4")
    for across in PLACES:
        for down in PLACES:
            if (across, down) != (0.5, 0.5):
                drawing.circle(LEFT + EDGE + across * inner, TOP + EDGE + down * inner, 4, fill=INK)
    drawing.line(LEFT + EDGE, TOP + SIDE + 14, LEFT + EDGE + inner, TOP + SIDE + 14)
    drawing.text(LEFT + SIDE / 2, TOP + SIDE + 31, "width: 35 cm and more", anchor="middle")
    drawing.text(
        LEFT + SIDE / 2, TOP + SIDE + 50, "marks 5 cm from the edges", anchor="middle", fill=SOFT
    )
    drawing.line(LEFT + SIDE + 12, TOP + EDGE, LEFT + SIDE + 12, TOP + EDGE + inner)
    drawing.text(LEFT + SIDE + 18, TOP + SIDE / 2 + 5, "length")
    drawing.text(LEFT - 8, TOP + SIDE / 2, "3 pairs", anchor="end")
    drawing.text(LEFT - 8, TOP + SIDE / 2 + 18, "each way", anchor="end")
    return drawing.picture(
        "Where the marks go",
        "A square sample with eight marks in three rows of length and three of width, 35 cm apart"
        " and more, 5 cm from the edges.",
    )
