"""From texts as typed to values as understood: all inputs of a card, its rows, and what is asked
only under a condition.
"""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from typing import Any, NamedTuple

from .asked import R, When
from .card import Card, Input, Rows
from .entry import Reading, read_one
from .lent import tell_apart
from .problem import Problem
from .settings import Settings


@dataclass
class Given:
    """All inputs of one card as understood, or the problems that stop it.

    hers     whether any value of it is hers; then emptied names the lists whose rows the example
             had only lent
    """

    card: Card
    readings: dict[str, Reading] = field(default_factory=dict)
    counts: dict[str, int] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    hers: bool = False
    emptied: list[str] = field(default_factory=list)

    def values(self) -> dict[str, Any]:
        """Values by input name for a case, without what is not asked."""
        values: dict[str, Any] = {}
        for item in self.card.inputs:
            if not isinstance(item, Rows):
                reading = self.readings[item.name]
                if reading.asked:
                    values[item.name] = reading.value
            elif _holds(self, item.when, ""):
                values[item.name] = [
                    self._row(item, number)
                    for number in range(1, self.counts.get(item.name, 0) + 1)
                ]
        return values

    def _row(self, item: Rows[R], number: int) -> R:
        found = {
            each.name: self.readings[f"{item.name}.{number}.{each.name}"] for each in item.fields
        }
        return item.row({name: reading.value for name, reading in found.items() if reading.asked})

    def asked(self) -> list[str]:
        return [name for name, reading in self.readings.items() if reading.asked]

    def lists(self) -> list[str]:
        """Lists that are asked for; they may be empty."""
        return [
            item.name
            for item in self.card.inputs
            if isinstance(item, Rows) and _holds(self, item.when, "")
        ]


def with_changed(arguments: dict[str, Any], changed: dict[str, Any]) -> dict[str, Any]:
    """Arguments with some values replaced by full name; the rows that stay are the same rows."""
    moved = dict(arguments)
    for name, value in changed.items():
        head, *place = name.split(".")
        if place:
            rows = moved[head] if moved[head] is not arguments[head] else list(arguments[head])
            at = int(place[0]) - 1
            rows[at] = type(rows[at])({**vars(rows[at]), place[1]: value})
            moved[head] = rows
        else:
            moved[head] = value
    return moved


def read_inputs(
    card: Card,
    texts: dict[str, str],
    settings: Settings,
    units: dict[str, str] | None = None,
    exact: dict[str, str] | None = None,
    counts: dict[str, int] | None = None,
    named: Iterable[str] | None = None,
) -> Given:
    """Read texts by full input name ("dyes.1.depth"); a name that is missing keeps its default.

    units: the unit chosen beside a field. exact: canonical text that stands for a shown text
    (after a unit switch). counts: how many rows of a list there are, where the texts cannot say
    it (none). named: the texts that are hers whatever they hold; without it those are hers that
    differ from the example (see core.lent).
    """
    typed, counts = _Typed(texts, units or {}, exact or {}, settings), counts or {}
    given = Given(card)
    defaults = card.defaults()
    known = set(defaults)
    for item in card.inputs:
        if isinstance(item, Rows):
            count = counts.get(item.name, row_count(item, texts))
            known |= _take_rows(given, item, count, typed, defaults)
        else:
            _take(given, item, item.name, typed, item.default, "")
    given.problems += [
        _unknown(name, str(text)) for name, text in texts.items() if name not in known
    ]
    _apply_conditions(given)
    tell_apart(given, named)
    return given


class _Typed(NamedTuple):
    """What a person typed or chose, by full input name, and how she writes numbers."""

    texts: Mapping[str, str]
    units: Mapping[str, str]
    exact: Mapping[str, str]
    settings: Settings


def _unknown(name: str, text: str) -> Problem:
    return Problem(
        name[:40], text[:40], "an input of this card", f"{name[:40]}: not an input of this card."
    )


def _take_rows(
    given: Given, item: Rows[Any], count: int, typed: _Typed, defaults: Mapping[str, str]
) -> set[str]:
    """Read so many rows of a list; the names that they answer for."""
    given.counts[item.name] = min(max(count, item.least), item.most)
    known: set[str] = set()
    if given.counts[item.name] != count:
        given.problems.append(_wrong_count(item, count))
        # one line for the list says it; a list that is not asked for is no mistake, and needs its
        # rows
        known = {name for name in typed.texts if name.startswith(f"{item.name}.")}
    for number in range(1, given.counts[item.name] + 1):
        prefix = f"{item.one.capitalize()} {number}, "
        for each in item.fields:
            name = f"{item.name}.{number}.{each.name}"
            known.add(name)
            _take(given, each, name, typed, defaults.get(name, each.default), prefix)
    return known


def _wrong_count(item: Rows[Any], count: int) -> Problem:
    allowed = f"{item.least} to {item.most} rows"
    rows = "row" if count == 1 else "rows"
    return Problem(
        item.name, str(count), allowed, f"{item.label}: {count} {rows} given; give {allowed}."
    )


def row_count(item: Rows[Any], texts: dict[str, str]) -> int:
    """How many rows the texts hold: the highest row number, else the example's count. A count
    beyond reason is cut.
    """
    pattern = re.compile(re.escape(item.name) + r"\.(\d{1,4})\.")
    numbers = [int(match[1]) for name in texts if (match := pattern.match(name))]
    return max(numbers) if numbers else len(item.default)


def _take(
    given: Given, each: Input[Any], name: str, typed: _Typed, default: str, prefix: str
) -> None:
    style = typed.settings.style
    if name in typed.exact:
        text, style = typed.exact[name], "canonical"
    elif name in typed.texts:
        text = typed.texts[name]
    else:
        text, style = default, "canonical"
    reading = read_one(each, name, text, typed.settings, style, typed.units.get(name, ""), prefix)
    if isinstance(reading, Problem):
        given.problems.append(reading)
        reading = Reading(each, name, str(text))
    given.readings[name] = reading


def _apply_conditions(given: Given) -> None:
    """Inputs shown only when another has a certain value lose their value, and their problem,
    otherwise.
    """
    rows_of = {item.name: item for item in given.card.inputs if isinstance(item, Rows)}
    for name, reading in list(given.readings.items()):
        rows = rows_of.get(name.partition(".")[0])
        if not reading.input.when and not (rows and rows.when):
            continue
        parent = name.rsplit(".", 1)[0] + "." if "." in name else ""
        conditions = [(reading.input.when, parent)] + ([(rows.when, "")] if rows else [])
        if not all(_holds(given, when, prefix) for when, prefix in conditions):
            given.readings[name] = replace(reading, value=None, rough=0.0, asked=False)
            given.problems = [problem for problem in given.problems if problem.input != name]
    for item in given.card.inputs:
        if isinstance(item, Rows) and not _holds(given, item.when, ""):
            given.problems = [problem for problem in given.problems if problem.input != item.name]


def _holds(given: Given, when: When, prefix: str) -> bool:
    for other, values in when.items():
        reading = given.readings.get(prefix + other.name) or given.readings.get(other.name)
        if reading is None or not reading.asked or reading.value not in values:
            return False
    return True
