"""Heat: the closed forms against small steps, boiling points against a handbook's fit, and the clock."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.dye import heat, ramp, water
from tests.dye.programs import program as bath_program


@pytest.mark.parametrize("loss", [0.0, 4.0, 12.0])
def test_heating_time_against_small_steps(loss):
    """A bath stepped second by second: what goes in less what is lost."""
    capacity, power, room, temperature, seconds = 41.86, 1.2, 15.0, 9.0, 0.0
    while temperature < 88.0:
        temperature += (power - loss / 1000 * (temperature - room)) / capacity * 0.5
        seconds += 0.5
    assert heat.heating_time(capacity, power, 9.0, 88.0, loss, room) == pytest.approx(
        seconds / 60, rel=2e-3
    )


@given(start=some.floats(5.0, 40.0), end=some.floats(45.0, 90.0), loss=some.floats(0.01, 8.0))
def test_losses_only_lengthen_it_when_the_bath_is_hotter_than_the_room(start, end, loss):
    """And a tiny loss is no loss; the room no warmer than the start."""
    plain, lossy = (
        heat.heating_time(40, 1.5, start, end),
        heat.heating_time(40, 1.5, start, end, loss, start),
    )
    assert lossy > plain
    assert heat.heating_time(40, 1.5, start, end, 1e-6, start) == pytest.approx(plain, rel=1e-5)


def test_a_pot_that_never_gets_there_is_refused_with_the_reason():
    """600 W against 10 W a degree ends at 80."""
    with pytest.raises(OutOfRange, match="put the lid on"):
        heat.heating_time(40, 0.6, 20, 90, 10, 20)


@given(
    rate=some.floats(0.001, 0.05),
    start=some.floats(60.0, 100.0),
    room=some.floats(0.0, 30.0),
    minutes=some.floats(1.0, 60.0),
)
def test_cooling_turns_around(rate, start, room, minutes):
    """Two readings give the rate, the rate gives the time."""
    end = heat.cooled_to(rate, start, room, minutes)
    assume(end > room + 0.5 and start - end > 0.1)
    assert heat.cooling_rate(start, end, room, minutes) == pytest.approx(rate, rel=1e-6)
    assert heat.cooling_time(rate, start, end, room) == pytest.approx(minutes, rel=1e-6)


@given(altitude=some.floats(-152.0, 4115.0))
def test_boiling_points_follow_the_fit_of_the_handbook(altitude):
    """The quadratic through a handbook's points, as a web page fitted it: within 0.4 °C."""
    fit = 4.29997e-8 * altitude**2 - 0.00355313 * altitude + 100.00492
    assert water.boiling_point(altitude) == pytest.approx(fit, abs=0.4)


@given(altitude=some.floats(-400.0, 5000.0))
def test_at_the_boiling_point_vapor_presses_as_the_air_does(altitude):
    """The two formulas turn each other around, below the sea too, where water boils above 100 °C."""
    point = water.boiling_point(altitude)
    assert water.vapor_pressure(point) == pytest.approx(water.air_pressure(altitude))


def test_efficiencies_are_in_order():
    """Low, middle, high of each heater."""
    for row in heat.heater_efficiencies().rows:
        assert 5 <= row["low"] < row["middle"] < row["high"] <= 100


def test_a_program_is_ramps_and_holds_one_after_the_other():
    """From 20 to 60 at a degree a minute, ten minutes there, then to 92 at half a degree, three quarters of an hour."""
    points = bath_program(20, [(60, 1, 10), (92, 0.5, 45)])
    assert points == [(0.0, 20), (40.0, 60), (50.0, 60), (114.0, 92), (159.0, 92)]
    assert [ramp.clock_time(570, minutes) for minutes, _ in points] == [
        "09:30",
        "10:10",
        "10:20",
        "11:24",
        "12:09",
    ]


