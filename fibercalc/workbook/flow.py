"""Records and cards: what a record can fill in on a card, and what a card can keep as a record.
Offered, never done silently.
"""

from typing import Any

from ..core.card import CHOICE, TEXT, Card, Constant, Input, Option, Rows, Save
from ..core.entry import Reading, read_one
from ..core.link import query_of
from ..core.offered import texts_for
from ..core.onward import known_as
from ..core.problem import Problem
from ..core.reading import Given
from ..core.ref import Field, Held, Through, held_of, id_of, list_of
from ..core.settings import Settings
from ..core.work import Worked
from .bench import written
from .fits import check, field_of
from .kind import KNOWN_END, MEASURED, Kind
from .kinds import KINDS
from .records import Unusable, contents_of, given_of, new_record, reading_of, references, title_of

KEPT = "kept"


def kinds_for(card: Card) -> set[str]:
    """The kinds of records that can matter to a card: those it asks for and those that they lead
    to. The others need not be looked at.
    """
    found, near = set(), {id_of(held_of(item.record)) for item in card.inputs if item.record}
    while near:
        found |= near
        near = {other for kind in near for other in KINDS[kind].refers.values()} - found
    return found


def offers(card: Card, records: list[dict[str, Any]], settings: Settings) -> list[dict[str, Any]]:
    """What the records can fill in on a card: {"label", "kind", "values", "rows", "own", "why"};
    own names what the records said, the rest stands as the example has it.

    A record brings along what the ones that it leads to can fill in: a plan its products, their
    colorways, their bases. A list that has a row for each record of a kind takes those that it
    leads to, or all of them. What does not fit is no reason to say nothing: "why" is the line
    that says what stays out, and values are empty where that is all of it.
    """
    check(card)
    wanted: dict[str, list[Input[Any] | Rows[Any]]] = {}
    for item in card.inputs:
        if item.record:
            wanted.setdefault(id_of(held_of(item.record)), []).append(item)
    by_id = {each["id"]: each for each in records}
    by_kind = {
        kind_id: sorted((each for each in records if each["kind"] == kind_id), key=title_of)
        for kind_id in wanted
    }
    found = []
    for kind_id, items in wanted.items():
        kind = KINDS[kind_id]
        single = [item for item in items if not _of_every_record(item)]
        for document in by_kind[kind_id] if single else ():
            own = _Filling(by_id, settings)
            own.take(single, document)
            shown = f" ({own.amounts[-1]})" if own.amounts else ""
            if own.values:
                _bring_along(own, document, wanted, by_kind)
            if own.values or own.missed:
                found.append(own.offer(title_of(document), shown, kind.many))
        for item in items:
            every = _Filling(by_id, settings)
            if (
                isinstance(item, Rows)
                and _of_every_record(item)
                and (every.take_all(item, by_kind[kind_id]) or every.missed)
            ):
                count = every.rows.get(item.name, len(by_kind[kind_id]))
                found.append(
                    every.offer(f"all {kind.many.lower()}", f" ({count})", "All of a kind")
                )
    return found


def _bring_along(
    own: "_Filling",
    document: dict[str, Any],
    wanted: dict[str, list[Input[Any] | Rows[Any]]],
    by_kind: dict[str, list[dict[str, Any]]],
) -> None:
    """What the records that one leads to can fill in besides; where two could fill the same, the
    nearer one does.
    """
    reached, near = {document["id"]: document}, [document]
    while near:
        near = [
            own.by_id[text]
            for each in near
            for _, text in references(each)
            if text in own.by_id and text not in reached
        ]
        reached |= {each["id"]: each for each in near}
    taken = {document["kind"]}
    for each in reached.values():
        if each["kind"] not in taken:
            taken.add(each["kind"])
            own.take(
                [item for item in wanted.get(each["kind"], ()) if not _of_every_record(item)],
                each,
                only_new=True,
            )
    for kind_id, items in wanted.items():
        for item in items:
            if isinstance(item, Rows) and _of_every_record(item):
                own.take_all(
                    item,
                    [each for each in reached.values() if each["kind"] == kind_id]
                    or by_kind[kind_id],
                )


