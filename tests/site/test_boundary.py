"""The whole protocol between page and Python, with no browser: both ends are text."""

import json
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fibercalc.core import registry
from fibercalc.core.checks import shared_folder
from fibercalc.core.registry import find_card
from fibercalc.site import boundary
from fibercalc.site.boundary import handle
from tests import cards  # noqa: F401  (registers the fixture card)


def ask(do, **request):
    return json.loads(handle(json.dumps({"id": 1, "do": do} | request)))


def ok(do, **request):
    reply = ask(do, **request)
    assert "ok" in reply, reply
    return reply["ok"]


def test_work_answers_with_slots_echoes_and_a_link():
    state = ok("work", card="skein-length", values={"turns": "285", "circumference": "59", "circumference.unit": "in"})
    assert state["answered"] and state["query"] == "v=1&b=285&c=59in"
    assert state["fields"]["circumference"] == {"read": "read as 59\u00a0in (1.499\u00a0m)", "why": ""}
    assert {"answer", "timers", "numbers", "pictures", "working", "basis", "cautions", "notes", "carry", "tables"} == state["slots"].keys()
    assert "467" in state["slots"]["answer"]


def test_a_bad_value_has_its_line_and_no_slots():
    state = ok("work", card="skein-length", values={"turns": "none"})
    assert not state["answered"] and state["slots"] == {} and state["query"] is None
    assert state["fields"]["turns"]["why"].startswith("Turns of the reel: none given")


def test_an_exact_text_stands_for_the_shown_one():
    """1.64042 yd is shown for 1.5 m exactly; the answer must not feel the rounding."""
    values = {"circumference": "1.64042", "circumference.unit": "yd", "way": "turns"}
    exact = ok("work", card="skein-length", values=values, exact={"circumference": "1.5m"})
    assert exact["query"] == "v=1&a=turns"


def test_opening_a_link_fills_the_form():
    state = ok("open", card="every-kind", query="?v=1&l=2&l1b=0.5%25&c=180%C2%B0F&f=-")
    assert state["answered"] and state["rows"] == {"dyes": 2}
    assert state["values"]["dyes.1.depth"] == "0.5" and state["values"]["temperature"] == "180" and state["values"]["temperature.unit"] == "°F"
    assert state["values"]["price"] == "" and state["link_notes"] == []


def test_converting_there_and_back_gives_the_same_digits():
    there = ok("convert", card="skein-length", name="circumference", text="1.5", **{"from": "m", "to": "yd"})
    back = ok("convert", card="skein-length", name="circumference", text=there["text"], exact=there["exact"], **{"from": "yd", "to": "m"})
    assert there == {"text": "1.64042", "exact": "1.5m"} and back["text"] == "1.5"


def test_converting_keeps_a_typed_spread():
    there = ok("convert", card="skein-length", name="sample_length", text="10 ± 0.5", **{"from": "m", "to": "yd"})
    assert there["text"] == "10.9361 ± 0.546807"


def test_converting_what_cannot_be_read_leaves_it_alone():
    assert ok("convert", card="skein-length", name="circumference", text="abc", **{"from": "m", "to": "yd"}) == {"text": "abc", "exact": ""}


def test_a_sheet_holds_the_values_as_entered():
    html = ok("sheet", card="skein-length", values={"turns": "285"}, address="https://example.org/?v=1&b=285")["html"]
    assert "285" in html and "example.org" in html and "Weigh it rested" in html


def test_every_worked_example_passes_through_the_boundary():
    files = {path.stem: path.read_text("utf-8") for path in (shared_folder() / "checks").glob("*.toml")}
    result = ok("check", files=files)
    assert result["failed"] == [] and result["passed"] >= 100


def test_a_broken_worked_example_is_reported():
    text = '[[check]]\nof = "yarn.skein.length_by_turns"\ngiven = {turns = 2, turn_length = 1.5}\nexpect = 4\ntolerance = 0.5\nkind = "by hand"\nclaim = "x"\n'
    assert len(ok("check", files={"x": text})["failed"]) == 1


def test_my_bench_is_checked_kept_read_and_offered():
    checked = ok("bench-check", values={"reels.1.name": "Oak reel", "reels.1.circumference": "59", "reels.1.circumference.unit": "in", "style": "comma",
                                       "bases.1.name": "Tarrow Sock", "bases.1.mass": "100", "bases.1.length": "420"})
    assert checked["answered"]
    read = ok("bench-read", record=checked["record"])
    assert read["record"] == checked["record"] and read["notes"] == [] and read["settings"]["style"] == "comma"
    offers = ok("bench-offers", card="skein-length", record=checked["record"])["offers"]
    assert offers == [{"label": "Use Oak reel (59 in)", "values": {"circumference": "59", "circumference.unit": "in", "stretch": "0"}}]
    bases = ok("bench-offers", card="skein-split", record=checked["record"])["offers"]
    assert {"Use Oak reel (59 in)", "Use Tarrow Sock (420 m)"} <= {offer["label"] for offer in bases}


