"""What a card prints beside its page, in exact sizes: papers to pin up or fill in, and labels."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from .answer import Table
    from .label import Sheets
    from .outcome import Outcome

SIZES = ("A6", "A5", "A4")


@dataclass(frozen=True, eq=False)
class Paper:
    """One paper.

    title    what it is called on its button and its head
    size     A6, A5 or A4, upright
    tables   from the outcome, the tables that stand on it; a cell of "" is a line to write on,
             "☐" a box to tick
    """

    title: str
    size: str
    tables: Callable[[Outcome[Any]], Iterable[Table]]

    def __post_init__(self) -> None:
        if self.size not in SIZES:
            raise ValueError(f"paper {self.title}: {self.size} is not {' or '.join(SIZES)}")


@dataclass(frozen=True, eq=False)
class Labels:
    """Exact labels, alone or many on a sheet.

    title   what they are called on their button
    sheets  from the outcome, the labels laid out and how they are put on paper (core.label.Sheets)
    """

    title: str
    sheets: Callable[[Outcome[Any]], Sheets]
