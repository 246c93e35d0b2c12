"""Screen colors and L*a*b*, against an independent library."""

import pytest
from coloraide import Color as Other
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.color import read_color


@given(st.integers(0, 0xFFFFFF))
def test_lab_of_a_screen_color_agrees_with_coloraide(number):
    digits = f"#{number:06x}"
    ours = read_color(digits)
    theirs = Other(digits).convert("lab-d65").coords()
    assert (ours.lightness, ours.a, ours.b) == pytest.approx(tuple(theirs), abs=0.02)
    assert ours.hex == digits


@pytest.mark.parametrize(
    "text",
    ["", "blue", "#12", "#12345g", "lab(1)", "lab(120 0 0)", "lab(50 999 0)", "url(x)", "#fff;x"],
)
def test_what_is_no_color_is_refused(text):
    with pytest.raises(ValueError):
        read_color(text)
