"""Whether a card fits the workbook: what it asks of records and of My bench, and what it keeps as a
record, measures the same there. Only here are both seen.
"""

from collections.abc import Iterator
from functools import cache
from typing import Any

from ..core.card import CHOICE, TEXT, Card, Constant, Input, Result, Rows, Save
from ..core.ref import Field, FieldRef, Group, Through, held_of, id_of, list_of, path_of
from ..held import RECORD
from .bench import BENCH
from .kind import Kind
from .kinds import KINDS

WORDS = (TEXT, CHOICE)
LINE = "line"  # said of several fields: a text that the card's own input reads
Item = Input[Any] | Rows[Any]
HeldItem = Item | str | None


@cache
def check(card: Card) -> None:
    """Raises ValueError, which names the card and the place, where it does not fit."""
    for item in card.inputs:
        for wrong in (*_record(item), *_bench(item)):
            raise ValueError(f"card {card.id}, {item.name}: {wrong}")
    for save in card.saves:
        for wrong in _save(save):
            raise ValueError(f"card {card.id}, “{save.words}”: {wrong}")


def _record(item: Item) -> Iterator[str]:
    if item.record is None:
        return
    if id_of(held_of(item.record)) not in KINDS:
        yield f"{path_of(item.record)} is no record"
    elif isinstance(item, Rows):
        known = [each for each in item.fields if each.record or _own(item, each) is not None]
        if not known:
            yield f"no row takes anything of {path_of(item.record)}"
        for each in known:
            yield from _differs(_meant(each.record) if each.record else _own(item, each), each)
    else:
        yield from _differs(_meant(item.record), item)


def _own(item: Rows[Any], each: Input[Any]) -> HeldItem:
    """What the list of a record, or the kind, has under a row's field's own name."""
    if not isinstance(item.record, Group):
        return None
    kind, listed = KINDS[id_of(held_of(item.record))], list_of(item.record)
    return _of(kind, f"{listed}.{each.name}" if listed else each.name)


def _meant(ref: FieldRef) -> HeldItem:
    """The field that a reference leads to, as its kind declares it."""
    field = ref.further if isinstance(ref, Through) else ref
    return _of(KINDS[id_of(held_of(field))], ".".join(filter(None, (list_of(field), field.name))))


def _of(kind: Kind, name: str) -> HeldItem:
    return LINE if name in kind.lines else kind.names.get(name)


def _differs(held: HeldItem, each: Input[Any]) -> Iterator[str]:
    """What keeps a value held in one place from standing in another."""
    if isinstance(held, str):
        return
    if held is None or isinstance(held, Rows):
        yield f"{each.name} is asked of a list"
    elif not _alike(held, each):
        yield f"{each.name} and {held.name} do not measure the same"
    elif held.of == each.of == CHOICE and not _words(held) & _words(each):
        yield f"{each.name} and {held.name} have no word in common"


def _alike(one: Input[Any], other: Input[Any] | Result[Any]) -> bool:
    return one.of is other.of or (one.of in WORDS and other.of in WORDS)


def _words(each: Input[Any]) -> set[str]:
    return {option.value for option in each.options}


def _bench(item: Item) -> Iterator[str]:
    if isinstance(item, Rows) or item.bench is None:
        return
    listed = list_of(item.bench)
    own = BENCH.rows(listed).fields if listed else BENCH.inputs
    held = next((each for each in own if each.name == item.bench.name), None)
    if held_of(item.bench) is not RECORD.bench or not isinstance(held, Input):
        yield f"{path_of(item.bench)} is not on My bench"
    elif held.of is not item.of:
        yield f"{path_of(item.bench)} does not measure the same"


def field_of(each: Input[Any]) -> str:
    """The name of a row's field in the list of a record that takes it or is filled from it."""
    return each.record.name if isinstance(each.record, Field) else each.name


def _save(save: Save) -> Iterator[str]:
    if id_of(save.kind) not in KINDS:
        yield f"{path_of(save.kind)} is no record"
        return
    names = KINDS[id_of(save.kind)].names
    for ref, source in save.fields.items():
        held = names[ref.name if isinstance(ref, Field) else list_of(ref)]
        if isinstance(source, Constant):
            if isinstance(held, Rows) or source.value not in _words(held):
                yield f"{path_of(ref)} cannot be {source.value}"
        elif isinstance(held, Rows):
            yield from _lists(held, source)
        elif not isinstance(source, Input | Result) or not _alike(held, source):
            yield f"{path_of(ref)} and {source.name} do not measure the same"


def _lists(held: Rows[Any], source: object) -> Iterator[str]:
    """What keeps a card's list from being kept as a record's."""
    if not isinstance(source, Rows):
        yield f"{held.name} is kept of no list"
        return
    theirs = {field_of(each): each for each in source.fields}
    common = [(each, theirs[each.name]) for each in held.fields if each.name in theirs]
    if not common:
        yield f"{held.name} and {source.name} have no field in common"
    for one, other in common:
        if not _alike(one, other):
            yield f"{held.name}.{one.name} and {source.name}.{other.name} do not measure the same"
