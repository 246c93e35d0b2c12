"""Imports run one way: site and command line, then chapters and workbook, then core and sources."""

import ast
import sys
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
    "site/protocol/__init__.py",
    "site/protocol/answers.py",
    "site/protocol/data.py",
    "site/protocol/questions.py",
    "site/protocol/typescript.py",
    "site/serve.py",
    "site/sheets.py",
}  # never in the browser's copy
LAZY = {"segno", "coloraide"}  # fetched only by a card that draws a QR code or computes color
LONGEST = 40  # lines of a function, its docstring apart
LONGER = Path(__file__).parent / "long_functions.txt"  # those that are not there yet


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
    for node in run_nodes(ast.parse(path.read_text("utf-8"))):
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


@pytest.mark.parametrize("path", FILES, ids=where)
def test_imports_run_one_way(path):
    own = where(path).split("/")[0].removesuffix(".py")
    for name in imports(path):
        if not name.startswith("fibercalc"):
            continue
        other = layer(name)
        if own == "core":
            assert other in ("core", "sources"), f"core imports {name}"
        elif own == "sources":
            assert other == "sources", f"sources imports {name}"
        elif own in CHAPTERS:
            assert other in {"core", "sources", own} | ARROWS[own], f"{own} imports {name}"
            if other in CHAPTERS and other != own:
                assert ".cards" not in name, f"{own} imports a card of {other}"
        elif own == "workbook":
            assert other in {"core", "sources", "workbook", *CHAPTERS}, f"workbook imports {name}"
        elif own == "site":
            assert other in {"core", "sources", "workbook", "site", "public", "__version__"}, (
                f"site imports {name}: it knows no formula"
            )


@pytest.mark.parametrize("path", FILES, ids=where)
def test_the_browsers_copy_needs_only_the_standard_library(path):
    if where(path) in BUILD_ONLY:
        return
    for name in imports(path):
        top = name.split(".")[0]
        assert top == "fibercalc" or top in sys.stdlib_module_names or top in LAZY, (
            f"{where(path)} imports {name}"
        )


@pytest.mark.parametrize("path", FILES, ids=where)
def test_files_say_what_they_are_for(path):
    assert ast.get_docstring(ast.parse(path.read_text("utf-8"))), f"{where(path)} has no docstring"


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
        for node in ast.walk(ast.parse(path.read_text("utf-8")))
        if isinstance(node, ast.FunctionDef) and lines_of(node) > LONGEST
    }
    assert found == set(LONGER.read_text("utf-8").splitlines())


@pytest.mark.parametrize(
    "path", [path for path in FILES if where(path) not in BUILD_ONLY], ids=where
)
def test_nothing_prints_and_nothing_writes_markup_by_hand(path):
    """Text for people goes through the command line; angle brackets are written in one file only."""
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            assert node.func.id != "print", where(path)
        if isinstance(node, ast.JoinedStr) and where(path) != "core/markup.py":
            constants = "".join(
                part.value
                for part in node.values
                if isinstance(part, ast.Constant) and isinstance(part.value, str)
            )
            assert "</" not in constants, f"{where(path)}: markup in an f-string"


@pytest.mark.parametrize("path", FILES, ids=where)
def test_nothing_rests_on_what_the_browsers_bytecode_drops(path):
    """It is compiled without asserts and docstrings."""
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        assert not isinstance(node, ast.Assert), f"{where(path)}:{node.lineno}"
        if where(path) not in BUILD_ONLY:
            assert not (isinstance(node, ast.Attribute) and node.attr == "__doc__"), (
                f"{where(path)}:{node.lineno}"
            )


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
