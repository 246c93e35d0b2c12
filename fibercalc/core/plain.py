"""Inputs as plain data, from a program or a JSON file: every value is a text, a number or an
amount, a list of rows is a list of dicts.

What is of another shape is a Problem with one line, as a bad value is: it never gets as far as
reading.
"""

from dataclasses import dataclass, field
from typing import Any

from .card import Card, Rows
from .number import canonical
from .problem import BadInputs, Problem

LONGEST = 40  # of what a line repeats
VALUE = "a text or a number"


@dataclass
class Plain:
    """Inputs as texts by full name.

    exact     of these, the texts of what was no text: a number has no number style
    counts    how many rows each list holds that was given as one
    problems  one for each value of another shape
    """

    texts: dict[str, str] = field(default_factory=dict)
    exact: dict[str, str] = field(default_factory=dict)
    counts: dict[str, int] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)

    def take(self, name: str, where: str, value: Any) -> None:
        """One value: a text, a number, None (blank), or what writes itself as canonical text."""
        if isinstance(value, str) or value is None:
            self.texts[name] = value or ""
        elif isinstance(value, (list, tuple, dict, set, bool, bytes)):
            self.problems.append(_problem(name, where, value, VALUE))
        else:
            self.texts[name] = self.exact[name] = _written(value)


def plain_of(card: Card, inputs: Any) -> Plain:
    """Inputs by name as texts. Raises BadInputs."""
    if not isinstance(inputs, dict):
        raise BadInputs([_problem("", "Inputs", inputs, "each by its name")])
    labels = {item.name: item.label for item in card.inputs}
    lists = {item.name: item for item in card.inputs if isinstance(item, Rows)}
    plain = Plain()
    for name, value in inputs.items():
        if not isinstance(name, str):
            short = str(name)[:LONGEST]
            plain.problems.append(
                Problem("", short, "a name", f"{short}: not an input of this card.")
            )
        elif name not in lists:
            plain.take(name, labels.get(name, name[:LONGEST]), value)
        elif not isinstance(value, list):
            plain.problems.append(_problem(name, lists[name].label, value, "a list of rows"))
        else:
            plain.counts[name] = len(value)
            _take_rows(plain, lists[name], value)
    if plain.problems:
        raise BadInputs(plain.problems)
    return plain


def _take_rows(plain: Plain, item: Rows[Any], rows: list[Any]) -> None:
    fields = {each.name: each.label for each in item.fields}
    for number, row in enumerate(rows, 1):
        name, where = f"{item.name}.{number}", f"{item.one.capitalize()} {number}"
        if not isinstance(row, dict):
            plain.problems.append(_problem(name, where, row, "its fields by name"))
            continue
        for key, each in row.items():
            plain.take(f"{name}.{key}", f"{where}, {fields.get(key, str(key)[:LONGEST])}", each)


def _written(value: Any) -> str:
    if isinstance(value, int):
        return str(value)
    if hasattr(value, "canonical"):
        return str(value.canonical())
    return canonical(float(value)) if hasattr(value, "__float__") else str(value)


def _problem(name: str, where: str, value: Any, allowed: str) -> Problem:
    given = _told(value)
    return Problem(name[:LONGEST], given, allowed, f"{where}: {given} given; give {allowed}.")


def _told(value: Any) -> str:
    """A value in a few letters, as a JSON file would write it."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, (list, tuple, set)):
        return "a list"
    return "a dict" if isinstance(value, dict) else str(value)[:LONGEST]
