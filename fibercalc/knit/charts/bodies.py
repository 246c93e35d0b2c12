"""Charts of bodies: where each measure is taken, the published sizes in inches and
centimeters, and ease."""

from typing import Any

from ...core.answer import Picture, Table
from ...core.marks import MARKS, marked, meaning
from ...core.number import write_number
from ...core.picture import INK, MADDER, SOFT, Drawing
from ...core.table import read_table, status_of
from ...core.units import METERS_PER_INCH

CM_PER_INCH = 100 * METERS_PER_INCH
# Each measure: its letter in the picture, its name, its column or columns.
WOMEN = (
    ("A", "Bust", "bust"),
    ("B", "Waist", "waist"),
    ("C", "Hip", "hip"),
    ("D", "Cross back", "cross_back"),
    ("E", "Armhole depth", "armhole"),
    ("F", "Upper arm", "upper_arm"),
    ("G", "Arm to underarm", "arm"),
    ("H", "Back neck to cuff", "neck_to_cuff"),
    ("I", "Back waist length", "back_waist"),
)
MEN = (("A", "Chest", "chest"), *WOMEN[1:8], ("J", "Back hip length", "hip_length"))
CHILDREN = (("A", "Chest", "chest"), *WOMEN[1:7], WOMEN[8])
WORDS = {
    "A": "around the fullest part",
    "B": "around the narrowest part",
    "C": "around the fullest part",
    "D": "shoulder point to shoulder point",
    "E": "straight down to the underarm",
    "F": "around the thickest part",
    "G": "underarm to wrist",
    "H": "neck bone over the shoulder to the wrist",
    "I": "neck bone to waist",
    "J": "neck bone to hip",
}
# The right half of a standing figure, from neck to inner leg, as offsets from
# its middle line and heights.
OUTLINE = (
    (9, 58),
    (11, 72),
    (48, 86),
    (124, 196),
    (110, 206),
    (41, 132),
    (32, 180),
    (45, 232),
    (40, 318),
    (5, 318),
    (0, 252),
)
MIDDLE = 180


def body_measures() -> list[Picture | Table]:
    """Where each measure of the size tables is taken.

    Source: common practice.
    """
    rows = tuple((letter, name, WORDS[letter]) for letter, name, _ in (*WOMEN, MEN[-1]))
    return [
        _figure(),
        Table(
            "What each letter measures",
            ("Letter", "Measure", "Taken"),
            rows,
            "Measured on the body, over what is worn under the garment, the tape flat and not"
            " tight.",
            ("common-practice",),
        ),
    ]


def women_sizes() -> list[Table]:
    """Women's body sizes in inches, as recalled, and in centimeters.

    Source: Craft Yarn Council (craft-yarn-council-sizes), read only in part.
    """
    return _sizes("council-body-women", WOMEN)


def men_sizes() -> list[Table]:
    """Men's body sizes in inches, as recalled, and in centimeters.

    Source: Craft Yarn Council (craft-yarn-council-sizes), from memory.
    """
    return _sizes("council-body-men", MEN)


def children_sizes() -> list[Table]:
    """Children's body sizes, babies' chests and heads in inches and centimeters.

    Source: Craft Yarn Council (craft-yarn-council-sizes), read only in part; heads from
    pages that quote medical tables (head-girths-girls, head-girths-adults), the youngest
    from memory (trade-memory).
    """
    heads, babies = read_table("knit", "head-girths"), read_table("knit", "council-body-babies")
    chests = tuple((row["label"], *_both_units(row["chest"], row["status"])) for row in babies.rows)
    around = tuple(
        (
            row["label"],
            marked(row["girth"] / CM_PER_INCH, row["status"], 1),
            marked(row["girth"], row["status"], 1),
        )
        for row in heads.rows
    )
    return [
        *_sizes("council-body-children", CHILDREN),
        Table(
            "Babies, around the chest",
            ("Who", "in", "cm"),
            chests,
            babies.note + " " + meaning("memory"),
            (babies.source,),
        ),
        Table(
            "Around the head",
            ("Who", "in", "cm"),
            around,
            heads.note + " " + meaning("secondary", "memory"),
            (heads.source, "head-girths-adults", "trade-memory"),
        ),
    ]


def ease() -> list[Table]:
    """Ease by class, in both units.

    Source: trade pages (trade-page-ease); memory (trade-memory).
    """
    table = read_table("knit", "ease")
    rows = tuple(
        (row["label"], row["on"], *_ease_cells(row), row["note"] or "–") for row in table.rows
    )
    return [
        Table(
            "Ease",
            ("Class", "On the", "in", "cm", "%", "Note"),
            rows,
            table.note + " " + meaning("secondary", "memory"),
            ("trade-page-ease", "trade-memory"),
        )
    ]


