"""Numbers that remember: what they remember gives their value, and what is written on paper is read back as it by Python's own parser."""

import ast
import math
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core import arithmetic
from fibercalc.core.card import Between, Case
from fibercalc.core.case import recording, steps_of
from fibercalc.core.paper_arithmetic import write
from fibercalc.core.settings import Settings
from fibercalc.core.steps import at_most, searched
from fibercalc.core.traced import Leaf, Traced, leaves_of, named, tree_of, value_of
from fibercalc.core.units import COUNT, NUMBER
from fibercalc.core.written import written
from tests.read_back import read_back

A, B, C = (Leaf(name, value, NUMBER.base) for name, value in (("a", 3.0), ("b", 0.5), ("c", 7.25)))
NUMBERS = st.sampled_from([A, B, C]).map(lambda leaf: Traced(leaf.value, leaf)) | st.floats(
    0.25, 40
).map(lambda value: round(value, 3))


def _two(left, right):
    return st.sampled_from(
        [
            lambda a, b: a + b,
            lambda a, b: a - b,
            lambda a, b: a * b,
            lambda a, b: a / b if b else a,
            lambda a, b: -a * b,
            lambda a, b: (a - b) ** 2,
            lambda a, b: arithmetic.sqrt(abs(a)) + b,
            lambda a, b: math.floor(a) + b,
            lambda a, b: arithmetic.largest(a, b),
            lambda a, b: arithmetic.total([a, b, a]),
            lambda a, b: a - (b - a),
            lambda a, b: a / (b * 4) if b else a,
            lambda a, b: -(a + b),
        ]
    ).map(lambda make: make(left, right))


MADE = st.recursive(
    NUMBERS, lambda inner: st.tuples(inner, inner).flatmap(lambda pair: _two(*pair)), max_leaves=8
)


@given(MADE)
def test_what_a_number_remembers_gives_its_value(made):
    assert value_of(tree_of(made)) == pytest.approx(float(made), rel=1e-12, abs=1e-12)


@given(MADE)
def test_what_is_written_on_paper_is_read_back_as_the_value(made):
    assert read_back(tree_of(made)) == pytest.approx(float(made), rel=1e-7, abs=1e-7)


