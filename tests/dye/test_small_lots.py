"""A skein of a gram and fifty kilograms: what is measured out is never written as nothing, nor as noticeably more or less."""

import re

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as some

from fibercalc.core.problem import BadInputs
from fibercalc.core.registry import find_card
from fibercalc.core.units import COUNT, MONEY, NUMBER, PERCENT, TEMPERATURE, Quantity
from fibercalc.core.work import work_card
from tests.cards import BOOK, card_id

BARE = (COUNT, MONEY, NUMBER, TEMPERATURE)
NUMBERS = re.compile(r"−?[\d,]*\.?\d+")


def work(card, texts):
    return work_card(find_card(card), texts)


def number(text: str) -> float:
    """The first number of a written amount."""
    return float(NUMBERS.search(text)[0].replace(",", "").replace("−", "-"))


def holds_true(written: str, true: float, spread: float = 0.0) -> None:
    """Not nothing, and at most 1 % or a tenth of the spread away, whichever is more."""
    assert (number(written) != 0) == (true != 0), (written, true)
    assert abs(number(written) - true) <= max(0.01 * abs(true), 0.1 * spread) * (1 + 1e-6), (written, true, spread)


def results_hold_true(worked) -> None:
    """Every measured amount among the results, in each of its units."""
    for name, found in worked.outcome.found.items():
        of = found.result.of
        if not isinstance(of, Quantity) or of in BARE or found.result.at_step or found.result.chance or (of is PERCENT and (found.result.step(of.base) or 0) >= 1):
            continue
        for unit in worked.outcome.units(name):
            true, *ends = (unit.from_base(end) for end in (found.value, found.low, found.high))
            if min(ends) < 0 < max(ends) or abs(true) < 1e-5:
                continue  # nothing at all may be true; or less than any scale of six decimals shows
            holds_true(worked.outcome.text(name, unit.sign), true, abs(ends[1] - ends[0]))


@pytest.mark.parametrize("card", BOOK, ids=card_id)
def test_the_amounts_of_every_example_hold_true(card):
    results_hold_true(work_card(card, {}))


def table(worked, title) -> dict[str, tuple]:
    found = next(each for each in worked.tables() if each.title.startswith(title))
    return {row[0]: row[1:] for row in found.rows}


def papers(worked) -> list[tuple]:
    return [row for paper in worked.card.papers for each in paper.tables(worked.outcome) for row in each.rows]


def test_a_twentieth_of_a_milliliter_is_measured_as_that():
    """5 g at 0.01 % is 0.5 mg of dye: 0.05 mL of a 1 % stock, in sentence, table, note and on both papers; of 0.1 % ten times that."""
    worked = work("dye-recipe", {"skeins": "1", "skein_mass": "5 g", "dyes.1.name": "navy", "dyes.1.depth": "0.01 %", "dyes.1.strength": "1 %", "syringe": "1 mL", "syringe_error": "0.02 mL"})
    first, _ = worked.sentences()
    assert first == "Measure 0.05\u00a0mL of navy."
    assert table(worked, "What to measure")["navy"] == ("0.05\u00a0mL",) * 3
    assert [row for row in papers(worked) if row[0].startswith("navy")] == [("navy, 0.01 %", *("0.05\u00a0mL",) * 2, "☐"), ("navy", "0.05\u00a0mL", "", "☐")]
    (note,) = [note for note in worked.notes() if "navy" in note]
    assert note.startswith("0.05\u00a0mL of navy is good to ± 40 %") and "0.1\u00a0% stock it would be 0.5\u00a0mL, measured well" in note
    assert table(worked, "Dye in it")["navy"][1] == "0.0005\u00a0g"


def test_half_a_gram_of_soda_is_half_a_gram_everywhere():
    """10 g in a liter, 50 mL of bath: 0.5 g."""
    worked = work("dye-recipe", {"skeins": "1", "skein_mass": "2.5 g", "acid": "soda-ash", "soda": "10 g/L"})
    assert worked.outcome.value("bath") == pytest.approx(50)
    assert "0.5\u00a0g of soda ash" in worked.sentences()[1] and worked.outcome.text("soda_mass") == "0.5\u00a0g"
    assert table(worked, "What to measure")["Soda ash"] == ("0.5\u00a0g",) * 3


