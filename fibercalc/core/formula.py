"""Formulas as text: evaluated to check a working, and written the way a careful worker writes on paper.

The text is a small part of Python's expression grammar: numbers, names, + - * / **, brackets, a few functions, `dyes[1].depth` for
a row's value (counted from 1) and `dyes.depth` for a whole column. Nothing else is understood, so a formula cannot do anything.
"""

import ast
import math
from collections.abc import Callable
from functools import lru_cache


def _mean(values):
    return sum(values) / len(values)


def _sd(values):
    """Sample standard deviation (n - 1)."""
    middle = _mean(values)
    return math.sqrt(sum((v - middle) ** 2 for v in values) / (len(values) - 1))


FUNCTIONS = {
    "sqrt": math.sqrt,
    "exp": math.exp,
    "ln": math.log,
    "log10": math.log10,
    "sin": math.sin,
    "cos": math.cos,
    "tan": math.tan,
    "atan": math.atan,
    "floor": math.floor,
    "ceil": math.ceil,
    "abs": abs,
    "min": min,
    "max": max,
    "sum": sum,
    "count": len,
    "mean": _mean,
    "sd": _sd,
}
CONSTANTS = {"pi": math.pi}
SIGNS = {ast.Add: " + ", ast.Sub: " − ", ast.Mult: " × ", ast.Div: " ÷ "}
RANK = {ast.Add: 1, ast.Sub: 1, ast.Mult: 2, ast.Div: 2, ast.Pow: 4}
POWERS = {2: "²", 3: "³"}
COMPARE = {
    ast.LtE: ("≤", lambda a, b: a <= b),
    ast.GtE: ("≥", lambda a, b: a >= b),
    ast.Lt: ("<", lambda a, b: a < b),
    ast.Gt: (">", lambda a, b: a > b),
}


@lru_cache(maxsize=2048)
def parse(text: str) -> ast.expr:
    """The syntax tree of a formula. Raises SyntaxError."""
    return ast.parse(text, mode="eval").body


def names_in(text: str) -> list[str]:
    """The names a formula uses, functions and constants apart."""
    used = [node.id for node in ast.walk(parse(text)) if isinstance(node, ast.Name)]
    return [name for name in dict.fromkeys(used) if name not in FUNCTIONS and name not in CONSTANTS]


def evaluate(text: str, values: dict) -> float:
    """The value of a formula, from the values of its names. Raises KeyError for a name without one, ValueError for other grammar."""
    return _value(parse(text), values)


def _value(node: ast.AST, values: dict):
    match node:
        case ast.Constant(value=number) if isinstance(number, (int, float)):
            return number
        case ast.Name(id=name):
            return CONSTANTS[name] if name in CONSTANTS else values[name]
        case ast.BinOp(left=left, op=op, right=right):
            a, b = _value(left, values), _value(right, values)
            match op:
                case ast.Add():
                    return a + b
                case ast.Sub():
                    return a - b
                case ast.Mult():
                    return a * b
                case ast.Div():
                    return a / b
                case ast.Pow():
                    return a**b
        case ast.UnaryOp(op=ast.USub(), operand=operand):
            return -_value(operand, values)
        case ast.Call(func=ast.Name(id=name), args=args) if name in FUNCTIONS or callable(
            values.get(name)
        ):
            return (FUNCTIONS.get(name) or values[name])(*(_value(arg, values) for arg in args))
        case ast.Attribute(value=inner, attr=attr):
            found = _value(inner, values)
            return (
                [getattr(row, attr) for row in found]
                if isinstance(found, list)
                else getattr(found, attr)
            )
        case ast.Subscript(value=inner, slice=ast.Constant(value=int(number))):
            return _value(inner, values)[number - 1]
        case ast.Compare(left=left, ops=[op], comparators=[right]) if type(op) in COMPARE:
            return COMPARE[type(op)][1](_value(left, values), _value(right, values))
    raise ValueError(f"not part of a formula: {ast.dump(node)[:60]}")


def write(text: str, name: Callable[[str], str]) -> str:
    """The formula as a person writes it, with × ÷ √ and each name or row value as the function name writes it."""
    return _write(parse(text), name, 0)


def _write(node: ast.AST, name: Callable[[str], str], outer: int) -> str:
    match node:
        case ast.Constant(value=number):
            return f"{number:,}" if isinstance(number, int) else f"{number:.10g}"
        case ast.Name(id="pi"):
            return "π"
        case ast.Name(id=word):
            return name(word)
        case ast.Attribute() | ast.Subscript():
            return name(_spelled(node))
        case ast.UnaryOp(operand=operand):
            return "−" + _write(operand, name, 3)
        case ast.BinOp(left=left, op=ast.Pow(), right=ast.Constant(value=power)) if power in POWERS:
            return f"{_write(left, name, 4)}{POWERS[power]}"
        case ast.BinOp(left=left, op=ast.Pow(), right=right):
            return f"{_write(left, name, 4)}^{_write(right, name, 4)}"
        case ast.BinOp(left=left, op=op, right=right):
            rank = RANK[type(op)]
            # The right side of − and ÷ keeps its brackets; so does the right of × when it is a quotient.
            tight = rank + (1 if isinstance(op, (ast.Sub, ast.Div)) else 0)
            written = _write(left, name, rank) + SIGNS[type(op)] + _write(right, name, tight)
            return f"({written})" if rank < outer else written
        case ast.Call(func=ast.Name(id="sqrt"), args=[inner]):
            written = _write(inner, name, 0)
            return f"√{written}" if " " not in written else f"√({written})"
        case ast.Call(func=ast.Name(id=function), args=args):
            written = ", ".join(_write(arg, name, 0) for arg in args)
            if (
                function in WORDS
                and len(args) == 1
                and isinstance(args[0], (ast.Name, ast.Attribute))
                and "," not in written
            ):
                return WORDS[function] + written
            return f"{WORDS.get(function, function.replace('_', ' '))}({written})"
        case ast.Compare(left=left, ops=[op], comparators=[right]):
            return f"{_write(left, name, 0)} {COMPARE[type(op)][0]} {_write(right, name, 0)}"
    raise ValueError(f"not part of a formula: {ast.dump(node)[:60]}")


@lru_cache(
    maxsize=2048
)  # the trees stand in the cache of parse, so that the same row's value is the same node again
def _spelled(node: ast.AST) -> str:
    return ast.unparse(node)


WORDS = {
    "floor": "whole part of ",
    "ceil": "rounded up ",
    "sum": "sum of ",
    "mean": "mean of ",
    "sd": "standard deviation of ",
    "min": "smallest of ",
    "max": "largest of ",
    "count": "how many of ",
}
