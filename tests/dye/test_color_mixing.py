"""Kubelka-Munk mixing: what it must keep whatever the colors are."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.color import from_lab, read_color
from fibercalc.core.problem import OutOfRange
from fibercalc.dye.color import kubelka_munk as mixing
from fibercalc.dye.color.difference import between

UNDYED = read_color("#efe6d2")
DYES = [(read_color("#27406a"), 2.0), (read_color("#a8553a"), 1.0), (read_color("#d8a520"), 1.5)]
PERCENTS = st.lists(st.floats(0, 5), min_size=3, max_size=3)


@given(st.floats(1e-4, 1))
def test_reflectance_undoes_absorption(share):
    assert mixing.reflectance(mixing.k_over_s(share)) == pytest.approx(share, rel=1e-6)


@pytest.mark.parametrize("color, percent", DYES)
def test_the_samples_themselves_come_back(color, percent):
    """No dye gives the undyed fiber, a sample's percent gives the sample."""
    palette = mixing.palette(UNDYED, [(color, percent)])
    assert between(palette.color([0.0]), UNDYED) < 1e-4
    assert between(palette.color([percent]), color) < 1e-4


@given(PERCENTS, PERCENTS)
def test_absorption_adds(first, second):
    """K/S of two recipes together is that of both, less the fiber that would be counted twice."""
    palette = mixing.palette(UNDYED, DYES)
    together = palette.absorption([a + b for a, b in zip(first, second)])
    apart = [
        a + b - bare
        for a, b, bare in zip(palette.absorption(first), palette.absorption(second), palette.undyed)
    ]
    assert together == pytest.approx(apart)


@given(PERCENTS, st.integers(0, 2), st.floats(0.01, 2))
def test_more_dye_is_never_lighter(recipe, which, more):
    palette = mixing.palette(UNDYED, DYES)
    added = [percent + (more if at == which else 0) for at, percent in enumerate(recipe)]
    assert palette.lab(added)[0] < palette.lab(recipe)[0]


def test_a_linear_model_in_reflectance_would_not_pass():
    """Twice the dye is not twice as far from white: 1 % of R 0.20 on R 0.80 gives R 0.1215 at 2 %, as the published formula has it."""
    gray = [from_lab(116 * share ** (1 / 3) - 16, 0, 0) for share in (0.80, 0.20)]
    twice = mixing.palette(gray[0], [(gray[1], 1.0)]).color([2.0])
    assert ((twice.lightness + 16) / 116) ** 3 == pytest.approx(0.1215, abs=0.00005)


def test_equal_steps_of_lightness_take_about_three_times_the_dye_each():
    """Grays from R 0.80 to 0.05 in five equal steps of L*: dye as a share of the deepest 0, 0.027, 0.105, 0.316, 1, worked by hand."""
    lights = [91.68 + (26.73 - 91.68) * at / 4 for at in range(5)]
    absorbed = [mixing.absorption(from_lab(light, 0, 0))[1] for light in lights]
    shares = [(each - absorbed[0]) / (absorbed[-1] - absorbed[0]) for each in absorbed]
    assert shares == pytest.approx([0, 0.027, 0.105, 0.316, 1], abs=0.001)


def test_a_dye_that_brightens_one_channel_is_taken_to_absorb_nothing_there():
    """A vivid orange returns more red than cream fiber does: no dye adds light, so the rest of its color must do."""
    orange = read_color("#ff7000")
    palette = mixing.palette(UNDYED, [(orange, 1.0)])
    assert palette.dyes[0][0] >= 0 and max(palette.dyes[0]) > 0


@pytest.mark.parametrize(
    "samples, said",
    [
        ([], "one, two or three dyes"),
        (DYES + DYES[:1], "one, two or three dyes"),
        ([(UNDYED, 1.0)], "no darker than the undyed"),
        ([(read_color("#ffffff"), 1.0)], "no darker"),
        ([(DYES[0][0], 0.0)], "percent"),
        ([(DYES[0][0], 400.0)], "percent"),
    ],
)
def test_what_gives_no_dye_is_refused(samples, said):
    with pytest.raises(OutOfRange, match=said):
        mixing.palette(UNDYED, samples)


def test_dark_shades_are_told():
    assert (
        mixing.least_reflectance(read_color("#101418"))
        < mixing.TRUSTED_REFLECTANCE
        < mixing.least_reflectance(UNDYED)
    )
