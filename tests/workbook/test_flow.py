"""What a card asks of a record, and what it keeps as one, is there, of the same quantity, and comes through whole."""

import json

import pytest

from fibercalc.core.card import CHOICE, TEXT, Input, Rows
from fibercalc.core.reading import read_inputs
from fibercalc.core.registry import find_card
from fibercalc.core.onward import known_as
from fibercalc.core.settings import Settings
from fibercalc.core.work import work_card
from fibercalc.workbook.base_link import LINK
from fibercalc.workbook.demo import demo_text
from fibercalc.workbook.exchange import read_file
from fibercalc.workbook.flow import KEPT, offers, places, saved
from fibercalc.workbook.kinds import KINDS
from fibercalc.workbook.records import Unusable, checked
from tests.cards import CARDS, card_id

from .making import record

POINT = Settings()
DEMO = read_file(demo_text())[0]
every_card = pytest.mark.parametrize("card", [*CARDS, LINK], ids=card_id)


def matches(one, other) -> bool:
    """Whether a value of one can be a value of the other: the same quantity, or words."""
    words = (TEXT, CHOICE)
    return one is other or (one in words and other in words)


@every_card
def test_every_record_that_a_card_asks_for_is_there_and_of_the_same_quantity(card):
    for item in card.inputs:
        if not item.record:
            assert not isinstance(item, Rows) or not any(each.record for each in item.fields), f"{item.name}: its fields name a list, and it does not"
            continue
        kind, _, field = item.record.partition(".")
        held = KINDS[kind].names[field]
        if isinstance(item, Rows):
            assert isinstance(held, Rows), item.record
            fields = {each.name: each for each in held.fields}
            for each in item.fields:
                if each.record or each.name in fields:
                    assert matches(fields[each.record or each.name].of, each.of), f"{item.record}: {each.name}"
            assert any(each.record or each.name in fields for each in item.fields)
        else:
            assert isinstance(held, Input) and matches(held.of, item.of), item.record
            if held.of == CHOICE and item.of == CHOICE:
                common = {option.value for option in held.options} & {option.value for option in item.options}
                assert common, f"{item.record}: no word in common"


@every_card
def test_every_record_that_a_card_keeps_is_there_and_of_the_same_quantity(card):
    for save in card.saves:
        names, items = KINDS[save.kind].names, {item.name: item for item in card.inputs}
        for field, source in save.fields.items():
            held = names[field]
            if source.startswith("'"):
                assert source.strip("'") in [option.value for option in held.options]
            elif isinstance(held, Rows):
                assert isinstance(items[source], Rows)
                assert {each.record or each.name for each in items[source].fields} & {each.name for each in held.fields}
            else:
                of = card.result_by_name[source].of if source in card.result_by_name else items[source].of
                assert matches(of, held.of), f"{save.kind}.{field} from {source}"
        for name, values in save.when.items():
            assert {option.value for option in items[name].options} >= set(values)


@every_card
def test_the_example_can_be_kept_at_every_place_that_it_offers(card):
    if card is LINK:
        return
    worked = work_card(card, {}, POINT)
    found = places(card, worked.given, DEMO)
    assert found[-1]["place"] == KEPT
    for place in found:
        document = saved(worked, place["place"], "" if place["name"] else "For a test", "new-abcdefgh", "2027-01-13", DEMO)
        whole = checked(document | {"rev": "1-aaaa", "changed": "2027-01-13T18:00:00Z"})
        assert {part: whole[part] for part in ("values", "rows")} == {part: document[part] for part in ("values", "rows")}


def texts_of(card, offer: dict) -> dict[str, str]:
    """What an offer makes of the example, as the page does it: texts beside their units."""
    units = {name.removesuffix(".unit"): value for name, value in offer["values"].items() if name.endswith(".unit")}
    texts = {name: value for name, value in offer["values"].items() if not name.endswith(".unit")}
    return read_inputs(card, texts, POINT, units=units, counts=offer["rows"])


@every_card
def test_every_offer_of_the_demo_can_be_read_by_its_card(card):
    for offer in offers(card, DEMO, POINT):
        given = texts_of(card, offer)
        assert not given.problems, (offer, [problem.text for problem in given.problems])


def labels(card_name: str) -> list[str]:
    return [offer["label"] for offer in offers(find_card(card_name), DEMO, POINT)]


def test_a_base_is_offered_as_my_bench_offers_it():
    assert labels("yarn-instead") == ["Use Cobb (170 m)", "Use Dunmel DK (230 m)", "Use Tarrow Sock (420 m)"]


