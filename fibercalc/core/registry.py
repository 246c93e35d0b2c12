"""Finding cards. A card is found by its id from its file's name, so asking for one loads no
other.
"""

import re
from functools import cache
from importlib import import_module
from importlib.util import find_spec

from .card import CHAPTERS, Card

CARD_ID = re.compile(r"[a-z][a-z0-9-]{1,40}")


class UnknownCard(KeyError):
    """No card has this id."""


ADDED: dict[str, Card] = {}  # cards that stand outside the package: a test's fixture card


@cache
def find_card(card_id: str) -> Card:
    """The card with this id. Raises UnknownCard."""
    if card_id in ADDED:
        return ADDED[card_id]
    if CARD_ID.fullmatch(card_id):
        file = card_id.replace("-", "_")
        for chapter in CHAPTERS:
            if _has(chapter) and find_spec(f"fibercalc.{chapter}.cards.{file}"):
                card: Card = import_module(f"fibercalc.{chapter}.cards.{file}").CARD
                return card
    raise UnknownCard(card_id)


@cache
def _has(chapter: str) -> bool:
    return (
        find_spec(f"fibercalc.{chapter}") is not None
        and find_spec(f"fibercalc.{chapter}.cards") is not None
    )


def chapter_cards(chapter: str) -> list[Card]:
    """The cards of a chapter in their order; empty where the chapter has none yet."""
    if not _has(chapter):
        return []
    import pkgutil  # only a listing needs it

    package = import_module(f"fibercalc.{chapter}.cards")
    found = [
        find_card(name.replace("_", "-")) for _, name, _ in pkgutil.iter_modules(package.__path__)
    ]
    return sorted(found, key=lambda card: (card.place, card.id))


def all_cards() -> list[Card]:
    """Every card, by chapter and place."""
    return [card for chapter in CHAPTERS for card in chapter_cards(chapter)]
