"""Tube socks: pockets counted needle by needle, the practitioner's sock, and rounds that add up to the foot."""

import tomllib

import pytest
from hypothesis import assume, given
from hypothesis import strategies as some

from fibercalc.core.checks import shared_folder
from fibercalc.core.problem import OutOfRange
from fibercalc.knit import loop, sock

halves = some.integers(4, 100)
gauges = some.floats(2.0, 8.0)


@given(half=halves, data=some.data())
def test_a_pocket_counted_needle_by_needle(half, data):
    """Crank it: put one out before each row but the first, then bring one back after each row."""
    left = data.draw(some.integers(1, half))
    working, rows, stitches = half, 0, 0
    while working > left:
        rows, stitches, working = rows + 1, stitches + working, working - 1
    while working < half:
        rows, stitches, working = rows + 1, stitches + working, working + 1
    assert (rows, stitches) == (sock.short_rows(half, left), sock.short_row_stitches(half, left))


@given(
    foot=some.floats(0.10, 0.40), half=halves, rows_per_cm=gauges, shorter=some.floats(0.0, 15.0)
)
def test_heel_foot_and_toe_are_as_long_as_the_sock(foot, half, rows_per_cm, shorter):
    """To half a round, because rounds are whole."""
    depth = sock.short_row_depth(half, sock.needles_left(half), rows_per_cm)
    knitted = sock.sock_foot_length(foot, shorter)
    assume(2 * depth < knitted)
    whole = sock.whole_rounds(sock.foot_rounds(knitted, depth, depth, rows_per_cm))
    assert sock.length_of_rounds(whole, rows_per_cm) + 2 * depth == pytest.approx(
        knitted, abs=0.5 / (100 * rows_per_cm) + 1e-9
    )


def test_a_foot_shorter_than_its_heel_and_toe_is_refused():
    """With a reason that says what to change."""
    with pytest.raises(OutOfRange, match="fewer needles"):
        sock.foot_rounds(0.09, 0.05, 0.05, 4.0)


@pytest.mark.parametrize("needles", [54, 60, 64, 72])
@pytest.mark.parametrize("loop", [0.0130, 0.0139])
def test_the_practitioners_pair_comes_from_about_one_skein(needles, loop):
    """Hem 20, leg 50 to 55, foot 65 rounds: 100 g / 420 m is enough, and half of it is not (common practice, no source)."""
    half = needles // 2
    pocket = sock.short_row_stitches(half, sock.needles_left(half))
    for leg in (50, 55):
        grams = (
            sock.pair_length(sock.sock_stitches(needles, 20 + leg + 65, 2 * pocket), loop)
            * 100
            / 420
        )
        assert 50 < grams < 100


@given(depth=some.floats(0.0, 0.2), rows_per_cm=gauges)
def test_a_folded_hem_is_even_and_as_deep_as_wanted(depth, rows_per_cm):
    """Half of it, to half a round."""
    rounds = sock.hem_rounds(depth, rows_per_cm)
    assert rounds % 2 == 0
    assert sock.length_of_rounds(rounds / 2, rows_per_cm) == pytest.approx(
        depth, abs=0.5 / (100 * rows_per_cm) + 1e-9
    )


@given(in_work=some.integers(1, 8), out=some.integers(0, 3), repeats=some.integers(4, 20))
def test_mock_rib_leaves_whole_repeats(in_work, out, repeats):
    """Needles in and out add up to the cylinder."""
    needles = repeats * (in_work + out)
    assume(needles >= 8)
    assert sock.worked_needles(needles, in_work, out) + repeats * out == needles


def test_a_rib_that_does_not_fit_names_the_counts_that_do():
    """The next ones below and above."""
    with pytest.raises(OutOfRange, match="60 and 64 are"):
        sock.worked_needles(62, 3, 1)


@given(in_work=some.integers(1, 8), out=some.integers(0, 3), widths=some.floats(2.0, 8.0))
def test_a_float_takes_less_than_a_loop(in_work, out, widths):
    """Mock rib takes no more than plain, and no less than its worked needles."""
    assert in_work / (in_work + out) <= sock.mock_rib_share(in_work, out, widths) <= 1.0


def test_words_for_stretch_run_from_loose_to_too_tight():
    """A tube of 21.4 cm: a 20 cm ankle, then 25, 32 and 40 cm over the heel."""
    tube = sock.tube_girth(60, 2.8)
    assert [
        sock.stretch_word(sock.stretch_needed(girth, tube)) for girth in (0.20, 0.25, 0.32, 0.40)
    ] == ["loose", "easy", "tight", "too tight"]


@given(lengths=some.lists(some.floats(0.08, 0.40), min_size=2, max_size=20), rows_per_cm=gauges)
def test_longer_feet_have_no_fewer_rounds(lengths, rows_per_cm):
    """A chart by foot length runs one way."""
    rounds = [
        count for _, count in sock.foot_rounds_by_length(sorted(lengths), 30, 10, rows_per_cm)
    ]
    assert rounds == sorted(rounds)


def test_the_chart_leaves_out_feet_too_short_for_heel_and_toe():
    """20 rows a pocket at 4 to the centimeter: 10 cm for both; 15, 20 and 27.5 cm feet stay."""
    chart = sock.foot_rounds_by_length([0.09, 0.15, 0.20, 0.275], 30, 10, 4.0)
    assert chart == [(0.15, 20), (0.20, 40), (0.275, 70)]


def test_the_demo_sock_follows_from_its_needles_gauge_and_rounds():
    """Everything in the invented studio's sock that can be worked out: stitches, depth, loops, 301 to 321 m, 72 to 76 g."""
    demo = tomllib.loads((shared_folder() / "demo" / "making.toml").read_text("utf-8"))["sock"]
    half, gauge = demo["needles"] // 2, (demo["stitches_per_cm"], demo["rows_per_cm"])
    pocket = sock.short_row_stitches(half, sock.needles_left(half))
    assert pocket == demo["short_row_stitches_each"]
    assert sock.short_row_depth(half, sock.needles_left(half), gauge[1]) * 100 == pytest.approx(
        demo["short_row_depth_cm"]
    )
    stitches = sock.sock_stitches(
        demo["needles"], demo["hem_rounds"] + demo["leg_rounds"] + demo["foot_rounds"], 2 * pocket
    )
    assert stitches == 11_560
    loops = [
        loop.stitch_length(*gauge, constant) for constant in (19.0, 21.6)
    ]  # dry and wet relaxed
    assert [round(100 * each, 2) for each in loops] == demo["loop_cm"]
    meters = [sock.pair_length(stitches, each) for each in loops]
    assert [round(each) for each in meters] == [301, 321]
    assert [round(each * 100 / 420) for each in meters] == [72, 76]
