"""Charts of yarn counts: what each system counts, and one yarn in all of them."""

from ...core.answer import Table
from ...core.marks import MARKS, meaning
from ...core.number import significant, write_number
from ..count import count_constant, count_from_tex, tex_from_count
from ..count import count_systems as systems

EXAMPLE_TEX = 250.0
LADDER = (
    1000,
    800,
    600,
    500,
    450,
    420,
    400,
    350,
    300,
    250,
    230,
    200,
    170,
    150,
    120,
    100,
    80,
    60,
    40,
)  # m/100 g, lace to jumbo
LADDER_UNITS = ("yd/100 g", "yd/oz", "yd/lb", "tex", "Nm", "Ne", "Nw")


def count_systems() -> list[Table]:
    """Every system with its constant as printed and as made from the yard and the pound.

    Source: ASTM D2260 (astm-d2260).
    """
    table = systems()
    rows = []
    for row in table.rows:
        printed = row["printed_factor"]
        exact = count_constant(row["unit"])
        rows.append(
            (
                row["name"].capitalize() + MARKS[row["status"]],
                row["symbol"],
                row["counts"],
                "thicker" if row["kind"] == "direct" else "finer",
                _short(printed, 6) if isinstance(printed, float) else "–",
                _short(exact, 7),
                _short(count_from_tex(EXAMPLE_TEX, row["unit"]), 5),
            )
        )
    note = (
        "Indirect system (bigger is finer): tex = constant / count. Direct system (bigger is"
        " thicker): tex = constant x count. " + meaning(*(row["status"] for row in table.rows))
    )
    return [
        Table(
            "Yarn count systems",
            (
                "System",
                "Sign",
                "What it counts",
                "Bigger is",
                "Constant, printed",
                "Constant, exact",
                "250 tex is",
            ),
            tuple(rows),
            note,
            ("astm-d2260", "count-conversion-table", "trade-page-counts"),
        )
    ]


def count_ladder() -> list[Table]:
    """Common yarns from lace to bulky in the systems in use.

    Source: exact yard and pound (arithmetic).
    """
    rows = []
    for meters in LADDER:
        tex = tex_from_count(float(meters), "m/100 g")
        rows.append(
            (
                f"{meters:,}",
                *(
                    _short(count_from_tex(tex, unit), 4 if unit != "yd/lb" else 5)
                    for unit in LADDER_UNITS
                ),
            )
        )
    return [
        Table(
            "One yarn in every system",
            ("m/100 g", *LADDER_UNITS),
            tuple(rows),
            "Find your meters in 100 g, read across. Computed from the exact yard and pound; do not"
            " print these on a label, they are not rounded down.",
            ("arithmetic",),
        )
    ]


def _short(value: float, digits: int) -> str:
    text = write_number(value, significant(value, digits))
    return text.rstrip("0").rstrip(".") if "." in text else text
