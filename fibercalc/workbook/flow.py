"""Records and cards: what a record can fill in on a card, and what a card can keep as a record. Offered, never done silently."""

from ..core.card import CHOICE, TEXT, Card, Input, Option, Rows, Save
from ..core.entry import Reading, read_one
from ..core.link import query_of
from ..core.offered import texts_for
from ..core.onward import known_as
from ..core.problem import Problem
from ..core.reading import Given
from ..core.settings import Settings
from ..core.work import Worked
from .bench import written
from .kind import KNOWN_END, MEASURED, Kind
from .kinds import KINDS
from .records import Unusable, contents_of, given_of, new_record, reading_of, references, title_of

KEPT = "kept"


def kinds_for(card: Card) -> set[str]:
    """The kinds of records that can matter to a card: those it asks for and those that they lead to. The others need not be looked at."""
    found, near = set(), {item.record.split(".")[0] for item in card.inputs if item.record}
    while near:
        found |= near
        near = {other for kind in near for other in KINDS[kind].refers.values()} - found
    return found


def offers(card: Card, records: list[dict], settings: Settings) -> list[dict]:
    """What the records can fill in on a card: {"label", "kind", "values", "rows", "own", "why"}; own names what the records said,
    the rest stands as the example has it.

    A record brings along what the ones that it leads to can fill in: a plan its products, their colorways, their bases. A list that has a
    row for each record of a kind takes those that it leads to, or all of them. What does not fit is no reason to say nothing: "why" is
    the line that says what stays out, and values are empty where that is all of it.
    """
    wanted: dict[str, list[Input | Rows]] = {}
    for item in card.inputs:
        if item.record:
            wanted.setdefault(item.record.split(".")[0], []).append(item)
    by_id = {each["id"]: each for each in records}
    by_kind = {kind_id: sorted((each for each in records if each["kind"] == kind_id), key=title_of) for kind_id in wanted}
    found = []
    for kind_id, items in wanted.items():
        kind = KINDS[kind_id]
        single = [item for item in items if "." in item.record]
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
            if "." not in item.record and (every.take_all(item, by_kind[kind_id]) or every.missed):
                count = every.rows.get(item.name, len(by_kind[kind_id]))
                found.append(every.offer(f"all {kind.many.lower()}", f" ({count})", "All of a kind"))
    return found


def _bring_along(own: "_Filling", document: dict, wanted: dict[str, list[Input | Rows]], by_kind: dict[str, list[dict]]) -> None:
    """What the records that one leads to can fill in besides; where two could fill the same, the nearer one does."""
    reached, near = {document["id"]: document}, [document]
    while near:
        near = [own.by_id[text] for each in near for _, text in references(each) if text in own.by_id and text not in reached]
        reached |= {each["id"]: each for each in near}
    taken = {document["kind"]}
    for each in reached.values():
        if each["kind"] not in taken:
            taken.add(each["kind"])
            own.take([item for item in wanted.get(each["kind"], ()) if "." in item.record], each, only_new=True)
    for kind_id, items in wanted.items():
        for item in items:
            if "." not in item.record:
                own.take_all(item, [each for each in reached.values() if each["kind"] == kind_id] or by_kind[kind_id])


