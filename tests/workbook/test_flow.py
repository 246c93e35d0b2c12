"""What a card asks of a record, and what it keeps as one, is there, of the same quantity, and comes through whole."""

import json
from dataclasses import replace

import pytest

from fibercalc.core.card import CHOICE, TEXT, Case, Constant, Input, Option, Save, case_of
from fibercalc.core.onward import known_as
from fibercalc.core.reading import read_inputs
from fibercalc.core.registry import find_card
from fibercalc.core.settings import Settings
from fibercalc.core.units import MASS
from fibercalc.core.work import work_card, work_given
from fibercalc.held import RECORD
from fibercalc.workbook.base_link import LINK
from fibercalc.workbook.demo import demo_text
from fibercalc.workbook.exchange import read_file
from fibercalc.workbook.fits import check
from fibercalc.workbook.flow import KEPT, offers, places, saved
from fibercalc.workbook.kinds import KINDS
from fibercalc.workbook.records import Unusable, checked
from tests.cards import CARDS, card_id

from .making import record

POINT = Settings()
DEMO = read_file(demo_text())[0]
every_card = pytest.mark.parametrize("card", [*CARDS, LINK], ids=card_id)


@every_card
def test_what_a_card_asks_and_keeps_is_there_and_measures_the_same(card):
    check(card)


class Broken(Case):
    """Parts that a reference can be wrong about."""

    mass = Input(MASS, "m", default="1 g", allowed=("0 g", "9 g"))
    word = Input(CHOICE, "w", default="a", options=(Option("a", "A"),))


@pytest.mark.parametrize(
    "item, why",
    [
        (Input(MASS, "x", allowed=("0 g", "9 g"), record=RECORD.base.length), "the same"),
        (Input(MASS, "x", allowed=("0 g", "9 g"), record=RECORD.base.fibers), "of each row|a list"),
        (Input(MASS, "x", allowed=("0 g", "9 g"), record=RECORD.bench.tap), "no record"),
        (Input(MASS, "x", allowed=("0 g", "9 g"), bench=RECORD.bench.tap), "the same"),
        (Input(MASS, "x", allowed=("0 g", "9 g"), bench=RECORD.base.mass), "not on My bench"),
        (Input(TEXT, "x", bench=RECORD.base.name), "not on My bench"),
        (
            Input(CHOICE, "x", options=(Option("q", "Q"),), record=RECORD.measurement.state),
            "no word in common",
        ),
    ],
)
def test_a_place_that_does_not_fit_is_named_with_its_card(item, why):
    with pytest.raises(ValueError, match=rf"(broken|Broken|Form)\b.*\bx\b.*({why})"):
        check(replace(LINK, id="broken", case=case_of((replace(item, name="x"),))))


@pytest.mark.parametrize(
    "fields, why",
    [
        ({RECORD.base.length: Broken.mass}, "the same"),
        ({RECORD.base.fibers: Broken.mass}, "no list"),
        ({RECORD.base.weight_class: Constant("9")}, "cannot be 9"),
        ({RECORD.jar.left: Broken.mass}, "another record"),
        ({RECORD.base.mass: LINK.case.inputs[1]}, "not of its case"),
    ],
)
def test_what_cannot_be_kept_so_is_named_with_its_card(fields, why):
    with pytest.raises(ValueError, match=f"card broken.*“words”.*{why}"):
        check(replace(LINK, id="broken", case=Broken, saves=(Save(RECORD.base, "words", fields),)))


@every_card
def test_the_example_can_be_kept_at_every_place_that_it_offers(card):
    if card is LINK:
        return
    worked = work_card(card, {}, POINT)
    found = places(card, worked.given, DEMO)
    assert found[-1]["place"] == KEPT
    for place in found:
        document = saved(
            worked,
            place["place"],
            "" if place["name"] else "For a test",
            "new-abcdefgh",
            "2027-01-13",
            DEMO,
        )
        whole = checked(document | {"rev": "1-aaaa", "changed": "2027-01-13T18:00:00Z"})
        assert {part: whole[part] for part in ("values", "rows")} == {
            part: document[part] for part in ("values", "rows")
        }


