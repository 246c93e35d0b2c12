"""Every table of published values names sources that exist and says how each row was obtained."""

from importlib import resources

import pytest

from fibercalc.core.card import CHAPTERS
from fibercalc.core.table import read_table
from fibercalc.sources import all_sources

TABLES = [
    (chapter, path.name.removesuffix(".csv"))
    for chapter in CHAPTERS
    if (resources.files("fibercalc") / chapter / "tables").is_dir()
    for path in sorted(
        (resources.files("fibercalc") / chapter / "tables").iterdir(), key=lambda path: path.name
    )
]


@pytest.mark.parametrize("chapter, name", TABLES)
def test_table_names_sources_that_exist(chapter, name):
    """The table's source, and a row's own where it has one; each row says how it was obtained."""
    table = read_table(chapter, name)
    assert table.rows and "status" in table.columns
    for row in table.rows:
        assert None not in row, f"a cell too many: {row}"
        assert (row.get("source") or table.source) in all_sources(), row
        assert row["status"], row


@pytest.mark.parametrize("chapter, name", TABLES)
def test_a_row_read_in_a_secondary_page_is_not_called_read(chapter, name):
    """A row cannot know its value better than its source was known."""
    table = read_table(chapter, name)
    for row in table.rows:
        how = all_sources()[row.get("source") or table.source].how
        assert (how, row["status"]) not in {
            ("secondary", "read"),
            ("memory", "read"),
            ("memory", "secondary"),
        }, row
