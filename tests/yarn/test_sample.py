"""Several skeins: limits that lie where they should."""

import statistics

import pytest
from hypothesis import given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.yarn import sample, student_t

skeins = some.lists(some.floats(50.0, 1000.0), min_size=2, max_size=12)


@given(values=skeins)
def test_mean_and_deviation_are_the_standard_library_s(values):
    """Two roads to one number: our sums and Python's statistics module."""
    assert sample.mean(values) == pytest.approx(statistics.fmean(values))
    assert sample.standard_deviation(values) == pytest.approx(statistics.stdev(values), abs=1e-6)


@given(
    middle=some.floats(50.0, 1000.0), deviation=some.floats(0.01, 30.0), count=some.integers(2, 40)
)
def test_one_skein_is_promised_less_than_the_average(middle, deviation, count):
    """The limit for the next skein lies below the limit for the mean, and that below the mean."""
    next_one, average = (
        sample.lower_limit_of_next(middle, deviation, count),
        sample.lower_limit_of_mean(middle, deviation, count),
    )
    assert next_one < average < middle


def test_more_skeins_measured_allow_a_higher_put_up():
    """Same mean and spread: ten skeins promise more than three."""
    assert sample.lower_limit_of_mean(420, 5, 10) > sample.lower_limit_of_mean(420, 5, 3)


def test_one_skein_has_no_spread():
    """A single measurement says nothing of how skeins differ: it is refused with the number wanted."""
    with pytest.raises(OutOfRange, match="2 or more"):
        sample.standard_deviation([420.0])


@given(degrees=some.integers(1, 200), share=some.floats(1.0, 99.0))
def test_quantile_and_share_undo_each_other(degrees, share):
    """share -> t -> share."""
    assert student_t.share_below(student_t.quantile(share, degrees), degrees) == pytest.approx(
        share, abs=1e-9
    )


@pytest.mark.parametrize("degrees", [0, -1, 2.5, float("nan")])
def test_degrees_are_whole_and_above_zero(degrees):
    """The finite sum holds for whole numbers only."""
    with pytest.raises(OutOfRange):
        student_t.share_below(1.0, degrees)
