"""Net contents: tables that agree with Student's t, rules that part mean and single skein, and what dry air does."""

from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.problem import OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.table import read_table
from fibercalc.core.work import work_card
from fibercalc.sell.lot_test import EU, INSPECTOR, THREAD, US, judge, least_sample
from fibercalc.sell.tolerance import (
    allowed_short_length,
    allowed_short_weight,
    correction_factor,
    inspector_factor,
    sample_size,
    tolerable_negative_error,
)


@pytest.mark.parametrize(
    "row", read_table("sell", "nist-hb133-correction").rows, ids=lambda row: f"{row['packages']:g}"
)
def test_each_recalled_factor_is_students_t_over_the_root(row):
    """Half a unit of the last digit; the one of two packages is recalled as cut off (12.706 / sqrt 2 = 8.9845)."""
    assert correction_factor(int(row["packages"])) == pytest.approx(
        row["factor"], abs=0.001 if row["packages"] == 2 else 0.0005
    )


@pytest.mark.parametrize(
    "row", read_table("sell", "si-2006-659-mean-test").rows, ids=lambda row: f"{row['packages']:g}"
)
def test_each_printed_constant_is_students_t_over_the_root(row):
    assert inspector_factor(int(row["packages"])) == pytest.approx(row["factor"], abs=0.0005)


def test_both_factors_agree_with_another_library():
    stats = pytest.importorskip("scipy.stats")
    for count in (2, 7, 30, 113):
        assert correction_factor(count) == pytest.approx(
            stats.t.ppf(0.975, count - 1) / sqrt(count), rel=1e-9
        )
        assert inspector_factor(count) == pytest.approx(
            stats.t.ppf(0.995, count - 1) / sqrt(count), rel=1e-9
        )


@given(st.floats(5.0, 9990.0), st.floats(0.0, 10.0))
def test_a_heavier_label_is_never_allowed_less_in_the_eu(label, more):
    assert tolerable_negative_error(label) <= tolerable_negative_error(label + more) + 1e-9


@given(st.floats(0.1, 560.0), st.floats(0.0, 10.0))
def test_a_heavier_label_is_never_allowed_less_in_the_us(label, more):
    assert allowed_short_weight(label) <= allowed_short_weight(label + more) + 1e-9


@pytest.mark.parametrize("edge", [50, 100, 200, 300, 500, 1000])
def test_bands_of_the_average_rule_meet(edge):
    """Both readings of a border give the same error."""
    assert tolerable_negative_error(edge) == pytest.approx(
        tolerable_negative_error(edge + 0.001), abs=0.11
    )


def test_percents_are_rounded_up_to_a_tenth_and_whole_tenths_stay():
    assert (
        tolerable_negative_error(25) == 2.3
        and tolerable_negative_error(50) == 4.5
        and tolerable_negative_error(200) == 9.0
    )


def test_past_the_ends_of_the_tables_nothing_is_made_up():
    for wrong in (4.9, 10001):
        with pytest.raises(OutOfRange):
            tolerable_negative_error(wrong)
    with pytest.raises(OutOfRange):
        allowed_short_weight(600)
    assert allowed_short_length(1) == pytest.approx(0.03) and allowed_short_length(
        43
    ) == pytest.approx(0.645)


def test_how_many_are_tested():
    assert [sample_size(lot) for lot in (5, 11, 12, 250, 251, 3200, 3201)] == [
        (5, 0),
        (11, 0),
        (12, 0),
        (12, 0),
        (24, 0),
        (24, 0),
        (48, 1),
    ]


