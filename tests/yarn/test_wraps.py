"""Wraps, their conventions, and the classes they match."""

import pytest
from hypothesis import given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.yarn import weight_class as classes
from fibercalc.yarn import wrapping as wraps


def test_fourteen_wraps_match_three_classes():
    """The published ranges overlap: 14 is in Super Fine, Fine and Light (14-30, 12-18, 11-15)."""
    assert classes.classes_by_wraps(classes.COUNCIL, 14, 14) == ("Super Fine", "Fine", "Light")


def test_a_spread_reading_matches_every_class_it_touches():
    """9 to 13 wraps touch Fine (12-18), Light (11-15), Medium (9-12) and Bulky (6-9)."""
    assert classes.classes_by_wraps(classes.COUNCIL, 9, 13) == ("Fine", "Light", "Medium", "Bulky")


@given(middle=some.floats(1.0, 60.0), narrow=some.floats(0.0, 0.5), wider=some.floats(0.0, 10.0))
def test_a_wider_reading_never_loses_a_class(middle, narrow, wider):
    """Knowing less cannot rule anything out."""
    few = classes.classes_by_wraps(classes.COUNCIL, middle - narrow, middle + narrow)
    many = classes.classes_by_wraps(
        classes.COUNCIL, max(middle - narrow - wider, 0.1), middle + narrow + wider
    )
    assert set(few) <= set(many)


@given(reading=some.floats(0.6, 100.0))
def test_every_reading_has_a_class_in_both_lists(reading):
    """No reading falls into a gap between two printed whole numbers."""
    for published_list in classes.LISTS:
        assert classes.classes_by_wraps(published_list, reading, reading)


def test_the_sock_yarn_is_four_ply_by_its_put_up():
    """Tarrow Sock, 420 m in 100 g (238 tex), lies in 350-450 m/100 g, and in Super Fine by the spinners' yards."""
    assert classes.classes_by_grist(classes.PLY_TERMS, 238.1, 238.1) == (
        "4 ply / fingering / sock",
    )
    assert classes.classes_by_grist(classes.COUNCIL, 238.1, 238.1) == ("Super Fine",)


def test_between_450_and_500_meters_no_ply_name_is_invented():
    """The published list has a gap there and the answer shows it."""
    assert classes.classes_by_grist(classes.PLY_TERMS, 1e5 / 475, 1e5 / 475) == ()


def test_jumbo_has_no_published_grist_and_is_never_matched_by_one():
    """A class that lists no yards is not matched by yards."""
    assert "Jumbo" not in classes.classes_by_grist(classes.COUNCIL, 1, 1e6)


def test_agreed_classes_keep_only_what_both_ways_found():
    """Wraps say three, the put-up says one: they agree on the one."""
    by_wraps = classes.classes_by_wraps(classes.COUNCIL, 14, 14)
    assert classes.agreed_classes(
        by_wraps, classes.classes_by_grist(classes.COUNCIL, 238.1, 238.1)
    ) == ("Super Fine",)


@given(ypp=some.floats(50.0, 20000.0), ratio=some.floats(0.3, 0.95))
def test_wraps_and_yards_per_pound_undo_each_other(ypp, ratio):
    """Grist -> wraps -> grist under one convention."""
    assert wraps.yards_per_pound_from_wraps(
        wraps.wraps_from_yards_per_pound(ypp, ratio), ratio
    ) == pytest.approx(ypp)


def test_the_conventions_differ_by_about_two():
    """A close-packed count is more than twice a relaxed one for the same yarn, so the question must be asked."""
    table = wraps.wrap_conventions()
    assert 2 < table.row("name", "packed")["middle"] / table.row("name", "relaxed")["middle"] < 2.6


def test_each_convention_holds_its_own_evidence():
    """Printed pairs of wraps and yards lie in the band of their convention, to half a printed wrap."""
    relaxed, packed = (wraps.wrap_conventions().row("name", name) for name in ("relaxed", "packed"))
    for row, pairs in (
        (relaxed, ((16, 1900), (18, 1700))),
        (packed, ((14, 280), (20, 560), (36, 1680), (60, 4480), (74, 6720))),
    ):
        for printed, ypp in pairs:
            low, high = (wraps.wraps_from_yards_per_pound(ypp, row[end]) for end in ("low", "high"))
            assert low - 0.5 <= printed <= high + 0.5, (printed, ypp)


def test_a_width_of_nothing_is_refused():
    """Wraps over no width are not infinite; they are an error that names the width."""
    with pytest.raises(OutOfRange) as found:
        wraps.wraps_per_inch(14, 0.0)
    assert found.value.name == "width"
