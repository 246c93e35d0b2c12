"""The way on to the next card, as a card declares it."""

from collections.abc import Callable
from dataclasses import dataclass


@dataclass(frozen=True, eq=False, repr=False)
class Carry:
    """A way on to the next card with what is already known, so that nothing is typed twice.

    inputs  that card's inputs ("volume", "steps.3.minutes", or a whole list "recipes") to what they get: the name of a result or input
            of this card ("dyes.#.name" is that of one row), or a function of the outcome (with `each`, of the row's number too) that
            gives a canonical text, or for a list one dict of texts for each row; None gives nothing, and the example stands
    each    a link for each row of this list, or for each label that a function of the outcome lists; "{}" in words is the label
    """

    card: str
    words: str
    inputs: dict[str, str | Callable]
    each: str | Callable = ""
