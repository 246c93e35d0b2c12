"""An error of one weighing counts for the part that was weighed: not for all the dye, and not between skeins that share it."""

import random
from math import sqrt

import pytest

from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card

EXTENDED = {
    "do": "extend",
    "wanted": "1 g/100 mL",
    "volume": "500 mL",
    "strength_left": "1 g/100 mL",
    "scale_error": "0.02 g",
    "jug_error": "0.1 mL",
}


def _off(texts):
    return work_card(find_card("stock-solution"), texts).outcome.value("may_be_off")


@pytest.mark.parametrize("left", ("100 mL", "480 mL"))
def test_however_little_is_added_the_scale_errs_by_the_same_grams(left):
    """0.02 g of the 5 g in the bottle are 0.4 %, whether 4 g or 0.2 g of them are new."""
    assert _off(EXTENDED | {"left": left}) == pytest.approx(sqrt(0.4**2 + 0.02**2))


def test_an_extended_stock_of_a_weak_jar_errs_less():
    """A jar of half the strength needs twice the grams: the same 0.02 g are half as much dye."""
    weak = _off(EXTENDED | {"left": "300 mL", "jar": "yes", "old_jar": "100", "new_jar": "50"})
    assert weak == pytest.approx(sqrt(0.2**2 + 0.02**2))


def _thrown(chance, mean):
    """Grains that fall on a skein, one after the other at their own moments."""
    grains, at = 0, chance.expovariate(mean)
    while at < 1:
        grains, at = grains + 1, at + chance.expovariate(mean)
    return grains


def test_skeins_of_one_batch_share_what_its_weighing_was_off():
    """Two skeins' dye weighed a sixth off, doses of mix weighed well: pairs differ no more often than by chance."""
    texts = {"spots": "40", "skein_mass": "100 g", "one_in": "50", "skeins": "2", "lost": "0 %"}
    off = work_card(find_card("speckle-dose"), texts | {"scale_error": "0.02 g"}).outcome
    well = work_card(find_card("speckle-dose"), texts | {"scale_error": "0.0005 g"}).outcome
    assert off.value("after") > 16
    assert off.value("busier") == pytest.approx(well.value("busier"), rel=0.01)
    chance, unlike = random.Random(5), 0
    for _ in range(6000):
        batch = 40 * (1 + chance.uniform(-1 / 6, 1 / 6))
        pair = _thrown(chance, batch), _thrown(chance, batch)
        unlike += max(pair) >= 1.5 * min(pair)
    assert off.value("busier") == pytest.approx(unlike / 60, abs=2.5)
