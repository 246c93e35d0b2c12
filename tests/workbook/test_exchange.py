"""Export then import is identity; every older file is read; what is damaged, newer or hostile is refused with one line."""

import json
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.workbook import bench
from fibercalc.workbook.exchange import FORMAT, LARGEST, compare, file_text, read_file, settled, words
from fibercalc.workbook.records import SCHEMA, LONGEST_TEXT, Unusable, checked

from .making import record, workbooks

OLD = sorted((Path(__file__).parent / "old").glob("*.json"))
BENCH = bench.read_record(json.loads((Path(__file__).parent / "old" / "bench-schema-2.json").read_text("utf-8")))[0]


def refused(text: str) -> str:
    with pytest.raises(Unusable) as line:
        read_file(text)
    assert "\n" not in str(line.value)
    return str(line.value)


@given(workbooks(), st.booleans())
def test_export_then_import_is_identity(records, with_bench):
    first = file_text(records, [], BENCH if with_bench else None, "2027-01-13")
    read, read_bench = read_file(first)
    assert file_text(read, [], read_bench, "2027-01-13") == first
    assert sorted(read, key=lambda each: each["id"]) == sorted(records, key=lambda each: each["id"])


def test_the_same_records_in_another_order_give_the_same_bytes():
    one, other = record(slug="one"), record(slug="two", mass="50g")
    assert file_text([one, other], [], BENCH, "2027-01-13") == file_text([other, one], [], BENCH, "2027-01-13")


@pytest.mark.parametrize("path", OLD, ids=lambda path: path.stem)
def test_every_older_file_is_read(path):
    """Frozen when its schema was the newest; never changed since."""
    records, bench_record = read_file(path.read_text("utf-8"))
    assert records and all(each["schema"] == SCHEMA and checked(each) == each for each in records)
    assert (bench_record is None) != path.stem.startswith("bench")


def test_there_is_a_frozen_file_for_every_schema_there_was():
    stems = {path.stem for path in OLD}
    assert stems == {f"bench-schema-{number}" for number in range(1, bench.SCHEMA + 1)} | {f"workbook-schema-{number}" for number in range(1, SCHEMA + 1)}


def test_nothing_of_my_bench_is_lost():
    """Its bases become records, its lot a mill lot, and the bench itself comes along."""
    text = next(path for path in OLD if path.stem == "bench-schema-2").read_text("utf-8")
    old = json.loads(text)
    records, bench_record = read_file(text)
    assert bench_record["values"] == old["values"] and bench_record["rows"] == old["rows"]
    base, lot = records
    assert base["values"] | {} == {
        "name": "Tarrow Sock", "mass": "100g", "mass_known": "label", "length": "420m", "length_known": "label", "weight_class": "1", "price": "27", "price_known": "decided",
        "fibers.1.fiber": "superwash wool", "fibers.1.share": "75%", "fibers.1.share_known": "label", "fibers.2.fiber": "nylon", "fibers.2.share": "25%", "fibers.2.share_known": "label"}
    assert lot["kind"] == "mill-lot" and lot["values"] == {"lot": "TS 2611", "base": base["id"]}
    assert read_file(text)[0] == records, "bringing it in twice adds nothing"


def test_a_base_of_my_bench_edited_here_is_not_taken_back():
    records, _ = read_file(OLD[0].read_text("utf-8"))
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
    "a newer record": (changed(records=[WHOLE["records"][0] | {"schema": SCHEMA + 1}]), "newer version"),
    "a record twice": (changed(records=WHOLE["records"] * 2), "twice"),
    "a name twice": ('{"format": "bench-book", "format": "bench-book"}', "twice"),
    "names of every object": ('{"__proto__": {"x": 1}, "format": "bench-book", "schema": 1, "records": []}', "no record has"),
    "the same further in": (changed(records=[{"constructor": 1}]), "no record has"),
    "too deep": (changed(unread=[[[[[[[[[1]]]]]]]]]), "8 deep"),
    "far too deep": ("[" * 200_000, "deep"),
    "a text too long": (changed(unread=["a" * (LONGEST_TEXT + 1)]), f"more than {LONGEST_TEXT} characters"),
    "too large": ('"' + "a" * LARGEST + '"', "larger than 5 MB"),
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
        records, _ = read_file(text[:at] + letter + text[at + 1:])
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


def test_what_cannot_be_read_here_travels_along():
    strange = {"id": "base-future", "schema": 7}
    text = file_text([record()], [strange], None, "2027-01-13")
    assert json.loads(text)["unread"] == [strange] and json.loads(text)["format"] == FORMAT
    assert len(read_file(text)[0]) == 1
