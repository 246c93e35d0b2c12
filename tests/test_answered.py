"""The answer as an object: the numbers that the JSON has, in any unit, and the card for a notebook."""

import doctest
import re
from datetime import date
from pathlib import Path

import html5lib
import pytest

import fibercalc
from fibercalc.core.units import METERS_PER_YARD
from tests.cards import CARDS, card_id

README = Path(fibercalc.__file__).parents[1] / "README.md"
every_card = pytest.mark.parametrize("card", CARDS, ids=card_id)


def skein(**given):
    return fibercalc.answer("skein-length", {"turns": 280, "circumference": "1.50 m"} | given)


def test_numbers_are_in_base_units_and_in_any_other():
    """280 turns of 1.50 m are 420 m; a yard is 0.9144 m."""
    length = skein(way="turns").results["length"]
    assert (length.unit, length.value, float(length)) == ("m", 420.0, 420.0)
    yards = length.to("yards")
    assert yards.unit == "yd" and yards.value == pytest.approx(420 / METERS_PER_YARD)
    assert yards.to("m").value == pytest.approx(420) and yards.text.startswith("459\u00a0yd (")
    assert length.low < length < length.high and length.low.unit == "m"
    assert yards.low == length.low.to("yd") and yards.low.unit == "yd"
    assert yards.low.number == pytest.approx(length.low.number / METERS_PER_YARD)


def test_a_unit_that_counts_the_other_way_keeps_low_below_high():
    """100 g of 420 m is 238 tex; a tex more is fewer yards to the pound."""
    count = skein().results["grist"]
    assert count.unit == "tex" and count.value == pytest.approx(238, abs=0.5)
    other = count.to("yd/lb")
    assert other.low.number < other.value < other.high.number
    assert float(other.low) == pytest.approx(
        496054.65 / float(count.high)
    )  # 453.59237 g / 0.9144 m, in tex


def test_a_unit_of_something_else_is_refused():
    length = skein().results["length"]
    with pytest.raises(ValueError, match="kg: not a unit of length; give m, yd, cm, in"):
        length.to("kg")


def test_a_day_is_a_day_and_no_number():
    days = [
        result
        for card in fibercalc.cards("sell")
        for result in fibercalc.answer(card["id"]).results.values()
        if not result.is_number
    ]
    (one, *_) = [result for result in days if isinstance(result._found.value, date)]
    assert one.day == one._found.value and one.unit == ""
    for ask in (float, lambda each: each.low, lambda each: each.to("m")):
        with pytest.raises(TypeError, match=one.label):
            ask(one)
    with pytest.raises(TypeError, match="is no day"):
        skein().results["length"].day  # noqa: B018


@every_card
def test_it_says_what_the_data_say(card):
    answer = fibercalc.answer(card.id)
    data = answer.as_json()
    assert data == fibercalc.work(card.id)
    assert (answer.card, answer.text, str(answer)) == (card.id, data["answer"], data["answer"])
    assert list(answer.results) == list(data["results"])
    assert (answer.cautions, answer.notes) == (data["cautions"], data["notes"])
    for name, value in answer.results.items():
        told = data["results"][name]
        assert (value.label, value.text) == (told["label"], told["text"])
        if value.is_number:
            shown = value.to(told["unit"])
            assert (shown.value, shown.low.number, shown.high.number) == pytest.approx(
                (told["value"], told["low"], told["high"])
            )
        else:
            assert told["low"] is None


@every_card
def test_a_notebook_shows_the_card_s_answer_whole(card):
    answer = fibercalc.answer(card.id)
    shown = answer._repr_html_()
    parser = html5lib.HTMLParser(strict=True)
    parser.parseFragment(shown)
    text = "".join(parser.parseFragment(shown).itertext())
    for words in (answer.question, *answer.cautions, *answer.notes):
        assert words.replace(" ", "") in text.replace(" ", ""), words
    for result in answer.results.values():
        assert result.label in text
    assert "<svg" in shown or not answer.pictures
    assert "<button" not in shown and "<script" not in shown


def test_what_is_typed_stays_text_in_a_notebook():
    shown = fibercalc.answer("every-kind", {"dyes.1.name": "<b>navy</b>"})._repr_html_()
    assert "&lt;b&gt;navy" in shown and "<b>navy" not in shown


class Spaced(doctest.OutputChecker):
    """A number and its unit stay on one line by a space that looks like any other."""

    def check_output(self, want: str, got: str, optionflags: int) -> bool:
        return super().check_output(want, got.replace("\u00a0", " "), optionflags)


def test_what_the_readme_shows_of_python_is_so():
    text = README.read_text("utf-8")
    (session,) = re.findall(r"^```python\n(.*?)^```", text, re.DOTALL | re.MULTILINE)
    test = doctest.DocTestParser().get_doctest(session, {}, "README", str(README), 0)
    told: list[str] = []
    doctest.DocTestRunner(Spaced()).run(test, out=told.append)
    assert test.examples and not told, "".join(told)


def test_bad_inputs_are_refused_as_work_refuses_them():
    with pytest.raises(fibercalc.BadInputs, match="Turns of the reel: 0 given"):
        skein(turns=0)
    with pytest.raises(fibercalc.UnknownCard):
        fibercalc.answer("no-such-card")