def _of_every_record(item: Input[Any] | Rows[Any]) -> bool:
    """Whether it is a list with a row for each record of a kind."""
    return isinstance(item.record, Held)


class _Filling:
    """Texts, row counts and, written out, the amounts that records give to inputs of a card."""

    def __init__(self, by_id: dict[str, dict[str, Any]], settings: Settings):
        self.by_id, self.settings = by_id, settings
        self.values: dict[str, str] = {}
        self.rows: dict[str, int] = {}
        self.amounts: list[str] = []
        self.said: list[str] = []  # the names of what the records say themselves
        self.missed: list[
            str
        ] = []  # what a record says and this card cannot take, each in a few words

    def offer(self, title: str, shown: str, kind: str) -> dict[str, Any]:
        """The offer as the page gets it."""
        missed = "; ".join(dict.fromkeys(self.missed))
        why = (
            f"“{title}” {'leaves out' if self.values else 'cannot be used here'}: {missed}."
            if missed
            else ""
        )
        return {
            "label": f"Use {title}{shown}" if self.values else title,
            "kind": kind,
            "values": self.values,
            "rows": self.rows,
            "own": self.said,
            "why": why,
        }

    def take(
        self, items: list[Input[Any] | Rows[Any]], document: dict[str, Any], only_new: bool = False
    ) -> None:
        """What one record gives to these inputs."""
        for item in items:
            if isinstance(item, Rows):
                if item.record is None or (only_new and item.name in self.rows):
                    continue
                listed = list_of(item.record)
                rows = [
                    (document, f"{listed}.{row}.")
                    for row in range(1, document["rows"].get(listed, 0) + 1)
                ]
                self._take_rows(item, rows)
            elif not (only_new and item.name in self.values):
                reading = self._reading(document, "", item)
                if reading is None or not reading.text:
                    continue
                if why := _misfit(item, reading):
                    self.missed.append(f"{item.label} ({why})")
                    continue
                self.values |= _texts(item, item.name, reading, self.settings)
                self.said.append(item.name)
                if reading.amount is not None:
                    self.amounts.append(written(reading.amount, self.settings))

    def take_all(self, item: Rows[Any], documents: list[dict[str, Any]]) -> bool:
        """A row for each of these records; in the order of their days where their kind has one,
        and then of too many the newest.
        """
        newest = KINDS[documents[0]["kind"]].newest if documents else None
        if newest:
            documents = sorted(documents, key=lambda each: each["values"].get(newest.name, ""))
            if len(documents) > item.most:
                self.missed.append(
                    f"{item.label} (all but the newest {item.most} of {len(documents)})"
                )
                documents = documents[-item.most :]
        return self._take_rows(item, [(each, "") for each in documents])

    def _take_rows(self, item: Rows[Any], rows: list[tuple[dict[str, Any], str]]) -> bool:
        """The whole list or nothing: half a recipe is another recipe. What a record could say and
        does not is left blank, never the example's.
        """
        if not rows or self._another_list(item, rows):
            return False
        if not item.least <= len(rows) <= item.most:
            self.missed.append(
                f"{item.label} ({len(rows)} of them, this card takes {item.least} to {item.most})"
            )
            return False
        values: dict[str, str] = {}
        said = []
        for number, (document, start) in enumerate(rows, 1):
            for each in item.fields:
                name, reading = (
                    f"{item.name}.{number}.{each.name}",
                    self._reading(document, start, each),
                )
                if reading is None or not reading.text:
                    values |= {
                        name: "" if reading is not None and each.kind != CHOICE else each.default
                    }
                elif why := _misfit(each, reading):
                    self.missed.append(
                        f"{item.label} ({item.one} {number}, {each.label.lower()}: {why})"
                    )
                    return False
                else:
                    values |= _texts(each, name, reading, self.settings)
                    said.append(name)
        self.values |= values
        self.said += said
        self.rows |= {item.name: len(rows)}
        return True

    def _another_list(self, item: Rows[Any], rows: list[tuple[dict[str, Any], str]]) -> bool:
        """Whether no row of a record's list says the first amount that the card asks for: the
        parts of a set are no colors of a kit.
        """
        for each in item.fields:
            readings = (
                [self._reading(document, start, each) for document, start in rows if start]
                if each.measured
                else []
            )
            if readings and readings[0] is not None:
                return not any(reading.text for reading in readings if reading is not None)
        return False

    def _reading(self, document: dict[str, Any], start: str, each: Input[Any]) -> Reading | None:
        """What a record says for an input: the field that this refers to, or that of its name;
        None where there is none. start is "" or the list's row, as "dyes.2.".
        """
        if not isinstance(each.record, Through):
            return self._field(document, start + (each.record or each).name)
        first = start + each.record.first.name
        other = self.by_id.get(document["values"].get(first, ""))
        if other is None:
            return Reading(KINDS[document["kind"]].title_field, first, "")
        return self._field(other, each.record.further.name)

    def _field(self, document: dict[str, Any], name: str) -> Reading | None:
        kind = KINDS[document["kind"]]
        if name in kind.lines:
            return Reading(kind.title_field, name, "", text=kind.lines[name](document, self.by_id))
        return reading_of(document, name)


