"""A part of a case, a field of a record, an input of the next card: what is not there is an error that names the card and the place."""

from dataclasses import replace

import pytest

from fibercalc.core import registry
from fibercalc.core.card import (
    CHOICE,
    TEXT,
    Carry,
    Case,
    Chance,
    Constant,
    Input,
    Option,
    Result,
    Row,
    Rows,
    Save,
    case_of,
)
from fibercalc.core.describe import declaration
from fibercalc.core.problem import Refused
from fibercalc.core.ref import Field, Held, Listed, fields_of, held_of, id_of, list_of, path_of
from fibercalc.core.registry import all_cards, find_card, next_card
from fibercalc.core.units import COUNT, LENGTH, MASS, PERCENT
from fibercalc.core.work import work_card
from tests.fixture_card import CARD, Dye, EveryKind


class Shelf(Held):
    place = Field()
    name = Field()


class BoxThings(Listed):
    what = Field()


class Box(Held):
    shelf = Field(Shelf)
    things = BoxThings()


class Kinds:
    """Two kinds of records."""

    top_shelf = Shelf()
    box = Box()


KINDS = Kinds()


def word(*values: str, **more) -> Input[str]:
    options = tuple(Option(value, value) for value in values)
    return Input(CHOICE, "Word", default=values[0], options=options, **more)


def named(name: str, **more) -> Input[str]:
    return Input(TEXT, name, optional=True, name=name, **more)


def test_a_reference_knows_where_it_stands():
    assert path_of(KINDS.box.things.what) == "box.things.what"
    assert path_of(KINDS.box.shelf.then(KINDS.top_shelf.name)) == "box.shelf>name"
    assert id_of(KINDS.top_shelf) == "top-shelf" and list_of(KINDS.box.things) == "things"
    assert held_of(KINDS.box.things.what) is KINDS.box
    assert set(fields_of(KINDS.box)) == {"shelf", "things", "things.what"}


def test_a_field_that_is_not_there_is_an_error_where_it_is_written():
    with pytest.raises(AttributeError, match="plaice"):
        KINDS.top_shelf.plaice  # noqa: B018
    with pytest.raises(ValueError, match="top-shelf.place names no record with box.shelf"):
        KINDS.top_shelf.place.then(KINDS.box.shelf)
    with pytest.raises(ValueError, match="box.shelf names no record with box.things.what"):
        KINDS.box.shelf.then(KINDS.box.things.what)


def test_a_condition_names_an_input_of_its_own_case():
    other = word("a", name="other")
    with pytest.raises(ValueError, match=r"Form\.x: it speaks of other, which is not declared"):
        case_of((named("x", when={other: ("a",)}),))
    with pytest.raises(ValueError, match=r"Form\.x: it speaks of a part without a name"):
        case_of((named("x", when={word("a"): ("a",)}),))


def test_a_condition_names_a_word_that_can_be_chosen():
    other = word("a", "b", name="other")
    assert case_of((other, named("x", when={other: ("a", "b")})))
    with pytest.raises(ValueError, match=r"Form\.x: it is asked when other is c, which it cannot"):
        case_of((other, named("x", when={other: ("a", "c")})))
    with pytest.raises(ValueError, match=r"Form\.x: it is asked when many is two"):
        many = Input(COUNT, "Many", default="1", allowed=("1", "4"), name="many")
        case_of((many, named("x", when={many: ("two",)})))


def test_a_row_is_asked_by_its_own_row_or_by_the_case():
    class Line(Row):
        kind = word("a", "b")
        text = named("text", when={kind: ("b",)})

    assert type("Lines", (Case,), {"lines": Rows(Line, "Lines", "line")})

    class Wrong(Row):
        kind = word("a", "b")
        text = named("text", when={kind: ("z",)})

    with pytest.raises(ValueError, match=r"Lines\.lines: it is asked when kind is z"):
        type("Lines", (Case,), {"lines": Rows(Wrong, "Lines", "line")})


def test_a_result_speaks_of_results_of_its_own_case():
    length = Result(LENGTH, "l", name="length")
    for part in (
        Result(PERCENT, "c", chance=Chance(length, below=1.0), name="chance"),
        Result(LENGTH, "b", best_of=(length,), name="best"),
    ):
        assert case_of((length, part))
        with pytest.raises(ValueError, match=rf"Form\.{part.name}: it speaks of length"):
            case_of((part,))