@given(
    stages=some.lists(
        some.tuples(some.floats(10.0, 95.0), some.floats(0.1, 5.0), some.floats(0.0, 60.0)),
        min_size=1,
        max_size=6,
    )
)
def test_a_plate_never_makes_a_program_shorter(stages):
    """Time runs forward, and asking for more than the plate can do takes as long as the plate needs."""
    free, held = bath_program(9, stages), bath_program(9, stages, 40, 1.2, 3, 15)
    assert [temperature for _, temperature in free] == [temperature for _, temperature in held]
    for points in (free, held):
        assert all(later[0] >= sooner[0] for sooner, later in zip(points, points[1:]))
    assert held[-1][0] >= free[-1][0] - 1e-9


def test_clocks_run_past_midnight():
    """And back from what is typed."""
    assert (
        ramp.clock_time(1430, 15) == "00:05 +1 day" and ramp.clock_time(0, 3000) == "02:00 +2 days"
    )
    assert [ramp.minutes_of_clock(text) for text in ("9", "09:30", "14.05", "0:00")] == [
        540,
        570,
        845,
        0,
    ]


@pytest.mark.parametrize("text", ["24:00", "9:60", "9:5", "half past nine", "", "-1:00", "²:00"])
def test_what_is_no_time_of_day_is_refused(text):
    """One plain line."""
    with pytest.raises(OutOfRange, match="9:30"):
        ramp.minutes_of_clock(text)


@given(
    rate=some.sampled_from([0.4, 1.0, 5.0]),
    loss=some.floats(0.5, 14.0),
    start=some.floats(5.0, 30.0),
    end=some.floats(60.0, 90.0),
    room=some.floats(0.0, 25.0),
)
def test_what_the_room_gets_on_the_way_up_against_small_steps(rate, loss, start, end, room):
    """Turned down or at full power, minute by minute: loss times how much hotter than the room it is."""
    capacity, power = 39.0, 1.5
    minutes = ramp.ramp_time(start, end, rate, capacity, power, loss, room)
    full, temperature, lost, step = minutes > (end - start) / rate, start, 0.0, minutes / 4000
    for _ in range(4000):
        warmer = (
            (power - loss / 1000 * (temperature - room)) / capacity * step * 60
            if full
            else (end - start) / 4000
        )
        lost += loss / 1000 * (temperature + warmer / 2 - room) * step / 60
        temperature += warmer
    assert temperature == pytest.approx(end, abs=0.05)
    assert ramp.lost_on_the_way(start, end, rate, capacity, power, loss, room) == pytest.approx(
        lost, rel=5e-3, abs=2e-3
    )


def test_nylon_takes_up_what_the_book_prints():
    """1.43 to 1.46 J/(g K) (Morton and Hearle, Table 6.1); a working that reads it names that book, not the handbook of the rest."""
    assert 1.43 <= heat.specific_heat("nylon") <= 1.46
    worked = work_card(find_card("bath-heat"), {"fiber": "nylon"})
    assert (
        next(step["source"] for step in worked.working() if step["name"] == "c_fiber")
        == "morton-hearle-heat"
    )


@given(loss=some.floats(0.1, 100.0), capacity=some.floats(1.0, 500.0))
def test_a_loss_and_how_fast_a_pot_cools_turn_around(loss, capacity):
    rate = heat.cooling_rate_by_loss(loss, capacity)
    assert heat.loss_from_cooling(rate, capacity) == pytest.approx(loss)


def test_a_program_can_be_made_of_ramps_timed_before():
    """Whichever takes longer stands: the plate's 20 minutes, or 40 °C at a degree a minute."""
    assert ramp.rise_time(20, 60, 4, 20) == 20 and ramp.rise_time(20, 60, 1, 20) == 40
    assert ramp.program_points(20, [(60, 40, 10), (90, 30, 0)]) == [
        (0, 20),
        (40, 60),
        (50, 60),
        (80, 90),
    ]
