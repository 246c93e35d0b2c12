"""CIEDE2000, CIELAB and our channels against two libraries that no one here wrote."""

from random import Random

import pytest

colour = pytest.importorskip("colour", reason="colour-science is for this comparison only")
from coloraide import Color as Other  # noqa: E402

from fibercalc.core.color import D65, from_lab  # noqa: E402
from fibercalc.dye.color.channels import (
    FROM_CHANNELS,
    TO_CHANNELS,
    channels_of,
    color_of,
    lab_of,
    xyz_of,
)  # noqa: E402
from fibercalc.dye.color.difference import ciede2000  # noqa: E402

RANDOM = Random(20261)
PAIRS = [
    [(RANDOM.uniform(0, 100), RANDOM.uniform(-90, 90), RANDOM.uniform(-90, 90)) for _ in "12"]
    for _ in range(600)
]
PAIRS += [
    [first, tuple(each + RANDOM.uniform(-2, 2) for each in first)] for first, _ in PAIRS[:300]
]  # near ones, as lots are
GRAYS = [
    ((50.0, 0.0, 0.0), (50.0, -1.0, 2.0)),
    ((0.0, 0.0, 0.0), (100.0, 0.0, 0.0)),
    ((30.0, 0.0, 0.0), (30.0, 0.0, 0.0)),
]


@pytest.mark.parametrize("pairs", [PAIRS, GRAYS], ids=["random", "gray"])
def test_ciede2000_is_theirs(pairs):
    for first, second in pairs:
        ours = ciede2000(first, second)
        assert ours == pytest.approx(
            float(colour.difference.delta_E_CIE2000(first, second)), abs=1e-6
        )
        assert ours == pytest.approx(
            Other("lab-d65", first).delta_e(Other("lab-d65", second), method="2000"), abs=1e-6
        )
        assert ours == pytest.approx(ciede2000(second, first), abs=1e-9)


def test_the_channels_are_the_primaries_of_the_recommendation():
    """Both matrices worked out again from the primaries, with our own white: three equal channels are a gray."""
    theirs = colour.RGB_COLOURSPACES["ITU-R BT.2020"]
    primaries = [[x / y, 1.0, (1 - x - y) / y] for x, y in theirs.primaries]
    white = [sum(row) for row in FROM_CHANNELS]
    assert white == pytest.approx(D65, abs=1e-7)
    for at, primary in enumerate(primaries):
        column = [row[at] for row in FROM_CHANNELS]
        assert [each / column[1] for each in column] == pytest.approx(primary, abs=1e-6)
        back = [sum(k * each for k, each in zip(row, column)) for row in TO_CHANNELS]
        assert back == pytest.approx([float(place == at) for place in range(3)], abs=1e-7)


@pytest.mark.parametrize(
    "text", ["#6b7f8f", "#efe6d2", "#a8553a", "#27406a", "#ffd000", "#00ff00", "#ff0000", "#0000ff"]
)
def test_screen_colors_in_our_channels_are_theirs(text):
    theirs = Other(text).convert("rec2020-linear").coords()
    lab = Other(text).convert("lab-d65").coords()
    assert channels_of(from_lab(*lab)) == pytest.approx(
        [max(each, 0.003) for each in theirs], abs=2e-4
    )


def test_xyz_is_theirs():
    for first, _ in PAIRS:
        lightness, a, b = (
            max(first[0], 25.0),
            first[1] / 3,
            first[2] / 3,
        )  # real colors: below the straight part, negative light is anyone's guess
        theirs = colour.Lab_to_XYZ((lightness, a, b), illuminant=colour.XYZ_to_xy(D65))
        assert xyz_of(from_lab(lightness, a, b)) == pytest.approx(
            [float(each) for each in theirs], abs=1e-6
        )


def test_back_and_forth():
    for channels in ((0.2, 0.5, 0.8), (0.01, 0.9, 0.3), (0.05, 0.05, 0.05)):
        assert channels_of(color_of(channels)) == pytest.approx(channels, abs=1e-6)
        assert lab_of(*channels)[0] == pytest.approx(color_of(channels).lightness)
