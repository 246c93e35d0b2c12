"""Rinses, causes, drying and speckles: fits find what was put in, curves turn around, chance is simulated."""

import random
from math import sqrt

import pytest
from hypothesis import assume, given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.dye import bleed, measuring, speckle
from fibercalc.dye import drying_pace as drying


@given(share=some.floats(5.0, 95.0), start=some.floats(0.1, 100.0), count=some.integers(2, 8))
def test_an_exact_fall_is_found_exactly(share, start, count):
    """And the rinses still needed lead on to what was wanted."""
    fit = bleed.fit_carry_over([(rinse, start * (share / 100) ** rinse) for rinse in range(count)])
    assert (
        fit.share == pytest.approx(share)
        and fit.low == pytest.approx(share, rel=1e-3)
        and fit.high == pytest.approx(share, rel=1e-3)
    )
    rinses = bleed.rinses_needed(fit.last, fit.last / 50, fit.share)
    assert fit.last * (fit.share / 100) ** rinses == pytest.approx(fit.last / 50, rel=1e-6)


def test_the_fitted_range_holds_the_truth_about_nineteen_times_in_twenty():
    """Five readings, each 20 % off at random (log-normal): Student's t, 2,000 lots."""
    chance = random.Random(7)
    held = 0
    for _ in range(2000):
        fit = bleed.fit_carry_over(
            [(rinse, 10 * 0.3**rinse * chance.lognormvariate(0, 0.2)) for rinse in range(5)]
        )
        held += fit.low <= 30 <= fit.high
    assert 0.935 < held / 2000 < 0.965


def test_a_readings_error_sets_the_least_spread():
    """Two readings fit a line exactly and still prove little."""
    assert bleed.fit_carry_over([(1, 4), (2, 1)]).low == pytest.approx(25)
    rough = bleed.fit_carry_over([(1, 4), (2, 1)], reading_error=40)
    assert rough.low < 18 and rough.high > 35


def test_rinses_that_do_not_fall_are_refused_with_the_reason():
    """The yarn gives off dye."""
    with pytest.raises(OutOfRange, match="gives off dye"):
        bleed.rinses_needed(5, 1, 100)
    with pytest.raises(OutOfRange, match="two rinses"):
        bleed.fit_carry_over([(1, 5.0), (1, 4.0)])
    assert bleed.rinses_needed(0.5, 1, 30) == 0


def test_a_ladder_match_is_sure_to_half_a_jar():
    """Between jar 2 and 4 around 12.5 %."""
    low, high = bleed.ladder_range(3)
    assert low == pytest.approx(12.5 / sqrt(2)) and high == pytest.approx(12.5 * sqrt(2))
    assert bleed.ladder_range(0)[1] == 100


@pytest.mark.parametrize(
    "signs, first",
    [
        ({"rinses_fall": "yes", "bleeds_again": "no"}, "liquor_left"),
        ({"high_ph": "yes", "bath_colored": "yes"}, "little_acid"),
        ({"short_hold": "yes", "bath_colored": "yes", "high_ph": "no"}, "held_short"),
        ({"over_held": "yes", "bleeds_again": "yes", "cloth_stain": "yes"}, "over_held"),
        ({"hard_water": "yes", "bath_colored": "yes", "over_held": "no"}, "hard_water"),
        ({"other_fiber": "yes", "bleeds_again": "yes"}, "other_fiber"),
        ({"fibers_seen": "yes", "cloth_stain": "no"}, "lint"),
    ],
)
def test_each_cause_has_signs_that_put_it_first(signs, first):
    """And nothing is left of it when they are the other way around."""
    found = bleed.likely_causes(signs)
    assert found[0][0] == first
    turned = {symptom: {"yes": "no", "no": "yes"}[word] for symptom, word in signs.items()}
    assert first not in dict(bleed.likely_causes(turned))


def test_what_is_not_known_says_nothing():
    """No signs, no causes; an unknown sign or word is an error."""
    symptoms = [row["symptom"] for row in bleed.bleed_symptoms().rows]
    assert bleed.likely_causes(dict.fromkeys(symptoms, "not known")) == []
    assert set(symptoms) <= set(bleed.bleed_causes().columns)
    with pytest.raises(KeyError):
        bleed.likely_causes({"moon": "yes"})
    with pytest.raises(ValueError):
        bleed.likely_causes({"high_ph": "maybe"})


