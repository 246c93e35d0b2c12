"""The four kinds of step, and how a card's `answer` says that a number is no plain arithmetic: it
was looked up, solved or searched.

Each is a float like any other to what follows. Only a case that writes down its working looks at
what stands behind it.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar, cast

from .table import read_table
from .traced import Leaf, Tree, tree_of
from .units import Quantity, Unit

N = TypeVar("N", int, float)
Look = tuple[str, str, str, str | float, str]  # chapter, table, key column, key, column


class LookedUp(float):
    """A published value; look is where it stands."""

    look: Look


def looked_up(chapter: str, table: str, key_column: str, key: str | float, column: str) -> float:
    """A value read from a published table, which stays the only place it is written. Raises
    KeyError for an empty cell.
    """
    value = read_table(chapter, table).row(key_column, key)[column]
    if value == "":
        raise KeyError(f"{table}: no {column} for {key}")
    found = LookedUp(value)
    found.look = (chapter, table, key_column, key, column)
    return found


class Solved(float):
    """A value found by iteration; residual gives, for it, what is zero at the solution."""

    residual: Callable[[float], float]


def solved(value: float, residual: Callable[[float], float]) -> float:
    """A value found by iteration. residual is evaluated at it, and written as the equation that
    it solves.
    """
    found = Solved(value)
    found.residual = residual
    return found


class Searched:
    """The best value found by trying; kept gives, for it, the comparisons that hold, bound what
    no value is beyond.
    """

    kept: Callable[[float], tuple[Comparison, ...]]
    bound: Callable[[], float]


class SearchedCount(Searched, int):
    """A whole number found by trying, which stays one to words and tables."""


class SearchedNumber(Searched, float):
    """Another number found by trying."""


def searched(
    value: N, kept: Callable[[float], tuple[Comparison, ...]], bound: Callable[[], float]
) -> N:
    """The best whole number, or plan, found by trying."""
    found: Any = SearchedCount(value) if isinstance(value, int) else SearchedNumber(value)
    found.kept, found.bound = kept, bound
    return cast(N, found)


class Comparison:
    """Two sides of which one is at most, or at least, the other; it holds unless it is no more
    than a rounding error off.
    """

    __slots__ = ("left", "right", "sign")

    def __init__(self, left: Tree, sign: str, right: Tree) -> None:
        self.left, self.sign, self.right = left, sign, right


def at_most(left: float, right: float) -> Comparison:
    """left is at most right."""
    return Comparison(tree_of(left), "≤", tree_of(right))


def at_least(left: float, right: float) -> Comparison:
    """left is at least right."""
    return Comparison(tree_of(left), "≥", tree_of(right))


class Step:
    """One step of a working: what it finds, and the tree of its formula, of the equation's
    residual or of the search's bound.
    """

    __slots__ = ("kept", "kind", "label", "leaf", "look", "part", "tree")

    def __init__(
        self,
        kind: str,
        part: Any,
        label: str,
        leaf: Leaf,
        tree: Tree = 0.0,
        look: Look | None = None,
        kept: tuple[Comparison, ...] = (),
    ) -> None:
        self.kind, self.part, self.label, self.leaf = kind, part, label, leaf
        self.tree, self.look, self.kept = tree, look, kept

    @property
    def value(self) -> float:
        return self.leaf.value

    @property
    def unit(self) -> Unit:
        return self.leaf.unit

    @property
    def of(self) -> Quantity:
        """What it measures."""
        of: Quantity = self.part.of
        return of
