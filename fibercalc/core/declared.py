"""What a declaration is in code: a frozen object that is told apart by being itself."""

from dataclasses import MISSING, FrozenInstanceError, dataclass, fields
from typing import Any, TypeVar, dataclass_transform

C = TypeVar("C")


@dataclass_transform(frozen_default=True, eq_default=False)
def declared(kind: type[C]) -> type[C]:
    """A class of declarations: a dataclass whose values, once given, stay.

    What is declared stands once: it is never compared or printed, and the browser's Python would
    write and compile the functions for that anew at every start. So all classes share theirs.
    """
    if not getattr(
        kind, "__doc__", ""
    ):  # the browser's has none: made of a signature it costs more
        type.__setattr__(kind, "__doc__", kind.__name__)
    made: Any = dataclass(init=False, eq=False, repr=False)(kind)
    made.declares = tuple(each.name for each in fields(made))
    made.usual = {each.name: each.default for each in fields(made) if each.default is not MISSING}
    made.fresh = {
        each.name: each.default_factory
        for each in fields(made)
        if each.default_factory is not MISSING
    }
    made.__init__, made.__setattr__ = _declare, _set_once
    return kind


def _declare(it: Any, *given: Any, **named: Any) -> None:
    values = it.usual | dict(zip(it.declares, given, strict=False)) | named
    for name in it.fresh:
        if name not in values:
            values[name] = it.fresh[name]()
    if len(values) != len(it.declares) or len(given) > len(it.declares):
        wrong = ", ".join(sorted(values.keys() ^ set(it.declares)))
        raise TypeError(f"{type(it).__name__}: {wrong or 'values'} missing or not declared")
    it.__dict__.update(values)
    if hasattr(it, "__post_init__"):
        it.__post_init__()


def _set_once(it: Any, name: str, value: Any) -> None:
    if name in it.__dict__:
        raise FrozenInstanceError(f"{type(it).__name__}.{name} is declared already")
    it.__dict__[name] = value
