"""fibercalc: calculators for a small-batch hand dyer and fiber maker.

All that is meant to be used from outside has its name here. Nothing is loaded before it is asked
for: importing this costs next to nothing, and a card loads no other.
"""

from .version import __version__ as __version__

__all__ = [
    "Amount",
    "Answer",
    "BadInputs",
    "Problem",
    "UnknownCard",
    "UnknownChapter",
    "Value",
    "answer",
    "cards",
    "dye",
    "knit",
    "safe",
    "sell",
    "show",
    "wash",
    "weave",
    "work",
    "yarn",
]

TYPE_CHECKING = False  # as typing has it, which costs more to import than all of this
if TYPE_CHECKING:
    from typing import Any

    from . import dye, knit, safe, sell, wash, weave, yarn
    from .amount import Amount
    from .answered import Answer, Value
    from .core.problem import BadInputs, Problem
    from .core.registry import UnknownCard, UnknownChapter

# Where a name comes from that is loaded only when it is asked for.
_FROM = {
    "Amount": "amount",
    "Answer": "answered",
    "BadInputs": "core.problem",
    "Problem": "core.problem",
    "UnknownCard": "core.registry",
    "UnknownChapter": "core.registry",
    "Value": "answered",
}

if not TYPE_CHECKING:  # or a name that is not there would pass for one

    def __getattr__(name):
        from importlib import import_module

        if name not in __all__:
            raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
        if name not in _FROM:  # a chapter
            return import_module(f"{__name__}.{name}")
        found = globals()[name] = getattr(import_module(f"{__name__}.{_FROM[name]}"), name)
        return found


def __dir__() -> list[str]:
    return sorted({*globals(), *__all__})


def cards(chapter: str | None = None) -> "list[dict[str, str]]":
    """Every card, or those of one chapter: id, chapter and question.

    Raises UnknownChapter (a KeyError).
    """
    from .core.registry import UnknownChapter, all_cards, chapter_cards, chapters

    if chapter is not None and chapter not in chapters():
        raise UnknownChapter(chapter)
    return [
        {"id": card.id, "chapter": card.chapter, "question": card.question}
        for card in (all_cards() if chapter is None else chapter_cards(chapter))
    ]


def show(card_id: str) -> "dict[str, Any]":
    """The declaration of a card as plain data. Raises UnknownCard (a KeyError)."""
    from .core.describe import declaration
    from .core.registry import find_card

    return declaration(find_card(card_id))


def work(
    card_id: str,
    inputs: "dict[str, Any] | None" = None,
    *,
    style: str = "point",
    system: str = "both",
    money: str = "€",
) -> "dict[str, Any]":
    """The answer of a card, as `fibercalc work CARD --json` prints it.

    inputs  texts by input name, each with a unit where wanted ({"sample_mass": "2.4 g"}); rows as
            "dyes.1.depth", or as a list of dicts under the name of the rows; numbers are taken as
            in the input's first unit
    style   "point" or "comma": how an ambiguous 1,200 is read and how numbers are written
    system  "both", "metric" or "us";  money  the money sign
    Raises UnknownCard (a KeyError), BadInputs (a ValueError) with a Problem for each bad input, of
    a wrong shape too.
    """
    from .core.work import answer_of
    from .worked import worked

    return answer_of(worked(card_id, inputs, style, system, money), __version__).as_json()


def answer(
    card_id: str,
    inputs: "dict[str, Any] | None" = None,
    *,
    style: str = "point",
    system: str = "both",
    money: str = "€",
) -> "Answer":
    """The same answer as an object, its numbers in base units.

    answer("skein-length").results["length"].to("yd").low is the low end of a range in yards.
    Inputs, settings and what is raised are those of `work`.
    """
    from .answered import Answer
    from .worked import worked

    return Answer(worked(card_id, inputs, style, system, money))
