"""Diameter: the three ways agree where they should."""

import pytest
from hypothesis import given
from hypothesis import strategies as some

from fibercalc.yarn import diameter
from fibercalc.yarn.count import count_from_tex

tex_of_yarn = some.floats(1.0, 5000.0)


@given(tex=tex_of_yarn, packing=some.floats(0.1, 0.9))
def test_four_times_the_tex_is_twice_as_thick(tex, packing):
    """Thickness goes with the square root of weight, in all three ways."""
    assert diameter.solid_diameter(4 * tex, 1.31, packing) == pytest.approx(
        2 * diameter.solid_diameter(tex, 1.31, packing)
    )
    assert diameter.peirce_diameter(4 * tex) == pytest.approx(2 * diameter.peirce_diameter(tex))
    ypp = count_from_tex(tex, "yd/lb")
    assert diameter.ashenhurst_diameters_per_inch(ypp / 4, 0.9) == pytest.approx(
        diameter.ashenhurst_diameters_per_inch(ypp, 0.9) / 2
    )


@given(tex=tex_of_yarn, packing=some.floats(0.1, 0.85))
def test_looser_packing_is_thicker(tex, packing):
    """The same fiber in a softer yarn takes more room."""
    assert diameter.solid_diameter(tex, 1.31, packing) > diameter.solid_diameter(
        tex, 1.31, packing + 0.05
    )


def test_peirce_and_the_solid_model_agree_for_cotton():
    """Peirce's cotton yarn (1.1 cm3/g) is a packing of about 0.6 at cotton's density: within 1 percent."""
    assert diameter.peirce_diameter(20) == pytest.approx(
        diameter.solid_diameter(20, 1.52, 0.60), rel=0.01
    )


def test_ashenhurst_is_near_peirce_for_cotton():
    """Peirce's 28 is a K of 28 / square root of 840 = 0.966; the older 0.92 makes the yarn 5 percent thicker."""
    ypp = count_from_tex(20, "yd/lb")
    constant = diameter.ashenhurst_constants().row("name", "cotton")["constant"]
    found = diameter.diameter_from_diameters_per_inch(
        diameter.ashenhurst_diameters_per_inch(ypp, constant)
    )
    assert found / diameter.peirce_diameter(20) == pytest.approx(0.966 / 0.92, rel=0.001)
