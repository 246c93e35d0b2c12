"""Roughness is carried as declared: clipped at edges, together for one instrument, fixed decisions, and the model's own error."""

import dataclasses

import pytest

from fibercalc.core.card import MODEL, Basis, Card, Chance, Input, Result, case_of
from fibercalc.core.units import COUNT, LENGTH, MASS, PERCENT
from fibercalc.core.work import work_card
from fibercalc.sources import COMMON_PRACTICE


def card(answer, inputs, results):
    """A card whose answer gives, from a case and the values of its inputs, its results by name."""

    def assign(case):
        for name, value in answer(case, *(vars(case)[each.name] for each in inputs)).items():
            setattr(case, name, value)

    return Card(
        id="test",
        chapter="yarn",
        place=1,
        question="Does it?",
        case=case_of((*inputs, *results)),
        answer=assign,
        say=lambda r: "Yes.",
        basis=Basis(MODEL, "x"),
        sources=(COMMON_PRACTICE,),
    )


def length(name, default="100 m", **more):
    return Input(
        LENGTH,
        name,
        default=default,
        allowed=more.pop("allowed", ("0 m", "1000 m")),
        **more,
        name=name,
    )


def test_a_uniform_input_gives_95_of_100_parts_of_its_half_width():
    outcome = work_card(
        card(
            lambda case, a: {"x": 2 * a},
            (length("a", rough="10 m"),),
            (Result(LENGTH, "x", name="x"),),
        ),
        {},
    ).outcome
    assert (outcome.low("x"), outcome.value("x"), outcome.high("x")) == pytest.approx(
        (181, 200, 219)
    )


def test_a_typed_spread_replaces_the_declared_one():
    outcome = work_card(
        card(
            lambda case, a: {"x": a}, (length("a", rough="10 m"),), (Result(LENGTH, "x", name="x"),)
        ),
        {"a": "100 m ± 2"},
    ).outcome
    assert outcome.high("x") == pytest.approx(101.9)


def test_nudges_are_clipped_at_the_allowed_edge():
    outcome = work_card(
        card(
            lambda case, a: {"x": a},
            (length("a", rough="10 m", allowed=("95 m", "200 m")),),
            (Result(LENGTH, "x", name="x"),),
        ),
        {},
    ).outcome
    assert outcome.low("x") == pytest.approx(100 - 0.95 * 5) and outcome.high("x") == pytest.approx(
        109.5
    )


def test_inputs_of_one_instrument_move_together_and_cancel():
    """A ratio of two lengths read with one stretched tape does not feel the stretch; with two tapes it does."""
    together = (
        length("a", rough="5 %", instrument="tape"),
        length("b", rough="5 %", instrument="tape"),
    )
    apart = (length("a", rough="5 %"), length("b", rough="5 %"))
    ratio = lambda case, a, b: {"x": 100 * a / b}  # noqa: E731
    results = (Result(PERCENT, "x", name="x"),)
    assert work_card(card(ratio, together, results), {}).outcome.high("x") == pytest.approx(100)
    assert work_card(card(ratio, apart, results), {}).outcome.high("x") > 107


def test_the_model_s_own_error_is_a_normal_part():
    outcome = work_card(
        card(
            lambda case, a: {"x": a}, (length("a"),), (Result(LENGTH, "x", error="9 %", name="x"),)
        ),
        {},
    ).outcome
    assert outcome.high("x") == pytest.approx(109) and outcome.low("x") == pytest.approx(91)


def test_a_decision_stays_while_roughness_is_carried():
    """Three pieces of 33 m from 100 m ± 10 m: the plan stays at three, and the chance that the last one is short is a chance."""

    def answer(case, a):
        case.pieces = int(a // 33)
        return {"margin": a - case.pieces * 33}

    margin = Result(LENGTH, "m", name="margin")
    results = (
        Result(COUNT, "p", fixed=True, name="pieces"),
        margin,
        Result(PERCENT, "s", chance=Chance(margin, below=0.0), name="short"),
    )
    outcome = work_card(card(answer, (length("a", rough="10 m"),), results), {}).outcome
    assert outcome.low("pieces") == outcome.high("pieces") == 3
    assert outcome.value("short") == pytest.approx(
        100 * (10 - 1) / 20
    )  # the margin is uniform from -9 to 11


def test_the_narrower_of_two_ways_is_the_answer():
    ways = Result(LENGTH, "x", name="x"), Result(LENGTH, "y", name="y")
    results = (Result(LENGTH, "b", best_of=ways, name="best"), *ways)
    inputs = (length("a", rough="5 m"), length("b", default="101 m", rough="2 m"))
    outcome = work_card(card(lambda case, a, b: {"x": a, "y": b}, inputs, results), {}).outcome
    assert outcome.best("best") == "y" and outcome.value("best") == 101


def test_an_inverse_result_keeps_low_below_high():
    results = (Result(MASS, "x", name="x"),)
    outcome = work_card(
        card(
            lambda case, a: {"x": 1000 / a},
            (length("a", rough="20 m", allowed=("1 m", "1000 m")),),
            results,
        ),
        {},
    ).outcome
    assert outcome.low("x") < outcome.value("x") < outcome.high("x")
    assert outcome.high("x") - outcome.value("x") > outcome.value("x") - outcome.low("x")


def test_a_range_is_not_carried_past_its_floor():
    results = (Result(LENGTH, "x", error="300 %", floor=0.0, name="x"),)
    assert (
        work_card(card(lambda case, a: {"x": a}, (length("a"),), results), {}).outcome.low("x") == 0
    )


def test_a_card_cannot_lack_an_upgrade_for_an_older_link():
    with pytest.raises(ValueError, match="upgrade"):
        dataclasses.replace(card(lambda case, a: {}, (length("a"),), ()), link_version=2)
