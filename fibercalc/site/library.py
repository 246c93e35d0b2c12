"""The page of the library: a chapter's functions as their docstrings and signatures tell them.

Never in the browser's package, which has neither functions nor docstrings.
"""

from __future__ import annotations

import inspect
import re
from collections.abc import Callable, Iterator
from importlib import import_module
from textwrap import dedent
from types import ModuleType
from typing import Any

from ..core.card import CHAPTERS
from ..core.markup import Markup, tag
from ..core.registry import chapter_cards

SECTION = re.compile(r"^(\w+):\n((?:    .*\n?|\n)+)", re.MULTILINE)
NAMED = re.compile(r"(?:- )?(\w+): (.*)")
SECTIONS = ["Args", "Returns", "Raises", "Sources"]
# What is raised is the same for all, and stands at the head of the page.
SHOWN = {"Args": "Arguments", "Returns": "Results", "Sources": "Sources"}


def functions(chapter: str) -> Markup:
    """The functions of a chapter, in the order of its cards."""
    if chapter not in CHAPTERS:
        raise KeyError(f"{chapter}: no chapter for a library fence")
    module = import_module(f"fibercalc.ask.{chapter}")
    names = [card.id.replace("-", "_") for card in chapter_cards(chapter)]
    return tag("div", *(_function(module, chapter, name) for name in names), class_="functions")


def _function(module: ModuleType, chapter: str, name: str) -> Markup:
    function = getattr(module, name)
    told = inspect.getdoc(function) or ""
    sections = {head: dedent(text).strip() for head, text in SECTION.findall(told)}
    if list(sections) != SECTIONS:
        raise ValueError(f"{chapter}.{name}: its docstring has not {', '.join(SECTIONS)}")
    card = f"../../{chapter}/{name.replace('_', '-')}/"
    return tag(
        "section",
        tag("h2", tag("code", f"{chapter}.{name}"), id=f"{chapter}.{name}"),
        tag("p", tag("a", told.partition("\n")[0], href=card)),
        tag(
            "details",
            tag("summary", "Arguments, results, sources"),
            *(
                part
                for head, words in SHOWN.items()
                for part in (tag("h3", words), _listed(sections[head]))
            ),
            tag(
                "details",
                tag("summary", "Signature"),
                tag("pre", tag("code", _signature(module, function))),
            ),
        ),
    )


def _signature(module: ModuleType, function: Callable[..., Any]) -> str:
    """As it is written; the types of rows, each on its lines, come before it."""
    return "\n\n\n".join(
        [*(inspect.getsource(row).strip() for row in _rows(module, function)),
         inspect.getsource(function).partition('\n    """')[0]]
    )  # fmt: skip


def _rows(module: ModuleType, function: Callable[..., Any]) -> Iterator[type]:
    for each in inspect.signature(function).parameters.values():
        if row := re.match(r"list\[(\w+)\]", str(each.annotation)):
            yield getattr(module, row[1])


def _listed(text: str) -> Markup:
    """The lines of a section: names with what is said of them, and below one the fields of its
    rows; what has no name stands before them.
    """
    items: list[Markup] = []
    plain: list[str] = []
    for each in re.split(r"\n(?=\S)", text):
        head, *fields = re.split(r"\n +(?=- \w+: )", each)
        named = NAMED.fullmatch(" ".join(head.split()))
        if not named:
            plain.append(" ".join(head.split()))
            continue
        rows = _listed("\n".join(" ".join(field.split()) for field in fields)) if fields else None
        items += [tag("dt", tag("code", named[1])), tag("dd", named[2], rows)]
    if not items:
        return tag("ul", *(tag("li", line) for line in plain))
    return tag("div", *(tag("p", line) for line in plain), tag("dl", *items))
