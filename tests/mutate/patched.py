"""Putting a changed source into functions that are loaded already: their code is exchanged, so that whoever holds one of them has the new one."""

from __future__ import annotations

import ast
import functools
import gc
from collections.abc import Iterator
from contextlib import contextmanager
from inspect import CO_OPTIMIZED
from pathlib import Path
from types import CodeType, FunctionType

Key = tuple[str, str, int, int]  # file, qualified name, first line, which of several such


class Loaded:
    """Every function of the project that is alive, by where it is written."""

    def __init__(self, folder: Path):
        self.functions: dict[tuple[str, CodeType], list[FunctionType]] = {}
        for each in gc.get_objects():
            if isinstance(each, FunctionType) and each.__code__.co_filename.startswith(str(folder)):
                code = each.__code__
                self.functions.setdefault((code.co_filename, code), []).append(each)

    def put(self, path: Path, new: ast.Module | str) -> list[tuple[FunctionType, CodeType]]:
        """Exchange the code of each function of a file that is not the same in the new source. Returns those that got another, with
        the code that they had."""
        now = dict(
            _outermost(compile(path.read_text("utf-8"), str(path), "exec", dont_inherit=True))
        )
        then = dict(_outermost(compile(new, str(path), "exec", dont_inherit=True)))
        exchanged = []
        for key, code in now.items():
            if then[key] != code:
                for function in self.functions.get((str(path), code), ()):
                    exchanged.append((function, function.__code__))
                    function.__code__ = then[key]
        return exchanged

    @contextmanager
    def changed(self, path: Path, new: str) -> Iterator[None]:
        """A file as if it said something else, for so long. Raises LookupError where no function that is alive has it."""
        exchanged = self.put(path, new)
        if not exchanged:
            raise LookupError(f"{path.name}: no function holds what was changed")
        try:
            yield
        finally:
            for function, code in exchanged:
                function.__code__ = code


def forget_what_is_cached() -> None:
    """Empty every cache of a function: what is in one was made by the code as it was."""
    for each in gc.get_objects():
        if isinstance(each, functools._lru_cache_wrapper):
            each.cache_clear()


def _outermost(
    code: CodeType, seen: dict[tuple[str, int], int] | None = None
) -> Iterator[tuple[Key, CodeType]]:
    """The functions of a module or class, without those inside of functions."""
    seen = {} if seen is None else seen
    for each in code.co_consts:
        if not isinstance(each, CodeType):
            continue
        if each.co_flags & CO_OPTIMIZED:  # a function; a class's body is not
            place = (each.co_qualname, each.co_firstlineno)
            seen[place] = seen.get(place, 0) + 1
            yield (each.co_filename, *place, seen[place]), each
        else:
            yield from _outermost(each, seen)