class _Filling:
    """Texts, row counts and, written out, the amounts that records give to inputs of a card."""

    def __init__(self, by_id: dict[str, dict], settings: Settings):
        self.by_id, self.settings = by_id, settings
        self.values: dict[str, str] = {}
        self.rows: dict[str, int] = {}
        self.amounts: list[str] = []
        self.said: list[str] = []  # the names of what the records say themselves
        self.missed: list[str] = []  # what a record says and this card cannot take, each in a few words

    def offer(self, title: str, shown: str, kind: str) -> dict:
        """The offer as the page gets it."""
        missed = "; ".join(dict.fromkeys(self.missed))
        why = f"“{title}” {'leaves out' if self.values else 'cannot be used here'}: {missed}." if missed else ""
        return {"label": f"Use {title}{shown}" if self.values else title, "kind": kind, "values": self.values, "rows": self.rows, "own": self.said, "why": why}

    def take(self, items: list[Input | Rows], document: dict, only_new: bool = False) -> None:
        """What one record gives to these inputs."""
        for item in items:
            field = item.record.split(".")[1]
            if isinstance(item, Rows):
                if only_new and item.name in self.rows:
                    continue
                rows = [(document, f"{field}.{row}.") for row in range(1, document["rows"].get(field, 0) + 1)]
                self._take_rows(item, rows)
            elif not (only_new and item.name in self.values):
                reading = self._reading(document, field)
                if reading is None or not reading.text:
                    continue
                if why := _misfit(item, reading):
                    self.missed.append(f"{item.label} ({why})")
                    continue
                self.values |= _texts(item, item.name, reading, self.settings)
                self.said.append(item.name)
                if reading.amount is not None:
                    self.amounts.append(written(reading.amount, self.settings))

    def take_all(self, item: Rows, documents: list[dict]) -> bool:
        """A row for each of these records; in the order of their days where their kind has one, and then of too many the newest."""
        day = KINDS[documents[0]["kind"]].newest if documents else ""
        if day:
            documents = sorted(documents, key=lambda each: each["values"].get(day, ""))
            if len(documents) > item.most:
                self.missed.append(f"{item.label} (all but the newest {item.most} of {len(documents)})")
                documents = documents[-item.most:]
        return self._take_rows(item, [(each, "") for each in documents])

    def _take_rows(self, item: Rows, rows: list[tuple[dict, str]]) -> bool:
        """The whole list or nothing: half a recipe is another recipe. What a record could say and does not is left blank, never the example's."""
        if not rows or self._another_list(item, rows):
            return False
        if not item.least <= len(rows) <= item.most:
            self.missed.append(f"{item.label} ({len(rows)} of them, this card takes {item.least} to {item.most})")
            return False
        values, said = {}, []
        for number, (document, start) in enumerate(rows, 1):
            for each in item.fields:
                name, reading = f"{item.name}.{number}.{each.name}", self._reading(document, start + (each.record or each.name))
                if reading is None or not reading.text:
                    values |= {name: "" if reading is not None and each.kind != CHOICE else each.default}
                elif why := _misfit(each, reading):
                    self.missed.append(f"{item.label} ({item.one} {number}, {each.label.lower()}: {why})")
                    return False
                else:
                    values |= _texts(each, name, reading, self.settings)
                    said.append(name)
        self.values |= values
        self.said += said
        self.rows |= {item.name: len(rows)}
        return True

    def _another_list(self, item: Rows, rows: list[tuple[dict, str]]) -> bool:
        """Whether no row of a record's list says the first amount that the card asks for: the parts of a set are no colors of a kit."""
        for each in item.fields:
            readings = [self._reading(document, start + (each.record or each.name)) for document, start in rows if start] if each.measured else []
            if readings and readings[0] is not None:
                return not any(reading.text for reading in readings)
        return False

    def _reading(self, document: dict, field: str) -> Reading | None:
        """A field as read, through "product>name" one of the record that it names; None where there is no such field."""
        field, _, further = field.partition(">")
        kind = KINDS[document["kind"]]
        if further:
            other = self.by_id.get(document["values"].get(field, ""))
            return self._reading(other, further) if other else Reading(kind.names[kind.title], field, "")
        if field in kind.derived:
            return Reading(kind.names[kind.title], field, "", text=kind.derived[field](document, self.by_id))
        return reading_of(document, field)


def _misfit(each: Input, reading: Reading) -> str:
    """Why a text cannot stand in an input, in a few words; "" when it can. Half a hazard phrase is none, so nothing is cut."""
    if each.kind == CHOICE and _word(reading.text, each.options) is None:
        return f"no word here for “{reading.text}”"
    if each.kind == TEXT and len(reading.text) > each.longest:
        return f"{len(reading.text)} letters, {each.longest} fit"
    return "" if _amount_read(each, reading) else f"{reading.text} is beyond what it takes"


def _texts(each: Input, name: str, reading: Reading, settings: Settings) -> dict[str, str]:
    """The texts that set one input from what fits it."""
    if each.kind == CHOICE:
        return {name: _word(reading.text, each.options)}
    return {name: reading.text} if each.kind == TEXT else texts_for(each, name, _amount_read(each, reading) or reading, settings)


def _amount_read(each: Input, reading: Reading) -> Reading | None:
    """The reading itself, or, where a kind derives an amount as a text, that text as this input reads it; None where it cannot."""
    if not each.measured or reading.amount is not None:
        return reading
    read = read_one(each, each.name, reading.text, Settings(), "canonical")
    return None if isinstance(read, Problem) else read


