"""Tables for a spreadsheet hold no formula; a lot is found back to its mill and forward to its orders."""

import csv
import io

from hypothesis import given
from hypothesis import strategies as st

from fibercalc.workbook.kinds import KINDS
from fibercalc.workbook.tables import csv_text, plain
from fibercalc.workbook.trace import trace

from .making import record, records


def table(kind: str, *held, titles=None) -> list[dict]:
    return list(
        csv.DictReader(io.StringIO(csv_text(KINDS[kind], list(held), titles or {}), newline=""))
    )


def test_a_list_takes_a_column_for_each_row_and_a_reference_is_written_by_name():
    one = record(
        "colorway",
        slug="one",
        name="Wet Slate",
        base="base-tarrow",
        dyes=[{"name": "navy", "depth": "0.62%"}, {"name": "black", "depth": "0.24%"}],
    )
    two = record("colorway", slug="two", name="Another", dyes=[{"name": "red"}])
    first, second = table("colorway", one, two, titles={"base-tarrow": "Tarrow Sock"})
    assert (first["Name"], first["dye 1: Dye"], first["dye 2: Dye"]) == ("Another", "red", "")
    assert (
        second["Base it was worked out on"] == "Tarrow Sock"
        and second["dye 2: Depth, percent of dry fiber"] == "0.24%"
    )
    assert second["dye 1: Depth, percent of dry fiber: how you know it"] == "decided"


@given(st.lists(records("kept"), max_size=3, unique_by=lambda each: each["id"]))
def test_no_cell_is_a_formula_and_each_text_comes_back(held):
    for row, document in zip(
        table("kept", *held), sorted(held, key=lambda each: each["values"]["name"])
    ):
        for cell in row.values():
            assert not cell.startswith(("=", "+", "-", "@"))
        assert row["What it is for"].removeprefix("'") == document["values"]["name"].removeprefix(
            "'"
        )


def test_a_cell_that_a_spreadsheet_would_work_out_gets_a_mark():
    assert [plain(text) for text in ("=1+1", "+1", "-1", "@x", "\tx", "1", "a=1", "")] == [
        "'=1+1",
        "'+1",
        "'-1",
        "'@x",
        "'\tx",
        "1",
        "a=1",
        "",
    ]


STUDIO = [
    record("base", slug="tarrow", name="Tarrow Sock"),
    record("mill-lot", slug="m1", lot="TS 2611", base="base-tarrow"),
    record("mill-lot", slug="m2", lot="TS 2700", base="base-tarrow"),
    record("jar", slug="navy", name="Navy", lot="N-207"),
    record("bottle", slug="navy", name="Navy", jar="jar-navy"),
    record("colorway", slug="slate", name="Wet Slate", base="base-tarrow"),
    record(
        "dye-lot",
        slug="14",
        lot="14",
        colorway="colorway-slate",
        mill_lot="mill-lot-m1",
        dyed="2027-01-12",
        doses=[{"bottle": "bottle-navy", "volume": "248mL"}],
    ),
    record(
        "dye-lot",
        slug="15",
        lot="15",
        colorway="colorway-slate",
        mill_lot="mill-lot-m2",
        doses=[{"jar": "jar-navy", "powder": "2.48g"}],
    ),
    record("skein", slug="s", name="Wet Slate, full", dye_lot="dye-lot-14"),
    record(
        "order",
        slug="a",
        number="1042",
        lots=[{"dye_lot": "dye-lot-14", "count": "2"}, {"dye_lot": "dye-lot-15", "count": "1"}],
    ),
    record("order", slug="b", number="1041", lots=[{"dye_lot": "dye-lot-14", "count": "1"}]),
]


def numbers(found) -> list[str]:
    return [each.lot["values"]["lot"] for each in found]


def test_a_lot_is_traced_both_ways():
    (found,) = trace(STUDIO, " 14 ")
    assert (
        found.mill_lot["values"]["lot"] == "TS 2611"
        and found.base["values"]["name"] == "Tarrow Sock"
        and found.colorway["values"]["name"] == "Wet Slate"
    )
    assert [
        (bottle["id"], jar["values"]["lot"], amount) for bottle, jar, amount in found.doses
    ] == [("bottle-navy", "N-207", "248mL")]
    assert [each["id"] for each in found.skeins] == ["skein-s"]
    assert [(order["values"]["number"], count) for order, count in found.orders] == [
        ("1041", "1"),
        ("1042", "2"),
    ]


def test_a_mill_lot_a_jar_a_bottles_jar_and_an_order_lead_to_their_dye_lots():
    assert numbers(trace(STUDIO, "ts 2611")) == ["14"]
    assert numbers(trace(STUDIO, "N-207")) == ["14", "15"], (
        "from the jar itself, and through the bottle"
    )
    assert numbers(trace(STUDIO, "1042")) == ["14", "15"] and numbers(trace(STUDIO, "1041")) == [
        "14"
    ]
    assert numbers(trace(STUDIO, "Wet Slate, full")) == ["14"]


def test_nothing_is_found_for_nothing():
    assert trace(STUDIO, "") == [] and trace(STUDIO, "99") == [] and trace([], "14") == []


def test_records_that_are_gone_leave_a_gap_and_no_fault():
    (found,) = trace([each for each in STUDIO if each["kind"] == "dye-lot"], "14")
    assert (
        found.base is None
        and found.mill_lot is None
        and found.orders == []
        and found.doses == [(None, None, "248mL")]
    )
