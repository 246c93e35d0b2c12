"""What a person may have meant by a word that is nearly right: the end of a refusal."""

import re
from typing import Any

from .core.card import Card, Input, Rows
from .core.problem import Problem
from .core.registry import chapter_card_ids, chapters, find_card

LONGEST = 80  # of a word that is compared: what is longer is no slip of a finger
NOT_ASKED = "an input of this card"  # what core.reading allows in place of a name that is none
ROW = re.compile(r"[^.]+\.(\d{1,3})\.")


def with_guess(line: str, word: str, names: list[str]) -> str:
    """The line, which ends with what a person may have meant where a name is near the word."""
    near = nearest(word, names)
    return f"{line.removesuffix('.')}; did you mean {near}?" if near else line


def nearest(word: str, names: list[str]) -> str:
    """The name that is most like a word, small and capital letters alike; "" where none is."""
    from difflib import get_close_matches  # only what was refused needs it

    if len(word) > LONGEST:
        return ""
    folded = {name.lower(): name for name in reversed(names)}
    found = get_close_matches(word.lower(), folded, 1)
    return folded[found[0]] if found else ""


def card_ids() -> list[str]:
    """The id of every card, by chapter; no card is loaded."""
    return [card_id for chapter in chapters() for card_id in chapter_card_ids(chapter)]


def line_of(problem: Problem, card_id: str) -> str:
    """The line of a bad input; where a name or a choice is nearly right, with what may be meant."""
    card = find_card(card_id)
    inputs = inputs_by_name(card, problem.input)
    if problem.allowed == NOT_ASKED:
        return with_guess(problem.text, problem.input, list(inputs))
    item = inputs.get(problem.input)
    # What was typed may be near the value or near the words that a person picks.
    values = {
        name: option.value
        for option in (item.options if item else ())
        for name in (option.label, option.value)
    }
    near = values.get(nearest(problem.given, list(values)), "")
    return with_guess(problem.text, near, [near])


def inputs_by_name(card: Card, given: str) -> dict[str, Input[Any]]:
    """The inputs of a card by full name; those of rows in the row that a name speaks of."""
    row = ROW.match(given)
    named: dict[str, Input[Any]] = {}
    for item in card.inputs:
        if isinstance(item, Rows):
            named |= {
                f"{item.name}.{row[1] if row else 1}.{each.name}": each for each in item.fields
            }
        else:
            named[item.name] = item
    return named