def _word(text: str, options: tuple[Option, ...]) -> str | None:
    """The choice that a text names: word for word, or by its last word alone (superwash wool is wool) where that names just one."""
    text = text.lower()
    for option in options:
        if text in (option.value.lower(), option.label.lower()):
            return option.value
    last = text.split(" ")[-1]
    found = [option.value for option in options if last == option.value.lower() or f"({last})" in option.label.lower()]
    return found[0] if len(found) == 1 else None


def places(card: Card, given: Given, records: list[dict]) -> list[dict]:
    """Where this card's values can go, for the page to offer: {"place", "words", "name"}; name is what such a record is called already."""
    found = []
    for number, save in enumerate(card.saves):
        if not _applies(save, given):
            continue
        found.append({"place": f"{number}:", "words": save.words, "name": ""})
        for document in sorted((each for each in records if each["kind"] == save.kind), key=title_of):
            found.append({"place": f"{number}:{document['id']}", "words": f"{save.words}: into “{title_of(document)}”", "name": title_of(document)})
    return [*found, {"place": KEPT, "words": "This answer, as it stands now", "name": ""}]


def _applies(save: Save, given: Given) -> bool:
    return all(given.readings[name].value in values for name, values in save.when.items())


def saved(worked: Worked, place: str, name: str, fresh: str, today: str, records: list[dict]) -> dict:
    """The record to keep for a card's values at one of its places; fresh is what a new one's id ends in. Raises Unusable with one plain line."""
    card, name = worked.card, name.strip()
    if place == KEPT:
        values = {"name": name, "card": card.id, "query": query_of(worked.given), "answer": " ".join(worked.sentences())[:1000], "day": today}
        return _kept(KINDS[KEPT], new_record(KINDS[KEPT], f"{KEPT}-{fresh}", {"values": {key: text for key, text in values.items() if text}, "rows": {}}))
    number, _, record_id = place.partition(":")
    if not number.isdigit() or int(number) >= len(card.saves):
        raise Unusable("This card keeps no such record.")
    save = card.saves[int(number)]
    kind = KINDS[save.kind]
    old = next((each for each in records if each["id"] == record_id and each["kind"] == kind.id), None)
    if record_id and old is None:
        raise Unusable("That record is no longer there.")
    values, rows = (dict(old["values"]), dict(old["rows"])) if old else ({}, {})
    for field, source in save.fields.items():
        item = kind.names[field]
        if isinstance(item, Rows):
            values, rows = _taken_rows(values, rows, item, worked, source)
        elif text := _source(worked, source, item):
            values[field] = text
            if source in worked.outcome.found and item.measured:
                values[f"{field}{KNOWN_END}"] = MEASURED
    values[kind.title] = name or values.get(kind.title, "")
    contents = {"values": values, "rows": rows}
    return _kept(kind, (old | contents) if old else new_record(kind, f"{kind.id}-{fresh}", contents))


def _source(worked: Worked, source: str, item: Input) -> str:
    """An input's or a result's text; what stands between quotes is itself."""
    return source.strip("'") if source.startswith("'") else (known_as(worked, source, item) or "")


def _taken_rows(values: dict, rows: dict, item: Rows, worked: Worked, source: str) -> tuple[dict, dict]:
    """The record's list exchanged for the card's."""
    values = {key: text for key, text in values.items() if not key.startswith(f"{item.name}.")}
    theirs = worked.card.item(source)
    by_field = {each.record or each.name: each.name for each in theirs.fields}
    count = min(worked.given.counts.get(source, 0), item.most)
    for row in range(1, count + 1):
        for each in item.fields:
            reading = worked.given.readings.get(f"{source}.{row}.{by_field.get(each.name, '')}")
            if reading is not None and reading.asked and reading.text:
                values[f"{item.name}.{row}.{each.name}"] = reading.text
    return values, rows | {item.name: count}


def _kept(kind: Kind, document: dict) -> dict:
    if not document["values"].get(kind.title):
        raise Unusable("Give it a name first.")
    given = given_of(kind, document)
    if given.problems:
        raise Unusable(given.problems[0].text)
    return document | contents_of(given)
