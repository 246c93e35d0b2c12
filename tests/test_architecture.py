"""Imports run one way: site and command line, then workbook, then chapters, then the names of records, then core and sources."""

import ast
import sys
from functools import cache
from pathlib import Path

import pytest

import fibercalc
from fibercalc.core.card import CHAPTERS

ROOT = Path(fibercalc.__file__).parent
FILES = sorted(ROOT.rglob("*.py"))
# A chapter may use plain functions of another only along these arrows (design of the bench book, section 3).
ARROWS = {
    "knit": {"wash", "yarn"},
    "weave": {"wash", "yarn"},
    "spin": {"knit", "yarn"},
    "dye": {"safe", "yarn"},
    "sell": set(CHAPTERS),
    "wash": {"yarn"},
    "safe": {"yarn"},
    "yarn": set(),
}
BUILD_ONLY = {
    "site/build.py",
    "site/helper_page.py",
    "site/library.py",
    "site/protocol/__init__.py",
    "site/protocol/answers.py",
    "site/protocol/data.py",
    "site/protocol/questions.py",
    "site/protocol/typescript.py",
    "site/serve.py",
    "site/sheets.py",
}  # never in the browser's copy
BROWSERS = {path for path in FILES if path.relative_to(ROOT).as_posix() not in BUILD_ONLY}
# What each layer below and above the chapters may import.
BELOW = {
    "core": {"core", "sources"},
    "sources": {"sources"},
    "held": {"core"},
    "workbook": {"core", "sources", "held", "workbook", *CHAPTERS},
    "site": {"core", "sources", "workbook", "site", "version"},  # no formula
}
LAZY = {"segno", "coloraide"}  # fetched only by a card that draws a QR code or computes color
LONGEST = 40  # lines of a function, its docstring apart
LONGER = Path(__file__).parent / "long_functions.txt"  # those that are not there yet


@cache
def tree_of(path: Path) -> ast.Module:
    return ast.parse(path.read_text("utf-8"))


def where(path: Path) -> str:
    return path.relative_to(ROOT).as_posix()


def run_nodes(node: ast.AST):
    """Every node below one that runs: what stands under `if TYPE_CHECKING` is for readers and type checkers only."""
    for child in ast.iter_child_nodes(node):
        if (
            isinstance(child, ast.If)
            and isinstance(child.test, ast.Name)
            and child.test.id == "TYPE_CHECKING"
        ):
            continue
        yield child
        yield from run_nodes(child)


def imports(path: Path) -> set[str]:
    """Every module a file imports when it runs, as an absolute dotted name."""
    package = ["fibercalc", *path.relative_to(ROOT).parts[:-1]]
    found = set()
    for node in run_nodes(tree_of(path)):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            base = package[: len(package) - node.level + 1] if node.level else []
            module = ".".join([*base, *([node.module] if node.module else [])])
            found |= {module} | (
                {f"{module}.{alias.name}" for alias in node.names} if node.level else set()
            )
    return found


def layer(name: str) -> str:
    parts = name.split(".")
    return parts[1] if len(parts) > 1 else "public"


def may_import(own: str, name: str) -> bool:
    """Whether a file of a layer or chapter may import a module."""
    other = layer(name)
    if own in CHAPTERS:
        foreign_card = other in CHAPTERS and other != own and ".cards" in name
        return other in {"core", "sources", "held", own} | ARROWS[own] and not foreign_card
    return own not in BELOW or other in BELOW[own]


def test_imports_run_one_way():
    assert not [
        f"{where(path)} imports {name}"
        for path in FILES
        for name in imports(path)
        if name.startswith("fibercalc")
        and not may_import(where(path).split("/")[0].removesuffix(".py"), name)
    ]


def test_the_browsers_copy_needs_only_the_standard_library():
    assert not [
        f"{where(path)} imports {name}"
        for path in BROWSERS
        for name in imports(path)
        if name.split(".")[0] not in {"fibercalc", *sys.stdlib_module_names, *LAZY}
    ]


def test_files_say_what_they_are_for():
    assert not [where(path) for path in FILES if not ast.get_docstring(tree_of(path))]


def lines_of(function: ast.FunctionDef) -> int:
    body = (
        function.body[1:]
        if ast.get_docstring(function) and len(function.body) > 1
        else function.body
    )
    return function.end_lineno - body[0].lineno + 1


def test_functions_stay_short():
    """Those that are not yet are named in a list that only ever gets shorter."""
    found = {
        f"{where(path)} {node.name}"
        for path in FILES
        for node in ast.walk(tree_of(path))
        if isinstance(node, ast.FunctionDef) and lines_of(node) > LONGEST
    }
    assert found == set(LONGER.read_text("utf-8").splitlines())


def test_nothing_prints_and_nothing_writes_markup_by_hand():
    """Text for people goes through the command line; angle brackets are written in one file only."""
    for path in BROWSERS:
        for node in ast.walk(tree_of(path)):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
                assert node.func.id != "print", where(path)
            if isinstance(node, ast.JoinedStr) and where(path) != "core/markup.py":
                constants = "".join(
                    part.value
                    for part in node.values
                    if isinstance(part, ast.Constant) and isinstance(part.value, str)
                )
                assert "</" not in constants, f"{where(path)}: markup in an f-string"


def test_nothing_rests_on_what_the_browsers_bytecode_drops():
    """It is compiled without asserts and docstrings."""
    assert not [
        f"{where(path)}:{node.lineno}"
        for path in FILES
        for node in ast.walk(tree_of(path))
        if isinstance(node, ast.Assert)
        or (path in BROWSERS and isinstance(node, ast.Attribute) and node.attr == "__doc__")
    ]


def test_no_module_imports_itself_in_a_circle():
    graph = {}
    for path in FILES:
        name = ".".join(["fibercalc", *path.relative_to(ROOT).with_suffix("").parts]).removesuffix(
            ".__init__"
        )
        graph[name] = imports(path)
    seen, stack = set(), []

    def visit(name):
        if name in stack:
            pytest.fail(" -> ".join([*stack[stack.index(name) :], name]))
        if name in seen or name not in graph:
            return
        stack.append(name)
        for other in graph[name]:
            if other != name and not (name.startswith(other + ".")):
                visit(other)
        stack.pop()
        seen.add(name)

    for name in graph:
        visit(name)
