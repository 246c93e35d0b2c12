"""Charts of gauge: stitches by yarn class, what a small swatch costs at the
chest, stitches for a width."""

from typing import Any

from ...core.answer import Picture, Table
from ...core.marks import MARKS, marked, meaning
from ...core.number import write_number
from ...core.picture import INDIGO_WASH, INK, LINE, SOFT, Drawing, Scale
from ...core.table import read_table
from ...core.units import METERS_PER_INCH
from ...yarn.weight_class import COUNCIL

FOUR_INCHES = 400 * METERS_PER_INCH  # cm
MOST_DRAWN = 42.0
CHEST = 100.0  # cm of finished cloth
MISCOUNT = 0.5  # stitch, at the two edges of the place counted, together
GAUGES = (14, 16, 18, 20, 22, 24, 26, 28, 30, 32)
COUNTED = (5, 8, 10, 15, 20, 30)  # cm of swatch
DRAWN = ((16, ""), (22, "7 3"), (32, "2 3"))
WIDTHS = (5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 70, 80, 90, 100, 110, 120, 130, 140, 150)


def gauge() -> list[Picture | Table]:
    """Stitches of each yarn class, as printed for 4 inches and taken to 10 cm and to 1 inch.

    Source: Craft Yarn Council (craft-yarn-council); trade page (trade-page-ply-terms).
    """
    council, plies = read_table("yarn", COUNCIL), read_table("knit", "ply-gauges")
    classes = []
    for row in council.rows:
        printed = [(row["stitches"], row["status"])] + (
            [(row["stitches_memory"], "memory")] if row["stitches_memory"] else []
        )
        classes.append(
            (
                f"{row['number']:.0f} {row['name']}",
                *(
                    " or ".join(_taken(text, status, per) for text, status in printed)
                    for per in (1.0, 10 / FOUR_INCHES, 0.25)
                ),
                marked(row["needle_mm"], row["needle_status"]),
            )
        )
    names = tuple((row["name"], marked(row["stitches"], row["status"])) for row in plies.rows)
    return [
        _bars(council.rows),
        Table(
            "Stitches of stocking stitch by yarn class",
            ("Class", "In 4 in, as printed", "In 10 cm", "In 1 in", "Needle, mm"),
            tuple(classes),
            "Source: Craft Yarn Council's www.YarnStandards.com. Printed as 4 in (10 cm), which are"
            " not the same: 4 in are 10.16 cm; the two middle columns are computed. Lace gauge is"
            " nominal: it is worked on larger needles. " + meaning("secondary", "memory"),
            ("craft-yarn-council",),
        ),
        Table(
            "Stitches by ply name (UK, Australia, New Zealand)",
            ("Name", "In 10 cm"),
            names,
            plies.note + " " + meaning("secondary"),
            ("trade-page-ply-terms",),
        ),
    ]


def swatch_error() -> list[Picture | Table]:
    """What half a stitch, miscounted on a swatch, makes at the chest.

    Source: arithmetic (the share miscounted is the share that the garment is off).
    """
    rows = tuple(
        (
            f"{width} cm ({width / 100 / METERS_PER_INCH:.1f} in)",
            *(write_number(chest_error(CHEST, stitches, width), 1) for stitches in GAUGES),
        )
        for width in COUNTED
    )
    return [
        _error_curves(),
        Table(
            "Off at a chest of 100 cm when the swatch is miscounted by half a stitch, cm"
            " either way",
            ("Counted over", *(f"{one} st" for one in GAUGES)),
            rows,
            "Columns are stitches in 10 cm. Error = chest x 0.5 / (stitches counted). Half a stitch"
            " is what a careful eye misses at the two ends together. Twice the swatch, half the"
            " error; ten swatch places counted and averaged, about a third. Computed here.",
            ("arithmetic",),
        ),
    ]


