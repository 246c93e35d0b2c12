"""Errors of seeing, and the gray card."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

import fibercalc
from fibercalc.core.color import Color, lab_from_hex, read_color
from fibercalc.core.problem import BadInputs, OutOfRange
from fibercalc.core.table import read_table
from fibercalc.dye.color import seeing
from fibercalc.dye.color.difference import between

SLATE = read_color("#6b7f8f")
LEVELS = st.lists(st.floats(0.3, 1.6), min_size=3, max_size=3)


def tinted(color, gains):
    """The color as a camera shows it whose red, green and blue are off by these gains in linear light; written out apart from the code under test."""
    linear = [
        (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4)
        for part in (int(color[at : at + 2], 16) / 255 for at in (1, 3, 5))
    ]
    parts = [
        12.92 * part if part <= 0.0031308 else 1.055 * part ** (1 / 2.4) - 0.055
        for part in (min(k * share, 1.0) for k, share in zip(gains, linear))
    ]
    return Color(*lab_from_hex("".join(f"{round(255 * part):02x}" for part in parts)), "")


@given(LEVELS, st.sampled_from(["#6b7f8f", "#a8553a", "#40506a", "#9aa070"]))
def test_the_card_takes_away_what_the_lamp_put_there(gains, color):
    """Yarn and card under any tint: the card brings the yarn's own color back, to the rounding of 8 bits."""
    assume(max(gain * 0.18 for gain in gains) < 0.9)
    linear_top = max(int(color[at : at + 2], 16) / 255 for at in (1, 3, 5))
    assume(linear_top**2.2 * max(gains) < 0.95)
    card = tinted("#767676", gains)  # reflectance 0.181
    assert (
        between(seeing.corrected_by_card(tinted(color, gains), card, 0.1812), read_color(color))
        < 1.5
    )


def test_without_a_tint_nothing_changes():
    assert between(seeing.corrected_by_card(SLATE, read_color("#767676"), 0.1812), SLATE) < 0.05


@pytest.mark.parametrize("card", ["#ffffff", "#020202", "#ff7676"])
def test_a_card_the_camera_cut_off_is_refused(card):
    with pytest.raises(OutOfRange, match="take it again"):
        seeing.corrected_by_card(SLATE, read_color(card))


def test_a_photo_is_rougher_than_an_instrument_and_a_guess_rougher_still():
    ways = [row["how"] for row in read_table("dye", "color-seeing").rows]
    widths = [seeing.half_width(how) for how in ways]
    assert ways[0] == "instrument" and widths == sorted(widths) and widths[0] < widths[-1] / 5
    assert seeing.half_width_between("together") < seeing.half_width_between("photo")
    for how in ("", "by magic"):
        with pytest.raises(OutOfRange):
            seeing.half_width(how)


@given(st.floats(0, 12), st.floats(0, 12))
def test_a_wider_error_is_a_wider_difference(first, more):
    navy = read_color(
        "#27406a"
    )  # of the slate's own quarter of hues: CIEDE2000 itself jumps where hues are opposite
    assert (
        seeing.half_width_of_difference(SLATE, navy, first, 1)
        <= seeing.half_width_of_difference(SLATE, navy, first + more, 1) + 1e-9
    )


def test_the_error_of_a_difference_in_lightness_alone():
    """Two grays: a* and b* hardly matter to their difference, so a half-width of 1 on each is near √2 in lightness."""
    dark, light = (Color(lightness, 0.0, 0.0, "") for lightness in (45.0, 55.0))
    assert seeing.half_width_of_difference(dark, light, 1, 1) == pytest.approx(2**0.5, abs=0.15)
    assert seeing.half_width_of_difference(dark, light, 0, 0) == 0


def test_words_for_differences():
    """Each edge begins its own row, and words grow with the difference."""
    rows = read_table("dye", "visible-differences").rows
    for row in rows:
        assert seeing.likely_seen(row["above"]) == row["words"]
        assert row["words"] == "another color" or "likely" in row["words"]
    assert (
        len({seeing.likely_seen(difference) for difference in (0.2, 1.5, 3, 6, 30)})
        == len(rows)
        == 5
    )
    with pytest.raises(OutOfRange):
        seeing.likely_seen(-1)


@pytest.mark.parametrize("card", ["lot-repeat", "shade-steps"])
def test_a_warm_lamp_is_taken_off_by_the_card_in_the_photo(card):
    """Colors photographed through a warm filter, with the card photographed so too, answer as they did without the filter."""
    warm = (
        {"old": "#4f4540", "new": "#574c45"}
        if card == "lot-repeat"
        else {"undyed": "#efd9b0", "dyes.1.sample": "#2a3a4d"}
    )
    gray = "#857361"
    corrected = {
        name: seeing.corrected_by_card(read_color(text), read_color(gray))
        for name, text in warm.items()
    }
    by_card = fibercalc.work(card, warm | {"gray": gray})["results"]
    by_hand = fibercalc.work(card, {name: each.text for name, each in corrected.items()})["results"]
    numbers = [
        {name: found["value"] for name, found in results.items() if found["low"] is not None}
        for results in (by_card, by_hand)
    ]
    assert numbers[0] == pytest.approx(numbers[1], rel=2e-2, abs=0.05)
    assert fibercalc.work(card, warm)["results"] != by_card


def test_a_card_the_camera_cut_off_is_one_line():
    with pytest.raises(BadInputs, match="too dark or too bright in the photo"):
        fibercalc.work("lot-repeat", {"gray": "#000000"})
