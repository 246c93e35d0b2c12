"""Tables of the knit chapter: what must hold within each, whatever copy of it is read one day."""

import pytest

from fibercalc.core.table import read_table

BODIES = ("council-body-women", "council-body-men", "council-body-children", "council-body-babies")


@pytest.mark.parametrize("name", [*BODIES, "head-girths"])
def test_measures_never_shrink_from_one_size_to_the_next(name):
    table = read_table("knit", name)
    for column in table.columns:
        values = [row[column] for row in table.rows]
        if isinstance(values[0], float):
            assert all(isinstance(value, float) and value > 0 for value in values), column
            assert values == sorted(values), column


@pytest.mark.parametrize("name", BODIES)
def test_low_is_not_above_high(name):
    table = read_table("knit", name)
    lows = [column for column in table.columns if column.endswith("_low")]
    for row in table.rows:
        for low in lows:
            assert row[low] <= row[low.removesuffix("_low") + "_high"], (row["key"], low)


def test_keys_are_of_one_kind_and_not_repeated():
    """A size is chosen by its key alone, from all tables at once."""
    keys = [row["key"] for name in BODIES for row in read_table("knit", name).rows]
    assert len(keys) == len(set(keys)) == 9 + 5 + 8 + 5


def test_the_two_constants_of_a_state_multiply_to_the_third():
    """Ks is c w l²; the recalled values of the wet state miss by less than their last digit would."""
    for row in read_table("wash", "munden-constants").rows:
        assert row["Ks"] == pytest.approx(row["Kc"] * row["Kw"], rel=0.007), row["state"]


def test_rib_has_no_invented_factor():
    rows = {row["key"]: row for row in read_table("knit", "structure-factors").rows}
    for key in ("rib-1x1", "rib-2x2"):
        assert (rows[key]["low"], rows[key]["middle"], rows[key]["high"], rows[key]["status"]) == (
            "",
            "",
            "",
            "unknown",
        )


def test_structure_ranges_are_in_order_and_wide_where_no_one_has_measured():
    for row in read_table("knit", "structure-factors").rows:
        if row["status"] == "practice":
            assert row["low"] < row["middle"] < row["high"]
            assert row["high"] / row["low"] >= 1.3, (
                f"{row['key']} is narrower than common practice can know"
            )


def test_the_float_of_stranded_colorwork_is_a_wale_wide():
    """1 + 1/Kw = 1.24, printed in the row's note, lies in its range."""
    row = read_table("knit", "structure-factors").row("key", "stranded")
    constant = read_table("wash", "munden-constants").row("state", "wet")["Kw"]
    assert f"{1 + 1 / constant:.2f}" in row["note"]
    assert row["low"] < 1 + 1 / constant < row["high"]


def test_needles_run_upward_and_their_names_in_their_ways():
    """US numbers run upward, old UK numbers downward; only two US numbers are printed for two sizes each."""
    rows = read_table("knit", "needle-sizes").rows
    sizes = [row["mm"] for row in rows]
    assert sizes == sorted(set(sizes))
    names = [row["us"] for row in rows if row["us"]]
    assert {name for name in names if names.count(name) > 1} == {"US 17", "US 19"}
    numbers = [_number(row["us"]) for row in rows if row["us"]]
    assert numbers == sorted(numbers)
    old = [-_number(row["uk"]) for row in rows if row["uk"]]
    assert old == sorted(old)


def _number(name: str) -> float:
    """US 000 is two below US 0."""
    digits = name.split()[1]
    return 1.0 - len(digits) if set(digits) == {"0"} else float(digits)


def test_ease_is_as_wide_as_its_class_says():
    rows = read_table("knit", "ease").rows
    assert all(row["high"] == "" or row["low"] <= row["high"] for row in rows)
    assert {row["unit"] for row in rows} == {"in", "cm", "%"}
