"""Plied yarn: direct and indirect arithmetic are the same yarn."""

import pytest
from hypothesis import given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.yarn.count import count_from_tex, tex_from_count
from fibercalc.yarn.plied import plied_count, plied_tex

singles_tex = some.lists(some.floats(1.0, 2000.0), min_size=1, max_size=12)
take_ups = some.floats(0.0, 50.0)


@given(singles=singles_tex, take_up=take_ups)
def test_tex_added_and_counts_inverted_agree(singles, take_up):
    """Adding tex and adding one over each count describe one and the same ply."""
    by_count = plied_count([count_from_tex(tex, "Ne") for tex in singles], take_up)
    assert tex_from_count(by_count, "Ne") == pytest.approx(plied_tex(singles, take_up), rel=1e-9)


@given(singles=singles_tex)
def test_a_ply_without_take_up_weighs_what_its_singles_weigh(singles):
    """Mass balance over one kilometer."""
    assert plied_tex(singles) == pytest.approx(sum(singles))


@given(singles=singles_tex, take_up=some.floats(0.1, 50.0))
def test_take_up_makes_the_ply_heavier(singles, take_up):
    """The same fiber lies in less length."""
    assert plied_tex(singles, take_up) > plied_tex(singles)


def test_a_ply_needs_a_single():
    """An empty list is an error in plain words and not a division by zero."""
    with pytest.raises(OutOfRange, match="give one or more"):
        plied_count([])


@pytest.mark.parametrize("take_up", [-0.1, 50.1, float("nan")])
def test_take_up_outside_its_range_is_refused(take_up):
    """No ply loses half of its singles' length."""
    with pytest.raises(OutOfRange):
        plied_tex([100.0], take_up)
