"""Chart of weaves: crossings, floats, how closely each is set beside plain weave, and where it
stands on a rigid heddle.
"""

from ...core.answer import Table
from ...core.marks import MARKS, meaning
from ...core.number import write_number
from ...core.table import status_of
from ..setting import average_float, interlacings, maximum_sett, sett_in_another_weave


def structures() -> list[Table]:
    """Weaves by their repeat, and how to weave them on a rigid heddle.

    Source: arithmetic for what is counted in a repeat; the trade (trade-memory, common-practice)
    for the textured ones and the rigid heddle.
    """
    table = interlacings()
    counted = tuple(
        (
            row["label"] + MARKS[status_of(row, "ends")],
            f"{row['ends']:g} / {row['crossings']:g}",
            f"{row['longest_float']:g}" if isinstance(row["longest_float"], float) else "count it",
            write_number(average_float(row["ends"], row["crossings"]), 2),
            f"{maximum_sett(1.0, row['ends'], row['crossings']):.3f}",
            f"{sett_in_another_weave(1.0, 2, 2, row['ends'], row['crossings']):.2f}",
        )
        for row in table.rows
    )
    woven = tuple(
        (row["label"], row["heddle"] + MARKS["practice"], row["note"]) for row in table.rows
    )
    return [
        Table(
            "Weaves by their repeat",
            (
                "Weave",
                "Ends / crossings",
                "Longest float",
                "Mean float",
                "Closest sett, of the diameters",
                "Times plain weave",
            ),
            counted,
            table.note + " " + meaning("memory", "computed", "practice"),
            (
                "arithmetic",
                "trade-pages-sett",
                "trade-pages-waffle",
                "trade-memory",
                "common-practice",
            ),
        ),
        Table(
            "On a rigid heddle",
            ("Weave", "How", "What it is like"),
            woven,
            meaning("practice"),
            ("common-practice",),
        ),
    ]
