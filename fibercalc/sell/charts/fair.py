"""Charts for a fair: what to pack, and how many skeins pay it."""

from math import ceil

from ...core.answer import Table
from ...core.marks import MARKS, meaning
from ...core.number import write_number
from ...core.table import read_table
from ..pricing import CLOSE, break_even

COSTS, EACH = (
    (50, 100, 150, 200, 250, 300, 339, 400, 500, 627, 750, 1000),
    (4, 6, 8, 10, 12, 15, 20),
)


def fair_list() -> list[Table]:
    """What goes to the fair, and why.

    Source: common practice.
    """
    table = read_table("sell", "fair-list")
    rows = tuple((f"☐ {row['what']}", row["why"] + MARKS[row["status"]]) for row in table.rows)
    return [
        Table(
            table.title,
            ("Pack", "Why"),
            rows,
            table.note + " " + meaning("practice"),
            ("common-practice",),
        )
    ]


def fair_pays() -> list[Table]:
    """Skeins that pay a fair, by its costs and what one skein leaves.

    Source: arithmetic (costs over contribution, rounded up).
    """
    rows = tuple(
        (write_number(cost, 0), *(str(ceil(break_even(cost, each) - CLOSE)) for each in EACH))
        for cost in COSTS
    )
    return [
        Table(
            "Skeins that pay for the fair, when each leaves",
            ("The fair costs", *(str(each) for each in EACH)),
            rows,
            "In any money; put your wage into the costs. Rounded up. Computed here.",
            ("arithmetic",),
        )
    ]
