"""Leftover weft dealt evenly, and hours at the loom: what goes in comes out, and the last piece is not short."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.problem import BadInputs, OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.weave.cards.weave_pace.shown import parts as parts_of_the_time
from fibercalc.weave.cards.weft_left.asked import dealt, ranges
from fibercalc.weave.leftovers import (
    laid_out,
    pick_length,
    picks_from,
    stripe_picks,
    stripes_that_fit,
    yarn_length,
)
from fibercalc.weave.pace import sittings, weaving_minutes

LEFT, PACE = find_card("weft-left"), find_card("weave-pace")


@given(st.floats(0, 5000), st.integers(1, 12), st.integers(1, 12))
def test_stripes_use_no_more_than_there_is_and_nearly_all_of_it(picks, pieces, stripes):
    each = stripe_picks(picks, pieces, stripes)
    assert each % 2 == 0 and each * pieces * stripes <= picks + 1e-6
    assert (each + 2) * pieces * stripes > picks - 1e-6


@given(
    st.lists(st.integers(0, 200).map(lambda pairs: 2 * pairs), min_size=1, max_size=6),
    st.integers(1, 8),
    st.integers(0, 2000),
)
def test_a_layout_fills_the_piece_with_whole_stripes(picks, stripes, room):
    fitted = stripes_that_fit(picks, stripes, room)
    assert (
        all(small <= large and small % 2 == 0 for small, large in zip(fitted, picks))
        and stripes * sum(fitted) <= room
    )
    runs = laid_out(fitted, stripes, room)
    assert sum(count for _, count in runs) == room
    for color, each in enumerate(fitted):
        assert [count for found, count in runs if found == color] == [each] * (
            stripes if each else 0
        )
    inner = [count for color, count in runs[1:-1] if color == -1]
    assert not inner or max(inner) == min(inner)


def test_a_layout_that_does_not_fit_is_refused():
    with pytest.raises(OutOfRange):
        laid_out([10], 3, 29)


@given(
    st.floats(1, 500), st.floats(0, 50), st.floats(50, 2000), st.floats(0.05, 2), st.floats(0, 40)
)
def test_weight_to_picks_and_back(mass, tare, tex, width, take_up):
    """The picks weigh what was on the shuttle."""
    each = pick_length(width, take_up)
    picks = picks_from(yarn_length(mass, tare, tex), each)
    assert picks * each * tex / 1000 == pytest.approx(max(mass - tare, 0.0))
    assert each * (1 - take_up / 100) == pytest.approx(width)


def test_the_low_end_of_every_ball_still_weaves_its_stripes():
    """The example: what each ball weaves at its low end holds the stripes of all three pieces."""
    outcome = work_card(LEFT, {}).outcome
    case = outcome.case
    for (low, high), ball, each in zip(ranges(outcome), case.balls, dealt(outcome)):
        assert low < ball.picks < high
        assert each * case.stripes * case.pieces <= low
    assert outcome.value("striped") + outcome.value("main") == case.piece_picks


def test_one_ball_has_the_range_of_the_whole_answer():
    """A ball alone: its own range is the range that the card carries for all of them, but for the beat, which no pick depends on."""
    outcome = work_card(LEFT, {"balls.1.mass": "40 g"}).outcome
    low, high = ranges(outcome)[0]
    assert (low, high) == pytest.approx((outcome.low("picks"), outcome.high("picks")), rel=1e-6)


def test_an_exact_scale_leaves_no_spread_but_what_else_is_rough():
    exact = work_card(LEFT, {"balls.1.mass": "40 g +/- 0 g"}).outcome
    rough = work_card(LEFT, {"balls.1.mass": "40 g +/- 2 g"}).outcome
    assert exact.high("picks") - exact.low("picks") < rough.high("picks") - rough.low("picks")


def test_too_many_stripes_are_said_and_nothing_is_promised():
    worked = work_card(LEFT, {"balls.1.mass": "3 g", "stripes": "40", "pieces": "12"})
    assert worked.outcome.value("striped") == 0 and "too little" in worked.sentences()[1]


@pytest.mark.parametrize(
    "texts, line",
    [
        (
            {"balls.1.mass": "30 g", "tare": "30 g"},
            "Ball 1 weighs 30 g, no more than its shuttle or core of 30 g.",
        ),
        (
            {"hem": "192"},
            "Hems of 192 picks: two of them leave nothing of the 384 picks of a piece; give fewer.",
        ),
    ],
)
def test_what_cannot_be_is_said_in_one_line(texts, line):
    with pytest.raises(BadInputs) as caught:
        work_card(LEFT, texts)
    assert [problem.text for problem in caught.value.problems] == [line]


@given(st.floats(0, 100_000), st.floats(10, 600), st.floats(0, 9))
def test_sittings_hold_the_work_and_none_is_idle(minutes, sitting, settling):
    count = sittings(minutes, sitting, settling)
    assert (
        count * (sitting - settling) >= minutes - 1e-3
        and (count - 1) * (sitting - settling) < minutes + 1e-3
    )


def test_a_stick_that_costs_nothing_changes_nothing():
    assert weaving_minutes(100, 50, 10, 60, 1.0) == weaving_minutes(100, 50, 10) == 20
    assert weaving_minutes(100, 50, 10, 50, 3.0) == 40


def test_parts_of_the_time_add_up():
    worked = work_card(PACE, {})
    parts = sum(minutes for _, minutes in parts_of_the_time(worked.outcome))
    assert parts == pytest.approx(worked.outcome.value("total"))
    assert (
        worked.outcome.low("total") < worked.outcome.value("total") < worked.outcome.high("total")
    )


def test_settling_that_fills_the_sitting_is_refused():
    with pytest.raises(BadInputs) as caught:
        work_card(PACE, {"sitting": "30 min", "settling": "30 min"})
    assert "leaves nothing" in caught.value.problems[0].text
