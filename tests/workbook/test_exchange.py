"""Export then import is identity; every older file is read; what is damaged, newer or hostile is refused with one line."""

import json
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.workbook import bench, exchange
from fibercalc.workbook.demo import demo_text
from fibercalc.workbook.exchange import FORMAT, LARGEST, bench_as_kept, clash_line, compare, file_text, not_a_copy, read_file, settled, words
from fibercalc.workbook.records import LONGEST_TEXT, SCHEMA, Unusable, checked

from .making import record, workbooks

OLD = sorted((Path(__file__).parent / "old").glob("*.json"))
BENCH = bench.read_record(json.loads((Path(__file__).parent / "old" / "bench-schema-2.json").read_text("utf-8")))[0]
DEMO = json.loads(demo_text())["records"]


def refused(text: str) -> str:
    with pytest.raises(Unusable) as line:
        read_file(text)
    assert "\n" not in str(line.value)
    return str(line.value)


@given(workbooks(), st.booleans())
def test_export_then_import_is_identity(records, with_bench):
    first = file_text(records, [], BENCH if with_bench else None, "2027-01-13")
    read, unread, read_bench = read_file(first)
    assert file_text(read, unread, read_bench, "2027-01-13") == first and not unread
    assert not_a_copy(first, records, [], BENCH if with_bench else None) == ""
    assert sorted(read, key=lambda each: each["id"]) == sorted(records, key=lambda each: each["id"])


def test_the_same_records_in_another_order_give_the_same_bytes():
    one, other = record(slug="one"), record(slug="two", mass="50g")
    assert file_text([one, other], [], BENCH, "2027-01-13") == file_text([other, one], [], BENCH, "2027-01-13")


@pytest.mark.parametrize("path", OLD, ids=lambda path: path.stem)
def test_every_older_file_is_read(path):
    """Frozen when its schema was the newest; never changed since."""
    records, _, bench_record = read_file(path.read_text("utf-8"))
    assert records and all(each["schema"] == SCHEMA and checked(each) == each for each in records)
    assert (bench_record is None) != path.stem.startswith("bench")


def test_there_is_a_frozen_file_for_every_schema_there_was():
    stems = {path.stem for path in OLD}
    assert stems == {f"bench-schema-{number}" for number in range(1, bench.SCHEMA + 1)} | {f"workbook-schema-{number}" for number in range(1, SCHEMA + 1)}


def test_nothing_of_my_bench_is_lost():
    """Its bases become records, its lot a mill lot, and the bench itself comes along."""
    text = next(path for path in OLD if path.stem == "bench-schema-2").read_text("utf-8")
    old = json.loads(text)
    records, _, bench_record = read_file(text)
    assert bench_record["values"] == old["values"] and bench_record["rows"] == old["rows"]
    base, lot = records
    assert base["values"] | {} == {
        "name": "Tarrow Sock", "mass": "100g", "mass_known": "label", "length": "420m", "length_known": "label", "weight_class": "1", "price": "27", "price_known": "decided",
        "fibers.1.fiber": "superwash wool", "fibers.1.share": "75%", "fibers.1.share_known": "label", "fibers.2.fiber": "nylon", "fibers.2.share": "25%", "fibers.2.share_known": "label"}
    assert lot["kind"] == "mill-lot" and lot["values"] == {"lot": "TS 2611", "base": base["id"]}
    assert read_file(text)[0] == records, "bringing it in twice adds nothing"


def test_a_base_of_my_bench_edited_here_is_not_taken_back():
    records = read_file(OLD[0].read_text("utf-8")).records
    edited = records[0] | {"rev": "2-edit", "past": [records[0]["rev"]], "values": records[0]["values"] | {"name": "Renamed"}}
    assert [each["id"] for each in compare(records, [edited])["older"]] == [edited["id"]]


WHOLE = json.loads(file_text([record(mass="100g")], [], BENCH, "2027-01-13"))


def changed(**parts) -> str:
    return json.dumps(WHOLE | parts)


