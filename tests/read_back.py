"""What a working writes on paper, read back by Python's own parser: the proof that its text means its value."""

import ast
import math
import statistics

from fibercalc.core.paper_arithmetic import write
from fibercalc.core.traced import Leaf, Named, Tree

SIGNS = {
    "−": "-",
    "×": "*",
    "÷": "/",
    "²": "**2",
    "³": "**3",
    "^": "**",
    "π": "pi",
    ",": ",",
    "√": "sqrt ",
}
FUNCTIONS = {
    "whole part of ": "floor",
    "rounded up ": "ceil",
    "sum of ": "total",
    "mean of ": "mean",
    "standard deviation of ": "sd",
    "smallest of ": "min",
    "largest of ": "max",
}


class Rounded:
    """What "… rounded to a whole number" asks of the number before it, as a sign behind it."""

    def __init__(self, places: int) -> None:
        self.places = places

    def __rmatmul__(self, value: float) -> float:
        return round(value, self.places)


KNOWN = {
    "rounded": Rounded,
    "floor": math.floor,
    "ceil": math.ceil,
    "min": lambda *values: min(values),
    "max": lambda *values: max(values),
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
    "abs": abs,
    "pi": math.pi,
    "total": lambda *values: math.fsum(values),
    "mean": lambda *values: statistics.fmean(values),
    "sd": lambda *values: statistics.stdev(values),
}


def read_back(tree: Tree) -> float:
    """The value of a tree's text, each thing with a name standing for its value."""
    names: dict[str, object] = dict(KNOWN)

    def leaf(each: Leaf) -> str:
        name = f"v{len(names)}"
        names[name] = each.value
        return name

    text = _functions_named(_without_groups(write(tree, leaf), tree), tree, names)
    return eval(compile(ast.parse(text, mode="eval"), "paper", "eval"), {"__builtins__": {}}, names)


def _without_groups(text: str, tree: Tree) -> str:
    """Written numbers have commas between thousands: 1,500 is 1500."""
    import re

    return re.sub(r"(?<=\d),(?=\d{3})", "", text)


def _functions_named(text: str, tree: Tree, names: dict[str, object]) -> str:
    import re

    for each in _named_in(tree):
        name = f"f{len(names)}"
        names[name] = each.function
        text = text.replace(f"{each.words}(", f"{name}(")
    for words, name in FUNCTIONS.items():
        text = re.sub(re.escape(words) + r"(v\d+)", rf"{name}(\1)", text).replace(words, name)
    text = re.sub(r"√(v\d+|\d[\d.]*|pi|π)", r"sqrt(\1)", text).replace("√", "sqrt")
    text = text.replace("rounded to a whole number", "@ rounded(0)")
    text = re.sub(r"rounded to (\d+) places", r"@ rounded(\1)", text)
    for sign, plain in SIGNS.items():
        text = text.replace(sign, plain)
    return text


def _named_in(tree: Tree) -> list[Named]:
    if not isinstance(tree, tuple):
        return []
    inner = [found for each in tree[1:] for found in _named_in(each)]
    return [tree[0], *inner] if isinstance(tree[0], Named) else inner
