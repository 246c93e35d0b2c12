"""Every chain of sizes leads back to where it began; a loss is divided out, never added."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.problem import OutOfRange
from fibercalc.wash.shrink import size_after, size_before
from fibercalc.weave.chain import (
    crimp_from_take_up,
    finished_width,
    pick_length,
    take_up_from_crimp,
    warp_for_woven,
    width_in_heddle,
    width_off_loom,
    woven_from_warp,
)

sizes = st.floats(0.5, 2000.0)
shrinks = st.floats(-50.0, 80.0)
losses = st.floats(0.0, 60.0)


@given(sizes, shrinks, losses)
def test_width_finished_to_heddle_to_finished(finished, shrink, draw_in):
    assert finished_width(
        width_in_heddle(finished, shrink, draw_in), shrink, draw_in
    ) == pytest.approx(finished, rel=1e-12)


@given(sizes, shrinks, losses)
def test_width_heddle_to_finished_to_heddle(heddle, shrink, draw_in):
    assert width_in_heddle(
        finished_width(heddle, shrink, draw_in), shrink, draw_in
    ) == pytest.approx(heddle, rel=1e-12)


@given(sizes, shrinks, losses)
def test_length_finished_to_warp_to_finished(finished, shrink, take_up):
    warp = warp_for_woven(size_before(finished, shrink), take_up)
    assert size_after(woven_from_warp(warp, take_up), shrink) == pytest.approx(finished, rel=1e-12)


@given(st.floats(0.0, 59.0))
def test_take_up_and_crimp_are_one_fact_in_two_measures(take_up):
    crimp = crimp_from_take_up(take_up)
    assert take_up_from_crimp(crimp) == pytest.approx(take_up, rel=1e-12, abs=1e-12)
    assert crimp >= take_up
    # Yarn over cloth is 1 + c by the one and 1 / (1 - t) by the other.
    assert 1 + crimp / 100 == pytest.approx(1 / (1 - take_up / 100))


@given(sizes, st.floats(0.5, 60.0), st.floats(0.5, 60.0))
def test_adding_the_losses_up_always_falls_short(finished, shrink, draw_in):
    """The trade's worst habit: 14 and 6 percent on top instead of divided out."""
    assert finished_width(finished * (1 + (shrink + draw_in) / 100), shrink, draw_in) < finished


@given(sizes, losses)
def test_a_pick_is_as_long_as_the_heddle_is_wide_and_more(heddle, take_up):
    assert pick_length(heddle, take_up) >= heddle
    assert width_off_loom(heddle, take_up) <= heddle


def test_what_loses_nearly_everything_is_refused():
    with pytest.raises(OutOfRange):
        width_in_heddle(34, 14, 61)
    with pytest.raises(OutOfRange):
        warp_for_woven(10, 100)
