"""Charts of what went wrong: one table for each symptom, causes in the order in which to look."""

from itertools import groupby

from ...core.answer import Table
from ...core.table import read_table


def troubles() -> list[Table]:
    """Symptoms with likely causes, how to tell them apart and what to try.

    Source: common practice.
    """
    table = read_table("dye", "troubles")
    made = []
    for symptom, found in groupby(table.rows, key=lambda row: row["symptom"]):
        rows = tuple((f"{row['order']:.0f}. {row['cause']}", row["tell"], row["try"], row["how_often"]) for row in found)
        made.append(Table(symptom, ("Likely cause", "How to tell", "What to try", "Seen"), rows, "Common practice, no published source. Seen: a dyer's guess.", (table.source,)))
    return made
