"""Tables of the dye chapter and of mordants: what must hold within each, whatever copy of it is read one day."""

import pytest

from fibercalc.core.table import read_table
from fibercalc.dye.recipe import USUAL_STRENGTHS
from fibercalc.sources import all_sources

KINDS = {"protein", "nylon", "cellulose", "none"}
HANDLED = {"powder", "acid", "alkali", "heat", "metal"}
# Standard atomic weights (IUPAC, rounded), for the metal in a mordant.
ATOMIC = {
    "H": 1.008,
    "C": 12.011,
    "O": 15.999,
    "S": 32.06,
    "K": 39.098,
    "Al": 26.982,
    "Fe": 55.845,
    "Cu": 63.546,
}


def rows(name: str, chapter: str = "dye") -> list[dict]:
    return list(read_table(chapter, name).rows)


@pytest.mark.parametrize(
    "name",
    [
        "dye-classes",
        "fibers-in-the-bath",
        "auxiliaries",
        "depth-words",
        "stock-strengths",
        "steam-times",
        "liquor-ratios",
        "mordant-helpers",
    ],
)
def test_keys_are_not_repeated_and_low_is_not_above_high(name):
    found = rows(name)
    assert len({row["key"] for row in found}) == len(found)
    for row in found:
        for low in [column for column in row if column.endswith("low")]:
            high = low.removesuffix("low") + "high"
            if row[low] != "" and row[high] != "":
                assert row[low] <= row[high], (row["key"], low)


def test_each_class_takes_a_fiber_that_is_listed_and_says_what_it_handles():
    kinds = {row["kind"] for row in rows("fibers-in-the-bath")}
    assert kinds == KINDS
    for row in rows("dye-classes"):
        assert set(row["takes"].split()) <= kinds - {"none"}, row["key"]
        assert {"powder", "heat"} <= set(row["handles"].split()) <= HANDLED, row["key"]
        assert ("acid" in row["handles"]) == (
            row["ph_high"] <= 7.0 and "cellulose" not in row["takes"]
        ), row["key"]
        assert ("alkali" in row["handles"]) == (row["ph_low"] > 9), row["key"]
        assert row["top_c"] == "" or row["top_c"] <= 100, row["key"]
        assert row["depth_source"] in all_sources(), row["key"]


def test_a_class_that_is_not_told_is_treated_as_one_that_may_hold_a_metal():
    """Unknown means the stricter reading."""
    assert "metal" in read_table("dye", "dye-classes").row("key", "acid-unknown")["handles"]


def test_marks_of_depth_are_the_top_of_what_is_called_deep():
    words = read_table("dye", "depth-words")
    classes = {row["key"]: row for row in rows("dye-classes")}
    assert classes["acid-leveling"]["depth_mark"] == words.row("key", "acid-deep")["high"] == 4
    assert (
        classes["reactive-triazinyl"]["depth_mark"]
        == words.row("key", "reactive-deep")["high"]
        == 5
    )


def test_auxiliaries_belong_to_a_class_and_grow_with_the_shade():
    keys = {row["key"] for row in rows("dye-classes")}
    found = rows("auxiliaries")
    assert {row["dye_class"] for row in found} <= keys and {row["unit"] for row in found} == {
        "%",
        "g/L",
    }
    for names in (
        ("small-lot-citric-pale", "small-lot-citric-medium", "small-lot-citric-deep"),
        ("cotton-salt-pale", "cotton-salt-medium", "cotton-salt-deep"),
        ("cotton-soda-pale", "cotton-soda-medium", "cotton-soda-deep"),
        ("small-lot-glauber-pale", "small-lot-glauber-medium", "small-lot-glauber-deep"),
    ):
        values = [read_table("dye", "auxiliaries").row("key", name)["high"] for name in names]
        assert values == sorted(set(values)), names


def test_mineral_acids_are_listed_as_not_taken():
    """Published recipes use them; no card here does."""
    mineral = [row for row in rows("auxiliaries") if row["label"] == "Sulfuric acid"]
    assert mineral and all("no card" in row["note"] for row in mineral)


def test_strengths_that_have_a_use_are_the_usual_ones():
    """A strength is written in the recipe's list; the table says what each is for."""
    assert {row["percent"] for row in rows("stock-strengths")} <= set(USUAL_STRENGTHS)


def test_crystals_of_glaubers_salt_weigh_what_the_note_says():
    """Na2SO4 142.04, with 10 waters 322.19: 2.27 times."""
    assert f"{322.19 / 142.04:.2f} g of crystals" in read_table("dye", "auxiliaries").note


def test_marks_of_what_goes_with_a_mordant_are_not_below_its_range():
    for row in rows("mordant-helpers"):
        assert row["low"] <= row["high"]
        assert row["high"] <= row["mark"] or row["key"] == "chrome", row["key"]


def test_chrome_is_not_offered():
    """Its mark is none at all, and the table of what the card reckons with does not know it."""
    row = read_table("dye", "mordant-helpers").row("key", "chrome")
    assert row["mark"] == 0 and "cancer" in row["why"]
    assert not any("chrom" in metal["label"].lower() for metal in rows("mordants", "safe"))


def test_no_mordant_stands_in_two_tables():
    assert not {row["key"] for row in rows("mordants", "safe")} & {
        row["key"] for row in rows("mordant-helpers")
    }


@pytest.mark.parametrize(
    "label, formula, symbol",
    [
        ("Potash alum", {"K": 1, "Al": 1, "S": 2, "O": 20, "H": 24}, "Al"),
        ("Ferrous sulfate", {"Fe": 1, "S": 1, "O": 11, "H": 14}, "Fe"),
        ("Copper sulfate", {"Cu": 1, "S": 1, "O": 9, "H": 10}, "Cu"),
    ],
)
def test_metal_in_a_mordant_by_atomic_weights(label, formula, symbol):
    row = next(row for row in rows("mordants", "safe") if row["label"].startswith(label))
    share = 100 * ATOMIC[symbol] / sum(ATOMIC[one] * count for one, count in formula.items())
    assert row["metal"] == pytest.approx(share, abs=0.005)
