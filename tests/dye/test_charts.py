"""Wall charts of the dye chapter: figures worked by hand, and what must not be hidden."""

import re
from math import floor, log10
from pathlib import Path

import pytest

from fibercalc.core.answer import Picture, Table
from fibercalc.dye import charts
from fibercalc.safe.acids import bath_ph, grams_in

PAGES = Path(__file__).parents[2] / "docs" / "pages" / "dye"


def table(chart: str, title: str) -> Table:
    return next(
        part for part in getattr(charts, chart)() if isinstance(part, Table) and title in part.title
    )


def column(found: Table, name: str) -> dict[str, str]:
    return {row[0]: row[found.columns.index(name)] for row in found.rows}


def number(cell: str) -> float:
    return float(re.match(r"[\d.,]+", cell)[0].replace(",", ""))


def test_the_colorway_of_the_demo_studio_can_be_read_off():
    """Navy 0.62 % on 400 g from 1 % stock is 248 mL: 0.5 % and 0.1 % from one table, 0.02 % from the weak stock's, a tenth of it."""
    everyday, weak = table("depth_to_volume", "mL of 1 %"), table("depth_to_volume", "mL of 0.1 %")
    four = "400 g (14.1 oz)"
    assert (
        number(column(everyday, "0.5 %")[four])
        + number(column(everyday, "0.1 %")[four])
        + number(column(weak, "0.02 %")[four]) / 10
        == 248
    )


def test_a_depth_on_a_weight_by_hand():
    """350 g at 0.75 % is 2.625 g of dye: 262.5 mL of 1 % stock."""
    assert column(table("depth_to_volume", "mL of 1 %"), "0.75 %")["350 g (12.3 oz)"] == "262.5"


def test_every_weight_from_50_to_600_is_there():
    assert [number(row[0]) for row in table("depth_to_volume", "mL of 1 %").rows] == list(
        range(50, 601, 50)
    )


def test_powder_for_a_stock_by_hand():
    """250 mL at 2 %: 5 g. 500 mL of 0.5 % from 2 %: 125 mL. 0.02 g off 0.5 g is 4 %."""
    assert column(table("stock_makeup", "Powder for"), "2 %")["250 mL"] == "5 g"
    assert column(table("stock_makeup", "Stock to fill"), "to 0.5 %")["2 %"] == "125 mL"
    assert column(table("stock_makeup", "pocket scale"), "Off by")["0.5 g"] == "4 %"


def test_water_boils_near_97_at_the_demo_studio():
    boils, most = (
        column(table("boiling_points", "Where water boils"), name)["900 m (2,950 ft)"]
        for name in ("Boils at", "Set at most")
    )
    assert boils == "97.0 °C (207 °F)" and most.startswith("96.0")


def test_the_highest_setting_is_always_below_boiling_and_both_fall_with_altitude():
    rows = [
        [number(cell) for cell in row[1:]]
        for row in table("boiling_points", "Where water boils").rows
    ]
    assert all(most < boils for boils, most in rows)
    for lower, higher in zip(rows, rows[1:]):
        assert higher[0] < lower[0] and higher[1] < lower[1]


def test_each_jar_is_half_of_the_one_before_and_paler():
    shares = [number(row[2]) for row in table("dilution_ladder", "What a jar says").rows]
    assert shares[0] == 100
    for one, after in zip(shares, shares[1:]):
        assert after == pytest.approx(one / 2, rel=0.005)
    picture = next(part for part in charts.dilution_ladder() if isinstance(part, Picture))
    grays = [int(level) for level in re.findall(r"rgb\((\d+),", picture.svg)]
    assert len(grays) == len(shares) and grays == sorted(set(grays))


@pytest.mark.parametrize("water, alkalinity", [("Soft water", 40.0), ("Hard water", 150.0)])
def test_what_the_acid_chart_pours_gives_the_ph_it_says(water, alkalinity):
    """Back through the pH of the bath: the pH at the head of the row lies between those of the printed figure's rounding."""
    found = table("acid_equivalence", water)
    pure = {
        "Citric acid, g": lambda amount: {"citric": amount},
        "5 % vinegar, mL": lambda amount: {"acetic": grams_in("acetic", amount, 5.0)},
        "85 % formic, mL": lambda amount: {"formic": grams_in("formic", amount, 85.0)},
    }
    checked = 0
    for name, contents in pure.items():
        for target, cell in column(found, name).items():
            if cell != "–":
                half = 5 * 10.0 ** (floor(log10(number(cell))) - 2)  # two figures are printed
                less, more = (
                    bath_ph(10.0, contents(number(cell) + side * half), alkalinity)
                    for side in (-1, 1)
                )
                assert more <= float(target) <= less, (name, target)
                checked += 1
    assert checked >= 18


