"""The modules of `fibercalc/ask`, written from the declarations of cards: a function for each.

`python -m tests.functions` (in `make answers`) writes them anew.
"""

import subprocess
import sys
from pathlib import Path
from textwrap import fill

import fibercalc
from fibercalc.core.card import CHOICE, COLOR, DATE, TEXT, Card, Input, Result, Rows
from fibercalc.core.entry import allowed_text
from fibercalc.core.registry import chapter_cards
from fibercalc.core.registry import chapters as with_cards
from fibercalc.core.settings import Settings
from fibercalc.core.units import COUNT, MONEY, PERCENT, Quantity
from fibercalc.sources import Source

CHAPTERS = tuple(with_cards())
FOLDER = Path(fibercalc.__file__).parent / "ask"
HEAD = '''"""The cards of the chapter {chapter} as functions; written from them by `make answers`.

Values, what is left out, and what comes back are told in `fibercalc.ask`.
"""

from __future__ import annotations

{imports}

if TYPE_CHECKING:
    {typed}from ..answered import Answer

__all__ = [{names}]
'''
ROW = '''

class {name}(TypedDict, total=False):
    """{one} of `{card}`: a row of its {rows}."""

{fields}
'''
FUNCTION = '''

def {name}(
    *,
{arguments}
) -> Answer:
    """{question}

    Args:
{arguments_told}

    Returns:
        An Answer, with those of these results that the inputs lead to:
{results_told}

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
{sources_told}
    """
    return ask({card!r}, locals())
'''
WIDTH = 98
ITEM, PART = " " * 8, " " * 12  # where an argument stands, and a field of its rows


def file_of(chapter: str) -> Path:
    """Where a chapter's functions stand."""
    return FOLDER / f"{chapter}.py"


def function_name(card: Card) -> str:
    """What a card is called as a function."""
    return card.id.replace("-", "_")


def written(chapter: str) -> str:
    """The module of a chapter, formatted."""
    cards = chapter_cards(chapter)
    functions = "".join(_function(card) for card in cards)
    typing = [name for name in ("Literal", "TypedDict") if name in functions]
    used = [name for name in ("EXAMPLE", "Number", "ask") if name in functions]
    text = HEAD.format(
        chapter=chapter,
        imports=f"from typing import {', '.join(['TYPE_CHECKING', *typing])}\n\n"
        f"from . import {', '.join(used)}",
        typed="from datetime import date\n\n    " if "date | str" in functions else "",
        names=", ".join(sorted(repr(function_name(card)) for card in cards)),
    )
    ruff = [sys.executable, "-m", "ruff", "format", "--stdin-filename", str(file_of(chapter)), "-"]
    done = subprocess.run(
        ruff, input=text + functions, capture_output=True, text=True, check=True, timeout=60
    )
    return done.stdout


def _function(card: Card) -> str:
    lists = [item for item in card.inputs if isinstance(item, Rows)]
    return "".join(_row(card, item) for item in lists) + FUNCTION.format(
        name=function_name(card),
        arguments="\n".join(
            f"    {item.name}: {_type(card, item)} = EXAMPLE," for item in card.inputs
        ),
        question=card.question,
        arguments_told="\n".join(_argument(card, item) for item in card.inputs),
        results_told="\n".join(
            _told(result.name, _result(result), ITEM, "- ") for result in card.results
        ),
        sources_told="\n".join(_lines(_source(source), ITEM) for source in card.sources),
        card=card.id,
    )


def _row(card: Card, item: Rows) -> str:
    return ROW.format(
        name=_row_name(card, item),
        one=item.one.capitalize(),
        card=function_name(card),
        rows=item.name,
        fields="\n".join(f"    {each.name}: {_type(card, each)}" for each in item.fields),
    )


def _row_name(card: Card, item: Rows) -> str:
    return card.id.replace("-", " ").title().replace(" ", "") + item.row.__name__


def _type(card: Card, item: Input | Rows) -> str:
    if isinstance(item, Rows):
        return f"list[{_row_name(card, item)}]"
    if item.kind == CHOICE:
        of = f"Literal[{', '.join(repr(option.value) for option in item.options)}]"
    else:
        of = "Number" if item.measured else "date | str" if item.kind == DATE else "str"
    return f"{of} | None" if item.optional else of


def _argument(card: Card, item: Input | Rows) -> str:
    if not isinstance(item, Rows):
        return _told(item.name, _input(card, item, item.default), ITEM)
    first = item.default[0] if item.default else {}
    head = f"{item.label}, {item.least} to {item.most} rows.{_when(card, item)}"
    fields = (
        _told(each.name, _input(card, each, first.get(each.name, each.default)), PART, "- ")
        for each in item.fields
    )
    return "\n".join([_told(item.name, head, ITEM), *fields])


def _input(card: Card, item: Input, example: str) -> str:
    """An input's label, what it may be, its example, and when it is asked."""
    end = "" if item.label.endswith("?") else "."
    blank = " None leaves it open." if item.optional else ""
    shown = f"; example {example}" if example else ""
    return f"{item.label}{end} {_allowed(item)}{shown}.{blank}{_when(card, item)}"


def _allowed(item: Input) -> str:
    if item.kind == CHOICE:
        mark = "; " if any("," in option.value for option in item.options) else ", "
        return "One of " + mark.join(
            option.value
            if option.value.lower() == option.label.lower()
            else f"{option.value} ({option.label})"
            for option in item.options
        )
    if item.kind in (TEXT, COLOR, DATE):
        words = {TEXT: "Text, ", COLOR: "", DATE: ""}[item.kind] + allowed_text(item, Settings())
    elif item.of is MONEY:
        words = "Money, " + allowed_text(item, Settings(money="€")).replace("€", "")
    elif item.of in (COUNT, PERCENT):
        words = allowed_text(item, Settings())
    else:
        unit, name = item.choices[0].sign, item.quantity.name
        words = f"{name}{f', {unit}' if unit else ''}; {allowed_text(item, Settings())}"
    return words[0].upper() + words[1:]


def _when(card: Card, item: Input | Rows) -> str:
    if not item.when:
        return ""
    conditions = (
        f"{other.name} is {' or '.join(map(str, values))}" for other, values in item.when.items()
    )
    return f" Asked where {' and '.join(conditions)}."


def _result(result: Result) -> str:
    if not isinstance(result.of, Quantity):
        return f"{result.label}, {'a day' if result.of == DATE else 'in words'}."
    sign = result.of.base.sign
    return f"{result.label}{f', {sign}' if sign else ''}."


def _source(source: Source) -> str:
    return ", ".join(part for part in (source.body, source.title, source.year) if part) + "."


def _told(name: str, words: str, indent: str, mark: str = "") -> str:
    return _lines(f"{mark}{name}: {words}", indent, " " * (len(mark) or 4))


def _lines(words: str, indent: str, more: str = "    ") -> str:
    words = words.replace("\u00a0", " ").replace("\u202f", " ")
    return fill(
        words,
        WIDTH,
        initial_indent=indent,
        subsequent_indent=indent + more,
        break_long_words=False,
        break_on_hyphens=False,
    )


if __name__ == "__main__":
    for each in CHAPTERS:
        file_of(each).write_text(written(each), "utf-8")