def cast_on() -> list[Table]:
    """Stitches for a width, at ten gauges.

    Source: arithmetic.
    """
    rows = tuple(
        (
            f"{width} cm ({width / 100 / METERS_PER_INCH:.1f} in)",
            *(f"{width * stitches / 10:.0f}" for stitches in GAUGES),
        )
        for width in WIDTHS
    )
    return [
        Table(
            "Stitches to cast on for a width",
            ("Width", *(f"{one} st" for one in GAUGES)),
            rows,
            "Columns are stitches in 10 cm, washed. Width x gauge, to the nearest whole stitch;"
            " then go to the repeat of your pattern and add edge stitches. Computed here.",
            ("arithmetic",),
        )
    ]


def chest_error(chest: float, stitches: float, width: float) -> float:
    """How far off the chest is, cm, when a swatch of stitches in 10 cm is
    counted over a width in cm."""
    return chest * MISCOUNT / (stitches * width / 10)


def _taken(text: str, status: str, per: float) -> str:
    """A printed range such as 27-32 or `6 and fewer`, taken to another length."""
    if per == 1.0:
        return text + MARKS[status]
    words = text.split(" ", 1)
    low_high = "-".join(write_number(float(part) * per, 1) for part in words[0].split("-"))
    return " ".join([low_high, *words[1:]]) + MARKS[status]


def _ends(text: str) -> tuple[float, float]:
    first, *rest = text.split(" ")[0].split("-")
    return (
        (0.0, float(first))
        if "fewer" in text
        else (float(first), float(rest[-1] if rest else first))
    )


def _bars(rows: tuple[dict[str, Any], ...]) -> Picture:
    drawing = Drawing(len(rows) * 26 + 50)
    scale = Scale(0, MOST_DRAWN, 100, 350)
    bottom = len(rows) * 26 + 14
    for tick in (0, 10, 20, 30, 40):
        drawing.line(scale(tick), 6, scale(tick), bottom, stroke=LINE)
        drawing.text(scale(tick), bottom + 16, f"{tick}", anchor="middle", fill=SOFT)
    drawing.text(scale(20), bottom + 33, "stitches in 4 in (10 cm)", anchor="middle", fill=SOFT)
    said = []
    for place, row in enumerate(rows):
        top, (low, high) = 10 + place * 26, _ends(row["stitches"])
        drawing.text(92, top + 14, row["name"], anchor="end")
        drawing.rect(
            scale(low), top + 2, scale(high) - scale(low), 15, fill=INDIGO_WASH, stroke=INK
        )
        said.append(f"{row['name']} {row['stitches']}")
    return drawing.picture(
        "Gauge of each class: where bars overlap, a gauge is both",
        "Bars over stitches in 4 inches: " + "; ".join(said) + ".",
    )


def _error_curves() -> Picture:
    drawing = Drawing(250)
    across, up = Scale(4, 30, 34, 262), Scale(0, 8, 200, 12)
    for tick in (0, 2, 4, 6, 8):
        drawing.line(across(4), up(tick), across(30), up(tick), stroke=LINE)
        drawing.text(28, up(tick) + 5, f"{tick}", anchor="end", fill=SOFT)
    for tick in (5, 10, 15, 20, 25, 30):
        drawing.text(across(tick), 218, f"{tick}", anchor="middle", fill=SOFT)
    drawing.text(across(17), 238, "cm of swatch counted", anchor="middle", fill=SOFT)
    said = []
    for place, (stitches, dash) in enumerate(DRAWN):
        points = [
            (across(width), up(chest_error(CHEST, stitches, width))) for width in range(4, 31)
        ]
        drawing.path(points, width=2, dash=dash)
        drawing.line(150, 24 + 22 * place, 190, 24 + 22 * place, width=2, dash=dash)
        drawing.text(198, 29 + 22 * place, f"{stitches} st in 10 cm")
        said.append(
            f"{stitches} stitches in 10 cm: {chest_error(CHEST, stitches, 5):.1f} cm from a 5 cm"
            f" swatch, {chest_error(CHEST, stitches, 20):.1f} cm from a 20 cm swatch"
        )
    return drawing.picture(
        "cm off at a 100 cm chest, for half a stitch miscounted",
        "The error falls as the swatch grows. " + "; ".join(said) + ".",
    )
