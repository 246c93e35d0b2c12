"""A chapter's cards as functions of its package, loaded when one is asked for.

The package of a chapter holds its formulas as modules; its cards are reached beside them
(`fibercalc.yarn.skein_length`), and nothing of `fibercalc.ask` is imported before that.
"""

from collections.abc import Callable
from typing import Any


def functions_of(package: str) -> tuple[Callable[[str], Any], Callable[[], list[str]]]:
    """The `__getattr__` and `__dir__` of a chapter's package.

    A name is a card's function where a card's file has it: a module of formulas that is imported
    for the first time is asked for here too, and must not load a chapter's functions.
    """

    def found(name: str) -> Any:
        from importlib import import_module
        from importlib.util import find_spec

        functions = f"fibercalc.ask.{package.rpartition('.')[2]}"
        if (
            not name.startswith("_")
            and find_spec(f"{package}.cards.{name}")
            and find_spec("fibercalc.ask")  # the browser's copy of the package has none
        ):
            return getattr(import_module(functions), name)
        raise AttributeError(f"module {package!r} has no attribute {name!r}")

    def names() -> list[str]:
        from importlib import import_module

        from .registry import chapter_card_ids

        ids = chapter_card_ids(package.rpartition(".")[2])
        cards = [card_id.replace("-", "_") for card_id in ids]
        return sorted({*vars(import_module(package)), *cards})

    return found, names