def test_a_list_is_filled_from_a_list_and_its_fields_from_that_list():
    def lines(field, rows) -> None:
        line = type("Line", (Row,), {"text": Input(TEXT, "t", record=field)})
        type("Lines", (Case,), {"lines": Rows(line, "Lines", "line", record=rows)})

    lines(KINDS.box.things.what, KINDS.box.things)
    lines(KINDS.box.shelf.then(KINDS.top_shelf.name), KINDS.box)
    for field, rows in (
        (KINDS.top_shelf.name, KINDS.box.things),
        (KINDS.box.shelf, KINDS.box.things),
        (KINDS.box.things.what, None),
    ):
        with pytest.raises(ValueError, match=r"Lines\.lines: text is filled from "):
            lines(field, rows)
    with pytest.raises(ValueError, match=r"Form\.x: box\.things\.what is a field of each row"):
        case_of((named("x", record=KINDS.box.things.what),))


class Others(Case):
    """A part that is another card's."""

    mass = Input(MASS, "m", default="1 g", allowed=("0 g", "9 g"))


@pytest.mark.parametrize(
    "more, why",
    [
        ({"carry": (Carry("scald", "w", {"volume": Others.mass}),)}, "way to scald: mass"),
        ({"carry": (Carry("scald", "w", {}, each=Others.mass),)}, "way to scald: mass"),
        ({"saves": (Save(KINDS.box, "w", {KINDS.box.shelf: Others.mass}),)}, "not of its case"),
        ({"saves": (Save(KINDS.box, "w", {KINDS.top_shelf.name: CARD.case.mass}),)}, "another rec"),
        (
            {"saves": (Save(KINDS.box, "w", {}, when={CARD.case.way: ("foot",)}),)},
            "kept when way is foot",
        ),
    ],
)
def test_a_card_speaks_of_its_own_parts(more, why):
    with pytest.raises(ValueError, match=f"card every-kind: .*{why}"):
        replace(CARD, **more)


def test_a_row_that_is_meant_is_of_that_list():
    with pytest.raises(ValueError, match="a dye has no such value"):
        EveryKind.dyes.each(EveryKind.mass)
    assert EveryKind.dyes.each(Dye.depth).of(2) == "dyes.2.depth"
    assert EveryKind.dyes.each(Dye.depth, row=3).of(2) == "dyes.3.depth"
    assert Refused("No.", EveryKind.dyes.each(Dye.depth, row=3)).input == "dyes.3.depth"
    assert Refused("No.", EveryKind.mass).input == "mass" and Refused("No.").input == ""
    with pytest.raises(ValueError, match="which row"):
        Refused("No.", EveryKind.dyes.each(Dye.depth))


@pytest.mark.parametrize(
    "to, inputs, why",
    [
        ("no-such-card", {}, "no such card"),
        ("skein-length", {"turn": EveryKind.skeins}, "turn: it has no such input"),
        ("pots", {"steps.minutes": EveryKind.hold}, "steps.minutes: it has no such input"),
        ("pots", {"steps.0.minutes": EveryKind.hold}, "no such input"),
        ("pots", {"steps.99.minutes": EveryKind.hold}, "no such input"),
        ("pots", {"steps.1.hours": EveryKind.hold}, "no such input"),
        ("pots", {"skein_mass.1.g": EveryKind.mass}, "no such input"),
        ("pots", {"steps": Constant("1")}, "a list is no text"),
        ("room-air", {"what": Constant("smoke")}, "what: it cannot be smoke"),
        ("pots", {"skein_mass": Constant("heavy")}, "skein_mass: it cannot be heavy"),
        ("pots", {"skein_mass": EveryKind.bath}, "skein_mass: bath is volume"),
    ],
)
def test_a_way_on_names_inputs_of_the_next_card(to, inputs, why):
    card = replace(CARD, carry=(Carry(to, "On", inputs),))
    with pytest.raises(ValueError, match=f"card every-kind, its way to {to}.*{why}"):
        next_card(card, card.carry[0])


def test_a_way_on_that_leads_nowhere_is_found_when_all_cards_are_loaded(monkeypatch):
    bad = replace(CARD, carry=(Carry("pots", "On", {"nothing": EveryKind.mass}),))
    monkeypatch.setattr(registry, "chapter_cards", lambda chapter: [bad])
    with pytest.raises(ValueError, match="card every-kind, its way to pots, nothing"):
        all_cards()


def test_a_constant_goes_on_as_it_is_and_is_declared_as_worked_out():
    card = find_card("speckle-dose")
    carry = card.carry[0]
    assert carry.inputs["what"].value == "powder" and next_card(card, carry).id == "room-air"
    assert declaration(card)["carry"][0]["inputs"] == {"what": "worked out"}
    assert work_card(card, {}).card is card
