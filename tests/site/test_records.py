"""What the workbook's page asks of Python, as texts at the boundary: lists, forms, checks, files; whatever is in a record stays text."""

import json
import re
from html.parser import HTMLParser

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fibercalc.core.card import TEXT, Rows
from fibercalc.workbook import exchange
from fibercalc.workbook.demo import demo_text
from fibercalc.workbook.exchange import reminder
from fibercalc.workbook.kinds import KINDS
from tests.workbook.making import record

from .test_boundary import HOSTILE, ask, ok

DEMO = json.loads(demo_text())["records"]


def view(records, **more):
    return ok("workbook-view", records=records, **more)


def test_an_empty_workbook_says_how_to_begin():
    empty = view([])
    assert empty["count"] == 0 and all(f'data-new="{kind}"' in empty["html"] for kind in KINDS if kind != "kept")


def test_the_demo_comes_in_once():
    first = ok("workbook-demo", records=[])
    assert len(first["new"]) == len(DEMO) and first["clashes"] == [] and first["words"].startswith(f"{len(DEMO)} new")
    again = ok("workbook-demo", records=first["new"])
    assert again["new"] == again["newer"] == [] and "are here already" in again["words"]
    shown = view(first["new"])
    assert len(shown["demo"]) == shown["count"] == len(DEMO)
    assert "100\u00a0g from a label" in shown["html"].replace(" g from", "\u00a0g from") and "Tarrow Sock" in shown["html"]


@pytest.mark.parametrize("document", DEMO, ids=lambda each: each["id"])
def test_a_form_opened_and_saved_untouched_is_the_same_record(document):
    made = ok("workbook-form", record=document["id"], records=DEMO)
    assert made["title"] and "<form" in made["html"]
    checked = ok("workbook-check", kind=document["kind"], id=document["id"], values=made["values"], exact=made["exact"])
    assert checked["record"] is not None, checked["fields"]
    assert {part: checked["record"][part] for part in ("id", "kind", "values", "rows")} == {part: document[part] for part in ("id", "kind", "values", "rows")}


def controls(html: str) -> set[str]:
    return set(re.findall(r'<(?:input|select)[^>]* name="([^"]+)"', re.sub(r"(?s)<template.*?</template>", "", html)))


@pytest.mark.parametrize("kind", KINDS)
def test_a_form_has_a_control_for_every_field_and_how_each_number_is_known(kind):
    html = ok("workbook-form", kind=kind, records=DEMO)["html"]
    assert {name.removesuffix(".unit") for name in controls(html)} == {item.name for item in KINDS[kind].fields if not isinstance(item, Rows)}
    for item in KINDS[kind].fields:
        if isinstance(item, Rows):
            template = html.split(f'<template data-template="{item.name}"')[1].split("</template>")[0]
            assert {name.removesuffix(".unit") for name in controls(template)} == {f"{item.name}.{{n}}.{each.name}" for each in item.fields}


def test_a_field_that_names_a_record_offers_those_there_are_and_keeps_one_that_is_gone():
    lot = record("mill-lot", slug="one", lot="TS", base="base-gone")
    html = ok("workbook-form", record=lot["id"], records=[lot, record("base", slug="here", name="Here & now")])["html"]
    assert '<option value="base-here">Here &amp; now</option>' in html and '<option value="base-gone" selected>(not in this workbook)</option>' in html


def test_a_mistake_has_its_line_and_nothing_is_kept():
    checked = ok("workbook-check", kind="base", id="base-abcdefgh", values={"name": "", "mass": "9 kg", "note": "rose@example.org"}, exact={})
    assert checked["record"] is None
    assert {name for name, said in checked["fields"].items() if said["why"]} == {"name", "mass", "note"}
    assert "order number alone" in checked["fields"]["note"]["why"] and "\n" not in checked["fields"]["note"]["why"]


def test_a_comma_and_a_spread_are_read_as_on_a_card():
    checked = ok("workbook-check", kind="base", id="base-abcdefgh", settings={"style": "comma"},
                 values={"name": "x", "mass": "3,5 ± 0,1", "mass.unit": "oz", "mass_known": "measured"}, exact={})
    assert checked["record"]["values"]["mass"] == "3.5~0.1oz" and checked["record"]["values"]["mass_known"] == "measured"


def test_a_copy_has_another_name():
    made = ok("workbook-form", record="base-demo-tarrow", copy=True, records=DEMO)
    assert made["values"]["name"] == "Tarrow Sock (copy)"


