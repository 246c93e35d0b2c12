"""Shares that must make 100 %: one left blank is the rest, and what cannot be is refused by name."""

import pytest

from fibercalc.core.card import Between, Case, Input, Row, Rows
from fibercalc.core.case import recording, steps_of
from fibercalc.core.problem import Refused
from fibercalc.core.shares import shares_of
from fibercalc.core.units import PERCENT


class Part(Row):
    """One part."""

    given = Input[float | None](PERCENT, "Share", allowed=("0 %", "100 %"), optional=True)
    share = Between[float](PERCENT, "Share")


class Whole(Case):
    """Something made of parts."""

    parts_of_it = Rows(Part, "Parts", "part")


def case_of(kind, *amounts):
    return kind({"parts_of_it": [Part({"given": amount}) for amount in amounts]})


def shares(*amounts, kind=Whole):
    return shares_of(case_of(kind, *amounts), Whole.parts_of_it, Part.given, 0.5)


@pytest.mark.parametrize(
    "given, whole",
    [
        ((75.0, None), [75.0, 25.0]),
        ((None, 50.0, 20.0), [30.0, 50.0, 20.0]),
        ((None,), [100.0]),
        ((60.0, 40.0), [60.0, 40.0]),
        ((33.0, 33.0, 33.6), [33.0, 33.0, 33.6]),
    ],
)
def test_one_left_blank_is_the_rest(given, whole):
    assert shares(*given) == pytest.approx(whole)


@pytest.mark.parametrize(
    "given, said, where",
    [
        ((50.0, None, None, None), "blank at most", "parts_of_it.3.given"),
        ((60.0, 40.0, None), "come to 100 %; nothing is left for part 3", "parts_of_it.3.given"),
        ((60.0, 30.0), "come to 90 %; they must come to 100 %", "parts_of_it.1.given"),
        ((60.0, 40.6), "come to 100.6 %", "parts_of_it.1.given"),
    ],
)
def test_what_cannot_be_is_refused(given, said, where):
    with pytest.raises(Refused, match="^Parts: ") as refused:
        shares(*given)
    assert said in refused.value.text and refused.value.input == where


def test_the_rest_is_a_step_and_what_was_given_is_not():
    case = case_of(recording(Whole), 45.0, None, 30.0)
    for row, share in zip(case.parts_of_it, shares_of(case, Whole.parts_of_it, Part.given, 0.5)):
        row.share = share
    (step,) = steps_of(case)
    assert (step.kind, step.value, step.label) == ("formula", 25.0, "Part 2: share")
