"""One record as a document: read as untrusted, checked by its kind's declaration, brought to the newest schema.

    {"id": "base-x3k9...", "kind": "base", "schema": 1, "rev": "3-x8d2...", "past": ["2-...", "1-..."], "changed": "2027-01-11T09:30:00Z",
     "values": {"name": "Tarrow Sock", "mass": "100g", "mass_known": "label", "fibers.1.fiber": "wool"}, "rows": {"fibers": 1}}

Values are canonical texts by field name, as in a link; what is blank is left out. `rev` changes with every save, and `past` holds the
ones before it, so that two copies of a record can be told apart: newer, older, or changed on both sides.
"""

import json
import re

from ..core.card import TEXT, Input, Rows
from ..core.entry import Reading, read_one
from ..core.problem import Problem
from ..core.reading import Given, read_inputs
from ..core.settings import Settings
from .kind import KNOWN_END, Kind
from .kinds import KINDS

SCHEMA = 1
LONGEST_TEXT, MOST_PAST = 24_000, 30  # as long as a link may be: a kept answer holds one
KIND = re.compile(r"[a-z][a-z-]{1,39}")
ID = re.compile(r"[a-z][a-z0-9-]{2,59}")
REV = re.compile(r"[1-9][0-9]{0,8}-[a-z0-9]{4,16}")
MOMENT = re.compile(r"[0-9]{4}-[01][0-9]-[0-3][0-9]T[0-2][0-9]:[0-5][0-9]:[0-5][0-9]Z")
PARTS = {"id", "kind", "schema", "rev", "past", "changed", "values", "rows"}

# Schema n -> the function that makes n + 1 of a record. A kind or a field more needs none: what is missing is read as blank.
MIGRATIONS: dict = {}

MAIL = re.compile(r"[^\s@]+@[^\s@]+\.[^\s@]+")
ROW = re.compile(r"\.\d+\.")
DAY = re.compile(r"\d{4}-\d{1,2}-\d{1,2}")
PHONE = re.compile(r"\+\d[\d ()./-]{6,}\d|\(?\b\d{2,5}\)?(?:[ ./-]{1,2}\d{2,5}){2,4}\b")
FEWEST, MOST = 9, 15  # digits of a telephone number
OF_A_CARD = ("card", "query", "answer")  # of a kept answer: long numbers are at home there


class Unusable(ValueError):
    """A record or a file that cannot be taken; its text is one plain line."""


class Newer(Unusable):
    """A record that a newer version of the book may read: it is kept as it is and travels on."""


def kind_of(document: dict) -> Kind:
    """The kind of a record. Raises Unusable; Newer where a newer version may know the kind."""
    name = document.get("kind")
    kind = KINDS.get(name) if isinstance(name, str) else None
    if kind is None:
        raise (Newer if _matches(KIND, name) else Unusable)("it holds a record of a kind that is not known here")
    return kind


def migrated(document: dict) -> dict:
    """The record in the newest schema. Raises Unusable for a newer or unreadable schema."""
    schema = document.get("schema")
    if not isinstance(schema, int) or isinstance(schema, bool) or schema < 1:
        raise Unusable("it holds a record without a schema number")
    if schema > SCHEMA:
        raise Newer("it was made by a newer version of the book: update this one first")
    for old in range(schema, SCHEMA):
        document = MIGRATIONS[old](document)
    return document


def checked(document) -> dict:
    """The record as it is kept: newest schema, canonical texts. Raises Unusable with the first thing that is wrong."""
    if not isinstance(document, dict):
        raise Unusable("it holds something that is no record")
    document = migrated(document)
    kind = kind_of(document)
    _check_frame(document, kind)
    if unknown := [name for name in document["values"] if without_row(name) not in kind.names]:
        raise Newer(f"{kind.one} “{document['values'].get(kind.title, '')[:40]}”: {unknown[0][:40]} is not known here")
    given = given_of(kind, document)
    if given.problems:
        raise Unusable(f"{kind.one} “{document['values'].get(kind.title, '')[:40]}”: {given.problems[0].text}")
    return document | contents_of(given)


def _check_frame(document: dict, kind: Kind) -> None:
    """Everything of a record but what its fields say. Raises Unusable."""
    values, counts, past = document.get("values"), document.get("rows"), document.get("past")
    usable = (set(document) == PARTS and _matches(ID, document["id"]) and _matches(REV, document["rev"]) and _matches(MOMENT, document["changed"])
              and isinstance(past, list) and len(past) <= MOST_PAST and all(_matches(REV, each) for each in past)
              and isinstance(values, dict) and isinstance(counts, dict))
    if not usable:
        raise Unusable(f"a {kind.one} in it is not put together as the book does it")
    lists = {item.name: item for item in kind.fields if isinstance(item, Rows)}
    for name, text in values.items():
        if not isinstance(text, str) or len(text) > LONGEST_TEXT:
            raise Unusable(f"a {kind.one} in it holds a text of more than {LONGEST_TEXT} characters, or something that is no text")
    for name, count in counts.items():
        if name not in lists or not isinstance(count, int) or isinstance(count, bool) or not 0 <= count <= lists[name].most:
            raise Unusable(f"a {kind.one} in it has a list that cannot be read")


