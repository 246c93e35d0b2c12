"""Every wall chart of every chapter fits its columns and its page, names its sources and shows how sure its values are."""

from importlib import import_module
from importlib.util import find_spec

import pytest

from fibercalc.core.answer import Picture, Table
from fibercalc.core.card import CHAPTERS
from fibercalc.core.marks import MARKS
from fibercalc.sources import all_sources

CHARTS = [
    import_module(f"fibercalc.{chapter}.charts")
    for chapter in CHAPTERS
    if find_spec(f"fibercalc.{chapter}") and find_spec(f"fibercalc.{chapter}.charts")
]
PARTS = [
    (f"{module.__name__.split('.')[1]}.{name}: {part.title}", part)
    for module in CHARTS
    for name in module.__all__
    for part in getattr(module, name)()
]
TABLES = [pytest.param(part, id=said) for said, part in PARTS if isinstance(part, Table)]
PICTURES = [pytest.param(part, id=said) for said, part in PARTS if isinstance(part, Picture)]


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
    used = {
        mark
        for row in table.rows
        for cell in row
        for mark in MARKS.values()
        if mark and mark in cell
    }
    assert all(f"{mark} " in table.note for mark in used), used


@pytest.mark.parametrize("table", TABLES)
def test_each_chart_can_be_printed_on_one_page(table):
    """186 x 250 mm at about 2 mm a character and 9 mm a row holds up to 24 rows; no column is a paragraph."""
    assert len(table.rows) <= 24
    assert (
        sum(max(len(row[place]) for row in table.rows) for place in range(len(table.columns)))
        <= 190
    )


@pytest.mark.parametrize("picture", PICTURES)
def test_each_picture_says_in_words_what_it_shows(picture):
    """Words for those who cannot see it, with the figures in them where there are any to read off."""
    assert picture.title and len(picture.alt) > 40 and picture.alt.endswith(".")
    assert picture.height <= 520, "higher than half a printed page"
