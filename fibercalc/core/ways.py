"""Whether a way on leads somewhere: whether the next card can have what goes on to it.

A card names the next one's inputs by their full names, as links and files do, since it must not
load that card. So they are looked at when both are there.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from .card import Card, Carry, Constant, Input, RowPart, Rows
from .entry import read_one
from .lent import CANONICAL
from .problem import Problem
from .units import COUNT, Quantity

if TYPE_CHECKING:
    from .carry import Source


def check_way(card: Card, carry: Carry, other: Card) -> None:
    """Raises ValueError, which names the card and the place, for an input that the next card does
    not have, a text that it cannot be, or a part that measures something else.
    """
    for name, source in carry.inputs.items():
        if wrong := _wrong(card, other, name, source):
            raise ValueError(f"card {card.id}, its way to {other.id}, {name}: {wrong}")


def _wrong(card: Card, other: Card, name: str, source: Source) -> str:
    """Why an input of the next card cannot have this, in a few words; "" when it can."""
    into = _named(other, name)
    if into is None:
        return "it has no such input"
    if isinstance(source, Constant):
        if isinstance(into, Rows):
            return "a list is no text"
        read = read_one(into, name, source.value, CANONICAL, "canonical")
        return f"it cannot be {source.value}" if isinstance(read, Problem) else ""
    if callable(source):
        return ""
    part: Any = source.part if isinstance(source, RowPart) else card.case.parts_by_name[source.name]
    of = getattr(part, "of", None)
    if isinstance(into, Rows) or not (into.measured and isinstance(of, Quantity)):
        return ""
    return "" if into.of in (of, COUNT) else f"{part.name} is {of.name}"


def _named(card: Card, name: str) -> Input[Any] | Rows[Any] | None:
    """The input or list of that full name; None where there is none."""
    head, *place = name.split(".")
    item = next((each for each in card.inputs if each.name == head), None)
    if not place or item is None:
        return item
    if not isinstance(item, Rows) or len(place) != 2 or not place[0].isdigit():
        return None
    return item.fields_by_name.get(place[1]) if 1 <= int(place[0]) <= item.most else None
