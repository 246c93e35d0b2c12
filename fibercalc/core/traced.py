"""Numbers that remember how they were made, so that a working writes itself and cannot disagree
with its answer.

A `Traced` is a float that carries the tree of what made it. Formula functions know nothing of it:
they get one in place of a plain float when a working is wanted, and hand one back. Edits, nudges
and tables run on plain floats.

A tree is a plain number, a `Leaf` (something with a name), or a tuple of an operation and the
trees it works on.
"""

from __future__ import annotations

import operator
from collections.abc import Callable
from math import ceil, floor
from typing import Any, SupportsIndex, TypeAlias, overload

from .units import Unit


class Leaf:
    """Something a tree names: an input, a value of a row, or what an earlier step found.

    words   how a formula writes it;  column  the rows and field that it is one value of, written
            "all lengths" when all are meant
    """

    __slots__ = ("column", "unit", "value", "words")

    def __init__(self, words: str, value: float, unit: Unit, column: str = "") -> None:
        self.words, self.value, self.unit, self.column = words, value, unit, column


# A tuple is ("+", left, right), ("sqrt", inner) or (Named, *inner).
Tree: TypeAlias = "float | Leaf | tuple[str | Named, *tuple[Tree, ...]]"


# What the operation of a tree does with plain numbers; arithmetic.py adds its functions.
OPERATIONS: dict[str, Callable[..., float]] = {
    "+": operator.add,
    "-": operator.sub,
    "*": operator.mul,
    "/": operator.truediv,
    "**": operator.pow,
    "neg": operator.neg,
    "abs": abs,
    "floor": floor,
    "ceil": ceil,
    "round": lambda value, places: round(value, int(places)),
}


def tree_of(value: float) -> Tree:
    """How a number was made; a plain one is itself."""
    return value.tree if isinstance(value, Traced) else value


class Traced(float):
    """A float with the tree of what made it. It compares by value. It has no hash, since a cached
    function would hand it, and what it remembers, to the next caller: such a function is
    called by `named`.
    """

    __slots__ = ("tree",)
    tree: Tree
    __hash__ = None  # type: ignore[assignment]

    def __new__(cls, value: float, tree: Tree) -> Traced:
        made = float.__new__(cls, value)
        made.tree = tree
        return made

    def __index__(self) -> int:
        if float(self) != int(self):
            raise TypeError(f"{float(self)} is not a whole number")
        return int(self)

    def __add__(self, other: float) -> float:
        return self if _nothing(other) else _made("+", float.__add__(self, other), self, other)

    def __radd__(self, other: float) -> float:
        return self if _nothing(other) else _made("+", float.__radd__(self, other), other, self)

    def __sub__(self, other: float) -> float:
        return _made("-", float.__sub__(self, other), self, other)

    def __rsub__(self, other: float) -> float:
        return _made("-", float.__rsub__(self, other), other, self)

    def __mul__(self, other: float) -> float:
        return _made("*", float.__mul__(self, other), self, other)

    def __rmul__(self, other: float) -> float:
        return _made("*", float.__rmul__(self, other), other, self)

    def __truediv__(self, other: float) -> float:
        return _made("/", float.__truediv__(self, other), self, other)

    def __rtruediv__(self, other: float) -> float:
        return _made("/", float.__rtruediv__(self, other), other, self)

    def __pow__(self, other: float, modulo: None = None) -> Any:
        return _made("**", float.__pow__(self, other), self, other)

    def __rpow__(self, other: float, modulo: None = None) -> Any:
        return _made("**", float.__rpow__(self, other), other, self)

    def __floordiv__(self, other: float) -> float:
        return floor(self / other)

    def __rfloordiv__(self, other: float) -> float:
        return floor(other / self)

    def __mod__(self, other: float) -> float:
        return self - other * floor(self / other)

    def __neg__(self) -> Traced:
        return Traced(-float(self), ("neg", self.tree))

    def __pos__(self) -> Traced:
        return self

    def __abs__(self) -> Traced:
        return Traced(abs(float(self)), ("abs", self.tree))

    # A whole number that remembers is no int, though Python's own float gives one here.
    def __floor__(self) -> Any:
        return Traced(floor(float(self)), ("floor", self.tree))

    def __ceil__(self) -> Any:
        return Traced(ceil(float(self)), ("ceil", self.tree))

    @overload
    def __round__(self, places: None = None, /) -> int: ...
    @overload
    def __round__(self, places: SupportsIndex, /) -> float: ...
    def __round__(self, places: SupportsIndex | None = None, /) -> Any:
        to = 0 if places is None else operator.index(places)
        return Traced(round(float(self), places), ("round", self.tree, to))


def _nothing(other: float) -> bool:
    """Whether a term is 0 whatever its names stand for, as the 0 is that sum() begins with.

    One that only comes to 0 in this case is a term like any other.
    """
    return other == 0 and _always_0(tree_of(other))


def _always_0(tree: Tree) -> bool:
    if isinstance(tree, Leaf):
        return False
    if not isinstance(tree, tuple):
        return tree == 0
    operation, *inner = tree
    if operation == "*":
        return any(_always_0(each) for each in inner)
    return operation == "/" and _always_0(inner[0])


def _made(operation: str, value: float, left: float, right: float) -> float:
    return (
        value
        if value is NotImplemented
        else Traced(value, (operation, tree_of(left), tree_of(right)))
    )


class Named:
    """A function that a formula calls by its name, since what it does is not arithmetic on paper:
    an iteration, a table's curve.
    """

    def __init__(self, words: str, function: Callable[..., float]) -> None:
        self.words, self.function = words, function

    def __call__(self, *given: float) -> float:
        # Worked out again, a count is the whole number that it was: a float could not be counted
        # with.
        value = self.function(
            *(value_of(each.tree) if isinstance(each, Traced) else each for each in given)
        )
        if not any(isinstance(each, Traced) for each in given):
            return value
        return Traced(value, (self, *map(tree_of, given)))


def named(words: str, function: Callable[..., float]) -> Named:
    """`function`, written in a formula as `words` of what it is given, and not taken apart."""
    return Named(words, function)


def value_of(tree: Tree) -> float:
    """A tree worked out again from its leaves."""
    if isinstance(tree, Leaf):
        return tree.value
    if not isinstance(tree, tuple):
        return tree
    operation, *inner = tree
    values = [value_of(each) for each in inner]
    if isinstance(operation, Named):
        return operation.function(*values)
    return OPERATIONS[operation](*values)


def leaves_of(tree: Tree) -> list[Leaf]:
    """What a tree names, in the order it does."""
    if isinstance(tree, Leaf):
        return [tree]
    return (
        [leaf for each in tree[1:] for leaf in leaves_of(each)] if isinstance(tree, tuple) else []
    )