def _misfit(each: Input[Any], reading: Reading) -> str:
    """Why a text cannot stand in an input, in a few words; "" when it can. Half a hazard phrase
    is none, so nothing is cut.
    """
    if each.kind == CHOICE and _word(reading.text, each.options) is None:
        return f"no word here for “{reading.text}”"
    if each.kind == TEXT and len(reading.text) > each.longest:
        return f"{len(reading.text)} letters, {each.longest} fit"
    return "" if _amount_read(each, reading) else f"{reading.text} is beyond what it takes"


def _texts(each: Input[Any], name: str, reading: Reading, settings: Settings) -> dict[str, str]:
    """The texts that set one input from what fits it."""
    if each.kind == CHOICE:
        return {name: _word(reading.text, each.options) or ""}
    return (
        {name: reading.text}
        if each.kind == TEXT
        else texts_for(each, name, _amount_read(each, reading) or reading, settings)
    )


def _amount_read(each: Input[Any], reading: Reading) -> Reading | None:
    """The reading itself, or, where a kind derives an amount as a text, that text as this input
    reads it; None where it cannot.
    """
    if not each.measured or reading.amount is not None:
        return reading
    read = read_one(each, each.name, reading.text, Settings(), "canonical")
    return None if isinstance(read, Problem) else read


def _word(text: str, options: tuple[Option, ...]) -> str | None:
    """The choice that a text names: word for word, or by its last word alone (superwash wool is
    wool) where that names just one.
    """
    text = text.lower()
    for option in options:
        if text in (option.value.lower(), option.label.lower()):
            return option.value
    last = text.split(" ")[-1]
    found = [
        option.value
        for option in options
        if last == option.value.lower() or f"({last})" in option.label.lower()
    ]
    return found[0] if len(found) == 1 else None


