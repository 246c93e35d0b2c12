"""Whose a value is: hers, or the example's, who made it up; and what becomes of the example's
once anything on the card is hers.

A text is hers when the caller names it, or when the example does not hold it. While nothing is,
all of the example stands. From then on what it only lends (`Input.lends`) is left open where it
may be, and is named in the answer where the answer needs it; a list that may be empty is emptied;
"today" is the device's day.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace
from math import isclose
from typing import TYPE_CHECKING, Any

from . import day
from .card import CHOICE, COLOR, DATE, TEXT, Card, Input, Rows
from .entry import Reading, read_one
from .problem import Problem
from .settings import Settings
from .units import MONEY

if TYPE_CHECKING:
    from .reading import Given

CANONICAL = Settings()
HERS, LENT, OPEN, DAY = "hers", "lent", "open", "day"
ALIKE = 1e-9  # what writing a number in another unit may lose
LINE = "____"
NOTHING = "0"  # no money is nobody's price
SHORTEST = 3  # letters: a shorter word of the example's is looked for as a whole text only
WRITTEN_DAY = re.compile(r"\b(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d{1,2} [A-Z][a-z]{2} \d{4}\b")


def canonical_default(each: Input[Any], text: str) -> str:
    """The canonical text of a declared default."""
    if text not in each.canonical:
        reading = read_one(each, each.name, text, CANONICAL, "canonical")
        each.canonical[text] = "" if isinstance(reading, Problem) else reading.text
    return each.canonical[text]


def tell_apart(given: Given, named: Iterable[str] | None) -> None:
    """Mark each reading of inputs as read with whose it is, and take back what the example only
    lent.

    named  the full names of inputs, and names of lists, that a person gave whatever they hold;
           None where nobody can say
    """
    card, said = given.card, frozenset(named or ())
    if not card.results:  # a form of our own: its fields are no example's
        return
    own, lists = _own_values(given, said, named is not None), _own_lists(given, said)
    if not own and not lists:  # cleared by hand, with nothing put in its place: that is an edit too
        own, lists = _cleared(given)
    given.hers = bool(own or lists)
    if given.hers:
        _empty_lent_lists(given, own, lists)
        _mark(given, own)


def _own_values(given: Given, said: frozenset[str], known: bool) -> set[str]:
    """The full names of the values that are hers."""
    return {
        name
        for name, reading in given.readings.items()
        if _is_hers(given, name, reading, said, known)
    }


def _own_lists(given: Given, said: frozenset[str]) -> set[str]:
    """The lists whose rows are as many as she says."""
    return {item.name for item in _lists(given.card) if _list_is_hers(given, item, said)}


def _cleared(given: Given) -> tuple[set[str], set[str]]:
    """The values, and the lists, of the example that she took away."""
    values = {
        name for name, reading in given.readings.items() if _is_cleared(given.card, name, reading)
    }
    return values, {
        item.name
        for item in _lists(given.card)
        if item.lends and item.default and not given.counts[item.name]
    }


def _empty_lent_lists(given: Given, own: set[str], lists: set[str]) -> None:
    """Take away the rows that the example only lent, where nothing in their list is hers."""
    for item in _lists(given.card):
        if not item.lends or item.name in lists or _touched(item.name, own):
            continue
        beside = "" if isinstance(item.lent, bool) else item.lent.name
        if beside and beside not in lists and not _touched(beside, own):
            continue
        inside = f"{item.name}."
        given.counts[item.name] = 0
        given.emptied.append(item.name)
        given.readings = {
            name: reading for name, reading in given.readings.items() if not name.startswith(inside)
        }
        given.problems = [
            problem
            for problem in given.problems
            if not problem.input.startswith(inside) and problem.input != item.name
        ]


def _mark(given: Given, own: set[str]) -> None:
    """Mark what is hers, and take back what the example lent."""
    for name, reading in given.readings.items():
        if name in own:
            given.readings[name] = replace(reading, whose=HERS)
        elif (
            reading.input.lends
            and reading.text != NOTHING
            and (
                reading.input.today
                or not reading.given.strip()
                or _is_the_examples(given.card, name, reading)
            )
        ):
            given.readings[name] = _taken_back(given, name, reading)


def _touched(rows: str, own: set[str]) -> bool:
    return any(name.startswith(f"{rows}.") for name in own)


def _lists(card: Card) -> list[Rows[Any]]:
    return [item for item in card.inputs if isinstance(item, Rows)]


def _is_hers(given: Given, name: str, reading: Reading, said: frozenset[str], known: bool) -> bool:
    each = reading.input
    if name in said:
        return each.kind != CHOICE
    if each.kind == CHOICE:  # which of its sides she looks at says nothing of her
        return False
    if each.today and (known or reading.text == day.today().isoformat()):
        return False
    if each.lends and (not reading.given.strip() or _is_the_examples(given.card, name, reading)):
        return False
    return reading.text != _example(given.card, name, each) and not _same_amount(
        given.card, name, reading
    )


def _same_amount(card: Card, name: str, reading: Reading) -> bool:
    """The example's amount in another unit is no value of hers."""
    if reading.amount is None:
        return False
    example = read_one(
        reading.input, name, card.examples.get(name, reading.input.default), CANONICAL, "canonical"
    )
    if (
        isinstance(example, Problem)
        or example.amount is None
        or (example.amount.typed_rough is None) != (reading.amount.typed_rough is None)
    ):
        return False
    return all(
        isclose(one, other, rel_tol=ALIKE)
        for one, other in (
            (example.amount.value, reading.amount.value),
            (example.rough, reading.rough),
        )
    )