def texts_of(card, offer: dict) -> dict[str, str]:
    """What an offer makes of the example, as the page does it: texts beside their units."""
    units = {
        name.removesuffix(".unit"): value
        for name, value in offer["values"].items()
        if name.endswith(".unit")
    }
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
    assert labels("yarn-instead") == [
        "Use Cobb (170 m)",
        "Use Dunmel DK (230 m)",
        "Use Tarrow Sock (420 m)",
    ]


def test_a_colorway_brings_its_recipe_and_its_base():
    offer = next(
        each
        for each in offers(find_card("dye-recipe"), DEMO, POINT)
        if each["label"].startswith("Use Wet Slate")
    )
    given = texts_of(find_card("dye-recipe"), offer)
    assert [given.readings[f"dyes.{row}.depth"].text for row in (1, 2, 3)] == [
        "0.62%",
        "0.24%",
        "0.04%",
    ] and given.counts["dyes"] == 3
    assert given.readings["skein_mass"].text == "100g" and given.readings["skeins"].text == "4"
    answer = work_card(find_card("dye-recipe"), {}, POINT)
    assert answer.outcome.value("stock_total") == pytest.approx(360, abs=0.5), (
        "the scenario's 248 + 96 + 16 mL"
    )


def test_a_list_that_does_not_fit_is_not_offered_by_half():
    """A fiber that the card has no word for: the whole list stays away, and says so."""
    base = record(
        "base",
        name="Odd",
        fibers=[{"fiber": "wool", "share": "50%"}, {"fiber": "moonlight", "share": "50%"}],
    )
    why = "“Odd” cannot be used here: Fibers (fiber 2, fiber: no word here for “moonlight”)."
    assert offers(find_card("care-label"), [base], POINT) == [
        {"label": "Odd", "kind": "Bases", "values": {}, "rows": {}, "own": [], "why": why}
    ]
    known = record("base", name="Plain", fibers=[{"fiber": "Wool", "share": "100%"}])
    assert offers(find_card("care-label"), [known], POINT)[0]["values"]["fibers.1.fiber"] == "wool"


def test_a_fiber_is_named_by_its_last_word_where_that_names_just_one():
    """Superwash wool is wool where a card has no word for it; a mix is nothing."""
    for text, expected in (
        ("superwash wool", "superwash"),
        ("baby alpaca", None),
        ("silk", "silk"),
        ("merino wool", "wool"),
        ("wool mix", None),
    ):
        found = offers(
            find_card("care-label"),
            [record("base", name="One", fibers=[{"fiber": text, "share": "100%"}])],
            POINT,
        )
        assert found[0]["values"].get("fibers.1.fiber") == expected and bool(found[0]["why"]) == (
            expected is None
        ), text


def test_a_plan_brings_its_products_their_colorways_bases_and_all_jars():
    """The release from the plan alone: each fact was entered once."""
    card = find_card("release-plan")
    offer = next(
        each for each in offers(card, DEMO, POINT) if each["label"] == "Use Winter release"
    )
    assert offer["rows"] == {"products": 3, "colorways": 5, "bases": 1, "jars": 5}
    given = texts_of(card, offer)
    assert not given.problems
    assert [given.readings[f"products.{row}.holds"].text for row in (1, 2, 3)] == [
        "2 Wet Slate, Peat Gold, Sheepfold",
        "Lamps",
        "Rusted Gate",
    ]
    from_records = work_given(given, POINT)
    example = work_card(card, {}, POINT)
    assert {name: found.value for name, found in from_records.outcome.found.items()} == {
        name: found.value for name, found in example.outcome.found.items()
    }, "the demo is the card's own example"


def test_what_a_record_does_not_say_is_left_blank_and_never_the_examples():
    offer = next(
        each
        for each in offers(
            find_card("release-plan"), [record("base", name="Bare", mass="100g")], POINT
        )
        if each["label"] == "Use all bases (1)"
    )
    assert offer["values"]["bases.1.price"] == "" and offer["values"]["bases.1.name"] == "Bare"