def places(card: Card, given: Given, records: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """Where this card's values can go, for the page to offer: {"place", "words", "name"}; name is
    what such a record is called already.
    """
    check(card)
    found = []
    for number, save in enumerate(card.saves):
        if not _applies(save, given):
            continue
        found.append({"place": f"{number}:", "words": save.words, "name": ""})
        for document in sorted(
            (each for each in records if each["kind"] == id_of(save.kind)), key=title_of
        ):
            found.append(
                {
                    "place": f"{number}:{document['id']}",
                    "words": f"{save.words}: into “{title_of(document)}”",
                    "name": title_of(document),
                }
            )
    return [*found, {"place": KEPT, "words": "This answer, as it stands now", "name": ""}]


def _applies(save: Save, given: Given) -> bool:
    return all(given.readings[other.name].value in values for other, values in save.when.items())


def saved(
    worked: Worked, place: str, name: str, fresh: str, today: str, records: list[dict[str, Any]]
) -> dict[str, Any]:
    """The record to keep for a card's values at one of its places; fresh is what a new one's id
    ends in. Raises Unusable with one plain line.
    """
    name = name.strip()
    if place == KEPT:
        return _kept_answer(worked, name, fresh, today)
    save, old = _place_of(worked.card, place, records)
    kind = KINDS[id_of(save.kind)]
    contents = _filled(save, kind, worked, old)
    contents["values"][kind.title] = name or contents["values"].get(kind.title, "")
    return _kept(
        kind, (old | contents) if old else new_record(kind, f"{kind.id}-{fresh}", contents)
    )


def _kept_answer(worked: Worked, name: str, fresh: str, today: str) -> dict[str, Any]:
    """The record of an answer as it stands, with the link that opens it again."""
    values = {
        "name": name,
        "card": worked.card.id,
        "query": query_of(worked.given),
        "answer": " ".join(worked.sentences())[:1000],
        "day": today,
    }
    contents = {"values": {key: text for key, text in values.items() if text}, "rows": {}}
    return _kept(KINDS[KEPT], new_record(KINDS[KEPT], f"{KEPT}-{fresh}", contents))


def _place_of(
    card: Card, place: str, records: list[dict[str, Any]]
) -> tuple[Save, dict[str, Any] | None]:
    """What a place means: what is saved there, and the record that it goes into, None for a new
    one. Raises Unusable.
    """
    number, _, record_id = place.partition(":")
    if not number.isdigit() or int(number) >= len(card.saves):
        raise Unusable("This card keeps no such record.")
    save = card.saves[int(number)]
    same = [each for each in records if each["kind"] == id_of(save.kind)]
    old = next((each for each in same if each["id"] == record_id), None)
    if record_id and old is None:
        raise Unusable("That record is no longer there.")
    return save, old


def _filled(
    save: Save, kind: Kind, worked: Worked, old: dict[str, Any] | None
) -> dict[str, dict[str, Any]]:
    """The old record's contents with the card's values put in."""
    values, rows = (dict(old["values"]), dict(old["rows"])) if old else ({}, {})
    for ref, source in save.fields.items():
        item = kind.names[ref.name if isinstance(ref, Field) else list_of(ref)]
        if isinstance(source, Constant):
            values[item.name] = source.value
        elif isinstance(item, Rows):
            values, rows = _taken_rows(values, rows, item, worked, source.name)
        elif text := known_as(worked, source.name, item):
            values[item.name] = text
            if source.name in worked.outcome.found and item.measured:
                values[f"{item.name}{KNOWN_END}"] = MEASURED
    return {"values": values, "rows": rows}


def _taken_rows(
    values: dict[str, Any], rows: dict[str, Any], item: Rows[Any], worked: Worked, source: str
) -> tuple[dict[str, Any], dict[str, Any]]:
    """The record's list exchanged for the card's."""
    values = {key: text for key, text in values.items() if not key.startswith(f"{item.name}.")}
    theirs = worked.card.rows(source).fields
    by_field = {field_of(each): each.name for each in theirs}
    count = min(worked.given.counts.get(source, 0), item.most)
    for row in range(1, count + 1):
        for each in item.fields:
            reading = worked.given.readings.get(f"{source}.{row}.{by_field.get(each.name, '')}")
            if reading is not None and reading.asked and reading.text:
                values[f"{item.name}.{row}.{each.name}"] = reading.text
    return values, rows | {item.name: count}


def _kept(kind: Kind, document: dict[str, Any]) -> dict[str, Any]:
    if not document["values"].get(kind.title):
        raise Unusable("Give it a name first.")
    given = given_of(kind, document)
    if given.problems:
        raise Unusable(given.problems[0].text)
    return document | contents_of(given)
