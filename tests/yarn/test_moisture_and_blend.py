"""Weight and water: dry fiber is conserved, and blends lie between their fibers."""

import pytest
from hypothesis import given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.yarn import blend, moisture, regain
from fibercalc.yarn.fiber_density import fiber_density

regains = some.floats(0.0, 40.0)


@given(mass=some.floats(0.1, 5000.0), now=regains, wanted=regains)
def test_water_comes_and_goes_but_dry_fiber_stays(mass, now, wanted):
    """Mass balance: the dry fiber is the same before and after."""
    later = moisture.mass_at_other_regain(mass, now, wanted)
    assert moisture.oven_dry_mass(later, wanted) == pytest.approx(moisture.oven_dry_mass(mass, now))
    assert (later >= mass) == (wanted >= now) or later == pytest.approx(mass)


@given(dry=some.floats(0.1, 5000.0), percent=regains)
def test_regain_is_read_back_from_two_weighings(dry, percent):
    """Damp it, weigh it, dry it: the regain is found again."""
    assert moisture.regain_from_masses(moisture.mass_at_regain(dry, percent), dry) == pytest.approx(
        percent, abs=1e-9
    )


@given(percent=regains)
def test_moisture_content_is_below_regain(percent):
    """The same water is a smaller part of the heavier, damp weight."""
    assert moisture.moisture_content(percent) <= percent


@given(share=some.floats(0.0, 100.0), first=regains, second=regains)
def test_a_blend_lies_between_its_fibers_and_its_shares_come_back(share, first, second):
    """Regain between the two; dry -> conditioned -> dry shares are the same."""
    dry, of_fiber = {"a": share, "b": 100 - share}, {"a": first, "b": second}
    found = blend.blend_regain(dry, of_fiber)
    assert min(first, second) - 1e-9 <= found <= max(first, second) + 1e-9
    weights = {name: dry[name] * (1 + of_fiber[name] / 100) for name in dry}
    damp = {name: 100 * weight / sum(weights.values()) for name, weight in weights.items()}
    assert blend.dry_share("a", damp, of_fiber) == pytest.approx(share, abs=1e-9)


def test_blend_density_adds_volumes():
    """50 g at 1.0 and 50 g at 2.0 fill 75 cm3, so 1.333 and not 1.5."""
    assert blend.blend_density({"a": 50, "b": 50}, {"a": 1.0, "b": 2.0}) == pytest.approx(100 / 75)


@pytest.mark.parametrize("shares", [{"wool": 75, "nylon": 20}, {"wool": 110}, {}])
def test_shares_that_do_not_make_100_are_refused_in_words(shares):
    """The line says what they add up to."""
    with pytest.raises(OutOfRange, match="add up to"):
        blend.blend_regain(shares, {"wool": 16, "nylon": 4})


def test_each_curve_agrees_with_the_regain_read_for_ordinary_air():
    """At 65 percent the recalled curve is within its stated error of the range that was read for each fiber."""
    for row in regain.actual_regains().rows:
        family = regain.fiber_family(row["fiber"])
        if regain.has_curve(family):
            found = regain.regain_at_humidity(family, regain.STANDARD_HUMIDITY)
            assert (
                row["low"] / (1 + regain.CURVE_ERROR / 100)
                <= found
                <= row["high"] * (1 + regain.CURVE_ERROR / 100)
            ), row["fiber"]


@given(humidity=some.floats(10.0, 89.0), step=some.floats(0.01, 1.0))
def test_damper_air_is_damper_yarn(humidity, step):
    """Every curve rises."""
    for family in regain.regain_curves().columns[1:-1]:
        assert regain.regain_at_humidity(family, humidity + step) > regain.regain_at_humidity(
            family, humidity
        )


@pytest.mark.parametrize("humidity", [9.9, 90.1, float("nan")])
def test_no_regain_beyond_the_ends_of_the_curve(humidity):
    """The end value is never held."""
    with pytest.raises(OutOfRange):
        regain.regain_at_humidity("wool", humidity)


def test_a_fiber_without_a_curve_says_so():
    """Polyester has an allowance but no curve here."""
    assert not regain.has_curve(regain.fiber_family("polyester"))
    with pytest.raises(KeyError, match="no curve"):
        regain.regain_at_humidity("polyester", 65)


def test_it_says_100_mine_says_103():
    """75/25 wool and nylon: 103 g in a damp cellar is 100.8 g in ordinary air with the studio's own regains, and the recalled
    curve gives a figure within its stated error."""
    assert moisture.mass_at_other_regain(103, 15.5, 13.0) == pytest.approx(100.8, abs=0.05)
    shares = {"wool": 75.0, "polyamide (nylon)": 25.0}
    damp, ordinary = (
        blend.blend_regain(shares, {name: regain.regain_at_humidity(name, air) for name in shares})
        for air in (78, 65)
    )
    assert damp == pytest.approx(15.5, rel=regain.CURVE_ERROR / 100)
    assert ordinary == pytest.approx(13.0, rel=regain.CURVE_ERROR / 100)
    assert 99 < moisture.mass_at_other_regain(103, damp, ordinary) < 102


def test_density_falls_back_to_dry_only_where_no_other_is_published():
    """Flax has one published density; cotton's is the one at 65 percent."""
    assert (fiber_density("flax (linen)"), fiber_density("cotton")) == (1.53, 1.52)
