"""The functions of arithmetic that a working can write: on plain floats what Python's own do, on
traced ones with a memory.

Formulas take these where they would take Python's; floor, ceil, abs and round of Python remember
by themselves.
"""

import math
from collections.abc import Callable, Iterable
from typing import Protocol, TypeVar, cast, overload

from .traced import OPERATIONS, Traced, tree_of

N = TypeVar("N", int, float)


class _OfSeveral(Protocol):
    """Of several numbers, or of one list of them: whole numbers give a whole one."""

    @overload
    def __call__(self, values: Iterable[N], /) -> N: ...
    @overload
    def __call__(self, first: N, second: N, /, *more: N) -> N: ...


def _remembering(name: str, function: Callable[..., float]) -> Callable[..., float]:
    def remembering(*given: float) -> float:
        value = function(*given)
        if not any(isinstance(each, Traced) for each in given):
            return value
        return Traced(value, (name, *map(tree_of, given)))

    return remembering


def _several(name: str, function: Callable[[list[float]], float]) -> Callable[..., float]:
    """Of several numbers, or of one list of them."""

    def several(*given: float | Iterable[float]) -> float:
        values: list[float] = (
            list(given[0])
            if len(given) == 1 and not isinstance(given[0], (int, float))
            else cast(list[float], list(given))
        )
        plain = [float(each) if isinstance(each, Traced) else each for each in values]
        value = function(plain)
        if not any(isinstance(each, Traced) for each in values):
            return value
        return Traced(value, (name, *map(tree_of, values)))

    return several


def _mean(values: list[float]) -> float:
    return math.fsum(values) / len(values)


def _deviation(values: list[float]) -> float:
    middle = _mean(values)
    return math.sqrt(math.fsum((each - middle) ** 2 for each in values) / (len(values) - 1))


def _sum(values: list[float]) -> float:
    """Counts add up to a count; other numbers without the errors of adding them one by one."""
    return sum(values) if all(isinstance(each, int) for each in values) else math.fsum(values)


ONE: dict[str, Callable[..., float]] = {
    "sqrt": math.sqrt,
    "exp": math.exp,
    "ln": math.log,
    "log10": math.log10,
    "sin": math.sin,
    "cos": math.cos,
    "tan": math.tan,
    "atan": math.atan,
    "hypot": math.hypot,
    "erf": math.erf,
}
MANY: dict[str, Callable[[list[float]], float]] = {
    "max": max,
    "min": min,
    "sum": _sum,
    "mean": _mean,
    "sd": _deviation,
}

sqrt, exp, ln, log10 = (_remembering(name, ONE[name]) for name in ("sqrt", "exp", "ln", "log10"))
sin, cos, tan, atan = (_remembering(name, ONE[name]) for name in ("sin", "cos", "tan", "atan"))
hypot, erf = (_remembering(name, ONE[name]) for name in ("hypot", "erf"))
largest, smallest, total = (
    cast(_OfSeveral, _several(name, MANY[name])) for name in ("max", "min", "sum")
)
mean, deviation = (_several(name, MANY[name]) for name in ("mean", "sd"))


def _of_all(function: Callable[[list[float]], float]) -> Callable[..., float]:
    return lambda *values: function(list(values))


OPERATIONS.update(ONE)
OPERATIONS.update({name: _of_all(function) for name, function in MANY.items()})
