"""Charts of depth of shade: the words for it, and what a depth on a weight takes from the stock."""

from ...core.answer import Table
from ...core.marks import meaning
from ...core.table import read_table
from .cells import between, named_sources


def depth_words() -> list[Table]:
    """What is called pale, medium, deep and black, in % of dry fiber.

    Source: trade pages (trade-page-small-lots, trade-page-reactive); black from memory.
    """
    table = read_table("dye", "depth-words")
    rows = tuple((row["dyes"].capitalize(), row["word"], between(row["low"], row["high"], row["status"])) for row in table.rows)
    return [Table("Depth of shade in words", ("Dyes", "Word", "% of dry fiber"), rows, f"{table.note} {meaning(*(row['status'] for row in table.rows))}", named_sources(table))]
