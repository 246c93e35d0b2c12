"""Wall charts of the knit chapter: figures worked by hand, and what must not be hidden."""

import re
from math import sqrt

import pytest

from fibercalc.core.answer import Picture, Table
from fibercalc.core.table import read_table
from fibercalc.knit import charts
from fibercalc.knit.charts.gauge import chest_error
from fibercalc.knit.charts.shawls import shapes


def table(chart: str, title: str) -> Table:
    return next(
        part for part in getattr(charts, chart)() if isinstance(part, Table) and title in part.title
    )


def test_half_a_stitch_in_eleven_is_four_and_a_half_centimeters_of_a_hundred():
    """22 stitches in 10 cm counted over 5 cm: 11 stitches; 100 x 0.5 / 11 = 4.545."""
    assert chest_error(100, 22, 5) == pytest.approx(4.545, abs=0.0005)
    rows = {row[0]: row for row in table("swatch_error", "miscounted").rows}
    column = table("swatch_error", "miscounted").columns.index("22 st")
    assert rows["5 cm (2.0 in)"][column] == "4.5"
    assert rows["20 cm (7.9 in)"][column] == "1.1"


def test_stitches_for_a_width_are_width_times_gauge():
    """104 is no row; 110 cm at 20 in 10 cm are 220, 35 cm at 26 are 91."""
    found = table("cast_on", "cast on")
    rows = {row[0]: dict(zip(found.columns, row)) for row in found.rows}
    assert rows["110 cm (43.3 in)"]["20 st"] == "220"
    assert rows["35 cm (13.8 in)"]["26 st"] == "91"


def test_four_inches_are_not_ten_centimeters():
    """27 to 32 stitches in 4 in (10.16 cm) are 26.6 to 31.5 in 10 cm and 6.8 to 8 in 1 in."""
    fine = next(row for row in table("gauge", "yarn class").rows if row[0] == "1 Super Fine")
    assert fine[1:4] == ("27-32*", "26.6-31.5*", "6.8-8.0*")


def test_both_gauges_of_super_bulky_are_shown():
    bulky = next(row for row in table("gauge", "yarn class").rows if row[0] == "6 Super Bulky")
    assert bulky[1] == "6-11* or 7-11†"


def test_memory_is_marked_cell_by_cell():
    """A bust's low end is from memory and its high end was matched; a child's chest is from memory and its arm was matched."""
    medium = next(row for row in table("women_sizes", "inches").rows if row[0] == "M")
    assert medium[1] == "36†-38*" and medium[2] == "28-30†"
    child = dict(
        zip(
            table("children_sizes", "children, inches").columns,
            next(
                row for row in table("children_sizes", "children, inches").rows if row[0] == "age 8"
            ),
        )
    )
    assert child["A Chest"] == "26.5†" and child["G Arm to underarm"] == "12.5*"


def test_every_size_and_every_measure_of_the_tables_is_on_the_charts():
    for chart, name in (
        ("women_sizes", "council-body-women"),
        ("men_sizes", "council-body-men"),
        ("children_sizes", "council-body-children"),
    ):
        columns = {
            re.sub("_(low|high)$", "", column) for column in read_table("knit", name).columns
        } - {"key", "label", "status"}
        columns = {column for column in columns if not column.endswith("_status")}
        assert len(table(chart, "inches").columns) == 1 + len(columns), name


@pytest.mark.parametrize("chart", ["women_sizes", "men_sizes", "children_sizes", "gauge"])
def test_the_council_is_credited_by_its_own_line(chart):
    assert any(
        "Source: Craft Yarn Council's www.YarnStandards.com" in part.note
        for part in getattr(charts, chart)()
        if isinstance(part, Table)
    )


def test_a_caution_stands_with_the_womens_sizes():
    assert "run small at the upper arm" in table("women_sizes", "inches").note


def test_rib_says_weigh_a_swatch():
    rows = {row[0]: row[1] for row in table("structures", "stocking stitch").rows}
    assert rows["Rib 1x1"] == rows["Rib 2x2"] == "weigh a swatch"


def test_half_the_yarn_is_used_at_rows_over_root_two():
    """71 of 100 from a point; a wide first row makes it a little sooner, never later."""
    rows = {row[0]: row for row in table("shawl_shapes", "uses its yarn").rows}
    for shape in shapes():
        half = int(rows[shape.name][2])
        assert round(100 / sqrt(2)) - 2 <= half <= round(100 / sqrt(2)), shape.name


def test_doubling_at_each_doubled_round_uses_half_at_two_thirds():
    """By hand: 1, 2, 4 ... 32 stitches in bands of 2, 3, 6, 12, 24, 48 rounds are 2,048 units (2+6+24+96+384+1,536); half, 1,024, leaves 512 for
    the last band, 16 of its 48 rounds: 63 of 95 rounds, 66 %."""
    rows = {row[0]: row for row in table("shawl_shapes", "uses its yarn").rows}
    assert rows["Circle, doubled"][2] == "66"


