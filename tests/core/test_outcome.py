"""Rounding is honest: never finer than the spread supports, down for what is promised, up for what must be bought."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.card import Result
from fibercalc.core.outcome import Found, round_to, rounding_step, write_found
from fibercalc.core.settings import Settings
from fibercalc.core.units import LENGTH, LINEAR_DENSITY, MONEY


def written(value, low=None, high=None, unit="yd", settings=Settings(), **kwargs):
    result = Result(LENGTH, "X", units=("yd", "m"), finest=(1, 1), **kwargs, name="x")
    return write_found(
        Found(result, value, value if low is None else low, value if high is None else high),
        LENGTH.unit(unit),
        settings,
    )


def test_420_meters_are_459_yards_and_never_460():
    """420 m = 459.317... yd (0.9144 m exactly); what is promised rounds down."""
    assert written(420.0, rounding="down")[0] == "459\u00a0yd"
    assert written(420.6, rounding="down")[0] == "459\u00a0yd"  # 459.97 yd
    assert written(420.0, rounding="up")[0] == "460\u00a0yd"


def test_a_float_just_under_a_whole_number_is_that_number():
    assert written(210 * 0.9144 * (1 - 1e-15), rounding="down")[0] == "210\u00a0yd"
    assert written(210 * 0.9144 * (1 + 1e-15), rounding="up")[0] == "210\u00a0yd"


def test_the_range_is_rounded_outward_at_the_value_s_own_step():
    text, span = written(965 * 0.9144, 855.4 * 0.9144, 1074.2 * 0.9144)
    assert text == "970\u00a0yd" and span == "850 to 1,080\u00a0yd"


def test_the_comma_style_groups_with_a_narrow_space():
    assert written(1234 * 0.9144, settings=Settings("comma"))[0] == "1\u202f234\u00a0yd"


def test_money_carries_the_user_s_sign():
    result = Result(MONEY, "Cost", finest=(0.01,), rounding="up", name="cost")
    assert write_found(Found(result, 15.987, 15.987, 15.987), MONEY.base, Settings())[0] == "€15.99"
    assert (
        write_found(Found(result, 15.987, 15.987, 15.987), MONEY.base, Settings(money="SEK"))[0]
        == "15.99\u00a0SEK"
    )


def test_money_has_both_places_of_its_cents_or_none():
    """€1,732.2 is no price; a spread of tens takes the cents away."""
    result = Result(MONEY, "Left", finest=(0.01,), name="left")
    assert (
        write_found(Found(result, 1732.2, 1731.7, 1732.7), MONEY.base, Settings())[0] == "€1,732.20"
    )
    assert write_found(Found(result, 1732.2, 1700.0, 1764.4), MONEY.base, Settings())[0] == "€1,732"


def test_an_inverse_unit_turns_the_range_around():
    result = Result(LINEAR_DENSITY, "Grist", units=("yd/lb",), finest=(1,), name="grist")
    _, span = write_found(
        Found(result, 250.0, 200.0, 300.0), LINEAR_DENSITY.unit("yd/lb"), Settings()
    )
    assert (
        span == "1,600 to 2,500\u00a0yd/lb"
    )  # 496,055 / 300 = 1,653 and / 200 = 2,480, outward at the step


@given(st.floats(-1e6, 1e6), st.floats(1e-3, 1e5))
def test_rounding_keeps_its_direction(value, half):
    step = rounding_step(value, half, None)
    assert round_to(value, step, "down") <= value + 1e-6 * max(1, abs(value))
    assert round_to(value, step, "up") >= value - 1e-6 * max(1, abs(value))
    assert step <= half / 4 * (1 + 1e-6) and step >= half / 40 * (1 - 1e-6)


@pytest.mark.parametrize(
    ("half", "finest", "step"),
    [(110, 1, 10), (8, 1, 1), (8, 0.1, 1), (3, 1, 1), (0.5, 1, 1), (39, None, 1), (41, None, 10)],
)
def test_the_step_follows_the_spread(half, finest, step):
    assert rounding_step(1000, half, finest) == pytest.approx(step)


def test_a_minus_stands_before_the_money_sign():
    result = Result(MONEY, "Left", finest=(0.01,), name="left")
    assert write_found(Found(result, -3.98), MONEY.base, Settings(money="€"))[0] == "−€3.98"
    assert write_found(Found(result, -3.98), MONEY.base, Settings(money="kr"))[0] == "−3.98\u00a0kr"