def _sizes(name: str, measures: tuple[tuple[str, str, str], ...]) -> list[Table]:
    table = read_table("knit", name)
    heads = ("Size", *(f"{letter} {words}" for letter, words, _ in measures))
    made = []
    for unit, scale in (("inches", 1.0), ("centimeters", CM_PER_INCH)):
        rows = tuple(
            (row["label"], *(_cell(row, column, scale) for *_, column in measures))
            for row in table.rows
        )
        statuses = {
            status_of(row, column)
            for row in table.rows
            for column in table.columns
            if isinstance(row[column], float)
        }
        made.append(
            Table(
                f"{table.title}, {unit}",
                heads,
                rows,
                f"{table.note}{' Rounded to whole centimeters.' if scale != 1.0 else ''}"
                f" {meaning(*statuses)}",
                (table.source,),
            )
        )
    return made


def _cell(row: dict[str, Any], column: str, scale: float) -> str:
    """One size as `28†-30*`, or a single figure where both ends are the same."""
    columns = (column,) if column in row else (f"{column}_low", f"{column}_high")
    texts = [
        (f"{row[one]:g}" if scale == 1.0 else f"{row[one] * scale:.0f}", MARKS[status_of(row, one)])
        for one in columns
    ]
    texts = list(dict.fromkeys(texts))  # both ends of a range may be one figure
    if len({mark for _, mark in texts}) == 1:
        return "-".join(text for text, _ in texts) + texts[0][1]
    return "-".join(text + mark for text, mark in texts)


def _both_units(inches: float, status: str) -> tuple[str, str]:
    return marked(inches, status), marked(inches * CM_PER_INCH, status, 0)


def _ease_cells(row: dict[str, Any]) -> tuple[str, str, str]:
    if row["unit"] == "%":
        return "–", "–", _span(row, 1.0)
    per_inch = 1.0 if row["unit"] == "in" else 1 / CM_PER_INCH
    return _span(row, per_inch), _span(row, per_inch * CM_PER_INCH), "–"


def _span(row: dict[str, Any], scale: float) -> str:
    low = write_number(row["low"] * scale, 0) + MARKS[row["status"]]
    if row["high"] == row["low"]:
        return low
    return (
        f"{low} and more"
        if row["high"] == ""
        else f"{low} to {write_number(row['high'] * scale, 0)}{MARKS[status_of(row, 'high')]}"
    )


def _figure() -> Picture:
    drawing = Drawing(330)
    right = [(MIDDLE + x, y) for x, y in OUTLINE]
    drawing.circle(MIDDLE, 36, 24, stroke=SOFT)
    drawing.path(
        right + [(2 * MIDDLE - x, y) for x, y in reversed(right[:-1])], stroke=SOFT, width=1.5
    )
    for letter, half, height in (("A", 42, 136), ("B", 32, 180), ("C", 45, 232), ("D", 46, 92)):
        drawing.line(
            MIDDLE - half, height, MIDDLE + half, height, stroke=INK, width=1.5, dash="5 3"
        )
        drawing.text(
            MIDDLE - 22, height + 5, letter, anchor="middle", bold=True, fill=MADDER, halo=True
        )
    drawing.line(MIDDLE + 49, 114, MIDDLE + 64, 106, width=1.5, dash="5 3")  # around the upper arm
    for letter, points, at in (
        ("E", ((MIDDLE - 47, 86), (MIDDLE - 47, 132)), (MIDDLE - 60, 118)),
        ("F", (), (MIDDLE + 78, 100)),
        ("G", ((MIDDLE + 46, 142), (MIDDLE + 108, 218)), (MIDDLE + 66, 194)),
        ("H", ((MIDDLE - 12, 64), (MIDDLE - 52, 76), (MIDDLE - 134, 190)), (MIDDLE - 106, 122)),
        ("I", ((MIDDLE + 6, 72), (MIDDLE + 6, 180)), (MIDDLE + 18, 160)),
        ("J", ((MIDDLE - 6, 72), (MIDDLE - 6, 232)), (MIDDLE - 18, 210)),
    ):
        if points:
            drawing.path(points, width=1.5)
            for x, y in (points[0], points[-1]):
                drawing.circle(x, y, 2.2, fill=INK)
        drawing.text(*at, letter, anchor="middle", bold=True, fill=MADDER, halo=True)
    alt = (
        "A standing figure with lines where the tape lies: "
        + "; ".join(
            f"{letter} {name.lower()}, {WORDS[letter]}" for letter, name, _ in (*WOMEN, MEN[-1])
        )
        + "."
    )
    return drawing.picture("Where each measure is taken", alt)