DAMAGED = {
    "nothing": ("", "damaged"),
    "half a file": (json.dumps(WHOLE)[:-20], "damaged"),
    "no JSON": ("PK\x03\x04", "damaged"),
    "a list": ("[]", "no workbook"),
    "another program's file": (changed(format="other"), "no workbook"),
    "no schema": (changed(schema=None), "nothing of its schema"),
    "schema true": (changed(schema=True), "nothing of its schema"),
    "a newer schema": (changed(schema=SCHEMA + 1), "newer version"),
    "a newer bench": (json.dumps({"format": bench.FORMAT, "schema": 99, "values": {}, "rows": {}}), "newer version"),
    "no records": (changed(records={}), "no records"),
    "a record twice": (changed(records=WHOLE["records"] * 2), "twice"),
    "a record twice, once unread": (changed(unread=WHOLE["records"]), "twice"),
    "unread that is no list": (changed(unread={}), "no records"),
    "unread that is no record": (changed(unread=[7]), "no record"),
    "unread without an id": (changed(unread=[{"schema": 7}]), "no record"),
    "a name twice": ('{"format": "bench-book", "format": "bench-book"}', "twice"),
    "names of every object": ('{"__proto__": {"x": 1}, "format": "bench-book", "schema": 1, "records": []}', "no record has"),
    "the same further in": (changed(records=[{"constructor": 1}]), "no record has"),
    "too deep": (changed(unread=[[[[[[[[[1]]]]]]]]]), "8 deep"),
    "far too deep": ("[" * 200_000, "deep"),
    "a text too long": (changed(records=[WHOLE["records"][0] | {"values": {"name": "a" * (LONGEST_TEXT + 1)}}]), f"more than {LONGEST_TEXT} characters"),
    "too large": ('"' + "a" * LARGEST + '"', f"larger than {LARGEST // 1_000_000} MB"),
    "a number that is none": (changed(made=float("nan")), "number that is none"),
    "a bench that is none": (changed(bench={"format": bench.FORMAT, "schema": 2, "values": {"syringe": "9 km"}, "rows": {}}), "My bench"),
    "a customer": (changed(records=[WHOLE["records"][0] | {"values": {"name": "x", "note": "rose@example.org"}}]), "no customer details"),
}


@pytest.mark.parametrize("name", DAMAGED)
def test_a_damaged_newer_or_hostile_file_is_refused_with_one_line(name):
    text, why = DAMAGED[name]
    assert why in refused(text)


@given(st.integers(0, len(json.dumps(WHOLE)) - 1), st.sampled_from('{}[]",:0x\x00é'))
def test_a_file_with_one_letter_changed_is_read_or_refused_and_never_more(at, letter):
    text = json.dumps(WHOLE)
    try:
        records = read_file(text[:at] + letter + text[at + 1:]).records
    except Unusable:
        return
    assert all(checked(each) == each for each in records)


def test_new_newer_same_older_and_clash_are_told_apart():
    ours = record(rev="2-bbbb", past=["1-aaaa"], mass="100g")
    cases = {
        "same": record(rev="1-zzzz", mass="100g"),
        "newer": record(rev="3-cccc", past=["2-bbbb", "1-aaaa"], mass="101g"),
        "older": record(rev="1-aaaa", mass="99g"),
        "clash": record(rev="2-dddd", past=["1-aaaa"], mass="98g"),
        "new": record(rev="2-dddd", slug="other"),
    }
    for which, theirs in cases.items():
        found = compare([theirs], [ours])
        assert [name for name, held in found.items() if held] == [which]
    by_hand = record(rev="2-bbbb", past=["1-aaaa"], mass="97g")
    assert compare([by_hand], [ours])["clash"], "a file edited by hand keeps its revision and is no news"
    assert words(compare([cases["new"], cases["clash"]], [ours])) == "1 new, 0 newer, 1 clash"
    assert words(compare([cases["same"]], [ours])) == "0 new, 0 newer, 0 clash; 1 is here already"


def test_a_settled_clash_is_no_clash_again_on_either_side():
    ours = record(rev="2-bbbb", past=["1-aaaa"], mass="100g")
    theirs = record(rev="2-dddd", past=["1-aaaa"], mass="98g")
    kept = settled(theirs, ours)
    assert kept["values"] == theirs["values"]
    assert not compare([ours], [kept])["clash"] and compare([ours], [kept])["older"]
    assert compare([theirs], [kept])["same"]


BASE = record(mass="100g")
STRANGE = {
    "a newer schema": BASE | {"id": "base-newer", "schema": SCHEMA + 6, "values": {"name": {"en": "x" * 3000}}, "more": [1, 2.5, None, True]},
    "a kind not known here": BASE | {"id": "loom-newer", "kind": "loom"},
    "a field not known here": BASE | {"id": "base-field", "values": BASE["values"] | {"shelf": "3"}},
    "hardly a record": {"id": "base-future", "schema": 7},
    "a damaged record": BASE | {"id": "base-damaged", "values": {"name": "x", "mass": "much"}},
}


