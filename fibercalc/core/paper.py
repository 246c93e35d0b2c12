"""Exact papers that a card prints beside its page: a recipe card to pin up, a batch sheet to fill in."""

from collections.abc import Callable
from dataclasses import dataclass

SIZES = ("A6", "A5", "A4")


@dataclass(frozen=True, eq=False)
class Paper:
    """One paper.

    title    what it is called on its button and its head
    size     A6, A5 or A4, upright
    tables   from the outcome, the tables that stand on it; a cell of "" is a line to write on, "☐" a box to tick
    """

    title: str
    size: str
    tables: Callable

    def __post_init__(self):
        if self.size not in SIZES:
            raise ValueError(f"paper {self.title}: {self.size} is not {' or '.join(SIZES)}")
