"""What the page's scripts believe of Python is what Python says: the types, and real answers."""

import json
from dataclasses import asdict
from pathlib import Path
from types import NoneType, UnionType
from typing import Annotated, Literal, NotRequired, Union, get_args, get_origin, get_type_hints

import pytest

from fibercalc.core.registry import all_cards
from fibercalc.site import boundary, helper
from fibercalc.site.protocol import data, typescript
from fibercalc.site.protocol.answers import Answer, FieldSaid, Offer, Replies, Sheet, YardageTable
from fibercalc.site.protocol.questions import Questions
from fibercalc.workbook import base_link
from fibercalc.workbook.demo import demo_text
from tests.site.test_boundary import ok

ROOT = Path(__file__).resolve().parents[2]
QUESTIONS, REPLIES = get_type_hints(Questions), get_type_hints(Replies)
PLAIN = {str: str, int: int, float: (int, float), bool: bool, NoneType: NoneType, object: object}
SETTINGS = {"style": "point", "system": "both", "money": "€"}
DEMO = json.loads(demo_text())["records"]
HERE = "https://brackwend.example/book/"


def misfits(value, hint, where="it") -> list[str]:
    """Where a value is not as declared: a part missing, one too many, one of another type."""
    while get_origin(hint) in (Annotated, NotRequired):
        hint = get_args(hint)[0]
    if hint in PLAIN:
        truth = hint is object or isinstance(value, bool) == (hint is bool)
        return [] if isinstance(value, PLAIN[hint]) and truth else [f"{where} is {value!r}"]
    if hasattr(hint, "__required_keys__"):
        if not isinstance(value, dict):
            return [f"{where} is {value!r}"]
        hints = get_type_hints(hint)
        lost = [f"{where}.{name} is missing" for name in hint.__required_keys__ - value.keys()]
        more = [f"{where}.{name} is not declared" for name in value.keys() - hints.keys()]
        parts = [
            (each, hints[name], f"{where}.{name}") for name, each in value.items() if name in hints
        ]
        return lost + more + [line for part in parts for line in misfits(*part)]
    origin, inner = get_origin(hint), get_args(hint)
    if origin is Literal:
        return [] if value in inner else [f"{where} is {value!r}"]
    if origin in (Union, UnionType):
        tried = [misfits(value, each, where) for each in inner]
        return min(tried, key=len)
    if origin is dict and isinstance(value, dict):
        pairs = [(name, inner[0], f"{where}, a name") for name in value]
        pairs += [(each, inner[1], f"{where}[{name}]") for name, each in value.items()]
        return [line for pair in pairs for line in misfits(*pair)]
    if origin is list and isinstance(value, list):
        return [
            line
            for at, each in enumerate(value)
            for line in misfits(each, inner[0], f"{where}[{at}]")
        ]
    if origin is tuple and isinstance(value, list) and len(value) == len(inner):
        return [line for each, part in zip(value, inner) for line in misfits(each, part, where)]
    return [f"{where} is {value!r}"]


def test_the_file_is_as_it_would_be_written_now():
    path = ROOT / "site_js" / "python" / "protocol.d.ts"
    assert path.read_text("utf-8") == typescript.written(), (
        "write it: python -m fibercalc.site.protocol.typescript"
    )


def test_every_question_and_every_answer_is_declared():
    assert boundary.ACTIONS.keys() == QUESTIONS.keys() == REPLIES.keys()


@pytest.mark.parametrize(
    "value, hint",
    [
        ({"read": "1"}, FieldSaid),
        ({"read": "1", "why": "", "more": ""}, FieldSaid),
        ({"read": 1, "why": ""}, FieldSaid),
        ({"label": "", "values": {"a": 1}}, Offer),
        ({"label": "", "values": {}, "own": [None]}, Offer),
        ({"html": "", "kind": "poster"}, Sheet),
        (["point"], data.Settings),
        ({**SETTINGS, "style": "dot"}, data.Settings),
        (True, int),
        (1, bool),
        ("1", float),
        ([1, 2, 3], tuple[int, int]),
        (None, str | int),
    ],
)
def test_what_is_not_as_declared_is_seen(value, hint):
    assert misfits(value, hint)


@pytest.mark.parametrize("card", [card.id for card in all_cards()])
def test_each_card_opens_as_declared(card):
    opened = ok("open", card=card, query="", settings=SETTINGS)
    assert opened["answered"] and not misfits(opened, Answer)
    form = {name: opened[name] for name in ("values", "exact", "rows", "own")}
    worked = ok("work", card=card, settings=SETTINGS, **form)
    assert worked["answered"] and not misfits(worked, Answer)


