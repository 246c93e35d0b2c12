"""What a declaration is in code: a frozen object that is told apart by being itself."""

from dataclasses import dataclass
from typing import TypeVar, dataclass_transform

C = TypeVar("C")


@dataclass_transform(frozen_default=True, eq_default=False)
def declared(kind: type[C]) -> type[C]:
    """A class of declarations.

    What is declared stands once: it is never compared or printed, and the browser's Python would
    write the functions for that anew at every start.
    """
    return dataclass(frozen=True, eq=False, repr=False)(kind)
