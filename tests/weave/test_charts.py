"""Wall charts of the weave chapter: figures worked by hand, and what must not be hidden."""

from fibercalc.core.answer import Table
from fibercalc.weave import charts


def table(chart: str, title: str) -> Table:
    return next(
        part for part in getattr(charts, chart)() if isinstance(part, Table) and title in part.title
    )


def test_setts_by_hand():
    """8/2 cotton: 0.92 x root of 3,360 = 53.33; half is 26.66, 77.5 % of that 20.7; twill two thirds, 35.55 x 0.775 = 27.6."""
    row = next(row for row in table("setts", "Cotton").rows if row[0] == "8/2")
    assert (
        row[2] == "3,360"
        and row[4].startswith("20.7 ·")
        and row[5].startswith("27.6 ·")
        and row[6].startswith("26.7 ·")
    )


def test_finer_yarns_stand_below_and_are_set_closer():
    for title in ("Cotton", "Worsted"):
        rows = table("setts", title).rows
        assert [float(row[2].replace(",", "")) for row in rows] == sorted(
            float(row[2].replace(",", "")) for row in rows
        )
        setts = [float(row[4].split(" ")[0]) for row in rows]
        assert setts == sorted(setts)


def test_heddles_in_both_units_and_two_together():
    rows = {row[0]: row for row in table("heddles", "Metric").rows}
    assert rows["40/10"][2].startswith("10.16") and rows["40/10"][5].startswith("8 · 20.32")
    assert table("heddles", "Inch").rows[4][1].startswith("39.37")


def test_the_towel_is_worked_back_and_the_mistake_is_shown():
    """63 / 0.82 = 76.8, / 0.9 = 85.4; 34 / 0.86 = 39.5, / 0.94 = 42.1. Added up: 63 x 1.28 = 80.6, which weaves 72.6 and washes to 59.5."""
    rows = {row[0]: row[1:] for row in table("percentages", "worked back").rows}
    assert rows["On the loom"] == ("76.8 cm (18 %)", "39.5 cm (14 %)") and rows["Warp, heddle"] == (
        "85.4 cm (10 %)",
        "42.1 cm (6 %)",
    )
    assert rows["Added up, it comes out"] == ("59.5 cm", "33.0 cm")


def test_textured_weaves_keep_no_stored_float():
    rows = {row[0].rstrip("†‡§"): row for row in table("structures", "repeat").rows}
    assert rows["Waffle"][2] == "count it" and rows["2/2 twill"][2] == "2"


def test_shares_from_memory_are_marked():
    assert all("†" in column for column in table("setts", "Cotton").columns[3:6])