def test_side_to_side_has_its_half_in_the_middle():
    rows = {row[0]: row for row in table("shawl_shapes", "uses its yarn").rows}
    quarter, half, three = (int(cell) for cell in rows["Triangle, side to side"][1:])
    assert half == 50 and quarter + three == 100


def test_shares_of_a_growing_shawl_add_to_all_of_it():
    rows = table("shawl_yarn", "grows from a point").rows
    assert [row[1] for row in rows[:3]] == ["1 %", "4 %", "9 %"]
    assert sum(int(row[2].split()[0]) for row in rows) == 100


def test_a_part_of_each_outline_lies_in_the_whole():
    """What is knit at half lies within the finished shape, and every row starts where the start is marked for row 0."""
    for shape in shapes():
        whole = shape.row(1.0) + shape.row(0.0)
        box = [
            min(x for x, _ in whole),
            max(x for x, _ in whole),
            min(y for _, y in whole),
            max(y for _, y in whole),
        ]
        for x, y in shape.row(0.5):
            assert box[0] - 1e-9 <= x <= box[1] + 1e-9 and box[2] - 1e-9 <= y <= box[3] + 1e-9, (
                shape.name
            )


def test_the_measured_figure_names_every_letter():
    picture = next(part for part in charts.body_measures() if isinstance(part, Picture))
    for letter in "ABCDEFGHIJ":
        assert f">{letter}</text>" in picture.svg


def test_a_scarf_by_hand():
    """30 x 180 cm in 230 m/100 g: 434.8 tex, a stitch of sqrt(434.8) / 1.12 = 18.62 mm, 21.6 / 1.862 = 11.60 cm to a cm², 5,400 cm²: 626 m."""
    rows = {row[0]: row for row in table("yarn_by_project", "Meters").rows}
    enough, half = re.findall(r"\d+", rows["Scarf, 30 x 180 cm"][3])
    assert half == "630"
    assert int(half) < int(enough) < 1.25 * int(half)


def numbers(cell: str) -> list[int]:
    return [int(number) for number in re.findall(r"\d+", cell.replace(",", ""))]


@pytest.mark.parametrize("chart", ["yarn_by_project", "skeins_by_project"])
def test_surer_is_never_fewer_and_thicker_is_never_longer(chart):
    for part in getattr(charts, chart)():
        for row in part.rows:
            cells = [numbers(cell) for cell in row[1:]]
            for cell in cells:
                assert cell == sorted(cell, reverse=chart == "yarn_by_project"), row
            for thinner, thicker in zip(cells, cells[1:]):
                assert all(
                    (a >= b) if chart == "yarn_by_project" else (a <= b)
                    for a, b in zip(thinner, thicker)
                ), row


def test_a_larger_size_never_takes_less():
    rows = table("yarn_by_project", "Meters").rows
    for kind in ("Sweater, child", "Sweater, woman", "Sweater, man", "Socks", "Triangle"):
        found = [numbers(row[3])[0] for row in rows if row[0].startswith(kind)]
        assert len(found) > 1 and found == sorted(found), kind


def test_each_yarn_stands_in_the_class_its_column_names():
    """The council's five classes from Super Fine to Bulky, in order."""
    heads = [head.partition(",")[0] for head in table("skeins_by_project", "Skeins").columns[1:]]
    assert heads == ["Super Fine", "Fine", "Light", "Medium", "Bulky"]


def test_sock_rounds_by_hand():
    """60 needles, 40 rows in 10 cm: heel and toe are 20 rounds deep each; 25 cm are 100 rows, less 40: 60 rounds. 30² - 10² = 800 stitches."""
    feet = table("sock_rounds", "Foot rounds")
    rows = {row[0]: dict(zip(feet.columns, row)) for row in feet.rows}
    assert rows["25 cm (9.8 in)"]["40 rows"] == "60"
    assert rows["25 cm (9.8 in)"]["44 rows"] == "70"
    pockets = {row[0]: row for row in table("sock_rounds", "Short-row").rows}
    assert pockets["60"][3:6] == ("40", "800", "5.0 cm")
    assert pockets["72"][-1] == "8 fewer"


def test_the_cranks_foot_of_65_rounds_is_an_adults():
    """Common practice: about 65 foot rounds for an adult. At 40 rows in 10 cm on 60 needles that is a foot of 26 cm and a little."""
    feet = table("sock_rounds", "Foot rounds")
    column = feet.columns.index("40 rows")
    found = {row[0]: int(row[column]) for row in feet.rows}
    assert found["26 cm (10.2 in)"] <= 65 <= found["27 cm (10.6 in)"]
