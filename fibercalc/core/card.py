"""How a card is declared: once, as data, from which the form, command, page, sheet, link and
checks are all made.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import field
from functools import cached_property
from typing import TYPE_CHECKING, Any

from ..sources import Source
from .asked import CHOICE, COLOR, DATE, TEXT, Input, Option, Row, RowPart, Rows, When, row_of
from .carry import Carry, Constant
from .case import Between, Case, Many, Plain, case_of
from .declared import declared
from .paper import Labels, Paper
from .part import Part
from .ref import Field, Held, Listed, held_of, path_of
from .result import Chance, Result

if TYPE_CHECKING:
    from .answer import Picture, Table
    from .outcome import Outcome

# All that a card's file is declared with comes from here.
__all__ = [
    "BENCH_RULE",
    "CHAPTERS",
    "CHOICE",
    "COLOR",
    "DATE",
    "HANDLED",
    "MODEL",
    "STANDARD",
    "TEXT",
    "Basis",
    "Between",
    "Card",
    "Carry",
    "Case",
    "Caution",
    "Chance",
    "Constant",
    "Input",
    "Many",
    "Option",
    "Plain",
    "Result",
    "Row",
    "RowPart",
    "Rows",
    "Save",
    "case_of",
    "row_of",
]


CHAPTERS = ("yarn", "knit", "weave", "spin", "wash", "dye", "safe", "sell")

# What a card's work can hurt someone with: such a card has at least one caution that is always
# shown.
HANDLED = ("powder", "acid", "alkali", "heat", "metal", "load")

STANDARD, MODEL, BENCH_RULE = "Standard", "Model", "Bench rule"


@declared
class Caution:
    """A caution that prints with the card and cannot be hidden; when decides from the outcome
    whether it applies (always, if None).
    """

    title: str
    text: str
    when: Callable[[Outcome[Any]], bool] | None = None


@declared
class Basis:
    """What an answer rests on: kind is STANDARD, MODEL or BENCH_RULE; text says so in a sentence
    or two.
    """

    kind: str
    text: str


@declared
class Save:
    """A record that this card's values can be kept as: fields maps the record's fields, or lists,
    to inputs or results of this card, or to a Constant.

    Only when the inputs in `when` have one of these values.
    """

    kind: Held
    words: str
    fields: Mapping[Field | Listed, Part[Any] | Constant]
    when: When = field(default_factory=dict)


@declared
class Card:
    """One question with its live calculator; see DEVELOPERS.md, "Add a card in six steps".

    place       its place in the chapter
    tall_sheet  printed alone it keeps a tall picture and takes the page that needs: a sheet to
                stand beside the work, not half a page
    handles     what its work can hurt someone with, of HANDLED
    papers      exact papers that it prints besides
    saves       the records that its values can be kept as; every answer can be kept as it is
    """

    id: str
    chapter: str
    place: int
    question: str
    case: type[Case]
    answer: Callable[[Any], None]
    say: Callable[[Outcome[Any]], str | tuple[str, ...]]
    basis: Basis
    sources: tuple[Source, ...]
    pictures: tuple[Callable[[Outcome[Any]], Picture | None], ...] = ()
    tables: tuple[Callable[[Outcome[Any]], Table | None], ...] = ()
    cautions: tuple[Caution, ...] = ()
    notes: Callable[[Outcome[Any]], list[str]] | None = None
    carry: tuple[Carry, ...] = ()
    link_version: int = 1
    upgrades: Mapping[int, Callable[[Any], Any]] = field(default_factory=dict)
    tall_sheet: bool = False
    handles: tuple[str, ...] = ()
    papers: tuple[Paper | Labels, ...] = ()
    saves: tuple[Save, ...] = ()

    def __post_init__(self) -> None:
        if self.chapter not in CHAPTERS:
            raise ValueError(f"card {self.id}: {self.chapter} is not a chapter")
        if not self.question.endswith("?"):
            raise ValueError(f"card {self.id}: its question ends with a question mark")
        if set(self.upgrades) != set(range(1, self.link_version)):
            raise ValueError(f"card {self.id}: every older link version needs its upgrade")
        if not set(self.handles) <= set(HANDLED):
            raise ValueError(f"card {self.id}: handles is of {', '.join(HANDLED)}")
        if self.handles and all(caution.when for caution in self.cautions):
            raise ValueError(
                f"card {self.id}: it handles {', '.join(self.handles)} and has no caution that is"
                " always shown"
            )

        for wrong in _wrong_parts(self):
            raise ValueError(f"card {self.id}: {wrong}")

    def __repr__(self) -> str:
        return f"Card({self.id})"

    @property
    def inputs(self) -> tuple[Input[Any] | Rows[Any], ...]:
        """What it asks, in the order of its links."""
        return self.case.inputs

    @property
    def results(self) -> tuple[Result[Any], ...]:
        """What it answers, in the order of its page."""
        return self.case.results

    @cached_property
    def result_by_name(self) -> dict[str, Result[Any]]:
        return {result.name: result for result in self.results}

    @cached_property
    def examples(self) -> dict[str, str]:
        """The example's texts by input name, made once."""
        return self.defaults()

    def item(self, name: str) -> Input[Any] | Rows[Any]:
        """The input or rows of that name. Raises KeyError."""
        return {item.name: item for item in self.inputs}[name]

    def rows(self, name: str) -> Rows[Any]:
        """The list of that name. Raises KeyError."""
        item = self.item(name)
        if not isinstance(item, Rows):
            raise KeyError(name)
        return item

    def defaults(self) -> dict[str, str]:
        """The example's texts by input name, rows as "dyes.1.depth"."""
        texts: dict[str, str] = {}
        for item in self.inputs:
            if isinstance(item, Rows):
                for number, row in enumerate(item.default, 1):
                    texts |= {
                        f"{item.name}.{number}.{each.name}": row.get(each.name, each.default)
                        for each in item.fields
                    }
            else:
                texts[item.name] = item.default
        return texts


def _wrong_parts(card: Card) -> Iterator[str]:
    """Where its ways on, or what is kept of it, refer to a part that is not of its case."""
    for carry in card.carry:
        for source in (*carry.inputs.values(), carry.each):
            part = source.rows if isinstance(source, RowPart) else source
            if isinstance(part, Part) and not _has(card, part):
                yield f"its way to {carry.card}: {part.name} is not of its case"
    for save in card.saves:
        for ref, source in save.fields.items():
            if held_of(ref) is not save.kind:
                yield f"“{save.words}”: {path_of(ref)} is a field of another record"
            if isinstance(source, Part) and not _has(card, source):
                yield f"“{save.words}”: {path_of(ref)} from {source.name}, not of its case"
        for other, values in save.when.items():
            if not (_has(card, other) and all(map(other.can_be, values))):
                yield f"“{save.words}”: it is kept when {other.name} is {', '.join(values)}"


def _has(card: Card, part: Part[Any]) -> bool:
    return card.case.parts_by_name.get(part.name) is part