def test_a_colorway_brings_its_recipe_and_its_base():
    offer = next(each for each in offers(find_card("dye-recipe"), DEMO, POINT) if each["label"].startswith("Use Wet Slate"))
    given = texts_of(find_card("dye-recipe"), offer)
    assert [given.readings[f"dyes.{row}.depth"].text for row in (1, 2, 3)] == ["0.62%", "0.24%", "0.04%"] and given.counts["dyes"] == 3
    assert given.readings["skein_mass"].text == "100g" and given.readings["skeins"].text == "4"
    answer = work_card(find_card("dye-recipe"), {}, POINT)
    assert answer.outcome.value("stock_total") == pytest.approx(360, abs=0.5), "the scenario's 248 + 96 + 16 mL"


def test_a_list_that_does_not_fit_is_not_offered_by_half():
    """A fiber that the card has no word for: the whole list stays away."""
    base = record("base", name="Odd", mass="50g", fibers=[{"fiber": "wool", "share": "50%"}, {"fiber": "moonlight", "share": "50%"}])
    assert offers(find_card("care-label"), [base], POINT) == []
    known = record("base", name="Plain", fibers=[{"fiber": "Wool", "share": "100%"}])
    assert offers(find_card("care-label"), [known], POINT)[0]["values"]["fibers.1.fiber"] == "wool"


def test_a_text_too_long_for_its_field_is_left_out_whole():
    """Half a hazard phrase is none."""
    jar = record("jar", name="Navy", lot="N-207", hazards="May cause an allergic skin reaction; causes serious eye irritation")
    values = offers(find_card("stock-solution"), [jar], POINT)[0]["values"]
    assert values["lot"] == "N-207" and "hazards" not in values


def test_a_spread_flows_into_the_card():
    offer = offers(find_card("yarn-needed"), [record("base", name="Spread", mass="100g", length="420~8m")], POINT)[0]
    assert offer["values"]["skein_length"] == "420 ± 8" and offer["values"]["skein_length.unit"] == "m"


def test_a_result_is_kept_with_its_spread_and_as_measured():
    worked = work_card(find_card("skein-length"), {}, POINT)
    document = saved(worked, "0:", "Tarrow, this delivery", "base-abcdefgh", "2027-01-13", [])
    assert document["values"]["length"] == known_as(worked, "length", KINDS["base"].names["length"]) and "~" in document["values"]["length"]
    assert document["values"]["length_known"] == "measured"


def test_saving_into_a_record_leaves_its_other_fields_alone():
    tarrow = next(each for each in DEMO if each["values"].get("name") == "Tarrow Sock")
    document = saved(work_card(find_card("skein-length"), {"turns": "281"}, POINT), f"0:{tarrow['id']}", "", "x", "2027-01-13", DEMO)
    assert {key for key in document["values"] if document["values"][key] != tarrow["values"].get(key)} == {"length", "length_known"}
    assert document["rows"] == tarrow["rows"] and document["rev"] == tarrow["rev"]


def test_a_recipe_kept_and_used_again_is_the_same_recipe():
    card = find_card("dye-recipe")
    worked = work_card(card, {"dyes.1.name": "red", "dyes.1.depth": "1.5 %", "dyes.1.strength": "2"}, POINT)
    assert worked.given.counts["dyes"] == 1
    document = checked(saved(worked, "0:", "Red", "colorway-abcdefgh", "2027-01-13", []) | {"rev": "1-aaaa", "changed": "2027-01-13T18:00:00Z"})
    given = texts_of(card, offers(card, [document], POINT)[0])
    assert {name: given.readings[name].text for name in worked.given.readings} == {name: reading.text for name, reading in worked.given.readings.items()}


def test_what_cannot_be_kept_says_why():
    worked = work_card(find_card("skein-length"), {}, POINT)
    for place, name, why in (("0:", " ", "name first"), ("0:base-gone", "", "no longer there"), ("7:", "x", "no such record"), (KEPT, "", "name first"), (KEPT, "me@example.org", "no customer")):
        with pytest.raises(Unusable, match=why):
            saved(worked, place, name, "x-abcdefgh", "2027-01-13", [])


def test_a_kept_answer_opens_again_with_its_values():
    worked = work_card(find_card("skein-length"), {"turns": "285"}, POINT)
    document = saved(worked, KEPT, "Odd skein", "kept-abcdefgh", "2027-01-13", [])
    assert document["values"]["card"] == "skein-length" and document["values"]["query"] == "v=1&b=285"
    assert document["values"]["answer"].startswith("This skein holds about")
    assert json.dumps(document)
