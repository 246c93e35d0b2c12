"""The modules of `fibercalc/ask`, written from the declarations of cards: a function for each.

`python -m tests.functions` (in `make answers`) writes them anew.
"""

import subprocess
import sys
from pathlib import Path
from textwrap import fill

import fibercalc
from fibercalc.core.card import CHOICE, DATE, Card, Input, Rows
from fibercalc.core.registry import chapter_cards
from fibercalc.core.units import Quantity

CHAPTERS = ("yarn",)
FOLDER = Path(fibercalc.__file__).parent / "ask"
HEAD = '''"""The cards of the chapter {chapter} as functions; written from them by `make answers`."""

from __future__ import annotations

{imports}

if TYPE_CHECKING:
    {typed}from .. import Answer
'''
FUNCTION = '''

def {name}(
    *,
{arguments}
) -> Answer:
    """{question}

{about}
    """
    return ask({card!r}, locals())
'''
WIDTH = 96


def file_of(chapter: str) -> Path:
    """Where a chapter's functions stand."""
    return FOLDER / f"{chapter}.py"


def written(chapter: str) -> str:
    """The module of a chapter, formatted."""
    functions = "".join(_function(card) for card in chapter_cards(chapter))
    typing = [
        name for name in ("Any", "Literal") if f"{name}[" in functions or f" {name}]" in functions
    ]
    imports = f"from typing import {', '.join(['TYPE_CHECKING', *typing])}\n\n"
    used = [name for name in ("EXAMPLE", "Number", "ask") if name in functions]
    imports += f"from . import {', '.join(used)}"
    typed = "from datetime import date\n\n    " if " date " in functions else ""
    text = HEAD.format(chapter=chapter, imports=imports, typed=typed) + functions
    ruff = [sys.executable, "-m", "ruff", "format", "--stdin-filename", str(file_of(chapter)), "-"]
    done = subprocess.run(ruff, input=text, capture_output=True, text=True, check=True, timeout=60)
    return done.stdout


def _function(card: Card) -> str:
    return FUNCTION.format(
        name=card.id.replace("-", "_"),
        arguments="\n".join(f"    {item.name}: {_type(item)} = EXAMPLE," for item in card.inputs),
        question=card.question,
        about="\n".join(_about(card)),
        card=card.id,
    )


def _type(item: Input | Rows) -> str:
    if isinstance(item, Rows):
        return "list[dict[str, Any]]"
    if item.kind == CHOICE:
        of = f"Literal[{', '.join(repr(option.value) for option in item.options)}]"
    else:
        of = "Number" if item.measured else "date | str" if item.kind == DATE else "str"
    return f"{of} | None" if item.optional else of


def _about(card: Card) -> list[str]:
    lines = []
    for item in card.inputs:
        if isinstance(item, Rows):
            fields = "; ".join(f"{each.name}: {_said(each)}" for each in item.fields)
            text = f"{item.label}, {item.least} to {item.most} rows of {fields}"
        else:
            text = _said(item)
        lines.append(_line(item.name, text))
    found = ", ".join(
        f"{result.name} ({result.of.base.sign})"
        if isinstance(result.of, Quantity) and result.of.base.sign
        else result.name
        for result in card.results
    )
    return [*lines, _line("results", found)]


def _said(item: Input) -> str:
    """An input's label, the unit of a bare number, and its example."""
    unit = item.choices[0].sign if item.measured else ""
    example = f"example {item.default}" if item.default else "may be blank"
    return f"{item.label.rstrip('?')}{f', {unit}' if unit else ''} ({example})"


def _line(name: str, text: str) -> str:
    return fill(f"{name}  {text}", WIDTH, initial_indent=" " * 4, subsequent_indent=" " * 8)


if __name__ == "__main__":
    for each in CHAPTERS:
        file_of(each).write_text(written(each), "utf-8")
