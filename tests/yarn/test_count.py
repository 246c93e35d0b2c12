"""Counts: round trips between all systems, and the direction of each."""

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.yarn import count

SYSTEMS = [row["unit"] for row in count.count_systems().rows]
DIRECT = {row["unit"] for row in count.count_systems().rows if row["kind"] == "direct"}
tex_of_yarn = some.floats(0.01, 1e6)


@pytest.mark.parametrize("system", SYSTEMS)
@given(tex=tex_of_yarn)
def test_a_count_goes_out_and_comes_back(system, tex):
    """tex -> any system -> tex is the same yarn."""
    assert count.tex_from_count(count.count_from_tex(tex, system), system) == pytest.approx(
        tex, rel=1e-12
    )


@pytest.mark.parametrize("pair", list(combinations(SYSTEMS, 2)), ids="-".join)
def test_any_system_to_any_other_and_back(pair):
    """The way there and the way back undo each other for every pair of systems."""
    there = count.count_from_count(7.0, *pair)
    assert count.count_from_count(there, *reversed(pair)) == pytest.approx(7.0, rel=1e-12)


@pytest.mark.parametrize("system", SYSTEMS)
@given(tex=tex_of_yarn)
def test_thicker_is_bigger_in_direct_and_smaller_in_indirect_systems(system, tex):
    """The table's word for each system is true of the arithmetic."""
    thicker, thinner = count.count_from_tex(tex * 1.1, system), count.count_from_tex(tex, system)
    assert thicker > thinner if system in DIRECT else thicker < thinner


def test_each_printed_factor_agrees_with_the_exact_one():
    """What D2260 prints is what the yard and the pound make, to the printed digit."""
    for row in count.count_systems().rows:
        if isinstance(row["printed_factor"], float):
            assert count.count_constant(row["unit"]) == pytest.approx(
                row["printed_factor"], rel=3e-6
            ), row["name"]


@given(mass=some.floats(0.1, 1e4), length=some.floats(1.0, 1e5))
def test_twice_the_length_in_the_same_weight_is_half_the_tex(mass, length):
    """Linear density is mass over length."""
    assert count.linear_density(mass, 2 * length) == pytest.approx(
        count.linear_density(mass, length) / 2
    )


@pytest.mark.parametrize("bad", [0.0, -1.0, float("nan"), float("inf")])
@pytest.mark.parametrize("system", SYSTEMS)
def test_no_count_without_a_number_above_zero(system, bad):
    """Never a NaN and never a division by zero: the error names the argument."""
    with pytest.raises(OutOfRange) as found:
        count.tex_from_count(bad, system)
    assert found.value.name == "count"


def test_an_unknown_system_is_not_guessed():
    """There is no nearest system."""
    with pytest.raises(KeyError):
        count.tex_from_count(10, "hanks per stone")
