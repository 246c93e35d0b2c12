"""What can be broken in a source: each fault is one small change of one place inside a function, the kind of slip that a hand makes."""

from __future__ import annotations

import ast
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

ARITHMETIC = {
    ast.Add: ast.Sub,
    ast.Sub: ast.Add,
    ast.Mult: ast.Div,
    ast.Div: ast.Mult,
    ast.FloorDiv: ast.Div,
    ast.Mod: ast.FloorDiv,
    ast.Pow: ast.Mult,
}
COMPARED = {
    ast.Lt: (ast.LtE, ast.GtE),
    ast.LtE: (ast.Lt, ast.Gt),
    ast.Gt: (ast.GtE, ast.LtE),
    ast.GtE: (ast.Gt, ast.Lt),
    ast.Eq: (ast.NotEq,),
    ast.NotEq: (ast.Eq,),
    ast.In: (ast.NotIn,),
    ast.NotIn: (ast.In,),
    ast.Is: (ast.IsNot,),
    ast.IsNot: (ast.Is,),
}
TURNED = {
    pair[way]: pair[1 - way]
    for pair in (
        ("min", "max"),
        ("smallest", "largest"),
        ("floor", "ceil"),
        ("low", "high"),
        ("at_least", "at_most"),
        ("any", "all"),
    )
    for way in (0, 1)
} | {"round": "floor", "total": "largest", "sum": "max"}
Change = Callable[[ast.AST], ast.AST]


@dataclass(frozen=True)
class Fault:
    """One change: of the node that comes as number `node` in the file's walk, by the way `way` of its changes."""

    path: str  # from the project's folder
    node: int
    way: int
    function: str
    line: int
    before: str
    after: str

    def __str__(self) -> str:
        return f"{self.path}:{self.line} in {self.function}: {self.before}  ->  {self.after}"


def faults_of(path: Path) -> list[Fault]:
    """All faults that a file can be given, in the order of its walk."""
    tree = ast.parse(path.read_text("utf-8"))
    found = []
    for number, (node, function) in enumerate(_walk(tree)):
        if not function:
            continue
        for way, change in enumerate(changes_of(node)):
            before, after = _line(ast.unparse(node)), _line(ast.unparse(change(_copied(node))))
            line = getattr(node, "target", node).lineno
            file = str(path.relative_to(ROOT))
            found.append(Fault(file, number, way, function, line, before, after))
    return found


def with_fault(source: str, fault: Fault) -> ast.Module:
    """The file's tree with the fault in it; every line stays where it was."""
    tree = ast.parse(source)
    node = list(_walk(tree))[fault.node][0]
    new = changes_of(node)[fault.way](_copied(node))
    if hasattr(node, "lineno"):
        new = ast.copy_location(new, node)
    return ast.fix_missing_locations(_Exchange(node, new).visit(tree))


def with_marks(source: str, faults: dict[int, Fault]) -> ast.Module:
    """The file's tree with a call of `__reached__(number)` before each place that a fault would change."""
    tree = ast.parse(source)
    nodes = [node for node, _ in _walk(tree)]
    above = {child: node for node in ast.walk(tree) for child in ast.iter_child_nodes(node)}
    places: dict[ast.AST, list[int]] = {}
    for number, fault in faults.items():
        place = nodes[fault.node]
        while not isinstance(place, (ast.stmt, ast.Lambda)):
            place = above[place]
        places.setdefault(place, []).append(number)
    return ast.fix_missing_locations(_Marks(places).visit(tree))


def changes_of(node: ast.AST) -> list[Change]:
    """The ways in which one node can be broken."""
    for kind, make in CHANGES:
        if isinstance(node, kind):
            return make(node)
    return []


def _arithmetic(node: ast.BinOp) -> list[Change]:
    if _is_text(node.left) or _is_text(node.right) or type(node.op) not in ARITHMETIC:
        return []
    other = ARITHMETIC[type(node.op)]
    ways = [lambda it: ast.BinOp(it.left, other(), it.right)]
    if isinstance(node.op, (ast.Sub, ast.Div)):
        ways.append(lambda it: ast.BinOp(it.right, it.op, it.left))
    ways.append(lambda it: it.left)
    return ways


def _compared(node: ast.Compare) -> list[Change]:
    others = COMPARED[type(node.ops[0])]
    return [
        lambda it, other=other: ast.Compare(it.left, [other(), *it.ops[1:]], it.comparators)
        for other in others
    ]


def _joined(node: ast.BoolOp) -> list[Change]:
    other = ast.Or if isinstance(node.op, ast.And) else ast.And
    return [lambda it: ast.BoolOp(other(), it.values), lambda it: it.values[0]]


def _one_sided(node: ast.UnaryOp) -> list[Change]:
    return [lambda it: it.operand] if isinstance(node.op, (ast.Not, ast.USub)) else []


def _chosen(_: ast.IfExp) -> list[Change]:
    return [lambda it: ast.IfExp(it.test, it.orelse, it.body)]


def _guarded(node: ast.If) -> list[Change]:
    return [
        lambda it, held=held: ast.If(ast.Constant(held), it.body, it.orelse)
        for held in (False, True)
    ]


