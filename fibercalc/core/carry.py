"""The way on to the next card, as a card declares it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from .asked import RowPart
from .declared import declared
from .part import HasName


class Constant:
    """A word of a choice, or a canonical text, that is always the same."""

    def __init__(self, value: str) -> None:
        self.value = value


Source = HasName | RowPart | Constant | Callable[..., Any]


@declared
class Carry:
    """A way on to the next card with what is already known, so that nothing is typed twice.

    inputs  that card's inputs ("volume", "steps.3.minutes", or a whole list "recipes") to what
            they get: a part of this card's case (of the row that the link is for:
            `Case.dyes.each(Dye.name)`, of one row `each(Dye.name, row=1)`), a Constant, or a
            function of the outcome (with `each`, of the row's
            number too) that gives a canonical text, or for a list one dict of texts for each row;
            None gives nothing, and the example stands
    each    a link for each row of this list, or for each label that a function of the outcome
            lists; "{}" in words is the label
    """

    card: str
    words: str
    inputs: Mapping[str, Source]
    each: HasName | Callable[..., list[str]] | None = None
