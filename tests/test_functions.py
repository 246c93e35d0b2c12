"""Cards as functions: written as the cards are now, and the same answer as the card gives."""

import inspect
from importlib import import_module

import pytest

import fibercalc
from fibercalc.ask import yarn
from fibercalc.core.registry import chapter_cards
from tests.functions import CHAPTERS, file_of, written


@pytest.mark.parametrize("chapter", CHAPTERS)
def test_they_are_as_the_cards_are_now(chapter):
    assert file_of(chapter).read_text("utf-8") == written(chapter), "run `make answers`"


@pytest.mark.parametrize("chapter", CHAPTERS)
def test_every_card_is_a_function_that_gives_its_example_unasked(chapter):
    module = import_module(f"fibercalc.ask.{chapter}")
    cards = chapter_cards(chapter)
    assert cards
    for card in cards:
        function = getattr(module, card.id.replace("-", "_"))
        assert list(inspect.signature(function).parameters) == [each.name for each in card.inputs]
        assert function().as_json() == fibercalc.work(card.id)


def test_values_are_texts_with_units_or_numbers_in_the_unit_that_is_named():
    """280 turns of 1.50 m are 420 m; 59 in are 1.4986 m, and 280 of them 419.608 m."""
    by_turns = yarn.skein_length(way="turns", turns=280, circumference="1.50 m")
    assert by_turns.results["length"].value == pytest.approx(420)
    assert yarn.skein_length(way="turns", turns=280, circumference=1.5).results[
        "length"
    ].value == pytest.approx(420)
    inches = yarn.skein_length(way="turns", turns="280", circumference="59 in")
    assert inches.results["length"].value == pytest.approx(419.608)
    # 60 turns on 2 in are 30 to the inch; a row for each try.
    tried = yarn.wraps(width=2, tries=[{"turns": 60}])
    assert tried.results["wraps"].to("per in").value == pytest.approx(30)


def test_none_leaves_open_what_may_be_blank():
    assert "by_label" in yarn.wraps().results and "by_label" not in yarn.wraps(grist=None).results


def test_what_cannot_be_used_is_refused_by_name():
    with pytest.raises(fibercalc.BadInputs, match="Turns of the reel: 0 given"):
        yarn.skein_length(turns=0)
    with pytest.raises(TypeError, match="turn"):
        yarn.skein_length(turn=280)


@pytest.mark.parametrize("chapter", CHAPTERS)
def test_what_an_argument_hangs_on_is_called_by_its_name(chapter):
    """As it is typed: way, and not the object that declares it."""
    functions = vars(import_module(f"fibercalc.ask.{chapter}"))
    for card in chapter_cards(chapter):
        told = " ".join(functions[card.id.replace("-", "_")].__doc__.split())
        for item in card.inputs:
            for other in item.when:
                assert f"{other.name} is " in told
        assert "Input(" not in told
