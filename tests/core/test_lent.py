"""Whose a value is, on the fixture card with every kind of input and on cards of the book."""

from datetime import date

import pytest

from fibercalc.core import day
from fibercalc.core.lent import DAY, HERS, LENT, OPEN, left_open, still_lent
from fibercalc.core.link import query_of, read_query
from fibercalc.core.reading import read_inputs
from fibercalc.core.registry import find_card
from fibercalc.core.settings import Settings

POINT = Settings()
LABEL, ORDER, PRICE, PLAN = (find_card(name) for name in ("label", "base-order", "price", "release-plan"))


@pytest.fixture(autouse=True)
def on_a_day(monkeypatch):
    monkeypatch.setattr(day, "clock", lambda: date(2031, 5, 2))


def read(card, texts, **more):
    return read_inputs(card, texts, POINT, **more)


def test_while_nothing_is_hers_all_is_the_examples():
    for texts in ({}, LABEL.defaults(), {"kind": "kit"}):
        given = read(LABEL, texts)
        assert not given.hers and given.readings["maker"].value == "Brackwend Dyehouse"
        assert {reading.whose for reading in given.readings.values()} == {""}


def test_the_examples_amount_in_another_unit_is_no_value_of_hers():
    assert not read(ORDER, {"bases.1.mass": "3.52739619496 oz"} | {name: text for name, text in ORDER.defaults().items() if name.startswith("bases.") and name != "bases.1.mass"}).hers
    assert read(LABEL, {"mass": "100 g ± 1"}).hers and read(LABEL, {"mass": "101 g"}).hers


def test_one_value_of_hers_takes_back_what_may_be_blank_and_names_the_rest():
    given = read(PRICE, {"asked": "35"})
    assert given.readings["asked"].whose == HERS and given.readings["month_costs"].whose == OPEN and given.readings["month_costs"].value is None
    assert given.readings["base"].whose == LENT and given.readings["base"].value == 9.2
    assert given.readings["minutes"].whose == "", "minutes are a number to try, not a price that somebody asks"


def test_what_is_named_is_hers_even_as_the_example_has_it():
    given = read(LABEL, {"copies": "9", "maker": "Brackwend Dyehouse"}, named=["copies", "maker"])
    assert given.readings["maker"].value == "Brackwend Dyehouse" and given.readings["lot"].value is None
    unnamed = read(LABEL, {"copies": "9", "maker": "Brackwend Dyehouse"})
    assert unnamed.readings["maker"].whose == OPEN


def test_today_is_the_devices_day_and_no_value_of_hers():
    example = read(ORDER, {})
    assert example.readings["today"].text == "2026-11-26"
    given = read(ORDER, {"carriage": "30", "today": "2031-05-01"}, named=["carriage"])
    assert (given.readings["today"].value, given.readings["today"].whose) == (date(2031, 5, 2), DAY), "a page left open over night knows the new day"
    assert read(ORDER, {"today": "2031-05-01"}, named=["today"]).readings["today"].value == date(2031, 5, 1)
    assert not read(ORDER, {"today": "2031-05-02"}).hers


def test_a_list_goes_with_the_list_it_belongs_to():
    assert read(PLAN, {"load": "6"}).counts["jars"] == 5
    given = read(PLAN, {name: text for name, text in PLAN.defaults().items() if name.startswith("colorways.")} | {"colorways.1.name": "Foxglove"})
    assert given.counts["jars"] == 0 and given.emptied == ["jars"] and not [name for name in given.readings if name.startswith("jars.")]


def test_a_row_that_moved_up_is_still_the_examples():
    texts = {name.replace("bases.2", "bases.1"): text for name, text in ORDER.defaults().items() if name.startswith("bases.2.")}
    given = read(ORDER, texts, counts={"bases": 1})
    assert given.hers and given.readings["bases.1.name"].text == "Dunmel DK" and given.readings["bases.1.name"].whose == LENT


def test_a_field_cleared_by_hand_is_an_edit():
    given = read(LABEL, {"maker": ""})
    assert given.hers and given.readings["maker"].whose == HERS and given.readings["lot"].whose == OPEN
    assert query_of(given) == "v=1&f=-"


@pytest.mark.parametrize("card, texts", [(LABEL, {"copies": "9"}), (LABEL, {"copies": "9", "lot": "WS-14"}), (ORDER, {"carriage": "30"}), (PRICE, {"asked": "27"}), (ORDER, {"bases.1.name": "Alder", "bases.1.needed": "9"})])
def test_a_link_brings_back_whose_each_value_is(card, texts):
    before = read(card, texts, named=texts)
    query = query_of(before)
    found, counts, notes = read_query(card, query)
    after = read_inputs(card, found, POINT, exact=found, counts=counts, named=found)
    assert not notes and after.counts == before.counts
    assert {name: (each.text, each.whose) for name, each in after.readings.items()} == {name: (each.text, each.whose) for name, each in before.readings.items()}
    assert "2031" not in query, "today is not in a link: it would be yesterday"


def test_paper_leaves_a_line_where_a_lent_value_would_stand():
    lent = still_lent(read(PLAN, {"load": "6"}))
    assert left_open("156 skeins of Tarrow Sock, 81.7 g of navy", lent) == "156 skeins of ____, 81.7 g of ____"
    assert left_open("navyblue, renavy", lent) == "navyblue, renavy"
    lent = still_lent(read(ORDER, {"carriage": "30"}))
    assert left_open("Wanted on Tue 19 Jan 2027.", lent) == "Wanted on ____."
