"""Recipes, stocks and painting: what goes in equals the recipe, what is turned around comes back, and refusals say what to change."""

import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as some

import fibercalc
from fibercalc.core.checks import shared_folder
from fibercalc.core.problem import OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.dye import base_factor, measuring, paint, recipe, stock
from fibercalc.dye import pot_loads as pots

masses = some.floats(1.0, 5000.0)
depths = some.floats(0.001, 8.0)
strengths = some.floats(0.01, 10.0)


@given(mass=masses, doses=some.lists(some.tuples(depths, strengths), min_size=1, max_size=6))
def test_what_the_stocks_bring_is_the_recipe(mass, doses):
    """Volume times strength, added up over the dyes, is the depth on the fiber."""
    brought = sum(
        recipe.dye_in_stock(recipe.stock_volume(recipe.dye_mass(mass, depth), strength), strength)
        for depth, strength in doses
    )
    assert recipe.depth_of_dye(brought, mass) == pytest.approx(sum(depth for depth, _ in doses))


def test_wet_slate_for_a_load_a_lot_and_a_run():
    """Four skeins take 248, 96 and 16 mL; twelve in three pots three times that."""
    demo = {
        row["id"]: row
        for row in tomllib.loads((shared_folder() / "demo" / "colorways.toml").read_text("utf-8"))[
            "colorway"
        ]
    }["wet-slate"]
    depths = demo["depth_percent"].values()

    def doses(skeins):
        return [
            recipe.stock_volume(recipe.dye_mass(100 * skeins, depth), demo["stock_percent"])
            for depth in depths
        ]

    assert doses(demo["skeins"]) == pytest.approx([248, 96, 16])
    loads = pots.even_loads(12, 4)
    assert [sum(each) for each in zip(*map(doses, loads))] == pytest.approx(
        [3 * 248, 3 * 96, 3 * 16]
    )


def test_an_overfull_bath_is_refused_with_what_to_change():
    """400 mL of stock do not go into a bath of 300."""
    assert recipe.top_up_water(400, 400) == 0
    with pytest.raises(OutOfRange, match="stronger stocks"):
        recipe.top_up_water(300, 400)


@given(dye=some.floats(0.005, 5.0), error=some.floats(0.1, 2.0), share=some.floats(1.0, 10.0))
def test_the_weaker_stock_makes_the_dose_measurable(dye, error, share):
    """The dose is at least what the syringe measures to the share wanted; the next stronger stock is not."""
    least = measuring.least_dose(error, share)
    try:
        strength = recipe.measurable_strength(dye, least)
    except OutOfRange:
        assert recipe.stock_volume(dye, min(recipe.USUAL_STRENGTHS)) < least
        return
    assert measuring.error_share(error, recipe.stock_volume(dye, strength)) <= share * (1 + 1e-9)
    stronger = [each for each in recipe.USUAL_STRENGTHS if each > strength]
    assert not stronger or recipe.stock_volume(dye, min(stronger)) < least


@given(volume=some.floats(1.0, 5000.0), have=some.floats(0.1, 20.0), share=some.floats(0.01, 1.0))
def test_thinning_keeps_the_dye(volume, have, share):
    """What goes in comes out, and the two ways of asking agree."""
    wanted = have * share
    strong = stock.stock_to_dilute(volume, wanted, have)
    assert recipe.dye_in_stock(strong, have) == pytest.approx(recipe.dye_in_stock(volume, wanted))
    assert stock.diluted_volume(strong, have, wanted) == pytest.approx(volume)


@given(left=some.floats(0.0, 900.0), weak=some.floats(0.0, 1.0))
def test_an_extended_stock_has_the_strength_wanted(left, weak):
    """Old dye and new powder in 1 L."""
    powder = stock.powder_to_extend(1000.0, 1.0, left, weak)
    assert stock.stock_strength(powder + left * weak / 100, 1000.0) == pytest.approx(1.0)


@pytest.mark.parametrize(
    "call, words",
    [
        (lambda: stock.stock_to_dilute(500, 2, 1), "add powder"),
        (lambda: stock.powder_to_extend(500, 1, 400, 5), "larger volume"),
        (lambda: stock.stock_strength(500, 1000), "no dye dissolves"),
        (lambda: paint.paint_volume(50, 80, 120), "squeeze or spin"),
        (lambda: paint.stock_in_paint(50, 2, 1), "stronger stock"),
        (lambda: recipe.measurable_strength(1e-6, 20), "weak enough"),
    ],
)
def test_a_refusal_is_one_line_that_says_what_to_change(call, words):
    """Lower case, no period: the frame adds the label."""
    with pytest.raises(OutOfRange, match=words) as caught:
        call()
    assert caught.value.reason[0].islower() and not caught.value.reason.endswith(".")


