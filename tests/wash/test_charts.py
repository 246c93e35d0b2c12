"""Wall charts of the wash chapter: figures worked by hand, and what must not be hidden."""

from fibercalc.core.answer import Table
from fibercalc.wash import charts


def table(chart: str, title: str) -> Table:
    return next(
        part for part in getattr(charts, chart)() if isinstance(part, Table) and title in part.title
    )


def test_what_to_make_is_divided_out():
    """10 / 0.8 = 12.5; 100 / 0.82 = 121.95; a third lost is half more."""
    rows = {
        row[0]: dict(zip(table("size_to_make", "Make").columns, row))
        for row in table("size_to_make", "Make").rows
    }
    assert (
        rows["20 %"]["10"] == "12.5"
        and rows["18 %"]["100"] == "122.0"
        and rows["50 %"]["That is more by"] == "100.0 %"
    )


def test_relaxing_is_computed_from_the_constants():
    """3.8 / 4.2 - 1 = -9.5 %; 5.0 / 5.5 - 1 = -9.1 %; together -17.7 %."""
    last = table("relaxation", "Plain wool").rows[-1]
    assert last[1:] == ("−9.5 %‡", "−9.1 %‡", "−17.7 %‡")


def test_what_was_not_found_is_a_dash_and_an_open_end_is_said():
    rows = {row[0]: row for row in table("shrink_ranges", "Shrinkage").rows}
    assert rows["Cotton, plain knit by machine"][2] == "–"
    assert rows["Wool, floats, tucks, cables, by machine"][1] == "over 15"


def test_staining_steps_are_marked_as_memory_and_change_steps_are_not():
    rows = table("gray_scales", "Steps").rows
    assert all("†" in row[3] and "†" not in row[1] for row in rows)
