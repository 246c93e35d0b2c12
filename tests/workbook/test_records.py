"""A record is what its kind declares, or it is refused with one line; nothing of a customer gets in; every number says how it is known."""

import copy
import time

import pytest
from hypothesis import given

from fibercalc.core.card import Input, Rows
from fibercalc.core.ref import Field, Held, fields_of
from fibercalc.held import RECORD
from fibercalc.workbook.bench import BENCH
from fibercalc.workbook.kind import KNOWN_END, Kind, note
from fibercalc.workbook.kind import name as title
from fibercalc.workbook.kinds import KINDS
from fibercalc.workbook.records import (
    LONGEST_TEXT,
    SCHEMA,
    Unusable,
    checked,
    looks_like_a_customer,
    readable,
)

from .making import record, records

every_kind = pytest.mark.parametrize("kind", KINDS.values(), ids=list(KINDS))


@given(records())
def test_what_is_kept_is_read_back_unchanged(document):
    assert checked(document) == document
    assert readable([document]) == ([document], [])


@every_kind
def test_every_number_says_how_it_is_known(kind):
    """And nothing else claims to be beside a number that is not there."""

    def held(fields):
        names = {each.name: each for each in fields if isinstance(each, Input)}
        for name, each in names.items():
            if each.measured:
                assert names[f"{name}{KNOWN_END}"].beside is each
                assert [option.value for option in names[f"{name}{KNOWN_END}"].options] == [
                    "measured",
                    "label",
                    "guessed",
                    "decided",
                ]
            if each.beside:
                assert names[each.beside.name].measured and each.when == each.beside.when

    held(kind.fields)
    for item in kind.fields:
        if isinstance(item, Rows):
            held(item.fields)


@every_kind
def test_a_kind_holds_together(kind):
    """Its title is a text that must be filled in, all else may stay blank; what it refers to and shows is there."""
    title = kind.names[kind.title]
    assert not title.optional and title.of == "text"
    assert checked(record(kind.id))["values"][kind.title] == "Test"
    assert set(kind.refers.values()) <= set(KINDS) and set(kind.refers) | set(kind.shown) <= set(
        kind.names
    )
    assert kind.about.endswith(".") and kind.one[0].islower() and kind.many[0].isupper()


def test_how_a_number_is_known_is_kept_only_with_the_number():
    kept = record(mass="100g", length_known="guessed")["values"]
    assert kept["mass_known"] == "label" and "length_known" not in kept
    assert record(mass="100g", mass_known="measured")["values"]["mass_known"] == "measured"


def test_a_spread_is_kept():
    assert record(mass="100~2g")["values"]["mass"] == "100~2g"


WRONG = {
    "no record": lambda d: [],
    "a kind that is none": lambda d: d | {"kind": "customer"},
    "a kind that is a list": lambda d: d | {"kind": ["base"]},
    "a newer schema": lambda d: d | {"schema": SCHEMA + 1},
    "schema true": lambda d: d | {"schema": True},
    "an id with a path": lambda d: d | {"id": "../base"},
    "an id of every object": lambda d: d | {"id": "__proto__"},
    "a part too many": lambda d: d | {"script": "x"},
    "a part too few": lambda d: {key: value for key, value in d.items() if key != "rows"},
    "a revision that is none": lambda d: d | {"rev": "new"},
    "a past without end": lambda d: d | {"past": ["1-aaaa"] * 31},
    "values that are a list": lambda d: d | {"values": []},
    "a number as text's place": lambda d: d | {"values": d["values"] | {"mass": 100}},
    "a text too long": lambda d: d | {"values": d["values"] | {"note": "a" * (LONGEST_TEXT + 1)}},
    "a field that is none": lambda d: d | {"values": d["values"] | {"customer": "x"}},
    "a row beyond its count": lambda d: d | {"values": d["values"] | {"fibers.2.fiber": "silk"}},
    "more rows than there may be": lambda d: d | {"rows": {"fibers": 9}},
    "rows without a number": lambda d: d | {"rows": {"fibers": True}},
    "rows of what is no list": lambda d: d | {"rows": {"mass": 1}},
    "a weight beyond reason": lambda d: d | {"values": d["values"] | {"mass": "9kg"}},
    "a weight in meters": lambda d: d | {"values": d["values"] | {"mass": "100m"}},
    "a number that is none": lambda d: d | {"values": d["values"] | {"mass": "nang"}},
    "a choice that is none": lambda d: d | {"values": d["values"] | {"weight_class": "9"}},
    "no name": lambda d: d | {"values": {"mass": "100g"}},
    "letters that turn the line around": lambda d: (
        d | {"values": d["values"] | {"name": "\u202etpircs"}}
    ),
    "a customer's mail": lambda d: d | {"values": d["values"] | {"note": "ask rose@example.org"}},
}


