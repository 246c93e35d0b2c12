"""fibercalc: calculators for a small-batch hand dyer and fiber maker.

The public surface is three functions; a chapter is loaded when a card of it is asked for.
"""

__version__ = "0.1.0"

__all__ = ["cards", "show", "work"]


def cards() -> list[dict]:
    """Every card: its id, chapter and question."""
    from .core.registry import all_cards

    return [{"id": card.id, "chapter": card.chapter, "question": card.question} for card in all_cards()]


def show(card_id: str) -> dict:
    """The declaration of a card as plain data. Raises fibercalc.core.registry.UnknownCard (a KeyError) for an unknown card."""
    from .core.describe import declaration
    from .core.registry import find_card

    return declaration(find_card(card_id))


def work(card_id: str, inputs: dict | None = None, *, style: str = "point", system: str = "both", money: str = "€") -> dict:
    """The answer of a card, as `fibercalc work CARD --json` prints it.

    inputs  texts by input name, each with a unit where wanted ({"sample": "12.5 g"}); rows as "dyes.1.depth", or as a list of
            dicts under the name of the rows; numbers are taken as in the input's first unit
    style   "point" or "comma": how an ambiguous 1,200 is read and how numbers are written
    system  "both", "metric" or "us";  money  the money sign
    Raises fibercalc.core.registry.UnknownCard (a KeyError) for an unknown card, fibercalc.core.problem.BadInputs with one line for
    each bad input, of a wrong shape too.
    """
    from .core.plain import texts_of
    from .core.reading import read_inputs
    from .core.registry import find_card
    from .core.settings import Settings
    from .core.work import answer_of, work_given

    card = find_card(card_id)
    texts, counts = texts_of(card, {} if inputs is None else inputs)
    settings = Settings.from_texts({"style": style, "system": system, "money": money})
    worked = work_given(read_inputs(card, texts, settings, counts=counts, named=texts), settings)
    worked.given.notes += [f"{name} was given, and is not asked with these choices." for name in texts if name not in worked.given.asked()]
    return answer_of(worked, __version__).as_json()
