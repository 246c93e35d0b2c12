"""Nudging a recipe: what was changed is found again, and nothing is made worse or taken out that is in the yarn."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from fibercalc.core.color import read_color
from fibercalc.core.problem import OutOfRange
from fibercalc.dye.color import match
from fibercalc.dye.color.difference import between
from fibercalc.dye.color.kubelka_munk import palette

UNDYED = read_color("#efe6d2")
THREE = palette(UNDYED, [(read_color(text), 1.0) for text in ("#27406a", "#a8553a", "#d8a520")])
ONE = palette(UNDYED, [(read_color("#27406a"), 2.0)])
RECIPES = st.lists(st.floats(0.02, 1.5), min_size=3, max_size=3)
COLORS = st.integers(0, 0xFFFFFF).map(lambda number: read_color(f"#{number:06x}"))


@given(RECIPES, RECIPES)
def test_a_known_change_is_found_again(old, new):
    """Two lots made by the same palette: the nudge is the difference of their recipes, and nothing remains."""
    found = match.nudge(THREE, new, THREE.color(old), THREE.color(new))
    assert found.after < 0.01 * max(found.before, 1.0)
    assert found.recipe == pytest.approx(old, abs=0.01)


@given(RECIPES, COLORS, COLORS, st.booleans())
def test_it_never_makes_worse_and_never_takes_out_more_than_there_is(recipe, old, new, only_add):
    found = match.nudge(THREE, recipe, old, new, only_add)
    assert found.after <= found.before
    assert min(found.recipe) >= -1e-9
    assert not only_add or min(found.changes) >= 0
    assert found.before == between(new, old)


@given(st.floats(0.1, 2), st.floats(0.05, 0.9))
def test_too_dark_a_lot_cannot_be_lightened_by_adding(percent, less):
    """With one dye, a darker lot is left as it is when dye can only be added; for the next lot the dye is cut."""
    dark, light = ONE.color([percent]), ONE.color([less * percent])
    assume(between(dark, light) > 1)
    assert match.nudge(ONE, [percent], light, dark, only_add=True).changes == (0.0,)
    assert match.nudge(ONE, [percent], light, dark).changes == (
        pytest.approx((less - 1) * percent, rel=1e-3),
    )


def test_the_whole_recipe_may_stand_for_one_dye():
    """Old lot dyed at nine tenths of the new one's strength."""
    found = match.nudge(ONE, [1.0], ONE.color([0.9]), ONE.color([1.0]))
    assert found.changes == (pytest.approx(-0.1, abs=1e-4),)


@pytest.mark.parametrize("recipe", [[1.0], [1.0, 1.0, -0.1], [1.0, 1.0, 400.0]])
def test_a_recipe_that_is_none_is_refused(recipe):
    with pytest.raises(OutOfRange):
        match.nudge(THREE, recipe, UNDYED, UNDYED)


def test_the_gentlest_nudge_is_near_enough_and_changes_no_more_than_the_exact_one():
    """A lot with a tenth more of one dye: that dye alone is taken back, and the rest of the recipe stays."""
    recipe = [0.62, 0.24, 0.1]
    new = THREE.color([0.682, 0.24, 0.1])
    exact = match.nudge(THREE, recipe, THREE.color(recipe), new)
    gentle = match.gentlest_nudge(THREE, recipe, THREE.color(recipe), new, enough=0.5)
    assert gentle.after <= 0.5 and gentle.after <= gentle.before
    assert (
        sum(abs(change) for change in gentle.changes)
        <= sum(abs(change) for change in exact.changes) + 1e-9
    )
    assert sum(change != 0 for change in gentle.changes) <= 1
