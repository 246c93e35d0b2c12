"""Demand from sales that were cut off by selling out: what must hold, a published life test, and what the newsvendor asks."""

from math import sqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fibercalc.core.problem import OutOfRange
from fibercalc.sell import demand
from fibercalc.yarn.sample import mean, standard_deviation
from fibercalc.yarn.student_t import quantile


def test_the_lamps_of_gupta_come_out_as_recalled():
    """119 of 300 lamps failed before 1,450 h, at 1,304.832 h on average with a variance of 12,128.25; Cohen's table gives 1,502 and 202 h (from memory)."""
    off = sqrt(12128.25 * 119 / 118)
    found, deviation = demand.censored_normal(
        [1304.832 - off] * 59 + [1304.832 + off] * 59 + [1304.832], [1450.0] * 181
    )
    assert found == pytest.approx(1502.3, abs=1.5)
    assert deviation == pytest.approx(202.0, abs=0.7)


def test_without_a_sold_out_release_it_is_students_prediction():
    """Mean, deviation and the count that is enough are those of an ordinary sample."""
    sold = [31.0, 44.0, 38.0, 52.0, 40.0]
    found = demand.demand_from_sales(sold, [60.0] * 5, 0.25)
    assert (found.mean, found.deviation) == (
        pytest.approx(mean(sold)),
        pytest.approx(standard_deviation(sold)),
    )
    assert found.count_for(0.9) == pytest.approx(
        mean(sold) + quantile(90, 4) * standard_deviation(sold) * sqrt(1 + 1 / 5), rel=1e-6
    )


def test_the_likelihood_is_at_its_top():
    """Moving either number of the fit makes what was seen less likely."""
    seen, cut = [30.0, 35.0, 41.0, 38.0], [50.0, 45.0]

    def less_likely(m, s):
        from math import erfc, log

        return -sum(-log(s) - ((value - m) / s) ** 2 / 2 for value in seen) - sum(
            log(0.5 * erfc((edge - m) / s / sqrt(2))) for edge in cut
        )

    m, s = demand.censored_normal(seen, cut)
    best = less_likely(m, s)
    assert all(
        less_likely(m * a, s * b) > best
        for a, b in ((1.01, 1), (0.99, 1), (1, 1.02), (1, 0.98), (1.01, 1.02))
    )


def test_one_sold_out_release_counts_as_the_mean_above_it():
    """The mean is that of all releases with the cut one filled in."""
    found = demand.demand_from_sales([40, 44, 51], [40, 48, 60], 0.25)
    assert found.mean == pytest.approx(
        (44 + 51 + demand.mean_above(40, found.mean, found.deviation)) / 3
    )


def test_where_all_sold_out_the_mean_makes_that_as_likely_as_not():
    found = demand.demand_from_sales([40, 48], [40, 48], 0.3)
    chance = 1.0
    for edge in (40, 48):
        chance *= 1 - demand.normal_share_below((edge - found.mean) / found.deviation)
    assert found.at_least and chance == pytest.approx(0.5, abs=1e-6)


releases = st.lists(st.tuples(st.integers(1, 200), st.integers(0, 60)), min_size=1, max_size=12)


@settings(max_examples=150, deadline=None, derandomize=True)
@given(rows=releases, spread=st.floats(0.05, 0.8), share=st.floats(0.05, 0.95))
def test_any_past_gives_a_count_that_keeps_its_promise(rows, spread, share):
    """The mean is never under that of the sales; the count is enough with the chance it was asked for; a surer one is no smaller."""
    sold, offered = [some for some, _ in rows], [some + more for some, more in rows]
    try:
        found = demand.demand_from_sales(sold, offered, spread)
    except OutOfRange:
        assert _nothing_bounds(sold, offered, spread)
        return
    assert found.mean >= sum(sold) / len(sold) * (1 - 1e-6)
    count = found.count_for(share)
    assert found.chance_enough(count) == pytest.approx(share, abs=1e-6) or count == 0
    assert found.count_for(min(share + 0.02, 0.99)) >= count


def _nothing_bounds(sold, offered, spread):
    """Whether a mean fifty times the most ever sold is still too low: for those that sold out, what they may have been asks for more."""
    cut = [some for some, most in zip(sold, offered) if some == most]
    mean = 50 * max(sold)
    if len(cut) == len(sold):
        return demand.chance_all_cut(cut, mean, spread * mean) < 0.5
    filled = sum(demand.mean_above(some, mean, spread * mean) for some in cut)
    return (sum(sold) - sum(cut) + filled) / len(sold) > mean


def test_a_spread_so_wide_that_selling_out_bounds_nothing_is_refused():
    """Two of three sold out at a spread of one and a half means: 2 (1 + 1.5 x 0.427) / 3 is above 1, by hand."""
    assert _nothing_bounds([50, 61, 70], [50, 80, 70], 1.5)
    with pytest.raises(OutOfRange, match="smaller spread"):
        demand.demand_from_sales([50, 61, 70], [50, 80, 70], 1.5)


@settings(max_examples=60, deadline=None, derandomize=True)
@given(
    middle=st.floats(20, 200),
    spread=st.floats(0.1, 0.4),
    price=st.floats(10, 40),
    cost=st.floats(2, 9),
    left=st.floats(0, 1.9),
)
def test_no_count_brings_more_than_the_critical_ratio_s(middle, spread, price, cost, left):
    """The newsvendor's count is the top of the expected profit."""
    deviation = spread * middle
    best = max(
        middle + demand.normal_quantile(demand.critical_ratio(price, cost, left)) * deviation, 0
    )
    top = demand.expected_profit(best, middle, deviation, price, cost, left)
    assert all(
        demand.expected_profit(best * by, middle, deviation, price, cost, left)
        <= top + 1e-9 * abs(top)
        for by in (0.9, 0.97, 1.03, 1.1)
    )


@pytest.mark.parametrize("ratio", [0.2, 0.5, 0.8, 0.95])
def test_where_the_spread_is_the_data_s_own_no_other_count_brings_more(ratio):
    """Chance and averages are of one distribution, Student’s: of two, the count that pays best would not."""
    found = demand.demand_from_sales([44, 60, 52, 68], [60, 70, 80, 75], 0.25)
    best, price, cost = found.count_for(ratio), 20.0, 20.0 - 10.0 * ratio

    def brings(count):
        at = count, found.mean, found.whole
        short = demand.expected_short(*at, found.degrees)
        return demand.expected_profit(*at, price, cost, 10.0, short=short)

    assert found.degrees == 3
    assert all(brings(best) > brings(best * by) for by in (0.9, 0.97, 1.03, 1.1))


@pytest.mark.parametrize(
    "sold, offered, spread",
    [([], [], 0.3), ([3], [2], 0.3), ([0, 0], [5, 5], 0.3), ([3], [3, 4], 0.3), ([3], [4], 3.0)],
)
def test_what_cannot_be_is_refused(sold, offered, spread):
    with pytest.raises(OutOfRange):
        demand.demand_from_sales(sold, offered, spread)
