"""Chart of warping a rigid heddle, step by step, with boxes to tick."""

from ...core.answer import Table
from ...core.marks import meaning
from ...core.table import read_table


def warping() -> list[Table]:
    """Steps of warping and what is checked at each.

    Source: common practice.
    """
    table = read_table("weave", "warping-steps")
    rows = tuple(
        (f"{number}. {row['step']}", row["do"], row["check"], "☐")
        for number, row in enumerate(table.rows, 1)
    )
    return [
        Table(
            table.title,
            ("Step", "Do", "Check", "Done"),
            rows,
            table.note + " " + meaning("practice"),
            (table.source,),
        )
    ]
