"""What the class of a card's case is declared of: each part knows its name, and stands for its
value on a case.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Generic, Protocol, Self, TypeVar, overload

T = TypeVar("T")


class NotThere(AttributeError):
    """A case has no such value: it was not asked for, or has not been worked yet."""


class Part(Generic[T]):
    """A named part of a class. On the class it is the declaration, which is how it is referred
    to; on a case its value.

    A value stands in the case's own dictionary, which Python reads first: what comes here was not
    there.
    """

    name: str

    def __set_name__(self, owner: type, name: str) -> None:
        if self.name and self.name != name:
            raise TypeError(f"{owner.__name__}.{name} is declared already, as {self.name}")
        object.__setattr__(self, "name", name)

    @overload
    def __get__(self, case: None, owner: type) -> Self: ...
    @overload
    def __get__(self, case: Any, owner: type) -> T: ...
    def __get__(self, case: Any, owner: type) -> Self | T:
        if case is None:
            return self
        raise NotThere(f"{owner.__name__}.{self.name} was not asked, or is not worked yet")

    # A case takes it by name; Python must not be told, or it would look here before the case's own
    # dictionary
    if TYPE_CHECKING:

        def __set__(self, case: Any, value: T) -> None: ...


def parts_of(owner: type, kinds: type | tuple[type, ...]) -> list[Any]:
    """The parts of these kinds that a class declares, its bases' first, in their order."""
    found: dict[str, Any] = {}
    for each in reversed(owner.__mro__):
        found |= {name: part for name, part in vars(each).items() if isinstance(part, kinds)}
    return list(found.values())


class HasName(Protocol):
    """A part that another declaration refers to.

    It is typed by its name alone: a field typed as a part would pass for what stands on a case.
    """

    @property
    def name(self) -> str: ...


def name_of(part: HasName | str) -> str:
    """The name of a part that is referred to."""
    return part if isinstance(part, str) else part.name
