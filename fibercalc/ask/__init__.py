"""Cards as functions, in a module of their chapter: yarn.skein_length(turns=280,
circumference="1.50 m").

The modules are written from the cards (tests/functions.py), so that an editor knows every input. A
value is a text as a person types it, with its unit and spread where wanted, or a number in the unit
that the function names. What is not given stays the example's; None leaves open what may be blank.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, TypeAlias

from .. import answer

if TYPE_CHECKING:
    from .. import Answer

Number: TypeAlias = str | float
EXAMPLE: Any = type("Example", (), {"__repr__": lambda self: "EXAMPLE"})()


def ask(card_id: str, given: dict[str, Any]) -> Answer:
    """A card's answer from the values that were given."""
    return answer(card_id, {name: each for name, each in given.items() if each is not EXAMPLE})
