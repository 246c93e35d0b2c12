"""Student's t and the sample limits against scipy, which no one here wrote."""

import pytest

stats = pytest.importorskip("scipy.stats", reason="scipy is for this comparison only")

from fibercalc.yarn import sample, student_t  # noqa: E402

DEGREES = (1, 2, 3, 4, 5, 7, 9, 10, 29, 30, 100, 999)


@pytest.mark.parametrize("degrees", DEGREES)
@pytest.mark.parametrize("share", (0.5, 5.0, 50.0, 80.0, 90.0, 95.0, 97.5, 99.5, 99.9))
def test_quantile_is_scipy_s(share, degrees):
    """To ten digits."""
    assert student_t.quantile(share, degrees) == pytest.approx(
        stats.t.ppf(share / 100, degrees), rel=1e-9, abs=1e-9
    )


@pytest.mark.parametrize("degrees", DEGREES)
@pytest.mark.parametrize("t", (-30.0, -2.0, -0.1, 0.0, 0.7, 3.0, 12.0))
def test_share_below_is_scipy_s(t, degrees):
    """To ten digits of one percent."""
    assert student_t.share_below(t, degrees) == pytest.approx(
        100 * stats.t.cdf(t, degrees), abs=1e-10
    )


def test_limits_of_the_mean_are_scipy_s_interval():
    """A one-sided 95 percent limit is the lower end of a two-sided 90 percent interval."""
    lower, upper = stats.t.interval(0.90, 3, loc=418.75, scale=5.3774 / 2)
    assert sample.lower_limit_of_mean(418.75, 5.3774, 4) == pytest.approx(lower)
    assert sample.half_width_of_mean(5.3774, 4, 90) == pytest.approx((upper - lower) / 2)
