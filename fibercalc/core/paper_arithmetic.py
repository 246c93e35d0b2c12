"""A tree of arithmetic as a careful worker writes it on paper: × ÷ √, brackets only where they
are needed.
"""

from collections.abc import Callable
from math import pi

from .traced import Leaf, Named, Tree

SIGNS = {"+": (" + ", 1), "-": (" − ", 1), "*": (" × ", 2), "/": (" ÷ ", 2)}
# How tightly the rest binds: "whole part of a" not at all, since what follows would be read into
# it; a list in its brackets and a number below 0 as a factor does; a value with its unit as a power
# does, so that "(2 cm)³" is no "2 cm³"; WHOLE needs no brackets anywhere.
IN_WORDS, LIST, NEGATIVE, POWER, WITH_UNIT, WHOLE = 0, 3, 3, 4, 4, 5
MINUS, DIGITS = "−-", "0123456789.,"
RAISED: dict[float, str] = {2: "²", 3: "³"}
WORDS = {
    "floor": "whole part of ",
    "ceil": "rounded up ",
    "sum": "sum of ",
    "mean": "mean of ",
    "sd": "standard deviation of ",
    "min": "smallest of ",
    "max": "largest of ",
}


def write(tree: Tree, leaf: Callable[[Leaf], str]) -> str:
    """The formula, each thing with a name as the function `leaf` writes it."""
    return _write(tree, leaf)[0]


def _write(tree: Tree, leaf: Callable[[Leaf], str], after: bool = False) -> tuple[str, int]:
    """What is written, and how tightly it holds together; after whether a sign stands before it."""
    if isinstance(tree, Leaf):
        written = leaf(tree)
        return _signed(written, WHOLE if written == tree.words else _filled(written), after)
    if not isinstance(tree, tuple):
        return _signed(_number(tree), NEGATIVE if tree < 0 else WHOLE, after)
    operation, *inner = tree
    if operation in SIGNS:
        sign, rank = SIGNS[operation]
        # The right side of − and ÷ keeps its brackets.
        right = _within(inner[1], leaf, rank + 1 if operation in "-/" else rank, after=True)
        return _within(inner[0], leaf, rank, after) + sign + right, rank
    if operation == "neg":
        return _signed("−" + _within(inner[0], leaf, POWER), NEGATIVE, after)
    if operation == "**":
        base = _within(inner[0], leaf, WHOLE)
        power = inner[1]
        raised = RAISED.get(power) if not isinstance(power, (tuple, Leaf)) else None
        return base + (raised or f"^{_within(power, leaf, WHOLE)}"), POWER
    return _called(operation, inner, leaf)


def _signed(written: str, holds: int, after: bool) -> tuple[str, int]:
    """Two signs do not stand side by side: "2 − (−2)"."""
    return (f"({written})", WHOLE) if after and written[0] in MINUS else (written, holds)


def _filled(number: str) -> int:
    """How tightly a number that stands in place of a name holds together with its sign and its
    unit.
    """
    if number[0] in MINUS:
        return NEGATIVE
    return WITH_UNIT if number.strip(DIGITS) else WHOLE


def _within(tree: Tree, leaf: Callable[[Leaf], str], rank: int, after: bool = False) -> str:
    written, holds = _write(tree, leaf)
    if holds < rank:
        return f"({written})"
    return _write(tree, leaf, after)[0] if after and written[0] in MINUS else written


def _called(
    operation: str | Named, inner: list[Tree], leaf: Callable[[Leaf], str]
) -> tuple[str, int]:
    if operation == "sqrt":
        written, holds = _write(inner[0], leaf)
        return (
            f"√{written}" if holds == WHOLE and not isinstance(inner[0], tuple) else f"√({written})"
        ), POWER
    if operation == "round":
        to = f"to {inner[1]} places" if inner[1] else "to a whole number"
        tight = POWER if isinstance(inner[0], Leaf) else WHOLE
        return f"{_within(inner[0], leaf, tight)} rounded {to}", IN_WORDS
    words = operation.words if isinstance(operation, Named) else WORDS.get(operation, operation)
    if not inner:
        return words, WHOLE
    each_written = [_write(each, leaf)[0] for each in inner]
    if words in WORDS.values():
        first = inner[0]
        if isinstance(first, Leaf) and _one_column(inner) and leaf(first) == first.words:
            return words + first.column, IN_WORDS  # in words, a whole column is named once
        if len(inner) == 1 and isinstance(first, Leaf):
            return words + each_written[0], IN_WORDS
        # "whole part of (a ÷ b)" is one thing whose end is not seen; "largest of (a, b)" is closed.
        return f"{words}({', '.join(each_written)})", LIST if len(inner) > 1 else IN_WORDS
    return f"{words}({', '.join(each_written)})", WHOLE


def _one_column(inner: list[Tree]) -> bool:
    """Whether these are the values of one field of some rows."""
    columns = {each.column if isinstance(each, Leaf) else "" for each in inner}
    return len(columns) == 1 and "" not in columns


def _number(value: float) -> str:
    if value == pi:
        return "π"
    written = (
        f"{abs(value):,.0f}" if value == int(value) and abs(value) < 1e15 else f"{abs(value):.10g}"
    )
    return f"−{written}" if value < 0 else written
