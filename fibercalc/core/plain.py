"""Inputs as plain data, from a program or a JSON file: every value is a text or a number, a list of rows is a list of dicts.

What is of another shape is a Problem with one line, as a bad value is: it never gets as far as reading.
"""

from .card import Card, Rows
from .problem import BadInputs, Problem

LONGEST = 40  # of what a line repeats
VALUE = "a text or a number"


def texts_of(card: Card, inputs) -> tuple[dict[str, str], dict[str, int]]:
    """Texts by full input name, and how many rows each list holds that was given as one. Raises BadInputs."""
    if not isinstance(inputs, dict):
        raise BadInputs([_problem("", "Inputs", inputs, "each by its name")])
    lists = {item.name: item for item in card.inputs if isinstance(item, Rows)}
    labels = {item.name: item.label for item in card.inputs}
    texts, counts, problems = {}, {}, []
    for name, value in inputs.items():
        if not isinstance(name, str):
            problems.append(Problem("", str(name)[:LONGEST], "a name", f"{str(name)[:LONGEST]}: not an input of this card."))
        elif name not in lists:
            _take(name, labels.get(name, name[:LONGEST]), value, texts, problems)
        elif not isinstance(value, list):
            problems.append(_problem(name, lists[name].label, value, "a list of rows"))
        else:
            counts[name] = len(value)
            fields = {each.name: each.label for each in lists[name].fields}
            for number, row in enumerate(value, 1):
                where = f"{lists[name].one.capitalize()} {number}"
                if not isinstance(row, dict):
                    problems.append(_problem(f"{name}.{number}", where, row, "its fields by name"))
                    continue
                for key, each in row.items():
                    _take(f"{name}.{number}.{key}", f"{where}, {fields.get(key, str(key)[:LONGEST])}", each, texts, problems)
    if problems:
        raise BadInputs(problems)
    return texts, counts


def _take(name: str, where: str, value, texts: dict[str, str], problems: list[Problem]) -> None:
    if value is None:
        texts[name] = ""
    elif isinstance(value, (list, tuple, dict, set, bool, bytes)):
        problems.append(_problem(name, where, value, VALUE))
    else:
        texts[name] = str(value)


def _problem(name: str, where: str, value, allowed: str) -> Problem:
    given = _told(value)
    return Problem(name[:LONGEST], given, allowed, f"{where}: {given} given; give {allowed}.")


def _told(value) -> str:
    """A value in a few letters, as a JSON file would write it."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, (list, tuple, set)):
        return "a list"
    return "a dict" if isinstance(value, dict) else str(value)[:LONGEST]