def scattered(count: int, mean: float, deviation: float) -> list[float]:
    """Values with just this mean and standard deviation: half above, half below."""
    away = deviation * sqrt((count - 1) / count)
    return [mean + away] * (count // 2) + [mean - away] * (count // 2)


def met(values, label, law, key, lot=40, by="weight"):
    return next(
        rule.met for rule in judge(values, label, by, lot) if (rule.law, rule.key) == (law, key)
    )


def test_twelve_skeins_half_a_gram_light_pass_the_us_mean():
    """Mean 99.40, s 1.50: 0.635 x 1.50 = 0.953 may be missing."""
    assert met(scattered(12, 99.40, 1.50), 100, US, "mean")
    assert not met(scattered(12, 99.04, 1.50), 100, US, "mean")
    assert met(scattered(12, 99.40, 1.50), 100, EU, "mean", lot=12) is False


def test_one_skein_far_too_light_fails_whatever_the_mean():
    """92.5 g is 7.5 short; 7.2 are allowed."""
    values = [92.5, *[101.0] * 11]
    assert not met(values, 100, US, "each") and met([92.9, *values[1:]], 100, US, "each")


def test_an_inspectors_mean_of_thirty():
    """30 skeins, mean 99.2, s 1.4: the limit is 100 - 0.503 x 1.4 = 99.296."""
    assert not met(scattered(30, 99.2, 1.4), 100, INSPECTOR, "mean", 300) and met(
        scattered(30, 99.3, 1.4), 100, INSPECTOR, "mean", 300
    )


def test_one_in_forty_and_none_under_twice_the_error():
    assert met([94.0, *[101.0] * 39], 100, EU, "each") and not met(
        [94.0, 94.0, *[101.0] * 38], 100, EU, "each"
    )
    assert not met([90.9, *[101.0] * 39], 100, EU, "far")


def test_the_thread_law_takes_three_percent_and_no_more():
    """Ten skeins marked 400 yd: a mean of 388 yd passes."""
    assert met([388.0] * 10, 400, THREAD, "mean", by="length") and not met(
        [387.9] * 10, 400, THREAD, "mean", by="length"
    )


def test_no_rule_of_weight_reaches_a_length():
    assert {rule.law for rule in judge([420.0, 421.0], 420, "length", 40)} == {US, THREAD}


def test_a_heavy_label_leaves_out_what_was_not_recalled():
    assert (US, "each") not in {
        (rule.law, rule.key) for rule in judge([900.0, 902.0], 900, "weight", 40)
    }


def test_the_card_says_what_is_not_met():
    texts = {f"skeins.{number}.mass": "95 g" for number in range(1, 13)}
    first, second = work_card(
        find_card("net-contents"), texts | {"sold": "eu", "lot": "12"}
    ).sentences()
    assert "does not keep" in first and "Not met" in second and "95.5" in second


def test_drier_air_weighs_less_and_the_same_air_the_same():
    card = find_card("net-contents")
    same = work_card(card, {"driest": "55 %"}).outcome
    assert same.value("dry_mean") == pytest.approx(same.value("mean"), rel=1e-12)
    assert (
        work_card(card, {"driest": "30 %"}).outcome.value("dry_mean")
        < work_card(card, {"driest": "40 %"}).outcome.value("dry_mean")
        < same.value("mean")
    )


def test_a_mean_within_the_scales_doubt_is_called_so():
    assert any(
        "measure finer" in note
        for note in work_card(find_card("net-contents"), {"sold": "eu"}).notes()
    )


@pytest.mark.parametrize(
    "sold, least",
    [
        (US, "12 skeins from a lot of 40"),
        (EU, "all 40 skeins of the lot"),
        (THREAD, "10 skeins or more"),
    ],
)
@pytest.mark.parametrize("masses", [("100 g", "99 g"), ("101 g", "102 g")])
def test_two_skeins_are_no_test(sold, least, masses):
    """The plan: 12 of a lot of 40 in the US, all of a batch under 100 in the EU and the UK, 10 units by the thread laws."""
    worked = work_card(
        find_card("net-contents"),
        {"sold": sold} | {f"skeins.{number}.mass": mass for number, mass in enumerate(masses, 1)},
    )
    first, second = worked.sentences()
    assert (
        first.startswith("2 skeins are too few for a verdict")
        and least in first
        and "no test" in second
    )
    assert not any(word in first + second for word in ("keeps", "does not keep", "Met:", "Not met"))
    assert {row[3] for row in worked.tables()[0].rows} == {"too few to say"}


@pytest.mark.parametrize(
    "law, lot, least",
    [
        (US, 7, 7),
        (US, 250, 12),
        (US, 251, 24),
        (US, 4000, 48),
        (EU, 99, 99),
        (EU, 100, 20),
        (INSPECTOR, 5000, 20),
        (THREAD, 4, 10),
    ],
)
def test_the_least_sample_of_each_plan(law, lot, least):
    assert least_sample(law, lot) == least
    assert {rule.met for rule in judge([100.0] * least, 100, "weight", lot) if rule.law == law} == {
        True
    }
    assert {
        rule.met for rule in judge([100.0] * (least - 1), 100, "weight", lot) if rule.law == law
    } == {None}


def test_where_an_inspector_weighs_all_chance_has_no_part():
    """A batch of 40, all weighed: a mean of 99.9 is under the label, whatever the spread; of 300 it is within 0.503 x 1.4 = 0.70."""
    assert met(scattered(40, 99.9, 1.4), 100, INSPECTOR, "mean", 40) is False and met(
        scattered(30, 99.9, 1.4), 100, INSPECTOR, "mean", 300
    )


def test_half_a_test_is_said_to_be_half():
    rows = {f"skeins.{number}.mass": "905 g" for number in range(1, 13)}
    assert any(
        "half of that test" in note
        for note in work_card(find_card("net-contents"), rows | {"label_mass": "900 g"}).notes()
    )