def test_hard_water_takes_more_acid_and_a_lower_ph_never_less():
    soft, hard = table("acid_equivalence", "Soft water"), table("acid_equivalence", "Hard water")
    for name in soft.columns[1:]:
        pairs = [
            (number(a), number(b))
            for a, b in zip(column(soft, name).values(), column(hard, name).values())
            if "–" not in a + b
        ]
        assert all(a < b for a, b in pairs), name
        assert [a for a, _ in pairs] == sorted(a for a, _ in pairs), name


def test_the_acid_chart_says_that_it_is_water_alone():
    for water in ("Soft water", "Hard water"):
        assert "water alone, before fiber" in table("acid_equivalence", water).note


def test_vinegar_that_would_thin_the_bath_is_not_offered():
    """Over 5 % of the 10 L: 1.2 L in soft water at pH 3, 0.71 L in hard water at pH 3.5; there it stands for no citric acid either."""
    assert column(table("acid_equivalence", "Soft water"), "5 % vinegar, mL")["3"] == "–"
    assert column(table("acid_equivalence", "Hard water"), "5 % vinegar, mL")["3.5"] == "–"
    assert column(table("acid_equivalence", "In place of"), "5 % vinegar, mL")["3"] == "–"


def test_chrome_is_listed_as_not_offered_and_metals_are_marked():
    row = next(row for row in table("mordants", "% of dry fiber").rows if "chrome" in row[0])
    assert row[1] == "not offered" and "cancer" in row[3]
    assert "chrome" not in " ".join(row[0] for row in table("mordants", "Metal").rows)


def test_memory_is_marked_cell_by_cell():
    leveling = next(
        row for row in table("dye_classes", "Dye classes").rows if row[0] == "Leveling acid"
    )
    assert leveling[2] == "2.5-3.5†" and leveling[5] == "4*"


def test_what_is_not_known_is_a_dash():
    told = {row[0]: row for row in table("dye_classes", "Dye classes").rows}
    assert (
        told["Reactive, type not told"][3] == "–"
        and told["Premetallized, 1 metal to 1 dye"][4] == "–"
    )


def test_each_symptom_has_its_causes_in_order():
    for part in charts.troubles():
        assert [int(row[0].partition(".")[0]) for row in part.rows] == list(
            range(1, len(part.rows) + 1)
        ), part.title


REFERENCE = [
    path for path in sorted(PAGES.glob("*.md")) if "kind: reference" in path.read_text("utf-8")
]


@pytest.mark.parametrize("page", REFERENCE, ids=lambda path: path.stem)
def test_a_page_that_handles_powder_acid_or_heat_has_a_caution(page):
    """The caution stands before the first chart; where something is bought, it defers to the maker's data sheet."""
    text = page.read_text("utf-8")
    body, _, caution = text.partition("!!! warning")
    if (
        re.search(r"\b(powder|acid|soda|mordant|boil|steam|hot)", text, re.IGNORECASE)
        and page.stem != "lot-records"
    ):
        assert caution and "```chart" not in body, page.stem
        if page.stem != "heat-and-steam":
            assert "safety data sheet comes first" in caution
    assert not re.search(r"\bsafe\b(?! chapter)", text, re.IGNORECASE), (
        "never the word safe for an outcome"
    )


def test_every_chart_hangs_on_a_page():
    hung = {
        name
        for page in PAGES.glob("*.md")
        for name in re.findall(r"```chart\ndye\.(\w+)", page.read_text("utf-8"))
    }
    assert hung == set(charts.__all__)


@pytest.mark.parametrize("volume, alkalinity, said", [(100.0, 0.0, "3.4"), (100.0, 150.0, "4.5")])
def test_the_ph_of_vinegar_on_the_page(volume, alkalinity, said):
    assert f"{bath_ph(10.0, {'acetic': grams_in('acetic', volume, 5.0)}, alkalinity):.1f}" == said
    assert said in (PAGES / "auxiliaries.md").read_text("utf-8")