def _is_cleared(card: Card, name: str, reading: Reading) -> bool:
    return (
        reading.input.lends
        and reading.input.optional
        and not reading.given.strip()
        and bool(_example(card, name, reading.input))
    )


def _list_is_hers(given: Given, item: Rows[Any], said: frozenset[str]) -> bool:
    count = given.counts[item.name]
    return item.name in said or (count != len(item.default) and bool(count or not item.lends))


def _example(card: Card, name: str, each: Input[Any]) -> str:
    """What the example holds there; a row beyond its rows is as a new one comes."""
    return canonical_default(each, card.examples.get(name, each.default))


def _is_the_examples(card: Card, name: str, reading: Reading) -> bool:
    """Whether the example holds this text: of a list in any row, since rows move up when one is
    removed.
    """
    head, *place = name.split(".")
    if not place:
        return reading.text == _example(card, name, reading.input)
    texts = [row.get(place[1], reading.input.default) for row in card.rows(head).default]
    return reading.text in [
        canonical_default(reading.input, text) for text in (*texts, reading.input.default)
    ]


def _taken_back(given: Given, name: str, reading: Reading) -> Reading:
    each = reading.input
    if each.today and isinstance(
        read := read_one(each, name, day.today().isoformat(), CANONICAL, "canonical"), Reading
    ):
        return replace(
            read, asked=reading.asked, whose=DAY, value=read.value if reading.asked else None
        )
    if (
        each.optional and "." not in name
    ):  # a row with a hole in it is another row: it stays as the example has it, and is named
        return Reading(each, name, "", asked=reading.asked, whose=OPEN)
    return replace(reading, whose=LENT) if reading.text else reading


def still_lent(given: Given) -> list[Reading]:
    """The values that the answer rests on and that are still the example's, though something else
    is hers.
    """
    return [
        reading for reading in given.readings.values() if reading.asked and reading.whose == LENT
    ]


def still_line(given: Given) -> str:
    """One line that names them; "" where there are none."""
    said: dict[str, None] = {}
    for reading in still_lent(given):
        said |= dict.fromkeys([_words(given, reading)])
    return f"Still the example’s: {'; '.join(said)}." if said else ""


def _words(given: Given, reading: Reading) -> str:
    head, *place = reading.name.split(".")
    if not place:
        return _lower(reading.input.label)
    item = given.card.rows(head)
    inside = [
        each
        for name, each in given.readings.items()
        if name.startswith(f"{head}.")
        and each.asked
        and each.input.lends
        and each.text not in ("", NOTHING)
    ]
    if all(each.whose == LENT for each in inside):
        return _lower(item.label)
    row = [each for each in inside if each.name.split(".")[1] == place[0]]
    if all(each.whose == LENT for each in row):
        return f"{item.one} {place[0]}"
    return f"{item.one} {place[0]} ({_lower(reading.input.label)})"


def _lower(label: str) -> str:
    return label[0].lower() + label[1:]


def lends_of(given: Given) -> list[Reading]:
    """What a card cannot hand on as hers: what is still the example's, and while nothing is hers,
    all that it lends.
    """
    return (
        still_lent(given)
        if given.hers
        else [
            reading for reading in given.readings.values() if reading.input.lends and reading.text
        ]
    )


def left_open(text: str, lent: list[Reading], written: Iterable[str] = ()) -> str:
    """A text for paper with a line to write on where it holds what the example lent; days
    reckoned from a lent day are open as well.
    """
    words = {
        word
        for reading in lent
        if reading.input.kind == TEXT
        for word in (reading.text, *_parts(reading.text))
    } | set(written)
    if text.strip() in words:
        return LINE
    long = sorted((word for word in words if len(word) >= SHORTEST), key=len, reverse=True)
    if long:
        text = re.sub(rf"(?<!\w)(?:{'|'.join(map(re.escape, long))})(?!\w)", LINE, text)
    return (
        WRITTEN_DAY.sub(LINE, text) if any(reading.input.kind == DATE for reading in lent) else text
    )


def _parts(text: str) -> list[str]:
    """The names in a line of several: of "2 Wet Slate, Peat Gold" and "navy 0.62, black 0.24"
    those without their numbers.
    """
    return [name for part in text.split(",") if (name := part.strip(" .0123456789"))]


def is_lent(text: str, into: Input[Any], lent: list[Reading]) -> bool:
    """Whether a text for an input of another card would hand on what the example only lent."""
    if into.kind == TEXT:
        return left_open(text, lent) != text or any(
            len(text) >= 12 and reading.text.startswith(text) for reading in lent
        )
    if into.kind == DATE:
        return any(reading.input.kind == DATE for reading in lent)
    return (into.of is MONEY or into.kind == COLOR) and any(
        reading.input.kind == into.kind and reading.text == text for reading in lent
    )
