"""Wall charts: each fits its columns, names its sources and shows how sure its values are."""

import pytest

from fibercalc.core.answer import Table
from fibercalc.sources import all_sources
from fibercalc.yarn import charts

TABLES = [pytest.param(part, id=f"{name}: {part.title}") for name in charts.__all__ for part in getattr(charts, name)() if isinstance(part, Table)]
MARKS = "*†‡"


@pytest.mark.parametrize("table", TABLES)
def test_each_row_fills_its_columns_and_none_is_empty(table):
    """A missing value is a dash that a person can see."""
    assert table.rows
    for row in table.rows:
        assert len(row) == len(table.columns)
        assert all(cell.strip() for cell in row), row


@pytest.mark.parametrize("table", TABLES)
def test_sources_exist_and_marks_are_explained(table):
    """A mark in a cell has its meaning in the note."""
    assert table.sources and all(source in all_sources() for source in table.sources)
    used = {mark for row in table.rows for cell in row for mark in MARKS if mark in cell}
    assert all(f"{mark} " in table.note for mark in used), used


@pytest.mark.parametrize("table", TABLES)
def test_each_chart_can_be_printed_on_one_page(table):
    """186 x 250 mm at about 2 mm a character and 9 mm a row holds up to 24 rows; no column is a paragraph."""
    assert len(table.rows) <= 24
    assert sum(max(len(row[place]) for row in table.rows) for place in range(len(table.columns))) <= 190


def test_the_disagreements_are_shown():
    """Wool's four regains, super bulky's two gauges, woolen's two constants and the three ways to wrap all stand in the charts or tables."""
    text = str([part for name in charts.__all__ for part in getattr(charts, name)() if isinstance(part, Table)])
    for disagreement in ("13.6*", "18.25", "6-11* or 7-11†", "0.84, 0.90 and 0.92", "Relaxed hand wrap", "Close-packed wrap"):
        assert disagreement in text, disagreement


def test_the_council_is_credited_by_its_own_line():
    """The credit line that its publisher asks for."""
    assert any("Source: Craft Yarn Council's www.YarnStandards.com" in part.note for part in charts.weight_classes() if isinstance(part, Table))