def _number(node: ast.Constant) -> list[Change]:
    if isinstance(node.value, bool):
        return [lambda it: ast.Constant(not it.value)]
    if isinstance(node.value, int):
        return [lambda it: ast.Constant(it.value + 1)]
    if isinstance(node.value, float):
        return [lambda it: ast.Constant(it.value * 2 if it.value else 1.0)]
    return []


def _named(node: ast.Call) -> list[Change]:
    name = node.func
    if isinstance(name, ast.Name) and name.id in TURNED:
        other = TURNED[name.id]
        return [lambda it: ast.Call(ast.Name(other, ast.Load()), it.args, it.keywords)]
    if isinstance(name, ast.Attribute) and name.attr in ("low", "high"):
        return [
            lambda it, to=to: ast.Call(
                ast.Attribute(it.func.value, to, ast.Load()), it.args, it.keywords
            )
            for to in (TURNED[name.attr], "value")
        ]
    return []


def _part(node: ast.Attribute) -> list[Change]:
    if node.attr in ("low", "high") and isinstance(node.ctx, ast.Load):
        return [
            lambda it, to=to: ast.Attribute(it.value, to, ast.Load())
            for to in (TURNED[node.attr], "value")
        ]
    return []


def _item(node: ast.Subscript) -> list[Change]:
    text = ast.unparse(node.slice)
    if not isinstance(node.ctx, ast.Load) or text not in ("0", "-1"):
        return []
    return [lambda it: ast.Subscript(it.value, ast.Constant(-1 if text == "0" else 0), ast.Load())]


def _left_out(node: ast.stmt) -> list[Change]:
    """A statement that is not made: a value not set, a call not made."""
    if isinstance(node, ast.Expr) and not isinstance(node.value, ast.Call):
        return []
    if isinstance(node, ast.Assign) and not isinstance(node.targets[0], ast.Attribute):
        return []
    return [lambda it: ast.Pass()]


def _sifted(node: ast.comprehension) -> list[Change]:
    return [lambda it: ast.comprehension(it.target, it.iter, [], it.is_async)] if node.ifs else []


CHANGES: tuple[tuple[type, Callable[..., list[Change]]], ...] = (
    (ast.BinOp, _arithmetic),
    (ast.Compare, _compared),
    (ast.BoolOp, _joined),
    (ast.UnaryOp, _one_sided),
    (ast.IfExp, _chosen),
    (ast.If, _guarded),
    (ast.Constant, _number),
    (ast.Call, _named),
    (ast.Attribute, _part),
    (ast.Subscript, _item),
    (ast.comprehension, _sifted),
    ((ast.Expr, ast.Assign, ast.AugAssign), _left_out),
)


def _walk(tree: ast.AST, function: str = "", within: str = "") -> Iterator[tuple[ast.AST, str]]:
    """Every node that stands in a body, with the outermost function around it; signatures, annotations and texts stay out."""
    for node in ast.iter_child_nodes(tree):
        if isinstance(node, (ast.FunctionDef, ast.Lambda)):
            name = within + getattr(node, "name", "<lambda>")
            for child in node.body if isinstance(node.body, list) else [node.body]:
                inside = ast.Module([child], []) if isinstance(child, ast.stmt) else _Body(child)
                yield from _walk(inside, function or name, within)
        elif isinstance(node, ast.ClassDef):
            for child in node.body:
                yield from _walk(ast.Module([child], []), function, f"{within}{node.name}.")
        elif isinstance(node, ast.JoinedStr):
            for value in node.values:
                if isinstance(value, ast.FormattedValue):
                    yield from _walk(_Body(value.value), function, within)
        elif isinstance(node, ast.AnnAssign):
            yield node, function
            if node.value is not None:
                yield from _walk(_Body(node.value), function, within)
        else:
            yield node, function
            yield from _walk(node, function, within)


class _Body(ast.AST):
    """An expression as the only child of something."""

    _fields = ("body",)

    def __init__(self, body: ast.AST):
        self.body = body


class _Exchange(ast.NodeTransformer):
    """Puts one node in another's place."""

    def __init__(self, old: ast.AST, new: ast.AST):
        self.old, self.new = old, new

    def visit(self, node: ast.AST) -> ast.AST:
        return self.new if node is self.old else self.generic_visit(node)


class _Marks(ast.NodeTransformer):
    """Puts calls that say “reached” before statements; in a lambda, before its value."""

    def __init__(self, places: dict[ast.AST, list[int]]):
        self.places = places

    def visit(self, node: ast.AST) -> ast.AST | list[ast.AST]:
        numbers = self.places.get(node, [])
        new = self.generic_visit(node)
        calls = [ast.parse(f"__reached__({number})").body[0] for number in numbers]
        if isinstance(new, ast.Lambda) and calls:
            values = [*(call.value for call in calls), new.body]
            new.body = ast.Subscript(ast.Tuple(values, ast.Load()), ast.Constant(-1), ast.Load())
            return new
        return [*(ast.copy_location(call, node) for call in calls), new] if calls else new


def _copied(node: ast.AST) -> ast.AST:
    """A node with the same children, so that a change leaves the first one whole."""
    return type(node)(**{name: getattr(node, name) for name in node._fields})


def _is_text(node: ast.AST) -> bool:
    return isinstance(node, ast.JoinedStr) or (
        isinstance(node, ast.Constant) and isinstance(node.value, str)
    )


def _line(text: str) -> str:
    text = " ".join(text.split())
    return text if len(text) <= 90 else text[:87] + "..."
