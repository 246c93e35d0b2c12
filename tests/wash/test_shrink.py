"""Sizes before and after a wash lead back to each other, whatever the shrinkage; a loss is divided out."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.problem import BadInputs, OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.wash.several import next_piece_half_width
from fibercalc.wash.shrink import area_change, change_percent, compounded, size_after, size_before

sizes = st.floats(0.1, 1000.0)
shrinks = st.floats(-90.0, 80.0)


@given(sizes, shrinks)
def test_what_is_made_for_a_size_comes_out_at_that_size(finished, shrink):
    made = size_before(finished, shrink)
    assert size_after(made, shrink) == pytest.approx(finished, rel=1e-12)
    assert change_percent(made, finished) == pytest.approx(-shrink, rel=1e-9, abs=1e-9)


@given(sizes, st.floats(0.5, 80.0))
def test_adding_the_loss_always_falls_short(finished, shrink):
    assert size_after(finished * (1 + shrink / 100), shrink) < finished


@given(st.lists(st.floats(-50.0, 50.0), min_size=1, max_size=6))
def test_washes_in_a_row_are_what_the_sizes_say(changes):
    """The compounded change is that from the first size to the last."""
    size = first = 35.0
    for change in changes:
        size *= 1 + change / 100
    assert compounded(changes) == pytest.approx(change_percent(first, size), rel=1e-9, abs=1e-9)


@given(st.floats(-80.0, 80.0), st.floats(-80.0, 80.0))
def test_area_is_the_product_of_both_sides(length, width):
    assert area_change(length, width) == pytest.approx(
        change_percent(1.0, (1 + length / 100) * (1 + width / 100)), rel=1e-9, abs=1e-9
    )


def test_a_cloth_that_loses_everything_is_refused():
    with pytest.raises(OutOfRange):
        size_before(10, 100)


def test_one_sample_says_nothing_of_the_next():
    assert next_piece_half_width([-18.0]) == 0.0
    assert next_piece_half_width([-18.0, -18.0]) == 0.0
    assert next_piece_half_width([-17.0, -19.0]) > 2.0


def test_the_card_says_so_too():
    one = {
        "samples.1.length": "35 cm",
        "samples.1.length_after": "28.7 cm",
        "samples.1.width": "35 cm",
        "samples.1.width_after": "30.1 cm",
    }
    assert "wash three" in " ".join(work_card(find_card("shrinkage"), one).sentences())


def test_a_slip_of_the_pen_is_one_line_that_names_both_measures():
    texts = {
        "samples.1.length": "35 cm",
        "samples.1.length_after": "287 cm",
        "samples.1.width": "35 cm",
        "samples.1.width_after": "30 cm",
    }
    with pytest.raises(BadInputs) as refused:
        work_card(find_card("shrinkage"), texts)
    (line,) = refused.value.problems
    assert line.input == "samples.1.length_after" and "35" in line.text and "287" in line.text


@pytest.mark.parametrize(
    "fiber, first, said",
    [
        ("felts", "gentle", "felting, which nothing undoes"),
        ("felts", "worked", "mixed"),
        ("other", "worked", "cannot felt"),
        ("treated", "gentle", "grows"),
    ],
)
def test_relaxing_and_felting_are_kept_apart(fiber, first, said):
    assert any(
        said in note
        for note in work_card(find_card("shrinkage"), {"fiber": fiber, "first": first}).notes()
    )


@pytest.mark.parametrize("cloth, both", [("woven-plain", True), ("cotton-jersey", False)])
def test_a_direction_without_a_published_figure_stays_empty(cloth, both):
    outcome = work_card(find_card("make-size"), {"how": "published", "cloth": cloth}).outcome
    assert (
        outcome.has("make_length")
        and outcome.has("make_width") == both
        and outcome.has("across") == both
    )


def test_a_published_range_is_carried_through():
    """Plain weave, 5 to 15 %, wanted 63 cm: 66.3 to 74.1 cm to make; the range shown is 95 % of that."""
    outcome = work_card(
        find_card("make-size"), {"how": "published", "cloth": "woven-plain"}
    ).outcome
    assert (
        0.663 < outcome.low("make_length") < 0.668 and 0.735 < outcome.high("make_length") < 0.7412
    )


def test_a_measured_swatch_and_its_percentage_make_the_same_size():
    by_swatch = work_card(find_card("make-size"), {"how": "swatch"}).outcome
    by_percent = work_card(find_card("make-size"), {"how": "percent"}).outcome
    assert by_swatch.value("make_length") == pytest.approx(
        by_percent.value("make_length"), rel=1e-12
    )
    assert by_swatch.high("make_length") - by_swatch.low("make_length") < by_percent.high(
        "make_length"
    ) - by_percent.low("make_length")