def test_a_dye_lot_brings_all_that_its_label_says():
    offer = next(
        each for each in offers(find_card("label"), DEMO, POINT) if each["label"] == "Use 14"
    )
    wanted = {
        "lot": "14",
        "color": "Wet Slate",
        "name": "Tarrow Sock",
        "fiber": "75 % superwash wool, 25 % nylon",
        "mass": "100",
        "length": "420",
        "weight_class": "1",
    }
    assert {name: offer["values"][name] for name in wanted} == wanted


def test_a_text_too_long_for_its_field_is_left_out_whole():
    """Half a hazard phrase is none."""
    jar = record(
        "jar",
        name="Navy",
        lot="N-207 of the second delivery",
        hazards="May cause an allergic skin reaction; causes serious eye irritation",
    )
    found = offers(find_card("stock-solution"), [jar], POINT)[0]
    assert found["values"]["hazards"] == jar["values"]["hazards"] and "lot" not in found["values"]
    assert found["why"] == "“Navy” leaves out: Lot of the jar (28 letters, 24 fit)."


def test_a_spread_flows_into_the_card():
    offer = offers(
        find_card("yarn-needed"),
        [record("base", name="Spread", mass="100g", length="420~8m")],
        POINT,
    )[0]
    assert (
        offer["values"]["skein_length"] == "420 ± 8" and offer["values"]["skein_length.unit"] == "m"
    )


def test_a_result_is_kept_with_its_spread_and_as_measured():
    worked = work_card(find_card("skein-length"), {}, POINT)
    document = saved(worked, "0:", "Tarrow, this delivery", "base-abcdefgh", "2027-01-13", [])
    assert (
        document["values"]["length"] == known_as(worked, "length", KINDS["base"].names["length"])
        and "~" in document["values"]["length"]
    )
    assert document["values"]["length_known"] == "measured"


def test_saving_into_a_record_leaves_its_other_fields_alone():
    tarrow = next(each for each in DEMO if each["values"].get("name") == "Tarrow Sock")
    document = saved(
        work_card(find_card("skein-length"), {"turns": "281"}, POINT),
        f"0:{tarrow['id']}",
        "",
        "x",
        "2027-01-13",
        DEMO,
    )
    assert {
        key for key in document["values"] if document["values"][key] != tarrow["values"].get(key)
    } == {"length", "length_known"}
    assert document["rows"] == tarrow["rows"] and document["rev"] == tarrow["rev"]


def test_a_recipe_kept_and_used_again_is_the_same_recipe():
    card = find_card("dye-recipe")
    worked = work_card(
        card, {"dyes.1.name": "red", "dyes.1.depth": "1.5 %", "dyes.1.strength": "2"}, POINT
    )
    assert worked.given.counts["dyes"] == 1
    document = checked(
        saved(worked, "0:", "Red", "colorway-abcdefgh", "2027-01-13", [])
        | {"rev": "1-aaaa", "changed": "2027-01-13T18:00:00Z"}
    )
    given = texts_of(card, offers(card, [document], POINT)[0])
    assert {name: given.readings[name].text for name in worked.given.readings} == {
        name: reading.text for name, reading in worked.given.readings.items()
    }


def test_what_cannot_be_kept_says_why():
    worked = work_card(find_card("skein-length"), {}, POINT)
    for place, name, why in (
        ("0:", " ", "name first"),
        ("0:base-gone", "", "no longer there"),
        ("7:", "x", "no such record"),
        (KEPT, "", "name first"),
        (KEPT, "me@example.org", "no customer"),
    ):
        with pytest.raises(Unusable, match=why):
            saved(worked, place, name, "x-abcdefgh", "2027-01-13", [])


def test_a_kept_answer_opens_again_with_its_values():
    worked = work_card(find_card("skein-length"), {"turns": "285"}, POINT)
    document = saved(worked, KEPT, "Odd skein", "kept-abcdefgh", "2027-01-13", [])
    assert (
        document["values"]["card"] == "skein-length" and document["values"]["query"] == "v=1&b=285"
    )
    assert document["values"]["answer"].startswith("This skein holds about")
    assert json.dumps(document)
