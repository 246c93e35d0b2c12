"""Chart of masks and filters."""

from ...core.answer import Table
from ...core.marks import marked, meaning
from ...core.table import read_table


def masks() -> list[Table]:
    """Masks with the particles they hold back and their protection factors.

    Source: osha-respirators (from memory); web-page-filters.
    """
    table = read_table("safe", "filters")
    rows = tuple(
        (
            row["label"],
            marked(row["holds"], row["holds_status"]) if row["holds"] != "" else "–",
            marked(row["factor_us"], "memory"),
            marked(row["factor_uk"], "memory"),
            row["against"],
        )
        for row in table.rows
    )
    return [
        Table(
            table.title,
            ("Mask", "Holds back, %", "Factor, US", "Factor, UK", "Against"),
            rows,
            f"{table.note} {meaning('read', 'memory')}",
            ("osha-respirators", "web-page-filters"),
        )
    ]
