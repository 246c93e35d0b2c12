"""Rounding is honest: never finer than the spread supports, down for what is promised, up for what must be bought."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.card import Result
from fibercalc.core.outcome import Found, round_to, rounding_step, write_found
from fibercalc.core.settings import Settings
from fibercalc.core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, MONEY, NUMBER, PERCENT, TEMPERATURE, TIME


def written(value, low=None, high=None, unit="yd", settings=Settings(), **kwargs):
    result = Result("x", LENGTH, "X", units=("yd", "m"), finest=(1, 1), **kwargs)
    return write_found(Found(result, value, value if low is None else low, value if high is None else high), LENGTH.unit(unit), settings)


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
    result = Result("cost", MONEY, "Cost", finest=(0.01,), rounding="up")
    assert write_found(Found(result, 15.987, 15.987, 15.987), MONEY.base, Settings())[0] == "€15.99"
    assert write_found(Found(result, 15.987, 15.987, 15.987), MONEY.base, Settings(money="SEK"))[0] == "15.99\u00a0SEK"


def test_money_has_both_places_of_its_cents_or_none():
    """€1,732.2 is no price; a spread of tens takes the cents away."""
    result = Result("left", MONEY, "Left", finest=(0.01,))
    assert write_found(Found(result, 1732.2, 1731.7, 1732.7), MONEY.base, Settings())[0] == "€1,732.20"
    assert write_found(Found(result, 1732.2, 1700.0, 1764.4), MONEY.base, Settings())[0] == "€1,732"



def test_an_inverse_unit_turns_the_range_around():
    result = Result("grist", LINEAR_DENSITY, "Grist", units=("yd/lb",), finest=(1,))
    _, span = write_found(Found(result, 250.0, 200.0, 300.0), LINEAR_DENSITY.unit("yd/lb"), Settings())
    assert span == "1,600 to 2,500\u00a0yd/lb"  # 496,055 / 300 = 1,653 and / 200 = 2,480, outward at the step


@given(st.floats(-1e6, 1e6), st.floats(1e-3, 1e5))
def test_rounding_keeps_its_direction(value, half):
    step = rounding_step(value, half, None)
    assert round_to(value, step, "down") <= value + 1e-6 * max(1, abs(value))
    assert round_to(value, step, "up") >= value - 1e-6 * max(1, abs(value))
    assert step <= half / 4 * (1 + 1e-6) and step >= half / 40 * (1 - 1e-6)


@pytest.mark.parametrize(("half", "finest", "step"), [(110, 1, 10), (8, 1, 1), (8, 0.1, 1), (3, 1, 1), (0.5, 1, 1), (39, None, 1), (41, None, 10)])
def test_the_step_follows_the_spread(half, finest, step):
    assert rounding_step(1000, half, finest) == pytest.approx(step)


def test_a_minus_stands_before_the_money_sign():
    result = Result("left", MONEY, "Left", finest=(0.01,))
    assert write_found(Found(result, -3.98), MONEY.base, Settings(money="€"))[0] == "−€3.98"
    assert write_found(Found(result, -3.98), MONEY.base, Settings(money="kr"))[0] == "−3.98\u00a0kr"


def small(value, spread=0.0, of=MASS, finest=1.0, unit="g", **kwargs):
    result = Result("x", of, "X", units=(unit,), finest=(finest,), **kwargs)
    return write_found(Found(result, value, value - spread / 2, value + spread / 2), of.unit(unit), Settings())[0].partition("\u00a0")[0]


@pytest.mark.parametrize(("value", "spread", "finest", "text"), [
    (0.4, 0, 1, "0.4"), (0.5, 0, 1, "0.5"), (0.043, 0, 0.01, "0.043"), (0.05, 0, 0.1, "0.05"), (10, 0, 1, "10"), (10.4, 0, 1, "10.4"), (60.4, 0, 1, "60"), (5.15, 0, 0.5, "5.2"),
    (23, 20, 5, "25"), (23, 10, 5, "23"), (10.4, 4, 1, "10"), (10.4, 3.9, 1, "10.4"), (0.00004, 0, 1, "0.00004"), (1e-9, 0, 1, "0"), (0, 0, 0.1, "0.0"), (-0.4, 0, 1, "−0.4"), (0.2, 4, 1, "0"),
])
def test_a_small_amount_is_not_falsified_by_its_step(value, spread, finest, text):
    """At most 1 % of it or a tenth of its spread away, in the coarsest step that keeps that; below a millionth there is nothing."""
    assert small(value, spread, finest=finest) == text


@pytest.mark.parametrize(("rounding", "text"), [("up", "10.5"), ("down", "10.4"), ("nearest", "10.4")])
def test_a_small_amount_keeps_its_direction(rounding, text):
    assert small(10.42, rounding=rounding) == text


@pytest.mark.parametrize(("of", "unit", "value", "text"), [(COUNT, "", 0.4, "0"), (MONEY, "", 0.4, "€0"), (TEMPERATURE, "°C", 9.4, "9"), (NUMBER, "", 3.4, "3"), (PERCENT, "%", 3.4, "3"), (NUMBER, "", 0.04, "0.04"), (PERCENT, "%", 0.47, "0.5")])
def test_what_is_no_amount_keeps_its_step_but_for_a_zero(of, unit, value, text):
    assert small(value, of=of, unit=unit) == text


def test_what_is_promised_keeps_whole_units():
    assert small(12.9, at_step=True, rounding="down") == "12" and small(0.9, at_step=True, rounding="down") == "0"


def test_a_range_does_not_begin_at_nothing_that_does_not():
    result = Result("x", TIME, "X", units=("min",), finest=(1000,))
    assert write_found(Found(result, 2763, 829, 7055), TIME.unit("min"), Settings()) == ("2,800\u00a0min", "800 to 7,100\u00a0min")
