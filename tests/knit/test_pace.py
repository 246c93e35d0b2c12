"""Keeping pace: days by hand, nothing done before it is out, and slower never sooner."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.knit import pace

FRIDAY = date(2027, 3, 5)
WEEKS = [FRIDAY + timedelta(weeks=week) for week in range(5)]
lengths = some.lists(some.floats(0.0, 30.0), min_size=5, max_size=5)


def test_one_day_a_part_is_done_on_its_own_day():
    """Work for one day begun on Friday is done on Friday."""
    assert [part.done for part in pace.keep_pace([1.0] * 5, WEEKS, FRIDAY)] == WEEKS


def test_parts_that_take_ten_days_fall_behind_by_three_more_each_time():
    """5 Mar + 10 days ends on 14 Mar, two days after the second is out; the second then ends on 24 Mar, five days after the third."""
    parts = pace.keep_pace([10.0] * 5, WEEKS, FRIDAY)
    assert [part.done for part in parts[:2]] == [date(2027, 3, 14), date(2027, 3, 24)]
    assert [part.behind for part in parts] == [2, 5, 8, 11, None]
    assert pace.first_behind(parts) == 1


def test_a_week_a_part_keeps_up():
    """Seven days are Friday to Thursday: a day in hand."""
    parts = pace.keep_pace([7.0] * 5, WEEKS, FRIDAY)
    assert [part.behind for part in parts] == [-1, -1, -1, -1, None]
    assert pace.first_behind(parts) == 0


def test_a_late_start_moves_everything():
    """Ten days late: part one begins then, and part two after it."""
    parts = pace.keep_pace([2.0, 2.0], WEEKS[:2], FRIDAY + timedelta(days=10))
    assert [part.begun for part in parts] == [date(2027, 3, 15), date(2027, 3, 17)]


@given(days=lengths, late=some.integers(-30, 60))
def test_no_part_is_begun_before_it_is_out_or_before_there_is_time(days, late):
    start = FRIDAY + timedelta(days=late)
    parts = pace.keep_pace(days, WEEKS, start)
    for part in parts:
        assert part.begun >= part.out and part.begun >= start and part.done >= part.begun
    assert all(after.begun >= before.begun and after.done >= before.done for before, after in zip(parts, parts[1:]))


@given(days=lengths, factor=some.floats(1.0, 3.0))
def test_slower_is_never_done_sooner(days, factor):
    quick, slow = pace.keep_pace(days, WEEKS, FRIDAY), pace.keep_pace([factor * day for day in days], WEEKS, FRIDAY)
    assert all(a.done <= b.done for a, b in zip(quick, slow))


def test_equal_rows_of_a_growing_shawl_are_not_equal_parts():
    """Row k holds 2 k - 1: four parts of 25 rows are 1, 3, 5 and 7 sixteenths."""
    assert [pace.part_stitches(row, row + 25, 1, 2) / 625 for row in (0, 25, 50, 75)] == [1, 3, 5, 7]


@given(minutes=some.floats(1.0, 5000.0), days=some.floats(0.5, 60.0))
def test_the_time_a_week_that_is_needed_is_just_enough(minutes, days):
    week = pace.minutes_per_week_needed(minutes, days)
    if 1 <= week <= pace.MINUTES_A_WEEK:
        assert pace.calendar_days(minutes, week) == pytest.approx(days)


def test_releases_out_of_order_are_refused():
    """A typing slip, named in words."""
    with pytest.raises(OutOfRange, match="earlier day"):
        pace.keep_pace([1.0, 1.0], WEEKS[1::-1], FRIDAY)
    with pytest.raises(OutOfRange, match="2 parts with a length and 1 with a day"):
        pace.keep_pace([1.0, 1.0], WEEKS[:1], FRIDAY)
