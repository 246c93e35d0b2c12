"""Finding cards. A card is found by its id from its file's name, so asking for one loads no
other.
"""

import re
from functools import cache
from importlib import import_module
from importlib.util import find_spec

from .card import CHAPTERS, Card, Carry

CARD_ID = re.compile(r"[a-z][a-z0-9-]{1,40}")


class UnknownCard(KeyError):
    """No card has this id."""


class UnknownChapter(KeyError):
    """No chapter with cards has this name."""


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


def chapters() -> list[str]:
    """The chapters that have cards, in their order."""
    return [chapter for chapter in CHAPTERS if _has(chapter)]


def chapter_cards(chapter: str) -> list[Card]:
    """The cards of a chapter in their order; empty where the chapter has none yet."""
    found = [find_card(card_id) for card_id in chapter_card_ids(chapter)]
    return sorted(found, key=lambda card: (card.place, card.id))


def chapter_card_ids(chapter: str) -> list[str]:
    """The ids of a chapter's cards, from the names of their files: no card is loaded."""
    if not _has(chapter):
        return []
    import pkgutil  # only a listing needs it

    package = import_module(f"fibercalc.{chapter}.cards")
    return [name.replace("_", "-") for _, name, _ in pkgutil.iter_modules(package.__path__)]


@cache
def next_card(card: Card, carry: Carry) -> Card:
    """The card that a way on leads to.

    Raises ValueError, which names the card and the place, where it leads nowhere.
    """
    from .ways import check_way  # a card is found without it

    try:
        other = find_card(carry.card)
    except UnknownCard:
        raise ValueError(f"card {card.id}, its way to {carry.card}: no such card") from None
    check_way(card, carry, other)
    return other


def all_cards() -> list[Card]:
    """Every card, by chapter and place.

    Raises ValueError, which names the card and the place, where a way on leads nowhere.
    """
    found = [card for chapter in CHAPTERS for card in chapter_cards(chapter)]
    for card in found:
        for carry in card.carry:
            next_card(card, carry)
    return found
