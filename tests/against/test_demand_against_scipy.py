"""Censored demand and the newsvendor against scipy, which no one here wrote."""

from math import exp, log

import pytest

stats = pytest.importorskip("scipy.stats", reason="scipy is for this comparison only")
optimize = pytest.importorskip("scipy.optimize", reason="scipy is for this comparison only")

from fibercalc.sell import demand  # noqa: E402


@pytest.mark.parametrize(
    "seen, cut",
    [([30, 35, 41, 38], [50]), ([12, 20, 33], [15, 25, 25, 40]), ([100, 130], [90, 110, 150])],
)
def test_the_likeliest_normal_is_scipy_s_optimum(seen, cut):
    """To five digits, by another way of finding it."""
    found = optimize.minimize(
        lambda p: (
            -sum(stats.norm.logpdf(seen, p[0], exp(p[1])))
            - sum(stats.norm.logsf(cut, p[0], exp(p[1])))
        ),
        [sum(seen) / len(seen), log(max(seen) - min(seen))],
        method="Nelder-Mead",
        options={"xatol": 1e-10, "fatol": 1e-13, "maxiter": 4000},
    )
    mean, deviation = demand.censored_normal(seen, cut)
    assert (mean, deviation) == (
        pytest.approx(found.x[0], rel=1e-5),
        pytest.approx(exp(found.x[1]), rel=1e-4),
    )


@pytest.mark.parametrize("share", (0.001, 0.1, 0.5, 0.6667, 0.95, 0.999))
def test_quantile_is_scipy_s(share):
    assert demand.normal_quantile(share) == pytest.approx(stats.norm.ppf(share), abs=1e-9)


@pytest.mark.parametrize("count, mean, deviation", [(235, 200, 80), (40, 60, 20), (90, 60, 5)])
def test_short_and_left_are_scipy_s_integrals(count, mean, deviation):
    short = stats.norm.expect(
        lambda x: max(x - count, 0), loc=mean, scale=deviation, lb=count, ub=mean + 12 * deviation
    )
    left = stats.norm.expect(
        lambda x: max(count - x, 0), loc=mean, scale=deviation, lb=mean - 12 * deviation, ub=count
    )
    assert demand.expected_short(count, mean, deviation) == pytest.approx(short, abs=1e-6)
    assert demand.expected_left(count, mean, deviation) == pytest.approx(left, abs=1e-6)


@pytest.mark.parametrize("degrees", (2, 3, 4, 9, 60))
@pytest.mark.parametrize("z", (-1.3, 0.0, 0.6, 2.4))
def test_what_students_t_exceeds_a_place_by_is_scipy_s_integral(z, degrees):
    above = stats.t.expect(lambda t: t - z, args=(degrees,), lb=z)
    assert demand.student_loss(z, degrees) == pytest.approx(above, abs=1e-6)
