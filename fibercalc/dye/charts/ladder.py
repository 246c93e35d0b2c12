"""Chart of the dilution ladder: jars, each half as strong as the one before, to read what is left in a bath."""

from ...core.answer import Picture, Table
from ...core.marks import MARKS, meaning
from ...core.number import write_number, write_plain
from ...core.picture import INK, LINE, SOFT, Drawing
from ...core.table import read_table

PAPER_GRAY, FULL_GRAY = 250.0, 60.0  # printed gray of clear water and of the first jar, 0 to 255
STEP, HIGH = 40, 26


def dilution_ladder() -> list:
    """The ladder drawn as grays, with the share of the first jar beside each.

    Source: arithmetic (equal parts of a jar and water halve it).
    """
    table = read_table("dye", "dilution-ladder")
    rows = tuple((f"{row['jar']:.0f}", row["parts"], marked_percent(row), f"{100 - row['percent']:.1f} %{MARKS['computed']}") for row in table.rows)
    return [_strip(table.rows), Table(
        "What a jar says", ("Jar", "How it is mixed", "Dye left in the bath", "Gone from the bath"), rows,
        f"{table.note} The bath lies between two jars: take both numbers, not the middle. Jars are as far apart as the eye can tell, and no finer. " + meaning("computed"), ("arithmetic",))]


def marked_percent(row: dict) -> str:
    """`6.25 %` of a jar."""
    return f"{write_plain(row['percent'], digits=3)} %{MARKS[row['status']]}"


def gray(percent: float) -> float:
    """Printed gray, 0 to 255, for a share of the first jar in percent: each layer of dye takes the same part of the light."""
    return PAPER_GRAY * (FULL_GRAY / PAPER_GRAY) ** (percent / 100)


def _strip(rows) -> Picture:
    drawing = Drawing(len(rows) * STEP + 14)
    said = []
    for place, row in enumerate(rows):
        top, level = 6 + place * STEP, round(gray(row["percent"]))
        drawing.text(30, top + 18, f"{row['jar']:.0f}", anchor="end", bold=True)
        drawing.rect(42, top, 130, HIGH, fill=f"rgb({level},{level},{level})", stroke=INK)
        drawing.text(186, top + 18, f"{write_number(row['percent'], 1 if row['percent'] < 50 and row['percent'] % 1 else 0)} %")
        drawing.text(258, top + 18, row["parts"].removeprefix("1 part ") if place else "the bath", fill=SOFT)
        if place:
            drawing.line(42, top - (STEP - HIGH) / 2, 352, top - (STEP - HIGH) / 2, stroke=LINE)
        said.append(f"jar {row['jar']:.0f} {write_plain(row['percent'], digits=3)} %")
    return drawing.picture("The ladder: number of the jar, its look beside the first, its strength (the grays are a sketch: your dye decides)",
                           "Eight jars from dark to clear, each half as strong as the one before: " + ", ".join(said) + ".")