def test_lint_and_dye_are_told_apart():
    """Hairs, a stain, both, neither."""
    assert [
        bleed.lint_or_dye(*pair)
        for pair in (
            ("yes", "no"),
            ("no", "yes"),
            ("yes", "yes"),
            ("no", "no"),
            ("yes", "not known"),
        )
    ] == ["lint", "dye", "both", "neither", "not known"]
    assert bleed.yarn_gives_off(35, 20) and not bleed.yarn_gives_off(15, 20)


rests = some.floats(3.0, 25.0)


@given(
    wet=some.floats(30.0, 200.0),
    rest=rests,
    pace=some.floats(0.3, 20.0),
    falls=some.floats(30.0, 80.0),
    share=some.floats(0.02, 0.98),
)
def test_drying_turns_around(wet, rest, pace, falls, share):
    """The hours to a wetness are the hours after which it is that wet, and a weighing there gives the pace back."""
    dry = rest + share * (wet - rest)
    hours = drying.drying_hours(wet, dry, rest, pace, falls)
    assert drying.regain_after(wet, rest, pace, hours, falls) == pytest.approx(dry, rel=1e-6)
    assume(0 < hours < 1000)
    assert drying.pace_from_weighing(wet, dry, rest, hours, falls) == pytest.approx(pace, rel=1e-6)


def test_drying_against_small_steps():
    """Steady above 50 %, in proportion to what is left below."""
    water, hours = 90.0, 0.0
    while water > 16.0:
        water -= 2.0 * min(1.0, (water - 15) / (50 - 15)) * 0.001
        hours += 0.001
    assert drying.drying_hours(90, 16, 15, 2.0, 50) == pytest.approx(hours, rel=1e-3)


@given(wet=some.floats(60.0, 200.0), rest=rests, hours=some.floats(0.0, 1000.0))
def test_yarn_never_gets_drier_than_the_room_lets_it(wet, rest, hours):
    """However long it hangs."""
    assert drying.regain_after(wet, rest, 5.0, hours) >= rest


def test_a_cold_damp_cellar_is_slower_than_a_warm_dry_room():
    """The demo studio's cellar, 11 °C and 78 %, against 20 °C and 50 %; air that is full takes nothing."""
    cellar, room = (drying.pace_in_room(drying.vapor_lack(*air)) for air in ((11, 78), (20, 50)))
    assert 3 < room / cellar < 5
    with pytest.raises(OutOfRange, match="drier air"):
        drying.pace_in_room(drying.vapor_lack(15, 100))


def test_the_still_air_rule_is_a_half_to_two_days():
    """What STILL_AIR says it stands for: a spun skein at 80 % water, 20 °C and half-damp air, to a point above rest."""
    hours = [
        drying.drying_hours(
            80, 13.8, 12.8, drying.pace_in_room(drying.vapor_lack(20, 50), each), falls
        )
        for each, falls in zip(drying.STILL_AIR, drying.PACE_FALLS)
    ]
    assert hours[1] == pytest.approx(28, abs=3) and 12 <= hours[2] < hours[1] < hours[0] <= 60


@given(spots=some.floats(1.0, 5000.0))
def test_the_range_of_spots_is_that_of_a_poisson_count(spots):
    """Near the mean plus and minus two standard deviations, and rising with it."""
    low, high = speckle.spots_range(spots)
    assert (
        low <= spots <= high
        and abs(low - (spots - 1.96 * sqrt(spots))) < 2.5
        and abs(high - (spots + 1.96 * sqrt(spots))) < 2.5
    )


def test_spots_by_throwing_them():
    """Grains thrown one by one at 50 skeins: 95 of 100 counts lie in the range, and pairs differ as often as said."""
    chance, skeins = random.Random(3), 4000
    counts = [0] * skeins
    for _ in range(40 * skeins):
        counts[chance.randrange(skeins)] += 1
    low, high = speckle.spots_range(40)
    inside = sum(low <= count <= high for count in counts) / skeins
    assert 0.94 < inside < 0.98
    pairs = sum(max(pair) >= 1.5 * min(pair) for pair in zip(counts[::2], counts[1::2])) / (
        skeins / 2
    )
    assert 100 * pairs == pytest.approx(speckle.chance_busier(40, 1.5), abs=2.5)


def test_bulking_is_what_makes_a_pinch_weighable():
    """0.06 g on a scale right to 0.02 g errs by a third; 1.2 g of mix from a batch with 2.16 g of dye by about 2 %."""
    assert measuring.error_share(0.02, 0.06) > 33
    assert speckle.dose_error_bulked(2.16, 1.2, 0.02) < 2
