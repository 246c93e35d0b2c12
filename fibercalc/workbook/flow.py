"""Records and cards: what a record can fill in on a card, and what a card can keep as a record. Offered, never done silently."""

from ..core.card import CHOICE, TEXT, Card, Input, Rows, Save
from ..core.entry import Reading
from ..core.link import query_of
from ..core.offered import texts_for
from ..core.onward import known_as
from ..core.reading import Given
from ..core.settings import Settings
from ..core.work import Worked
from .bench import written
from .kind import KNOWN_END, MEASURED, Kind
from .kinds import KINDS
from .records import Unusable, contents_of, given_of, new_record, title_of

KEPT = "kept"


def offers(card: Card, records: list[dict], settings: Settings) -> list[dict]:
    """What the records can fill in on a card: {"label", "kind", "values", "rows"}. A record brings along what the ones that it names can fill in."""
    wanted: dict[str, list[Input | Rows]] = {}
    for item in card.inputs:
        if item.record:
            wanted.setdefault(item.record.split(".")[0], []).append(item)
    by_id = {each["id"]: each for each in records}
    found = []
    for kind_id, items in wanted.items():
        for document in sorted((each for each in records if each["kind"] == kind_id), key=title_of):
            values, rows, amounts = _filled(items, document, settings)
            if not values:
                continue
            for name, other_kind in KINDS[kind_id].refers.items():
                other = by_id.get(document["values"].get(name, ""))
                if other is not None and other_kind in wanted and other_kind != kind_id:
                    more, more_rows, _ = _filled(wanted[other_kind], other, settings)
                    values, rows = more | values, more_rows | rows
            shown = f" ({amounts[-1]})" if amounts else ""
            found.append({"label": f"Use {title_of(document)}{shown}", "kind": KINDS[kind_id].many, "values": values, "rows": rows})
    return found


def _filled(items: list[Input | Rows], document: dict, settings: Settings) -> tuple[dict[str, str], dict[str, int], list[str]]:
    """Texts, row counts and, written out, the amounts that one record gives to these inputs."""
    readings = given_of(KINDS[document["kind"]], document).readings
    values, rows, amounts = {}, {}, []
    for item in items:
        field = item.record.split(".")[1]
        if isinstance(item, Rows):
            texts, count = _filled_rows(item, field, document, readings, settings)
            if count:
                values, rows = values | texts, rows | {item.name: count}
        elif (reading := readings.get(field)) is not None and reading.text and (texts := _texts(item, item.name, reading, settings)):
            values |= texts
            if reading.amount is not None:
                amounts.append(written(reading.amount, settings))
    return values, rows, amounts


def _filled_rows(item: Rows, field: str, document: dict, readings: dict[str, Reading], settings: Settings) -> tuple[dict[str, str], int]:
    """The whole list or nothing: half a recipe is another recipe."""
    count = document["rows"].get(field, 0)
    if not max(item.least, 1) <= count <= item.most:
        return {}, 0
    values = {}
    for row in range(1, count + 1):
        for each in item.fields:
            name = f"{item.name}.{row}.{each.name}"
            reading = readings.get(f"{field}.{row}.{each.record or each.name}")
            if reading is None or not reading.text:
                values |= {name: each.default}
            elif texts := _texts(each, name, reading, settings):
                values |= texts
            else:
                return {}, 0
    return values, count


def _texts(each: Input, name: str, reading: Reading, settings: Settings) -> dict[str, str]:
    """The texts that set one input; none where a choice has no such word."""
    if each.kind == CHOICE:
        text = reading.text.lower()
        return next(({name: option.value} for option in each.options if text in (option.value.lower(), option.label.lower())), {})
    if each.kind == TEXT:  # half a hazard phrase is none
        return {name: reading.text} if len(reading.text) <= each.longest else {}
    return texts_for(each, name, reading, settings)


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