def test_twenty_grams_are_painted_with_more_than_nothing():
    """Cream, 0.05 % on 6 of 20 g, is 3 mg of dye: 0.15 mL of the 2 % stock, in a liquor of 0.05 x 100 / 170 = 0.0294 %."""
    worked = work("paint-plan", {"skein_mass": "20 g", "skeins": "1"})
    rows = table(worked, "To mix")
    assert rows["cream"][2:4] == ("0.0294\u00a0%", "0.15\u00a0mL")
    assert not any(number(cell) == 0 for row in rows.values() for cell in row)
    assert [number(each) for each in re.findall(r"[\d.]+\u00a0mL", worked.sentences()[0])] == [number(row[1]) for row in rows.values()]


def test_a_factored_depth_keeps_its_last_figure():
    """0.04 % matched by 0.043 %: 0.04 would be seven percent less dye."""
    assert table(work("base-test", {}), "Dye by dye")["brown"][3] == "0.043\u00a0%"


def test_a_label_still_promises_whole_yards_and_grams():
    """36.7 yd and 12.9 g promise 36 yd and 12 g: rounding down to a whole unit is a promise, and no falsehood."""
    worked = work("label", {"length": "36.7 yd", "mass": "12.9 g"})
    assert worked.outcome.text("printed_length", "yd") == "36\u00a0yd" and worked.outcome.text("printed_mass", "g") == "12\u00a0g"
    short = work("skein-length", {"way": "turns", "turns": "13 ± 0", "circumference": "1.04 m ± 0 m", "stretch": "0 % ± 0"}).outcome  # 13.52 m is 14.786 yd
    assert short.promised("length") == "14\u00a0yd (13\u00a0m)" and short.text("length", "m") == "13.5\u00a0m"


def logarithms(low: float, high: float):
    """Numbers from low to high, small ones as often as large ones, with four figures as somebody types them."""
    return some.floats(0, 1).map(lambda at: float(f"{low * (high / low) ** at:.4g}"))


SKEIN = logarithms(1, 5000)
DEPTH = logarithms(0.001, 8)
STRENGTH = logarithms(0.05, 10)
tried_often = settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.filter_too_much])


def worked_or_refused(card, texts):
    try:
        return work(card, texts)
    except BadInputs:
        assume(False)


@tried_often
@given(SKEIN, some.integers(1, 10), DEPTH, STRENGTH, some.sampled_from(("citric", "liquid", "soda-ash")), some.integers(1, 20))
def test_a_recipe_of_any_size_holds_true(grams, skeins, depth, strength, acid, lots):
    """Doses reckoned here: weight x depth / strength; the yarn's weight is good to a gram of each skein."""
    worked = worked_or_refused("dye-recipe", {"skeins": f"{skeins}", "skein_mass": f"{grams} g", "fill": "500 L", "acid": acid, "lots": f"{lots}",
                                              "dyes.1.name": "navy", "dyes.1.depth": f"{depth} %", "dyes.1.strength": f"{strength} %"})
    results_hold_true(worked)
    share = (worked.outcome.high("goods") - worked.outcome.low("goods")) / worked.outcome.value("goods")
    volume, powder = grams * skeins * depth / strength, grams * skeins * depth / 100
    pot = volume * worked.outcome.kept["loads"][0] / skeins
    for cell, true in zip(table(worked, "What to measure")["navy"], (pot, volume, volume * lots)):
        holds_true(cell, true, share * true)
    for cell, true in zip(table(worked, "Dye in it")["navy"][1:], (powder, powder * lots)):
        holds_true(cell, true, share * true)
    holds_true(worked.sentences()[0], volume, share * volume)
    for row in papers(worked):
        assert all(number(cell) != 0 for cell in row if cell.endswith(("mL", "\u00a0g")))