@pytest.mark.parametrize(
    "made, text",
    [
        (lambda a, b: a * (1 + b / 100), "a × (1 + b ÷ 100)"),
        (lambda a, b: a / (1 - b), "a ÷ (1 − b)"),
        (lambda a, b: a - (b + 1), "a − (b + 1)"),
        (lambda a, b: (a + b) ** 2, "(a + b)²"),
        (lambda a, b: arithmetic.sqrt(a), "√a"),
        (lambda a, b: arithmetic.sqrt(a * b), "√(a × b)"),
        (lambda a, b: math.ceil(a / b), "rounded up (a ÷ b)"),
        (lambda a, b: math.pi * a, "π × a"),
        (lambda a, b: sum([a, b, a]), "a + b + a"),
        (lambda a, b: named("vapor pressure", lambda t: t)(a), "vapor pressure(a)"),
        (lambda a, b: a // b, "whole part of (a ÷ b)"),
        (lambda a, b: 1500 * a, "1,500 × a"),
        (lambda a, b: -a, "−a"),
        (lambda a, b: 2 ** (a - 1), "2^(a − 1)"),
        (lambda a, b: a + -2 * b, "a + (−2) × b"),
        (lambda a, b: a / arithmetic.largest(a, b), "a ÷ largest of (a, b)"),
        (lambda a, b: arithmetic.total([a, b]) * 2, "sum of (a, b) × 2"),
        (lambda a, b: arithmetic.largest(a, b) ** 2, "(largest of (a, b))²"),
        (lambda a, b: a * math.ceil(a / b), "a × (rounded up (a ÷ b))"),
    ],
)
def test_it_is_written_as_a_worker_writes_it(made, text):
    found = made(Traced(A.value, A), Traced(B.value, B))
    assert write(tree_of(found), lambda leaf: leaf.words) == text
    assert [leaf.words for leaf in leaves_of(tree_of(found))]


@pytest.mark.parametrize(
    "made, text",
    [
        (lambda a: a**2 + 1, "(−1.8)² + 1"),
        (lambda a: 5 - -a, "5 − (−(−1.8))"),
        (lambda a: a * 2, "−1.8 × 2"),
        (lambda a: 2 - a, "2 − (−1.8)"),
        (lambda a: 2 + a * 3, "2 + (−1.8) × 3"),
        (lambda a: 2 / a, "2 ÷ (−1.8)"),
        (lambda a: 2 * (a - 1), "2 × (−1.8 − 1)"),
        (lambda a: round(a, 1), "(−1.8) rounded to 1 places"),
    ],
)
def test_a_value_below_0_is_filled_in_so_that_it_keeps_its_sign(made, text):
    leaf = Leaf("change", -1.8, NUMBER.base)
    tree = tree_of(made(Traced(-1.8, leaf)))
    assert write(tree, lambda each: f"{each.value:g}".replace("-", "−")) == text
    assert read_back(tree) == pytest.approx(value_of(tree))


@pytest.mark.parametrize(
    "made, text",
    [
        (lambda a: a**3, "(2 cm)³"),
        (lambda a: arithmetic.sqrt(a), "√(2 cm)"),
        (lambda a: a**2 * a, "(2 cm)² × 2 cm"),
        (lambda a: 2**a, "2^(2 cm)"),
        (lambda a: round(a), "2 cm rounded to a whole number"),
        (lambda a: 5 - -a, "5 − (−2 cm)"),
    ],
)
def test_a_value_with_its_unit_is_bracketed_under_a_power_and_a_root(made, text):
    leaf = Leaf("girth", 2.0, NUMBER.base)
    tree = tree_of(made(Traced(2.0, leaf)))
    assert write(tree, lambda each: f"{each.value:g} cm") == text
    assert write(tree, lambda each: f"{each.value:g}") == text.replace("(2 cm)", "2").replace(
        "2 cm", "2"
    )


def test_a_sum_of_counts_is_a_count():
    """By hand: 60 and 30 ends are 90 ends, not 90.0; a half stays one."""
    assert repr(arithmetic.total([60, 30])) == "90" and arithmetic.total([60, 0.5]) == 60.5


def test_a_term_that_comes_to_0_is_not_left_out():
    """Only what is 0 whatever the names stand for is: 0 as sum() begins with it, or 0 × so much."""
    a, none = Traced(A.value, A), Traced(0.0, Leaf("none", 0.0, NUMBER.base))
    for made, text in (
        (a + none, "a + none"),
        (none + a, "none + a"),
        (sum([none, a, none]), "none + a + none"),
        (a * 2 + (a - a), "a × 2 + a − a"),
        (a + 0 * none, "a"),
        (a + 0 / a * none, "a"),
    ):
        assert write(tree_of(made), lambda leaf: leaf.words) == text
        assert read_back(tree_of(made)) == made


def test_a_count_can_be_counted_with_and_half_of_one_cannot():
    four = Traced(4, Leaf("skeins", 4, NUMBER.base))
    assert list(range(four)) == [0, 1, 2, 3] and "abcdef"[four] == "e"
    with pytest.raises(TypeError):
        range(four / 8)


def test_a_cached_function_is_not_handed_a_memory():
    with pytest.raises(TypeError):
        hash(Traced(1.0, A))


def test_a_named_function_gets_the_plain_numbers():
    seen = []
    count = Traced(5, Leaf("skeins", 5, NUMBER.base))
    named("share", lambda *given: seen.extend(given) or 1.0)(count - 1, 2.5)
    assert [type(each) for each in seen] == [int, float] and seen == [4, 2.5]


def test_the_written_text_is_plain():
    """No sign of Python is left on paper."""
    found = (Traced(3.0, A) * 2.5 + 1) ** 2 / arithmetic.exp(Traced(0.5, B))
    text = write(tree_of(found), lambda leaf: leaf.words)
    assert not re.search(r"\*|//|/", text)
    assert ast.parse("1")  # the parser that reads it back is Python's own


def test_a_whole_number_that_was_searched_for_stays_one():
    found = searched(4, lambda n: (at_most(n * 84.0, 411.6),), lambda: 411.6 / 84.0)
    assert f"{found} skeins" == "4 skeins" and list(range(found)) == [0, 1, 2, 3]
    assert f"{searched(2.5, lambda n: (), lambda: 3.0)} m" == "2.5 m"


class Search(Case):
    """A number found by trying."""

    most = Between[int](COUNT, "The most there can be")
    found = Between[float](COUNT, "The best of them")


def test_what_a_search_kept_is_written_in_words_and_with_the_numbers():
    case = recording(Search)({})
    case.most = 7
    case.found = searched(6, lambda n: (at_most(n, case.most),), lambda: case.most)
    (row,) = written(steps_of(case), Settings())
    assert (row["formula"], row["filled"]) == ("found ≤ most", "6 ≤ 7")
    assert row["bound"] == "nothing beats most = 7"


class OfParts(Case):
    """A case that calls something of its own as the case calls what it is declared of."""

    parts = Between[int](COUNT, "Parts")


def test_a_case_may_call_something_its_parts():
    case = OfParts({})
    case.parts = 3
    assert case.parts == 3 and case.has(OfParts.parts)
