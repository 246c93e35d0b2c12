"""The cards that tests walk over: every card of the book, and the fixture card with every kind of input."""

from fibercalc.core.registry import ADDED, all_cards
from tests.fixture_card import CARD as EVERY_KIND

ADDED[EVERY_KIND.id] = EVERY_KIND

BOOK = all_cards()
CARDS = [*BOOK, EVERY_KIND]


def card_id(card) -> str:
    """The name of a card in a test's id."""
    return card.id
