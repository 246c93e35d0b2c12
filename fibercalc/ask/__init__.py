"""Cards as functions, those of each chapter in its package: fibercalc.yarn.skein_length(turns=280,
circumference="1.50 m").

The modules here are written from the cards (tests/functions.py), so that an editor knows every
input. A value is one of

    a text        as a person types it, with unit and spread where wanted: "1.50 m", "412 yd +/- 8"
    an Amount     fibercalc.Amount(1.5, "m"), or a result of another card, which brings its range
    a number      in the unit that the function names for it

A list of rows is a list of dicts. What is not given stays the example's; but names, days and money
that the example made up are left open once anything is given. None leaves open what may be blank.

An Answer holds numbers in the base unit of their quantity, whatever was typed.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, TypeAlias

if TYPE_CHECKING:
    from ..amount import Amount
    from ..answered import Answer

Number: TypeAlias = "str | float | Amount"
EXAMPLE: Any = type("Example", (), {"__repr__": lambda self: "EXAMPLE"})()


def ask(card_id: str, given: dict[str, Any]) -> Answer:
    """A card's answer from the values that were given."""
    from ..answered import Answer  # a function that is only looked at loads nothing
    from ..worked import worked

    own = {name: each for name, each in given.items() if each is not EXAMPLE}
    return Answer(worked(card_id, own))