@pytest.mark.parametrize("name", STRANGE)
def test_what_cannot_be_read_here_travels_out_and_in_unchanged(name):
    strange = STRANGE[name]
    text = file_text([record()], [strange], BENCH, "2027-01-13")
    assert json.loads(text)["unread"] == [strange] and json.loads(text)["format"] == FORMAT
    file = read_file(text)
    assert len(file.records) == 1 and file.unread == [strange]
    assert not_a_copy(text, file.records, file.unread, file.bench) == "" and file_text(*file, "2027-01-13") == text


@pytest.mark.parametrize("name", [name for name in STRANGE if "known here" in name or "schema" in name])
def test_a_newer_record_among_the_others_of_a_file_is_kept_as_it_is(name):
    strange = STRANGE[name]
    file = read_file(changed(records=[*WHOLE["records"], strange]))
    assert file.records == WHOLE["records"] and file.unread == [strange]


def test_what_an_older_version_could_not_read_is_a_record_where_it_can_be_read():
    assert read_file(changed(records=[], unread=WHOLE["records"])).records == WHOLE["records"]


def test_my_bench_of_a_newer_version_travels_unchanged():
    newer = BENCH | {"schema": bench.SCHEMA + 1, "values": BENCH["values"] | {"shelf": "3"}}
    assert read_file(changed(bench=newer)).bench == newer and bench_as_kept(newer) == (newer, [])


def test_records_that_cannot_be_read_here_are_compared_too():
    ours, theirs = STRANGE["a newer schema"], STRANGE["a newer schema"] | {"rev": "2-bbbb", "past": [BASE["rev"]], "more": [2]}
    for file, own, which in (([ours], [ours], "same"), ([theirs], [ours], "newer"), ([ours], [theirs], "older"), ([ours], [], "new"),
                             ([{"id": "base-future", "schema": 7}], [{"id": "base-future", "schema": 8}], "clash")):
        assert [name for name, held in compare(file, own).items() if held] == [which]
    theirs, ours = {"id": "base-future", "schema": 7}, record(slug="future")
    assert "base-future" in clash_line(theirs, [ours]) and settled(theirs, ours)["past"] == [ours["rev"]]
    assert words(compare([theirs], []), 1) == "1 new, 0 newer, 0 clash; 1 cannot be read by this version of the book and is kept as found"


def test_ten_thousand_records_are_written_and_read_with_room_for_many_more():
    """Four years of ten records a working day; a workbook of 9,784 once came out as a file that was too large to come in."""
    whole = [each | {"id": f"{each['id'][:50]}-{turn}"} for turn in range(300) for each in DEMO][:9784]
    text = file_text(whole, [], BENCH, "2027-01-13")
    assert 5_000_000 < len(text.encode()) < LARGEST / 4
    assert not_a_copy(text, sorted(whole, key=lambda each: each["id"]), [], BENCH) == ""


def test_a_file_is_no_copy_when_anything_in_it_differs_from_what_is_here():
    one, other, strange = record(slug="one"), record(slug="two", mass="50g"), STRANGE["a newer schema"]
    text = file_text([one, other], [strange], BENCH, "2027-01-13")
    assert not_a_copy(text, [one, other], [strange], BENCH) == ""
    for records, unread, bench_record, why in (
            ([one], [strange], BENCH, "1 of its records"), ([one, other | {"rev": "2-bbbb"}], [strange], BENCH, "1 of its records"), ([one, other, record(slug="three")], [strange], BENCH, "1 of its"),
            ([one, other], [strange | {"more": [1]}], BENCH, "1 of its records"), ([one, other], [], BENCH, "1 of its"), ([one, other], [strange, 7], BENCH, "1 of its"),
            ([one, other], [strange], None, "My bench"), ([one, other], [strange], BENCH | {"rows": {}}, "My bench")):
        assert why in not_a_copy(text, records, unread, bench_record)
    assert "damaged" in not_a_copy(text[:-9], [one, other], [strange], BENCH)


def test_a_file_larger_than_can_be_read_is_no_copy(monkeypatch):
    text = file_text([record()], [], None, "2027-01-13")
    monkeypatch.setattr(exchange, "LARGEST", len(text) - 1)
    assert "larger than" in not_a_copy(text, [record()], [], None)


@pytest.mark.parametrize("text", ["[" * 200_000 + "]" * 200_000, '{"format": "bench-book", "schema": 1, "records": [], "unread": ' + "[" * 200_000 + "]" * 200_000 + "}", '{"a":' * 80_000])
def test_nesting_is_refused_before_it_is_parsed(text, monkeypatch):
    monkeypatch.setattr(exchange.json, "loads", lambda *given, **options: pytest.fail("it was parsed"))
    assert refused(text) == "it is nested more than 8 deep"