LENGTH = {"card": "skein-length", "settings": SETTINGS, "values": {}, "rows": {}, "own": []}
LENGTH["exact"] = {}
BASE = {"name": "Dunmel DK", "mass": "100", "length": "230", "weight_class": "3"}
LINK = {"exact": {}, "rows": {}, "own": [], "settings": SETTINGS, "here": HERE}
BOOK = {"records": DEMO, "settings": SETTINGS, "bench": None}
HERS = {"record": None, "records": DEMO, "settings": SETTINGS}
CONVERT = {"card": "skein-length", "name": "circumference", "text": "1.5", "from": "m", "to": "yd"}
CHECK = (ROOT / "shared" / "checks" / "yarn.toml").read_text("utf-8")
KEEP = {"place": "kept", "name": "Reel", "fresh": "a1b2c3d4e5f6", "today": "2026-03-01"}
LOT = next(each for each in DEMO if each["kind"] == "dye-lot")
ASKED = [
    ("work", LENGTH | {"values": {"turns": "none"}, "trail": []}),
    ("open", {"card": "skein-length", "query": "v=9"}),
    ("convert", CONVERT | {"settings": SETTINGS}),
    ("sheet", LENGTH | {"paper": None, "address": "", "here": HERE}),
    ("sheet", LENGTH | {"values": {"turns": "none"}, "paper": None, "address": "", "here": HERE}),
    ("check", {"files": {"yarn.toml": CHECK}}),
    ("hello", {}),
    ("bench-check", {"values": {}, "exact": {}, "rows": {}, "own": [], "settings": SETTINGS}),
    ("bench-read", {"record": None, "settings": SETTINGS}),
    ("bench-offers", HERS | {"card": "dye-recipe"}),
    ("base-link", LINK | {"values": BASE}),
    ("base-link", LINK | {"values": BASE | {"mass": "none"}}),
    ("base-link", LINK | {"values": BASE | {"mass": "1"}}),
    ("stand", LINK | {"values": BASE}),
    ("stand", LINK | {"values": BASE | {"mass": "none"}}),
    ("counter", HERS),
    ("counter-code", HERS | {"number": 1, "here": HERE}),
    ("workbook-view", BOOK | {"about": None, "removed": [], "now": "2026-03-01T12:00:00Z"}),
    ("workbook-form", BOOK | {"record": LOT["id"], "kind": None, "copy": False}),
    ("workbook-form", BOOK | {"record": None, "kind": "base", "copy": False}),
    (
        "workbook-check",
        BOOK
        | {"values": {"name": "Aran"}, "exact": {}, "rows": {}, "kind": "base", "id": "base-1"},
    ),
    ("workbook-check", BOOK | {"values": {}, "kind": "base", "id": "base-1"}),
    ("workbook-file", BOOK | {"text": demo_text()}),
    ("workbook-file", BOOK | {"text": "no file"}),
    ("workbook-demo", BOOK | {"records": []}),
    ("workbook-bench", BOOK),
    ("workbook-export", BOOK | {"today": "2026-03-01"}),
    ("workbook-table", BOOK | {"today": "2026-03-01", "kind": "base"}),
    ("workbook-trace", BOOK | {"today": "2026-03-01", "asked": LOT["values"]["lot"]}),
    ("workbook-places", LENGTH | {"records": DEMO}),
    ("workbook-keep", LENGTH | KEEP | {"records": DEMO}),
    ("workbook-keep", LENGTH | KEEP | {"records": DEMO, "values": {"turns": "none"}}),
]


@pytest.mark.parametrize("do, question", ASKED, ids=[do for do, _ in ASKED])
def test_real_answers_are_as_declared(do, question):
    assert not misfits(question, QUESTIONS[do], "the question")
    assert not misfits(ok(do, **question), REPLIES[do], "the answer")


def test_every_answer_is_tried():
    assert {do for do, _ in ASKED} | {"yardage"} == REPLIES.keys()


def test_the_customers_table_and_answers_are_as_declared():
    table = json.loads(json.dumps(helper.table()))
    assert not misfits(table, YardageTable)
    project = table["projects"][0]
    question = {"grams": 100, "meters": 230, "sure": table["first_sure"], "project": project["key"]}
    question["size"] = project["first"]
    assert not misfits(question, QUESTIONS["yardage"])
    assert not misfits(ok("yardage", **question), REPLIES["yardage"])
    read = asdict(base_link.read_link("v=1&g=100&m=230", "n=Dunmel"))
    assert read["kind"] == "base" and not misfits(read, data.BaseLink)
