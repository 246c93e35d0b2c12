"""The demo workbook is the demo studio's: each fact that shared/demo holds as data is the same in it."""

import tomllib

import fibercalc
from fibercalc.core.checks import shared_folder
from fibercalc.workbook.demo import demo_text
from fibercalc.workbook.exchange import file_text, read_file
from fibercalc.workbook.kinds import KINDS
from fibercalc.workbook.lines import rows_of
from fibercalc.workbook.records import references
from fibercalc.workbook.trace import trace

FOLDER = shared_folder() / "demo"
TEXT = demo_text()
RECORDS = {each["id"]: each for each in read_file(TEXT)[0]}
BASES, COLORWAYS, RELEASE, MAKING = (
    tomllib.loads((FOLDER / f"{name}.toml").read_text("utf-8"))
    for name in ("bases", "colorways", "release", "making")
)


def held(kind: str, title: str) -> dict:
    return next(
        each
        for each in RECORDS.values()
        if each["kind"] == kind and each["values"][KINDS[kind].title] == title
    )


def test_it_is_a_file_as_the_book_writes_it_and_every_reference_leads_somewhere():
    assert file_text(list(RECORDS.values()), [], None, "2027-01-13") == TEXT
    for document in RECORDS.values():
        for where, record_id in references(document):
            assert RECORDS[record_id]["kind"] == KINDS[document["kind"]].refers[where]
    assert {each["kind"] for each in RECORDS.values()} == set(KINDS), "one of each kind at least"


def test_bases_and_colorways_are_the_studios():
    for base in BASES["base"]:
        values = held("base", base["name"])["values"]
        assert (values["mass"], values["length"]) == (f"{base['grams']}g", f"{base['meters']}m")
        if "fiber_percent" in base:
            assert {
                row["fiber"]: row["share"] for row in rows_of(held("base", base["name"]), "fibers")
            } == {fiber: f"{share}%" for fiber, share in base["fiber_percent"].items()}
    slate = COLORWAYS["colorway"][0]
    assert {
        row["name"]: row["depth"] for row in rows_of(held("colorway", slate["name"]), "dyes")
    } == {dye: f"{depth}%" for dye, depth in slate["depth_percent"].items()}


def test_release_and_price_are_the_studios():
    plan, kit, price = held("plan", "Winter release"), RELEASE["kit"], RELEASE["price"]
    assert plan["values"]["release"] == str(kit["release"]) and plan["values"]["needed"] == str(
        kit["in_hand"]
    )
    assert plan["values"]["starts"] == str(kit["part_one"])
    assert list(rows_of(plan, "closed")[0].values()) == [str(day) for day in kit["closed"]]
    assert [row["needed"] for row in rows_of(held("product", kit["name"]), "parts")] == [
        f"{meters}m" for meters in kit["needed_meters"].values()
    ]
    assert [(row["count"], row["spare"]) for row in rows_of(plan, "items")][:2] == [
        (str(kit["kits"]), str(kit["kits_spare"])),
        (str(RELEASE["set"]["sets_sold"]), str(RELEASE["set"]["sets_spare"])),
    ]
    tarrow = held("base", "Tarrow Sock")["values"]
    assert float(tarrow["price"]) == price["asked"] and float(tarrow["cost"]) == price["base"]
    assert held("measurement", "My work on a skein")["values"]["minutes"].startswith(
        f"{price['minutes_a_skein']}~"
    )
    assert held("colorway", "Lamps")["values"]["shades"] == str(RELEASE["set"]["days"])
    assert (
        rows_of(held("product", "Twelve Lamps"), "parts")[0]["mass"]
        == f"{RELEASE['set']['printed_grams_at_54_turns']}g"
    )


def test_measurements_are_the_studios():
    sock, pullover, towels = (
        held("measurement", name)["values"]
        for name in (
            "Tarrow, sock machine, washed",
            "Dunmel, pullover swatch, washed",
            "Cobb towels, first wash",
        )
    )
    assert (sock["stitches"], sock["rows"]) == (
        f"{MAKING['sock']['stitches_per_cm']:g}percm",
        f"{MAKING['sock']['rows_per_cm']:g}percm",
    )
    assert (pullover["stitches"], pullover["rows"]) == tuple(
        f"{MAKING['pullover'][name]}per10cm"
        for name in ("washed_stitches_per_10_cm", "washed_rows_per_10_cm")
    )
    assert (towels["length_change"], towels["width_change"]) == tuple(
        f"{MAKING['towels'][name]}%" for name in ("shrink_length_percent", "shrink_width_percent")
    )


def test_the_dye_lot_is_the_recipes_own_doses_and_can_be_traced():
    (found,) = trace(list(RECORDS.values()), "14")
    assert [amount for _, _, amount in found.doses] == ["248mL", "96mL", "16mL"]
    assert fibercalc.work("dye-recipe")["results"]["stock_total"]["value"] == 360
    assert all(jar for _, jar, _ in found.doses) and found.mill_lot and len(found.orders) == 2


def test_a_kept_answer_is_what_its_card_says():
    kept = held("kept", "Twelve Lamps, at 20 g a small skein")["values"]
    assert " ".join(fibercalc.work(kept["card"])["answer"].split()) == kept["answer"]
