"""Every public formula says its arguments, its errors and its source."""

import inspect
import re
from importlib import import_module
from importlib.util import find_spec
from pkgutil import iter_modules

import pytest

from fibercalc.core.card import CHAPTERS
from fibercalc.core.color import Color, from_lab
from fibercalc.core.spread import Parts
from fibercalc.sources import all_sources

FOLDERS = (
    "charts",
    "cards",
    "tables",
    "pictures",
    "projects",
    "schedule",
    "onward",
    "plans",
)  # what stands in a chapter beside its formulas: no function there is a published formula


def formula_files(folder: str) -> list[str]:
    """A chapter's modules of formulas, those in a folder of formulas too, as dotted names."""
    found = []
    for file in iter_modules(import_module(f"fibercalc.{folder}").__path__):
        if file.name not in FOLDERS:
            name = f"{folder}.{file.name}"
            found += formula_files(name) if file.ispkg else [name]
    return found


def formulas() -> list:
    """Every public function of every chapter's formula files."""
    found = []
    for chapter in CHAPTERS:
        if not find_spec(f"fibercalc.{chapter}"):
            continue
        for name in formula_files(chapter):
            module = import_module(f"fibercalc.{name}")
            found += [
                pytest.param(function, id=f"{name}.{function.__name__}")
                for function in vars(module).values()
                if callable(function)
                and not inspect.isclass(function)
                and getattr(function, "__module__", "") == module.__name__
                and not function.__name__.startswith("_")
            ]
    return found


FORMULAS = formulas()


def nonsense(annotation):
    """Something that fits an argument and cannot be right."""
    words = str(annotation)
    if "Sequence" in words or "list" in words:
        return []
    if annotation is Color:
        return from_lab(50.0, 0.0, 0.0)
    if words.startswith("tuple[float"):
        return (float("nan"),) * 3
    return (
        {}
        if "Mapping" in words or "dict" in words
        else (
            "no such thing"
            if annotation is str
            else Parts()
            if annotation is Parts
            else float("nan")
        )
    )


@pytest.mark.parametrize("function", FORMULAS)
def test_docstring_names_each_argument_and_a_source(function):
    """A line for each argument, and a source that is in the bibliography or is common practice, arithmetic or memory."""
    text = inspect.getdoc(function) or ""
    for name in inspect.signature(function).parameters:
        assert re.search(rf"^{name} {{2,}}\S|^{name}\s{{2,}}\S", text, re.MULTILINE), (
            f"{name} is not described"
        )
    source = text.partition("Source:")[2]
    assert source, "no Source:"
    named = re.findall(r"[a-z0-9]+(?:-[a-z0-9]+)+", source)
    assert any(word in all_sources() for word in named) or re.match(
        r"\s*(common practice|arithmetic|geometry|definition|the definition|first-order"
        r" propagation|as )",
        source,
    ), source


def takes_plain_things(function) -> bool:
    """Whether nonsense can be given: an object of a chapter's own was made by a function that checked what went into it."""
    kinds = [one.annotation for one in inspect.signature(function).parameters.values()]
    return not any(
        inspect.isclass(kind)
        and kind.__module__.startswith(("fibercalc.dye.color", "fibercalc.sell"))
        for kind in kinds
    )


@pytest.mark.parametrize(
    "function", [each for each in FORMULAS if takes_plain_things(each.values[0])]
)
def test_docstring_says_what_it_raises(function):
    """Given nonsense, a function either answers or raises what its docstring names."""
    given = {
        name: nonsense(one.annotation)
        for name, one in inspect.signature(function).parameters.items()
    }
    try:
        function(**given)
    except Exception as error:
        text = inspect.getdoc(function)
        assert "Raises" in text and type(error).__name__ in text.partition("Raises")[2], (
            f"{type(error).__name__} is not named"
        )
