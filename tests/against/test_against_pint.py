"""Counts against pint's own textile units, which no one here wrote."""

import pint
import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from fibercalc.yarn.count import count_from_tex, tex_from_count

registry = pint.UnitRegistry()
PINT_UNITS = {
    "tex": "tex",
    "dtex": "dtex",
    "den": "denier",
    "g/m": "gram / meter",
    "Nm": "number_meter",
    "Ne": "number_english",
    "Nw": "560 * yard / pound",
    "run": "1600 * yard / pound",
    "cut": "300 * yard / pound",
    "lea": "300 * yard / pound",
    "yd/lb": "yard / pound",
    "yd/oz": "yard / ounce",
    "m/kg": "meter / kilogram",
    "m/g": "meter / gram",
    "m/100 g": "meter / (100 * gram)",
    "yd/100 g": "yard / (100 * gram)",
}


@pytest.mark.parametrize("system", PINT_UNITS)
@settings(
    max_examples=20, deadline=None
)  # pint takes its time, and one formula with one constant needs no more
@given(count=some.floats(0.5, 500.0))
def test_tex_of_a_count_is_what_pint_makes_of_it(system, count):
    """pint turns an indirect count into tex by its textile context."""
    theirs = (count * registry(PINT_UNITS[system])).to("tex", "textile").magnitude
    assert tex_from_count(count, system) == pytest.approx(theirs, rel=1e-12)


@pytest.mark.parametrize("system", PINT_UNITS)
def test_count_of_a_tex_is_what_pint_makes_of_it(system):
    """The other way, for the sock yarn of 238 tex."""
    theirs = (238 * registry.tex).to(
        registry(PINT_UNITS[system]).units, "textile"
    ).magnitude / registry(PINT_UNITS[system]).magnitude
    assert count_from_tex(238, system) == pytest.approx(theirs, rel=1e-12)