def test_an_export_is_read_back_and_a_changed_file_told():
    bench_record = ok("bench-check", values={})["record"]
    made = ok("workbook-export", records=DEMO, bench=bench_record, today="2027-01-13")
    assert made["name"] == "workbook-2027-01-13.json"
    empty = ok("workbook-file", text=made["text"], records=[], bench=None)
    assert len(empty["new"]) == len(DEMO) and empty["bench"] == bench_record and not empty["bench_clash"]
    again = ok("workbook-export", records=empty["new"], bench=empty["bench"], today="2027-01-13")
    assert again == made, "export, import, export: the same bytes"
    here = [each | {"rev": "2-here", "past": ["1-demo"], "values": each["values"] | {"note": "mine"}} if each["id"] == "base-demo-cobb" else each for each in DEMO]
    there = [each | {"rev": "2-there", "past": ["1-demo"], "values": each["values"] | {"note": "theirs"}} if each["id"] in ("base-demo-cobb", "base-demo-dunmel") else each for each in DEMO]
    told = ok("workbook-file", text=exchange.file_text(there, [], bench_record, "2027-01-14"), records=here, bench=bench_record)
    assert told["words"].startswith("0 new, 1 newer, 1 clash") and "Cobb" in told["clashes"][0] and told["bench"] is None
    other = ok("bench-check", values={"tap": "5"})["record"]
    assert ok("workbook-file", text=made["text"], records=DEMO, bench=other)["bench_clash"]


def test_a_bad_file_has_one_line():
    told = ok("workbook-file", text="{", records=DEMO)
    assert told == {"refused": "This file was not read: it is damaged: it cannot be read to its end as JSON. Nothing was changed."}


def own_bench() -> dict:
    """My bench with two bases of the demo written down."""
    rows = ({"name": "Tarrow Sock", "mass": "100", "length": "420"}, {"name": "Dunmel DK", "mass": "100", "length": "230"})
    return ok("bench-check", values={f"bases.{number}.{name}": text for number, row in enumerate(rows, 1) for name, text in row.items()})["record"]


def test_my_benchs_bases_are_offered_until_they_are_here():
    bench_record = own_bench()
    assert view([], bench=bench_record)["bench"] == 2
    found = ok("workbook-bench", records=[], bench=bench_record)
    assert [each["values"]["name"] for each in found["new"]] == ["Tarrow Sock", "Dunmel DK"]
    assert view(found["new"], bench=bench_record)["bench"] == 0 and view([], bench=None)["bench"] == 0


def test_records_that_cannot_be_read_are_told_and_travel():
    strange = {"id": "base-future", "schema": 9}
    assert view([strange, *DEMO])["unread"] == 1
    made = ok("workbook-export", records=[strange, *DEMO], bench=None, today="2027-01-13")
    assert json.loads(made["text"])["unread"] == [strange] and made["unproven"] == ""
    told = ok("workbook-file", text=made["text"], records=[], bench=None)
    assert strange in told["new"] and len(told["new"]) == len(DEMO) + 1 and "1 cannot be read by this version" in told["words"]
    assert ok("workbook-file", text=made["text"], records=[strange, *DEMO], bench=None)["words"].startswith(f"0 new, 0 newer, 0 clash; {len(DEMO) + 1} are here already")


def test_what_was_removed_has_a_line_for_each_press_and_stands_in_no_list():
    three = [each for each in DEMO if each["kind"] == "base"][:3]
    removed = [{"batch": "aaaa", "removed": "2027-01-13T18:00:00Z", "count": 5, "records": three},
               {"batch": "<b>", "removed": "2027-01-12T18:00:00Z", "count": 1, "records": [{"id": "base-future", "schema": 9}]}]
    shown = view([each for each in DEMO if each not in three], removed=removed)
    lines = re.findall(r"<li>.*?</li>", shown["removed"])
    assert len(lines) == 2 and "Base Cobb, base " in lines[0] and " and 2 more · removed Wed 13 Jan 2027" in lines[0] and 'data-back="aaaa"' in lines[0]
    assert "1 that cannot be read here" in lines[1] and 'data-back="&lt;b&gt;"' in lines[1] and "(6)" in shown["removed"]
    assert not any(each["id"] in shown["html"] for each in three) and "for 30 days" in shown["removed"]
    assert view(DEMO)["removed"] == ""


def test_a_bench_of_a_newer_version_is_exported_and_read_as_it_is():
    newer = ok("bench-check", values={})["record"] | {"schema": 99}
    made = ok("workbook-export", records=DEMO, bench=newer, today="2027-01-13")
    assert json.loads(made["text"])["bench"] == newer and made["unproven"] == ""
    assert ok("workbook-file", text=made["text"], records=[], bench=None)["bench"] == newer
    assert not ok("workbook-file", text=made["text"], records=[], bench=newer)["bench_clash"]


def test_an_export_that_reads_back_otherwise_says_so(monkeypatch):
    monkeypatch.setattr(exchange, "LARGEST", 1000)
    made = ok("workbook-export", records=DEMO, bench=None, today="2027-01-13")
    assert len(json.loads(made["text"])["records"]) == len(DEMO) and "larger than" in made["unproven"]


def test_a_bases_offer_stands_once_though_bench_and_workbook_hold_it():
    found = ok("bench-offers", card="yarn-instead", record=own_bench(), records=DEMO)["offers"]
    labels = [offer["label"] for offer in found]
    assert len(set(labels)) == len(labels) and "Use Dunmel DK (230 m)" in labels