def test_a_bench_that_was_never_saved_offers_nothing():
    assert ok("bench-offers", card="bath-heat", record=None) == {"offers": []}
    saved = ok("bench-check", values={"tap": "7", "altitude": "300"})["record"]
    offered = ok("bench-offers", card="bath-heat", record=saved)["offers"]
    assert {"start": "7", "start.unit": "°C", "altitude": "300", "altitude.unit": "m"} in [offer["values"] for offer in offered]


@pytest.mark.parametrize("record", [None, [], "x", {"format": "other"}, {"format": "bench-book-bench", "schema": 99}, {"format": "bench-book-bench", "schema": True},
                                    {"format": "bench-book-bench", "schema": 1, "values": {"reels.1.circumference": "<b>"}, "rows": {"reels": 1, "pots": 1e9, "bases": -4}},
                                    {"format": "bench-book-bench", "schema": 1, "values": {"__proto__": "x", "money": "x" * 900}, "rows": "no"}])
def test_a_damaged_or_hostile_bench_record_never_harms(record):
    read = ok("bench-read", record=record)
    again = ok("bench-read", record=read["record"])
    assert again["record"] == read["record"] and again["notes"] == []


def test_faults_are_values():
    for text in ("", "[]", "{}", '{"do": "nothing"}', '{"id": 3, "do": "work"}', '{"id": 3, "do": "work", "card": "none"}'):
        assert json.loads(handle(text))["problem"]["kind"] == "fault"


def test_an_unknown_card_is_told_from_a_fault_inside_one(monkeypatch):
    assert ask("work", card="none")["problem"]["text"] == "none: no card has this id."
    assert ask("work", card="record-none")["problem"]["text"] == "record-none: no card has this id."
    broken = replace(find_card("skein-length"), id="broken", answer=lambda w, **given: given["circumfrence"])
    monkeypatch.setitem(registry.ADDED, "broken", broken)
    assert ask("work", card="broken")["problem"]["text"] == "KeyError: 'circumfrence'"


DEEP = "[" * 200_000 + "]" * 200_000  # 400 kB


@pytest.mark.parametrize("text", ['{"id": 3, "do": "hello", "x": ' + DEEP + "}", DEEP, "[" * 200_000, '{"a":' * 80_000, '{"x": "\\"[", "y": ' + DEEP + "}"])
def test_what_is_nested_too_deep_is_refused_before_it_is_parsed(text, monkeypatch):
    """In a browser a parser that calls itself so often ends the interpreter; here it must never be asked."""
    monkeypatch.setattr(boundary.json, "loads", lambda text: pytest.fail("it was parsed"))
    assert "nested more than 20 deep" in handle(text)


def test_brackets_in_texts_are_no_nesting():
    record = {"format": "bench-book-bench", "schema": 2, "values": {"reels.1.name": "[" * 100 + '\\"' + "{" * 90}, "rows": {"reels": 1}}
    assert "ok" in ask("bench-read", record=record)
    assert ok("open", card="skein-length", query="v=1&b=" + "[" * 400_000)["link_notes"] == ["This link is too long to be one of ours; the example is shown."]


def test_a_missing_lazy_package_is_asked_for(monkeypatch):
    def needs(request):
        raise ModuleNotFoundError("No module named 'segno'", name="segno")
    monkeypatch.setitem(boundary.ACTIONS, "work", needs)
    assert ask("work", card="skein-length")["problem"] == {"kind": "needs", "packages": ["segno"], "text": "segno is needed first"}


HOSTILE = st.sampled_from(["<img src=x onerror=alert(1)>", '"><script>alert(1)</script>', "javascript:alert(1)", "\u202eevil", "\x00", "a" * 10_000, "&lt;", "'--", "</output>"])


@settings(deadline=None, max_examples=40, derandomize=True)
@given(HOSTILE | st.text(max_size=60), st.sampled_from(["stock_note", "dyes.1.name", "mass", "shade", "way", "ready", "price"]))
def test_hostile_text_stays_text(text, name):
    """Nothing a person types becomes an element: every tag in the slots is one of ours."""
    state = ok("work", card="every-kind", values={name: text})
    for html in state["slots"].values():
        assert "<script" not in html and "<img" not in html and "onerror=" not in html.replace("onerror=alert(1)&gt;", "").replace("&lt;img src=x onerror=alert(1)&gt;", "")
    sheet = ok("sheet", card="every-kind", values={name: text}, address=text)["html"]
    assert "<script" not in sheet and "<img" not in sheet
