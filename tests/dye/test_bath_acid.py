"""The card of acid and pH: what is poured is named, ranged in its own unit, and asked back where it cannot be meant."""

import re

import pytest

from fibercalc.core.problem import BadInputs
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.safe.acids import bath_ph, dose_for_ph, volume_of
from fibercalc.safe.liquids import QUESTIONED, liquid_name, share_of_bath


def work(**given):
    return work_card(find_card("bath-acid"), {"do": "target", "chemical": "acetic", **given})


def said(**given) -> str:
    return " ".join(work(**given).sentences()).replace("\u00a0", " ")


def test_vinegar_is_named_by_its_strength():
    """2.81 g to pH 4 in 8 L: 2.81 / (1.0052 x 0.05) = 56.0 mL."""
    assert re.match(r"Put in 56 mL \(\d+ to \d+ mL\) of 5 % acetic acid \(white vinegar\)\.", said(target="4"))


def test_strong_acid_is_named_by_its_strength():
    """2.81 / (1.0602 x 0.56) = 4.74 mL; it is no vinegar."""
    assert re.match(r"Put in 4\.7 mL \([\d.]+ to [\d.]+ mL\) of 56 % acetic acid\.", said(target="4", strength="56 %"))


def test_the_milliliters_have_the_range_of_the_water():
    """Soft water may be 10 to 70 mg/L: the doses at its ends lie within the range of what is poured."""
    found = work(target="4").outcome
    for hard in (10.0, 70.0):
        poured = volume_of("acetic", dose_for_ph("acetic", 4.0, 8.0, alkalinity=hard), 5.0)
        assert found.low("volume") - 3 <= poured <= found.high("volume") + 3
    assert found.high("volume") - found.low("volume") > 60


def test_another_acid_for_the_same_ph_has_it_too():
    found = work(do="swap", chemical="citric", grams="4 g", other="acetic").outcome
    ends = [dose_for_ph("acetic", bath_ph(8.0, {"citric": 4.0}, hard), 8.0, alkalinity=hard) for hard in (10.0, 70.0)]
    assert found.low("other_grams") < min(ends) + 1 and found.high("other_grams") > max(ends) - 1


def test_over_5_percent_of_the_bath_is_asked_back():
    """978 mL in 8 L are 12 %; 20 g of citric acid are none."""
    assert said(target="3").startswith("980 mL of 5 % acetic acid (white vinegar) is 12 % of the bath: is that meant?")
    assert any("Over 5 %" in note for note in work(target="3").notes())
    assert "meant" not in said(target="4") and "meant" not in said(do="amount", chemical="citric", grams="20 g")


@pytest.mark.parametrize("given", [{"do": "amount", "chemical": "citric", "grams": "500 g"}, {"do": "swap", "chemical": "citric", "other": "acetic"}, {"do": "amount", "chemical": "formic", "grams": "50 g"}])
def test_every_way_of_asking_is_asked_back(given):
    assert "% of the bath: is that meant?" in said(**given)


def test_more_acid_than_bath_is_refused():
    """58.5 L of vinegar for 8 L."""
    with pytest.raises(BadInputs) as refused:
        work(target="2")
    assert "58.5 L of 5 % acetic acid (white vinegar), more than the bath of 8 L" in str(refused.value)


def test_more_crystals_than_water_are_refused():
    """9 kg in 8 L: under the 10 mol in a liter that the model takes, and no bath."""
    with pytest.raises(BadInputs) as refused:
        work(do="amount", chemical="citric", grams="9000 g", liters="8 L")
    assert "9 kg in 8 L" in str(refused.value)


def test_the_table_of_other_acids_asks_too():
    cells = {row[0]: row[2].replace("\u00a0", " ") for row in work(target="3").tables()[0].rows}
    assert cells["Acetic acid"] == "over 5 % of the bath, as 5 % acetic acid"
    assert {row[0]: row[2] for row in work(target="4", strength="56 %").tables()[0].rows}["Acetic acid"].replace("\u00a0", " ") == "4.7 mL of 56 % acetic acid"


@pytest.mark.parametrize("chemical, percent, name", [("acetic", 5, "5 % acetic acid (white vinegar)"), ("acetic", 56, "56 % acetic acid"), ("acetic", 10, "10 % acetic acid"), ("formic", 5, "5 % formic acid"),
                                                     ("ammonia", 25, "25 % ammonia")])
def test_a_liquid_has_its_strength_in_its_name(chemical, percent, name):
    assert liquid_name(chemical, percent, f"{percent} %") == name


def test_the_edge_is_at_5_percent():
    assert share_of_bath(400, 8000) == QUESTIONED and share_of_bath(978, 8000) == pytest.approx(12.225)


def test_a_recipe_with_much_vinegar_is_asked_back():
    """400 g at 12 % of acid from 5 g in 100 mL: 960 mL in 8 L are 12 %."""
    recipe = find_card("dye-recipe")
    assert any("960 mL of 5 % acetic acid (white vinegar) is 12 % of the bath" in note.replace("\u00a0", " ") for note in work_card(recipe, {"acid": "liquid", "acid_share": "12 %"}).notes())
    assert not any("% of the bath" in note for note in work_card(recipe, {"acid": "liquid"}).notes())
