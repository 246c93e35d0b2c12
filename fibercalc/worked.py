"""A card worked from values as a program gives them: texts, numbers, amounts, lists of rows."""

from __future__ import annotations

from typing import Any

from .core.plain import plain_of
from .core.reading import read_inputs
from .core.registry import find_card
from .core.settings import Settings
from .core.work import Worked, work_given


def worked(
    card_id: str,
    inputs: dict[str, Any] | None,
    style: str = "point",
    system: str = "both",
    money: str = "€",
) -> Worked:
    """A card worked from what a program gave. Raises UnknownCard and BadInputs."""
    card = find_card(card_id)
    plain = plain_of(card, {} if inputs is None else inputs)
    texts = plain.texts
    settings = Settings.from_texts({"style": style, "system": system, "money": money})
    given = read_inputs(card, texts, settings, exact=plain.exact, counts=plain.counts, named=texts)
    done = work_given(given, settings)
    done.given.notes += [
        f"{name} was given, and is not asked with these choices."
        for name in texts
        if name not in done.given.asked()
    ]
    return done