def _matches(pattern: re.Pattern, text) -> bool:
    return isinstance(text, str) and pattern.fullmatch(text) is not None


def given_of(kind: Kind, contents: dict) -> Given:
    """The fields of a record's contents as read, with every problem there is."""
    values = contents["values"]
    counts = {item.name: contents["rows"].get(item.name, 0) for item in kind.fields if isinstance(item, Rows)}
    return with_own_rules(kind, read_inputs(kind.card, values, Settings(), exact=values, counts=counts))


def with_own_rules(kind: Kind, given: Given) -> Given:
    """What a record asks beyond what a card does: no way to reach a customer, and references that can be ids."""
    for name, reading in given.readings.items():
        if reading.input.of != TEXT or not reading.text:
            continue
        whole = without_row(name)
        if whole in kind.refers:
            if not ID.fullmatch(reading.text):
                given.problems.append(Problem(name, reading.text[:40], "a record", f"{reading.input.label}: that is no record; choose one, or none."))
        elif looks_like_a_customer(reading.text, numbers=name not in OF_A_CARD):
            given.problems.append(Problem(name, "", "no customer details", (
                f"{reading.input.label}: that looks like an e-mail address or a telephone number. The workbook keeps no customer details: write the order number alone.")))
    return given


def looks_like_a_customer(text: str, numbers: bool = True) -> bool:
    """Whether a text holds what looks like an e-mail address or, with numbers, a telephone number. Days are neither."""
    text = DAY.sub(" ", text)
    if "@" in text and MAIL.search(text):  # looked for alone, the pattern would take a long text's square of time
        return True
    return numbers and any(FEWEST <= sum(c.isdigit() for c in found[0]) <= MOST for found in PHONE.finditer(text))


def contents_of(given: Given) -> dict:
    """Values and rows as a record keeps them, for fields read without a problem."""
    texts = {name: reading.text for name, reading in given.readings.items() if reading.asked and reading.text}
    kept = {name: text for name, text in texts.items() if not name.endswith(KNOWN_END) or name.removesuffix(KNOWN_END) in texts}
    return {"values": kept, "rows": {name: count for name, count in given.counts.items() if count}}


def new_record(kind: Kind, record_id: str, contents: dict) -> dict:
    """A record that was never saved: the browser gives it its revision when it writes."""
    return {"id": record_id, "kind": kind.id, "schema": SCHEMA, "rev": "", "past": [], "changed": ""} | contents


SEEN: dict[str, tuple[str, dict]] = {}  # id -> a document's text and what came of checking it: a store is read again with every page


def checked_once(document) -> dict:
    """checked(), which is not done again for a record that it was done for last. Raises Unusable."""
    key = str(document.get("id")) if isinstance(document, dict) else ""
    text = json.dumps(document)  # as text, since True and 1 are equal
    before, after = SEEN.get(key, ("", {}))
    if before != text:
        after = checked(document)
        SEEN[key] = text, after
    return after


def readable(documents) -> tuple[list[dict], list]:
    """The records of a store that this version can read, and the rest as they are."""
    found, rest = [], []
    for document in documents if isinstance(documents, list) else []:
        try:
            found.append(checked_once(document))
        except Unusable:
            rest.append(document)
    return found, rest


def title_of(document: dict) -> str:
    """What a record is called."""
    kind = KINDS[document["kind"]]
    return document["values"].get(kind.title, "")


def reading_of(document: dict, name: str) -> Reading | None:
    """One field of a checked record as read, without reading the others; None where its kind has no such field."""
    item = KINDS[document["kind"]].names.get(without_row(name))
    if not isinstance(item, Input):
        return None
    text = document["values"].get(name, "")
    return read_one(item, name, text, Settings(), "canonical") if text else Reading(item, name, "")


def without_row(name: str) -> str:
    """"dyes.depth" for "dyes.2.depth"."""
    return ROW.sub(".", name)


def references(document: dict) -> list[tuple[str, str]]:
    """Every (field, id) by which a record names another."""
    refers = KINDS[document["kind"]].refers
    return [(whole, text) for name, text in document["values"].items() if (whole := without_row(name)) in refers]