@tried_often
@given(logarithms(1, 2000), some.integers(1, 25), DEPTH, STRENGTH)
def test_painted_sections_of_any_size_hold_true(grams, skeins, depth, strength):
    worked = worked_or_refused("paint-plan", {"skein_mass": f"{grams} g", "skeins": f"{skeins}", "stock": f"{strength} %", "sections.1.name": "all",
                                              "sections.1.share": "1", "sections.1.depth": f"{depth} %", "sections.2.name": "tip", "sections.2.share": "3", "sections.2.depth": f"{depth} %"})
    results_hold_true(worked)
    yarn, liquor, made, stock, water = table(worked, "To mix")["all"]
    each, wide = grams / 4 * 1.7, worked.outcome.high("liquor") - worked.outcome.low("liquor")
    of_stock = grams / 4 * depth / strength * skeins
    for cell, true, spread in ((yarn, grams / 4, 0), (liquor, each, wide / 4), (made, depth / 1.7, 0), (stock, of_stock, 0)):
        holds_true(cell, true, spread)
    assert abs(number(water) - (each * skeins - of_stock)) <= max(0.01 * (each * skeins - of_stock), 1e-5)


@tried_often
@given(some.sampled_from(("make", "use-up", "dilute", "extend")), logarithms(5, 50000), logarithms(0.01, 10), logarithms(10, 400))
def test_a_stock_of_any_size_holds_true(do, volume, wanted, jar):
    worked = worked_or_refused("stock-solution", {"do": do, "volume": f"{volume} mL", "wanted": f"{wanted} %", "have": "10 %", "powder": f"{volume / 100} g", "left": f"{volume / 7:.4g} mL",
                                                  "strength_left": f"{wanted} %", "jar": "yes", "new_jar": f"{jar}"})
    results_hold_true(worked)


@tried_often
@given(logarithms(5, 2000), logarithms(0.001, 2), some.integers(1, 25))
def test_speckles_of_any_size_hold_true(grams, depth, skeins):
    results_hold_true(worked_or_refused("speckle-dose", {"skein_mass": f"{grams} g", "depth": f"{depth} %", "skeins": f"{skeins}"}))


@tried_often
@given(logarithms(0.1, 500), some.floats(0, 0.9).map(lambda share: round(share, 3)))
def test_a_bath_of_any_size_holds_true(liters, share):
    results_hold_true(worked_or_refused("bath-heat", {"bath": f"{liters} L", "fiber_mass": f"{1000 * liters * share / 20:.4g} g", "pot_mass": f"{liters / 5:.3g} kg", "power": "50 kW"}))


@settings(max_examples=20, deadline=None, suppress_health_check=[HealthCheck.filter_too_much])
@given(logarithms(1, 50000), logarithms(0.001, 0.5))
def test_shades_of_any_size_hold_true(grams, first):
    """Each shade as it can be weighed, on a scale that shows a tenth of a milligram: depth and dose are what the ladder says."""
    worked = worked_or_refused("shade-steps", {"fiber": f"{grams} g", "count": "3", "scale_step": "0.0001 g", "dyes.1.name": "navy", "dyes.1.sample": "#27406a", "dyes.1.percent": "2 %", "dyes.1.first": f"{first} %",
                                               "dyes.1.last": "2 %"})
    results_hold_true(worked)
    for recipe, (depth, dose, _) in zip(worked.outcome.kept["real"].recipes, table(worked, "Skein by skein").values()):
        holds_true(depth, recipe[0])
        holds_true(dose, grams * recipe[0] / 100)


@settings(max_examples=20, deadline=None, suppress_health_check=[HealthCheck.filter_too_much])
@given(logarithms(1, 50000), logarithms(0.002, 2))
def test_a_nudge_of_any_size_holds_true(grams, depth):
    worked = worked_or_refused("lot-repeat", {"fiber": f"{grams} g", "dyes.1.name": "navy", "dyes.1.sample": "#27406a", "dyes.1.percent": "2 %", "dyes.1.depth": f"{depth} %"})
    nudge = worked.outcome.kept["nudge"]
    for true, move, (_, becomes, more) in zip(nudge.recipe, nudge.changes, table(worked, "The nudged recipe").values()):
        if true > 1e-5:
            holds_true(becomes, true)
        if abs(grams * move / 100) > 1e-5:
            holds_true(more.lstrip("+−"), abs(grams * move / 100))
