"""Chart of mordants: published ranges, the mark above which this book warns, and the
metal that each brings."""

from typing import Any

from ...core.answer import Table
from ...core.marks import marked, meaning
from ...core.table import read_table, status_of
from .cells import between, named_sources

NOT_OFFERED = 0.0  # the mark of what is not offered at any amount


def mordants() -> list[Table]:
    """Mordants on the dry weight of fiber, what goes with them, and their metal; chrome
    is listed as not offered.

    Source: trade-page-mordants, mairet-1916, memory of textbooks
    (dyeing-textbook); metal contents computed.
    """
    metals, helpers = read_table("safe", "mordants"), read_table("dye", "mordant-helpers")
    rows = tuple(
        (
            row["label"],
            _range(row),
            marked(row["mark"], status_of(row, "mark")),
            row["why"].removeprefix("not offered: "),
        )
        for row in (*metals.rows, *helpers.rows)
    )
    statuses = {
        status_of(row, column)
        for row in (*metals.rows, *helpers.rows)
        for column in ("low", "mark")
    }
    contents = tuple(
        (row["label"], row["metal_name"], marked(row["metal"], status_of(row, "metal")))
        for row in metals.rows
    )
    sources = tuple(dict.fromkeys([*named_sources(metals), *named_sources(helpers)]))
    return [
        Table(
            "Mordants, % of dry fiber",
            ("Mordant", "Published", "Warn above", "Why"),
            rows,
            "The first rows are for wool, hair and silk. Old books print more: alum 25 with cream"
            " of tartar 6.25, copper sulfate 15.6, dichromate 3; do not follow them. "
            + meaning(*statuses),
            sources,
        ),
        Table(
            "Metal in the mordant",
            ("Mordant", "Metal", "% of its weight"),
            contents,
            "From atomic weights. What else is sold as a mordant differs: ask the seller for its"
            " metal. " + meaning("computed"),
            named_sources(metals),
        ),
    ]


def _range(row: dict[str, Any]) -> str:
    """A whole that is not offered shows no range to follow."""
    return (
        "not offered"
        if row["mark"] == NOT_OFFERED
        else between(row["low"], row["high"], row["status"])
    )
