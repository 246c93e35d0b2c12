"""Every public formula says its arguments, its errors and its source; every table names sources that exist."""

import inspect
import re
from collections.abc import Mapping, Sequence
from importlib import import_module, resources
from pkgutil import iter_modules

import pytest

import fibercalc.yarn
from fibercalc.core.table import read_table
from fibercalc.sources import all_sources

FORMULA_FILES = [found.name for found in iter_modules(fibercalc.yarn.__path__) if not found.ispkg and found.name != "charts"]
FORMULAS = [
    pytest.param(function, id=f"{name}.{function.__name__}")
    for name in FORMULA_FILES
    for function in vars(import_module(f"fibercalc.yarn.{name}")).values()
    if callable(function) and not inspect.isclass(function) and getattr(function, "__module__", "") == f"fibercalc.yarn.{name}"
    and not function.__name__.startswith("_")
]
TABLES = sorted(path.name.removesuffix(".csv") for path in (resources.files("fibercalc.yarn") / "tables").iterdir())
NONSENSE = {Sequence[float]: [], Sequence[str]: [], Mapping[str, float]: {}, str: "no such thing"}


@pytest.mark.parametrize("function", FORMULAS)
def test_docstring_names_each_argument_and_a_source(function):
    """A line for each argument, and a source that is in the bibliography or is common practice, arithmetic or memory."""
    text = inspect.getdoc(function) or ""
    for name in inspect.signature(function).parameters:
        assert re.search(rf"^{name} {{2,}}\S|^{name}\s{{2,}}\S", text, re.MULTILINE), f"{name} is not described"
    source = text.partition("Source:")[2]
    assert source, "no Source:"
    named = re.findall(r"[a-z0-9]+(?:-[a-z0-9]+)+", source)
    assert any(word in all_sources() for word in named) or re.match(r"\s*(common practice|arithmetic)", source), source


@pytest.mark.parametrize("function", FORMULAS)
def test_docstring_says_what_it_raises(function):
    """Given nonsense, a function either answers or raises what its docstring names."""
    nonsense = {name: NONSENSE.get(one.annotation, float("nan")) for name, one in inspect.signature(function).parameters.items()}
    try:
        function(**nonsense)
    except Exception as error:
        text = inspect.getdoc(function)
        assert "Raises" in text and type(error).__name__ in text.partition("Raises")[2], f"{type(error).__name__} is not named"


@pytest.mark.parametrize("name", TABLES)
def test_table_names_sources_that_exist(name):
    """The table's source, and a row's own where it has one; each row says how it was obtained."""
    table = read_table("yarn", name)
    assert table.rows and "status" in table.columns
    for row in table.rows:
        assert None not in row, f"a cell too many: {row}"
        assert (row.get("source") or table.source) in all_sources(), row
        assert row["status"], row


@pytest.mark.parametrize("name", TABLES)
def test_a_row_read_in_a_secondary_page_is_not_called_read(name):
    """A row cannot know its value better than its source was known."""
    table = read_table("yarn", name)
    for row in table.rows:
        how = all_sources()[row.get("source") or table.source].how
        assert (how, row["status"]) not in {("secondary", "read"), ("memory", "read"), ("memory", "secondary")}, row
