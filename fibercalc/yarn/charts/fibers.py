"""Charts of fibers: agreed and actual regain side by side, regain against humidity, density."""

from typing import Any

from ...core.answer import Picture, Table
from ...core.marks import MARKS, marked, meaning
from ...core.number import write_number
from ...core.picture import INK, LINE, SOFT, Drawing, Scale
from ...core.table import SourcedTable
from ..fiber_density import fiber_densities
from ..moisture import mass_at_regain
from ..regain import actual_regains, agreed_allowances, commercial_regains, regain_curves

# Figures in print for wool alone; none is wrong, each is for another purpose.
WOOL = (
    ("US commercial regain", 13.6, "secondary", "astm-d1909"),
    ("Wool trade, standard regain", 16.0, "read", "awta-glossary"),
    ("EU allowance, carded or not known", 17.0, "read", "ec-allowances-1998"),
    ("EU allowance, combed", 18.25, "read", "ec-allowances-1998"),
)
CURVES_DRAWN = (("wool", ""), ("silk", "7 3"), ("cotton", "2 3"), ("polyamide (nylon)", "10 3 2 3"))


def regain() -> list[Table]:
    """EU allowance, US commercial regain and what was found in ordinary air, side by side.

    Source: ec-allowances-1998, astm-d1909, bioresources-2020, nrc-2001; each value carries its own
    mark.
    """
    us = {row["fiber"]: row for row in commercial_regains().rows}
    found = {row["fiber"]: row for row in actual_regains().rows}
    rows = []
    for row in agreed_allowances().rows:
        fiber = row["fiber"]
        rows.append(
            (
                fiber,
                marked(row["allowance"], row["status"], 2),
                marked(us[fiber]["regain"], us[fiber]["status"]) if fiber in us else "–",
                _range(found[fiber]) if fiber in found else "–",
            )
        )
    note = (
        "% of oven-dry weight. Agreed figures are conventions for invoices; the last column is what"
        " the fiber held. "
        + agreed_allowances().note.partition(" Family")[0]
        + " "
        + commercial_regains().note
        + " "
        + meaning("read", "secondary", "memory")
    )
    return [
        Table(
            "Regain by fiber",
            (
                "Fiber",
                "EU agreed allowance",
                "US commercial regain",
                "Found at 20 °C and 65 % humidity",
            ),
            tuple(rows),
            note,
            (
                "ec-allowances-1998",
                "eu-1007-2011",
                "astm-d1909",
                "astm-d1909-extract",
                "bioresources-2020",
                "nrc-2001",
                "trade-memory",
            ),
        )
    ]


def wool_regains() -> list[Table]:
    """The figures in print for wool, and what 100 g of dry wool weighs under each.

    Source: astm-d1909, awta-glossary, ec-allowances-1998.
    """
    rows = tuple(
        (name, marked(percent, status), write_number(mass_at_regain(100, percent), 2))
        for name, percent, status, _ in WOOL
    )
    return [
        Table(
            "Four regains of one fiber: wool",
            ("Whose figure", "Regain, %", "100 g of dry wool weighs, g"),
            rows,
            "An invoice weight means nothing until it says whose figure it used: between the first"
            " and the last lie 4 g in 100. " + meaning("read", "secondary"),
            tuple(dict.fromkeys(source for *_, source in WOOL)),
        )
    ]


def regain_against_humidity() -> list[Picture | Table]:
    """Regain of six fibers at 10 to 90 % humidity, drawn and listed.

    Source: memory, unverified (regain-curves).
    """
    table = regain_curves()
    fibers = table.columns[1:-1]
    rows = tuple(
        (f"{row['humidity']:.0f}", *(marked(row[fiber], row["status"], 1) for fiber in fibers))
        for row in table.rows
    )
    note = f"{table.note} Hair (alpaca, mohair, cashmere) behaves as wool. {meaning('memory')}"
    return [
        _curves(table),
        Table(
            "Regain against relative humidity, % of dry weight",
            ("Humidity, %", *fibers),
            rows,
            note,
            ("regain-curves", "horikita-1989"),
        ),
    ]


def fiber_density() -> list[Table]:
    """Density of each fiber, dry and rested.

    Source: Morton and Hearle 2008, Table 5.1 (morton-hearle-2008); technical-fibres-handbook;
    memory.
    """
    table = fiber_densities()
    rows = tuple(
        (
            row["fiber"],
            marked(row["range"] or row["dry"], row["status"], 2),
            marked(row["at_65"], row["status"], 2),
        )
        for row in table.rows
    )
    return [
        Table(
            "Density of fibers, g/cm³",
            ("Fiber", "Dry", "At 65 % humidity"),
            rows,
            table.note + " " + meaning("read", "memory"),
            ("morton-hearle-2008", "technical-fibres-handbook", "trade-memory"),
        )
    ]


def _range(row: dict[str, Any]) -> str:
    low, high = row["low"], row["high"]
    text = f"{low:g}" if low == high else f"{low:g} to {high:g}"
    return text + MARKS[row["status"]]


def _curves(table: SourcedTable) -> Picture:
    drawing = Drawing(250)
    across, up = Scale(10, 90, 34, 268), Scale(0, 24, 204, 12)
    for tick in (0, 5, 10, 15, 20):
        drawing.line(across(10), up(tick), across(90), up(tick), stroke=LINE)
        drawing.text(28, up(tick) + 5, f"{tick}", anchor="end", fill=SOFT)
    for tick in (10, 30, 50, 70, 90):
        drawing.text(across(tick), 222, f"{tick}", anchor="middle", fill=SOFT)
    drawing.text(across(50), 242, "relative humidity, %", anchor="middle", fill=SOFT)
    for fiber, dash in CURVES_DRAWN:
        points = [(across(row["humidity"]), up(row[fiber])) for row in table.rows]
        drawing.path(points, stroke=INK, width=2, dash=dash)
        drawing.text(273, points[-1][1] + 5, fiber.partition(" (")[0])
    last = table.rows[-1]
    alt = (
        "Regain rises with humidity. At 90 % relative humidity: "
        + ", ".join(f"{fiber} {last[fiber]:g} %" for fiber, _ in CURVES_DRAWN)
        + "."
    )
    return drawing.picture(
        "Regain against relative humidity, % of dry weight (from memory, unverified)", alt
    )
