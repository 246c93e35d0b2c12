"""Keeping pace: days by hand, nothing done before it is out, and slower never sooner."""

from datetime import date, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.knit import left, pace

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
    assert all(
        after.begun >= before.begun and after.done >= before.done
        for before, after in zip(parts, parts[1:])
    )


@given(days=lengths, factor=some.floats(1.0, 3.0))
def test_slower_is_never_done_sooner(days, factor):
    quick, slow = (
        pace.keep_pace(days, WEEKS, FRIDAY),
        pace.keep_pace([factor * day for day in days], WEEKS, FRIDAY),
    )
    assert all(a.done <= b.done for a, b in zip(quick, slow))


def test_equal_rows_of_a_growing_shawl_are_not_equal_parts():
    """Row k holds 2 k - 1: four parts of 25 rows are 1, 3, 5 and 7 sixteenths."""
    assert [left.stitches_between(row, row + 25, 1, 2) / 625 for row in (0, 25, 50, 75)] == [
        1,
        3,
        5,
        7,
    ]


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


def test_a_part_s_number_is_a_whole_number_without_a_range():
    """Part 4 of 5 names a part: it is no amount that could lie from 2 to 4. The parts at both ends of the pace are named instead."""
    worked = work_card(find_card("keep-pace"), {})
    r = worked.outcome
    assert r.text("behind_at") == "4" and r.span("behind_at") == "" and not r.rough("behind_at")
    assert (
        "At the slow end of your pace you fall behind in Part 3, at the quick end in none."
        in worked.notes()
    )


def test_dates_hold_the_rough_week_as_well_as_the_rough_speed():
    """Hours in a week are rough too: with them exact the last day's range is narrower."""

    def days(week):
        row = work_card(find_card("keep-pace"), {"week": week}).tables()[0].rows[-1]
        return [datetime.strptime(day.split(" ", 1)[1], "%d %b %Y") for day in row[5].split(" to ")]

    (low, high), (quick, slow) = days("12 ± 2"), days("12 ± 0.01")
    assert low < quick and slow < high


def test_no_hours_are_named_that_would_not_keep_pace():
    """Begun after the second part is out, part one is behind whatever the hours; begun three days late, four days are left of seven."""
    assert not work_card(find_card("keep-pace"), {"start": "2027-06-01"}).outcome.has("needed")
    parts = {
        f"parts.{number}.{name}": text
        for number, (day, row) in enumerate((("2027-03-05", "80"), ("2027-03-12", "81")), 1)
        for name, text in (("name", f"Part {number}"), ("release", day), ("last_row", row))
    }
    on_time, late = (
        work_card(find_card("keep-pace"), parts | {"start": day}).outcome.value("needed")
        for day in ("2027-03-05", "2027-03-08")
    )
    assert late == pytest.approx(on_time * 7 / 4)
