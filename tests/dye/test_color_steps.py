"""Steps: even within 3 %, from end to end, and worse once rounded or stepped by percent."""

from pathlib import Path as File
from tomllib import loads

import pytest
from coloraide import Color as Other
from hypothesis import assume, given
from hypothesis import strategies as st

import fibercalc
from fibercalc.core.color import Color, lab_from_hex, read_color
from fibercalc.core.problem import OutOfRange
from fibercalc.dye.color import steps
from fibercalc.dye.color.kubelka_munk import palette
from fibercalc.dye.color.path import Path

UNDYED, BLUE, RUST, GOLD = (
    read_color(text) for text in ("#efe6d2", "#27406a", "#a8553a", "#d8a520")
)
ONE = palette(UNDYED, [(BLUE, 2.0)])
THREE = palette(UNDYED, [(GOLD, 1.0), (RUST, 1.0), (BLUE, 1.0)])
SET = loads((File(fibercalc.__file__).parents[1] / "shared/demo/release.toml").read_text("utf-8"))[
    "set"
]
LIGHT, DARK, DAYS = SET["palest_depth_percent"], SET["deepest_depth_percent"], SET["days"]
COLORS = st.integers(0, 0xFFFFFF).map(
    lambda number: Color(*lab_from_hex(f"{number:06x}"), f"#{number:06x}")
)


@given(COLORS, st.floats(0.3, 4), st.floats(0.005, 0.5), st.floats(0.6, 6), st.integers(2, 60))
def test_light_to_dark_is_even_for_any_dye(color, percent, light, dark, count):
    """Neighbors' differences within 3 % of their mean; ends as asked; every skein holds more dye than the last."""
    try:
        path = Path(palette(UNDYED, [(color, percent)]), [(light,), (dark,)])
    except OutOfRange:
        assume(False)
    ladder = steps.even_ladder(path, count)
    assert len(ladder.recipes) == count
    assert ladder.unevenness <= steps.EVEN
    assert (ladder.recipes[0], ladder.recipes[-1]) == (
        (pytest.approx(light),),
        (pytest.approx(dark),),
    )
    assert all(a < b for a, b in zip(ladder.recipes, ladder.recipes[1:]))


@given(st.tuples(COLORS, COLORS), st.integers(2, 60))
def test_a_crossfade_of_two_dyes_is_even(colors, count):
    """From one dye to another: one falls, the other rises."""
    try:
        path = Path(palette(UNDYED, [(color, 1.0) for color in colors]), [(1.0, 0.0), (0.0, 1.0)])
    except OutOfRange:
        assume(False)
    ladder = steps.even_ladder(path, count)
    assert ladder.unevenness <= steps.EVEN
    assert all(a[0] > b[0] and a[1] < b[1] for a, b in zip(ladder.recipes, ladder.recipes[1:]))


@pytest.mark.parametrize("count", range(2, 61))
def test_a_path_over_three_dyes_is_even(count):
    ladder = steps.even_ladder(Path(THREE, [(1, 0, 0), (0, 1, 0), (0, 0, 1)]), count)
    assert ladder.unevenness <= steps.EVEN


def test_evenness_as_another_library_measures_it():
    """The differences of the printed colors, by coloraide."""
    ladder = steps.even_ladder(Path(ONE, [(LIGHT,), (DARK,)]), DAYS)
    theirs = [Other("lab-d65", [color.lightness, color.a, color.b]) for color in ladder.colors]
    apart = [a.delta_e(b, method="2000") for a, b in zip(theirs, theirs[1:])]
    assert max(abs(each / (sum(apart) / len(apart)) - 1) for each in apart) <= 0.03


def test_percent_steps_bunch_at_the_dark_end_and_ratio_steps_less():
    path = Path(ONE, [(LIGHT,), (DARK,)])
    even, percent, ratio = (
        steps.even_ladder(path, DAYS),
        steps.equal_percent_ladder(path, DAYS),
        steps.geometric_ladder(ONE, (LIGHT,), (DARK,), DAYS),
    )
    assert even.unevenness < ratio.unevenness < percent.unevenness
    assert percent.differences[0] > 10 * percent.differences[-1]
    assert [recipe[0] for recipe in percent.recipes] == pytest.approx(
        [LIGHT + (DARK - LIGHT) * at / (DAYS - 1) for at in range(DAYS)]
    )


def test_the_demo_set_takes_the_dye_the_scenario_says():
    """44.5 g on 600 g a shade, and 37.2 g on the 501.4 g that 26 small skeins of 81 m weigh; the scenario prints that as 501 g."""
    ratio = steps.geometric_ladder(ONE, (LIGHT,), (DARK,), DAYS)
    small_skeins = (SET["sets_sold"] + SET["sets_spare"]) * 81 / 4.2
    assert ratio.grams(600.0) == [pytest.approx(44.5, abs=0.05)]
    assert small_skeins == pytest.approx(501.4, abs=0.05)
    assert ratio.grams(small_skeins) == [pytest.approx(37.2, abs=0.05)]


@given(st.floats(10, 1000), st.sampled_from([0.001, 0.01, 0.1, 1.0]))
def test_weighing_holds_whole_steps_within_half_a_step(fiber, finest):
    ladder = steps.even_ladder(Path(ONE, [(LIGHT,), (DARK,)]), DAYS)
    try:
        weighed = steps.weighed_ladder(ONE, ladder, fiber, [finest])
    except OutOfRange:
        assume(False)
    for (wished,), (real,) in zip(ladder.recipes, weighed.recipes):
        grams = real * fiber / 100
        assert grams / finest == pytest.approx(round(grams / finest), abs=1e-6)
        assert abs(grams - wished * fiber / 100) <= finest / 2 * (1 + 1e-9)


def test_a_coarser_scale_is_more_uneven():
    ladder = steps.even_ladder(Path(ONE, [(LIGHT,), (DARK,)]), DAYS)
    fine, coarse, useless = (
        steps.weighed_ladder(ONE, ladder, 100.0, [finest]).unevenness
        for finest in (0.001, 0.01, 0.1)
    )
    assert ladder.unevenness < fine < coarse < useless
    assert steps.weighed_ladder(ONE, ladder, 100.0, [0.2]).recipes[0] == (
        0.0,
    )  # a dose under half a step is no dye


@pytest.mark.parametrize(
    "through, said",
    [
        ([(1.0,)], "two ends"),
        ([(1.0,), (1.0,)], "same color"),
        ([(1.0,), (1.0, 2.0)], "each dye"),
        ([(0.1,), (400.0,)], "percent"),
        ([(-1.0,), (2.0,)], "percent"),
    ],
)
def test_a_path_that_is_none_is_refused(through, said):
    with pytest.raises(OutOfRange, match=said):
        Path(ONE, through)


@pytest.mark.parametrize("count", [0, 1, 61, 1000])
def test_a_set_of_other_sizes_is_refused(count):
    for ladder in (steps.even_ladder, steps.equal_percent_ladder):
        with pytest.raises(OutOfRange, match="count"):
            ladder(Path(ONE, [(0.1,), (1.0,)]), count)


def test_a_way_that_turns_back_is_refused_in_words():
    """Out and back with an even number of skeins: the middle two are the same color, whatever is done."""
    with pytest.raises(OutOfRange, match="turns back"):
        steps.even_ladder(Path(ONE, [(0.1,), (1.0,), (0.1,)]), 4)


def test_a_dye_at_one_end_only_has_no_ratio():
    with pytest.raises(OutOfRange, match="no ratio"):
        steps.geometric_ladder(THREE, (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), 5)