def test_records_that_do_not_matter_to_a_card_are_not_looked_at_and_damaged_ones_do_no_harm():
    damaged = [None, 7, [], {}, {"kind": "base", "id": 3}]
    found = ok("bench-offers", card="yarn-instead", record=None, records=[*DEMO, *damaged])["offers"]
    assert [offer["label"] for offer in found] == ["Use Cobb (170 m)", "Use Dunmel DK (230 m)", "Use Tarrow Sock (420 m)"]
    assert ok("bench-offers", card="scald", record=None, records=DEMO)["offers"] == []


def test_a_cards_answer_is_kept_and_says_why_not():
    asked = {"card": "skein-length", "values": {"turns": "285"}, "records": DEMO, "today": "2027-01-13", "fresh": "abcdefgh"}
    kept = ok("workbook-keep", place="kept", name="Odd skein", **asked)["record"]
    assert kept["id"] == "kept-abcdefgh" and kept["values"]["query"] == "v=1&b=285"
    assert "Give it a name" in ok("workbook-keep", place="kept", name="", **asked)["refused"]
    assert "Turns of the reel" in ok("workbook-keep", place="kept", name="x", **(asked | {"values": {"turns": "none"}}))["refused"]
    assert ok("workbook-places", **asked)["places"][0]["words"].startswith("A base")
    html = view([kept | {"rev": "1-aaaa", "changed": "2027-01-13T18:00:00Z"}])["html"]
    assert 'href="../yarn/skein-length/?v=1&amp;b=285"' in html


def test_a_lot_is_traced_on_the_screen_and_on_paper():
    made = ok("workbook-trace", asked="14", records=DEMO, today="2027-01-20")
    assert made["found"] == 1
    for text in ("TS 2611", "N-207", "Order 1042", "248 mL", "Tue 12 Jan 2027"):
        assert text in made["html"].replace("\u00a0", " ") and text in made["sheet"].replace("\u00a0", " "), text
    assert ok("workbook-trace", asked="<b>", records=DEMO)["found"] == 0


@pytest.mark.parametrize(("about", "due"), [
    (None, False), ({}, False), ({"saves": 0, "exported": "2026-01-01T00:00:00Z"}, False), ({"saves": True}, False),
    ({"saves": 9, "exported": "2027-01-10T09:00:00Z"}, False), ({"saves": 10, "exported": "2027-01-13T09:00:00Z"}, True),
    ({"saves": 1, "exported": "2026-12-31T09:00:00Z"}, False), ({"saves": 1, "exported": "2026-12-30T09:00:00Z"}, True),
    ({"saves": 1, "first": "2026-12-30T09:00:00Z", "exported": None}, True), ({"saves": 2, "first": "2027-01-12T09:00:00Z", "exported": None}, False), ({"saves": 12, "exported": "<b>"}, True)])
def test_an_old_export_is_reminded_of(about, due):
    """After ten saves, or fourteen days with one."""
    assert bool(reminder(about, "2027-01-13T09:30:00Z")) == due


def test_the_reminder_says_how_old():
    assert reminder({"saves": 1, "exported": "2026-12-29T09:00:00Z"}, "2027-01-13T09:30:00Z") == "The last export is 15 days old. 1 change since stands in this browser alone: save a copy as a file."


def elements(html: str) -> list:
    """Every start tag with its attributes, as an independent parser reads them."""
    found = []
    parser = HTMLParser()
    parser.handle_starttag = lambda tag, attributes: found.append((tag, attributes))
    parser.feed(html)
    return found


@settings(deadline=None, max_examples=60, derandomize=True)
@given(HOSTILE | st.text(max_size=60), st.sampled_from([(kind, name) for kind in KINDS for name, item in KINDS[kind].names.items() if "." not in name and not isinstance(item, Rows) and item.of == TEXT]))
def test_hostile_text_in_any_text_field_stays_text(text, where):
    """In the list, the form, the trace: every tag is one of ours."""
    kind, name = where
    values = {KINDS[kind].title: "Test", name: text}
    checked = ok("workbook-check", kind=kind, id=f"{kind}-abcdefgh", values=values, exact={})
    if checked["record"] is None:
        return
    document = checked["record"] | {"rev": "1-aaaa", "changed": "2027-01-13T18:00:00Z"}
    title = document["values"][KINDS[kind].title]
    pages = [view([document])["html"], ok("workbook-form", record=document["id"], records=[document])["html"], ok("workbook-trace", asked=title, records=[document, *DEMO])["html"]]
    for html in pages:
        for tag, attributes in elements(html):
            assert tag not in ("script", "img", "iframe", "svg", "object", "embed"), tag
            for name, value in attributes:
                assert not name.startswith("on") and name != "srcdoc" and not (name == "href" and not value.startswith(("../", "#"))), (name, value)


def test_a_fault_is_a_value_here_too():
    assert ask("workbook-form", kind="customer", records=[])["problem"]["kind"] == "fault"
