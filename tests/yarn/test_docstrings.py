"""Every public formula says its arguments, its errors and its source."""

import inspect
import re
from collections.abc import Mapping, Sequence
from importlib import import_module
from pkgutil import iter_modules

import pytest

import fibercalc.yarn
from fibercalc.sources import all_sources

FORMULA_FILES = [found.name for found in iter_modules(fibercalc.yarn.__path__) if not found.ispkg and found.name != "charts"]
FORMULAS = [
    pytest.param(function, id=f"{name}.{function.__name__}")
    for name in FORMULA_FILES
    for function in vars(import_module(f"fibercalc.yarn.{name}")).values()
    if callable(function) and not inspect.isclass(function) and getattr(function, "__module__", "") == f"fibercalc.yarn.{name}"
    and not function.__name__.startswith("_")
]
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