@pytest.mark.parametrize("name", WRONG)
def test_a_wrong_record_is_refused_with_one_line(name):
    good = record(mass="100g", fibers=[{"fiber": "wool"}])
    assert checked(copy.deepcopy(good)) == good
    bad = WRONG[name](copy.deepcopy(good))
    with pytest.raises(Unusable) as refused:
        checked(bad)
    assert str(refused.value) and "\n" not in str(refused.value)
    assert readable([good, bad]) == ([good], [bad]), "what cannot be read is kept as it is"


def test_a_reference_is_an_id_or_nothing():
    assert record("mill-lot", base="base-tarrow")["values"]["base"] == "base-tarrow"
    with pytest.raises(Unusable, match="that is no record"):
        record("mill-lot", base="Tarrow Sock")


@pytest.mark.parametrize(
    "text",
    [
        "rose@example.org",
        "Rose <rose.m@mail.example>",
        "+44 171 234 5678",
        "0171 234 5678",
        "(555) 123-4567",
        "555-123-4567",
        "+491712345678",
    ],
)
def test_a_way_to_reach_a_customer_is_seen(text):
    assert looks_like_a_customer(f"for {text}, urgent")


@pytest.mark.parametrize(
    "text",
    [
        "20270111-3",
        "2027-01-11 14",
        "TS 2611",
        "order 1041",
        "10 450 300",
        "14/27/3",
        "100 g / 420 m",
        "0012345678",
        "lot 14 @ 92 °C",
        "248 + 96 + 16 mL",
        "#6b7f8f",
    ],
)
def test_lots_days_and_amounts_are_no_customers(text):
    assert not looks_like_a_customer(text)


def test_a_record_read_twice_is_checked_once_and_a_changed_one_again():
    """The worker keeps what it checked; another text under the same id must not slip through."""
    good = record(mass="100g", slug="cached")
    assert readable([good])[0] == [good]
    bad = good | {"values": good["values"] | {"mass": "9kg"}}
    assert readable([bad]) == ([], [bad])


def test_a_long_text_costs_no_square_of_its_length():
    """Two thousand letters, a thousand times: with a pattern that goes back and forth this takes minutes."""
    began = time.process_time()
    for _ in range(1000):
        looks_like_a_customer("x" * LONGEST_TEXT)
    assert time.process_time() - began < 5


def test_a_name_without_its_declaration_is_refused_and_the_other_way_around():
    class Shelf(Held):
        name = Field()
        place = Field()

    class Names:
        shelf = Shelf()

    with pytest.raises(ValueError, match="kind shelf: place is named or declared alone"):
        Kind(Names().shelf, "shelf", "Shelves", "A shelf.", (title(),))
    with pytest.raises(ValueError, match="kind shelf: note, place is named or declared alone"):
        Kind(Names().shelf, "shelf", "Shelves", "A shelf.", (title(), note()))


def test_my_bench_declares_every_name_that_cards_may_refer_to():
    declared = {item.name for item in BENCH.inputs} | {
        f"{item.name}.{each.name}"
        for item in BENCH.inputs
        if isinstance(item, Rows)
        for each in item.fields
    }
    assert declared == set(fields_of(RECORD.bench))