@given(powder=some.floats(0.1, 50.0))
def test_added_to_is_weaker_than_made_up_to_and_more_so_when_strong(powder):
    """1 L of water: the loss is small at 1 % and several percent at 5."""
    made, added = stock.stock_strength(powder, 1000), stock.strength_if_added(powder, 1000)
    assert added < made
    assert 1 - added / made == pytest.approx(powder * 0.00065 / (1 + powder * 0.00065))


@given(
    mass=masses,
    shares=some.lists(some.floats(0.1, 10.0), min_size=1, max_size=12),
    depth=some.floats(0.01, 4.0),
)
def test_painted_sections_carry_the_depth(mass, shares, depth):
    """Sections add up to the skein, and liquor times its strength to the dye."""
    sections = paint.section_masses(mass, shares)
    assert sum(sections) == pytest.approx(mass)
    dye = sum(
        recipe.dye_in_stock(
            paint.paint_volume(section, 150, 60), paint.paint_strength(depth, 150, 60)
        )
        for section in sections
    )
    assert recipe.depth_of_dye(dye, mass) == pytest.approx(depth)


def test_verdicts_run_from_go_to_no_go():
    """The same dyes: as usual, all a little more, one of them more than the others, far off."""
    assert [
        base_factor.dye_verdict(factors)
        for factors in ([1.0, 1.03], [1.2, 1.2], [0.97, 1.09], [1.0, 1.6], [0.6])
    ] == ["go", "go with changes", "go with changes", "no-go", "no-go"]
    assert [base_factor.change_verdict(change) for change in (0, -3, -6, 12, -40)] == [
        "go",
        "go",
        "go with changes",
        "no-go",
        "no-go",
    ]
    assert (
        base_factor.worst_verdict(["go", "no-go", "go with changes"]) == "no-go"
        and base_factor.worst_verdict([]) == "go"
    )


@given(depth=some.floats(0.05, 4.0), factor=some.floats(0.3, 3.0))
def test_a_factored_depth_gives_the_factor_back(depth, factor):
    """Matched depths."""
    assert base_factor.depth_factor(
        base_factor.factored_depth(depth, factor), depth
    ) == pytest.approx(factor)


def test_a_match_by_eye_is_rough_in_proportion_to_its_depth():
    """0.04 % matched by eye is good to a few percent of it, not to percents of the fiber: the mean factor of three dyes is known to 3 %."""
    found = fibercalc.work("base-test", {})["results"]
    assert found["mean_factor"]["high"] / found["mean_factor"]["low"] < 1.1
    assert found["apart"]["high"] < 1.3


@pytest.mark.parametrize(
    "texts, holds",
    [
        ({"do": "make"}, 5 * 100 / 150),
        ({"do": "use-up", "powder": "10 g"}, 5 * 100 / 150),
        (
            {"do": "extend", "volume": "500 mL", "left": "200 mL", "strength_left": "5 %"},
            (300 * 5 * 100 / 150 + 200 * 5) / 500,
        ),
    ],
)
def test_a_bottle_from_a_strong_jar_says_what_it_works_as_and_what_it_holds(texts, holds):
    """5 g in 100 mL of a jar of 100 are 3.33 g of one of 150. The label says both, and the hazard label gets what is in the bottle."""
    worked = work_card(
        find_card("stock-solution"),
        {"wanted": "5 %", "jar": "yes", "old_jar": "100", "new_jar": "150"} | texts,
    )
    assert worked.outcome.value("holds") == pytest.approx(holds)
    label = dict(worked.tables()[0].rows)
    assert (
        "Strength" not in label
        and label["Works as"] == "5 g in 100 mL, of a jar of strength 100"
        and label["Holds"].startswith(f"{holds:.2f}\u00a0g/100\u00a0mL")
    )
    assert "works as 5 % of the usual jar" in worked.sentences()[1]
    (contents,) = [carry for carry in worked.card.carry if carry.card == "hazard-label"]
    assert float(
        contents.inputs["contents"](worked.outcome)[0]["strength"].rstrip("%")
    ) == pytest.approx(holds, rel=1e-3)


def test_a_bottle_from_the_usual_jar_says_its_strength():
    label = dict(work_card(find_card("stock-solution"), {}).tables()[0].rows)
    assert label["Strength"] == "1 g in 100 mL" and "Holds" not in label
