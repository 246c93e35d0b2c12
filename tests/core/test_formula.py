"""Formula texts are evaluated as arithmetic and nothing else, and written as on paper."""

import pytest

from fibercalc.core.formula import evaluate, write
from fibercalc.core.card import Row


@pytest.mark.parametrize(
    ("text", "values", "expected"),
    [
        ("a * b / c", {"a": 6, "b": 4, "c": 3}, 8),
        ("a - (b - c)", {"a": 5, "b": 3, "c": 1}, 3),
        ("(a / b) ** 2", {"a": 6, "b": 2}, 9),
        ("sqrt(a) * pi", {"a": 4}, 6.283185307),
        ("-a + 1", {"a": 3}, -2),
        ("sum(dyes.depth)", {"dyes": [Row({"depth": 1}), Row({"depth": 2.5})]}, 3.5),
        ("dyes[2].depth * 2", {"dyes": [Row({"depth": 1}), Row({"depth": 2.5})]}, 5),
        ("sd(d.x)", {"d": [Row({"x": 2}), Row({"x": 4})]}, 1.414213562),
    ],
)
def test_a_formula_is_evaluated(text, values, expected):
    assert evaluate(text, values) == pytest.approx(expected)


@pytest.mark.parametrize(
    "text",
    [
        "__import__('os')",
        "a.__class__.__base__()",
        "[1, 2]",
        "lambda: 1",
        "open('x')",
        "'text'",
        "a if b else c",
    ],
)
def test_nothing_but_arithmetic_is_understood(text):
    with pytest.raises((ValueError, KeyError, AttributeError, TypeError)):
        evaluate(text, {"a": 1, "b": 1, "c": 1})


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("turns * turn", "turns × turn"),
        ("a / (b + c)", "a ÷ (b + c)"),
        ("a - (b - c)", "a − (b − c)"),
        ("a / (b / c)", "a ÷ (b ÷ c)"),
        ("a * b / c", "a × b ÷ c"),
        ("(a / b) ** 2", "(a ÷ b)²"),
        ("sqrt(a)", "√a"),
        ("sqrt(a / b)", "√(a ÷ b)"),
        ("1000 * a", "1,000 × a"),
        ("mean(x.y)", "mean of all y"),
        ("a <= b", "a ≤ b"),
    ],
)
def test_a_formula_is_written_as_on_paper(text, expected):
    assert (
        write(text, lambda name: f"all {name.split('.')[1]}" if "." in name else name) == expected
    )
