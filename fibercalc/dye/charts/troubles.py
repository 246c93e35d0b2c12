"""Charts of what went wrong: one table for each symptom, causes in the order in which to look."""

from itertools import groupby

from ...core.answer import Table
from ...core.table import read_table

SEEN = (
    "Often, now and then, seldom: a dyer's guess, not a count. Change one thing at a time, on a"
    " sample."
)


def troubles() -> list[Table]:
    """Symptoms with likely causes, how to tell them apart and what to try.

    Source: common practice.
    """
    table = read_table("dye", "troubles")
    made: list[Table] = []
    for symptom, found in groupby(table.rows, key=lambda row: row["symptom"]):
        rows = tuple(
            (f"{row['order']:.0f}. {row['cause']} ({row['how_often']})", row["tell"], row["try"])
            for row in found
        )
        made.append(
            Table(
                symptom,
                ("Likely cause", "How to tell", "What to try"),
                rows,
                "" if made else SEEN,
                (table.source,),
            )
        )
    return made
