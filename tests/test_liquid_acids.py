"""No sentence, table, paper, picture, page or carried value names milliliters of a liquid acid without its strength.

A milliliter of 56 % acetic acid holds as much acid as twelve of vinegar: whoever reads the one and pours the other is hurt or
spoils a bath. Every card is walked in every state, so a new card is walked too.
"""

import re
from importlib import import_module
from pathlib import Path

import pytest

from fibercalc.core.answer import Table
from fibercalc.core.card import CHAPTERS
from fibercalc.core.onward import ways_on
from fibercalc.core.paper import Paper
from fibercalc.core.registry import find_card
from fibercalc.core.table import read_table
from fibercalc.core.work import answer_of, work_card
from tests.cards import BOOK, card_id
from tests.test_every_card import states_of
from tests.test_every_table import TABLES

ACID = r"(?:acetic|formic|vinegar|ammonia|(?<!citric )(?<!dye )\bacids?\b(?! dye))"
MILLILITERS = re.compile(r"\bmL\b|\bliters of\b|\d\s?L of\b")
STRENGTH = re.compile(r"(g/|g in |grams in )100\s?mL")
NAMED = re.compile(rf"\d\s?% {ACID}|mL(?: \([^)]*\))? of \d[\d.,]*\s?%", re.IGNORECASE)
BARE = re.compile(rf"\bm?L(?: \([^)]*\))? of (?!\d)[^.,;:\d]*?{ACID}", re.IGNORECASE)
PAGES = Path(__file__).resolve().parents[1] / "docs" / "pages"


def bare(text: str) -> bool:
    """Whether a sentence, or a cell with its heads, has milliliters and an acid, and not the acid's strength."""
    text = STRENGTH.sub(
        "", text.replace("\u00a0", " ").replace("(white vinegar)", "").replace("(vinegar)", "")
    )
    if not (MILLILITERS.search(text) and re.search(ACID, text, re.IGNORECASE)):
        return False
    return bool(BARE.search(text)) or not NAMED.search(text)


def sentences(text: str) -> list[str]:
    return re.split(r"(?<=[.;:?])\s", text)


def cells(table: Table) -> list[str]:
    """Each cell with the heads of its row and column, as it is read."""
    return [
        f"{row[0]}; {column}: {cell}"
        for row in table.rows
        for column, cell in zip(table.columns, row)
    ] + sentences(table.note)


def written(worked) -> list[str]:
    """All that a worked card says, in the pieces that are read together."""
    answer = answer_of(worked, "test").as_json()
    pieces = [
        *answer["answer"].split(". "),
        *answer["notes"],
        *answer["cautions"],
        answer["basis"]["text"],
    ]
    pieces = [piece for text in pieces for piece in sentences(text)]
    pieces += [f"{result['label']}: {result['text']}" for result in answer["results"].values()]
    pieces += [f"{step['label']} = {step['value']}" for step in answer["working"]]
    for picture in worked.pictures():
        pieces += re.findall(r">([^<]+)</text>", picture.svg) + re.split(r"[;.,] ", picture.alt)
    tables = worked.tables() + [
        table
        for paper in worked.card.papers
        if isinstance(paper, Paper)
        for table in paper.tables(worked.outcome)
    ]
    return pieces + [cell for table in tables for cell in cells(table)]


BATHS = [
    {
        "do": do,
        "chemical": chemical,
        "other": other,
        "strength": strength,
        "other_strength": strength,
        "liters": liters,
    }
    for do in ("amount", "target", "swap")
    for chemical, other in (("acetic", "formic"), ("formic", "acetic"), ("citric", "acetic"))
    for strength in ("5 %", "56 %")
    for liters in ("2 L", "60 L")
]
FURTHER = {
    "bath-acid": BATHS,
    "dye-recipe": [{"acid": "liquid", "acid_strength": strength} for strength in ("5", "10")],
    "acid-dilution": [
        {"acid": acid, "wanted": "5", "have": "30", "by": by}
        for acid in ("acetic", "formic")
        for by in ("mass", "volume")
    ],
}


@pytest.mark.parametrize("card", BOOK, ids=card_id)
def test_a_card_names_no_milliliters_of_acid_without_its_strength(card):
    for state in [*states_of(card), *FURTHER.get(card.id, [])]:
        found = [piece for piece in written(work_card(card, state)) if bare(piece)]
        assert not found, (state, found)


def test_what_is_looked_for_is_found_where_it_stands():
    """The walk sees what it is to see: it would be green on silence too."""
    seen = [
        piece
        for state in BATHS
        for piece in written(work_card(find_card("bath-acid"), state))
        if NAMED.search(piece.replace("\u00a0", " "))
    ]
    assert len(seen) > 100
    for wrong in (
        "Put in 56 mL of acetic acid.",
        "With 7.0 L of water and 80 mL of the acid, that is 0.90 % on 400 g.",
        "Acid, liquid; Lot (4): 80 mL",
        "acid: 80 mL",
        "36 mL of household vinegar",
        "Take 5 mL of formic acid instead of 80 mL of 5 % acetic acid",
    ):
        assert bare(wrong), wrong
    for right in (
        "Put in 56 mL of 5 % acetic acid (white vinegar).",
        "then the acid, 95 mL of 50 %",
        "80 mL of stock",
        "4 g of citric acid in 80 mL",
    ):
        assert not bare(right), right


@pytest.mark.parametrize("chapter", [chapter for chapter in CHAPTERS if chapter in ("dye", "safe")])
def test_a_chart_names_none_either(chapter):
    charts = import_module(f"fibercalc.{chapter}.charts")
    for name in charts.__all__:
        for part in getattr(charts, name)():
            pieces = cells(part) if isinstance(part, Table) else re.split(r"[;.,] ", part.alt)
            assert not [piece for piece in pieces if bare(piece)], (name, part.title)


@pytest.mark.parametrize(
    "path", sorted(PAGES.rglob("*.md")), ids=lambda path: path.relative_to(PAGES).as_posix()
)
def test_a_page_names_none_either(path):
    assert not [piece for piece in sentences(path.read_text("utf-8")) if bare(piece)]


@pytest.mark.parametrize("chapter, name", TABLES)
def test_a_table_of_values_names_none_either(chapter, name):
    table = read_table(chapter, name)
    texts = [
        table.note,
        *(cell for row in table.rows for cell in row.values() if isinstance(cell, str)),
    ]
    assert not [piece for text in texts for piece in sentences(text) if bare(piece)]


def test_a_recipe_that_does_not_tell_how_strong_its_acid_is_says_so():
    """Percent of the fiber is no better than milliliters."""
    rows = [
        row
        for row in read_table("dye", "auxiliaries").rows
        if re.search(r"(Acetic|Formic|Sulfuric) acid", row["label"])
    ]
    assert len(rows) == 4 and all("strength not told" in row["label"] + row["note"] for row in rows)


def carried(card: str, to: str, **given: str) -> dict[str, str]:
    worked = work_card(find_card(card), given)
    return next(
        texts
        for carry in find_card(card).carry
        if carry.card == to
        for _, texts, _ in ways_on(worked, carry)
    )


def test_a_liquid_acid_is_carried_with_its_strength():
    to_bath = carried("dye-recipe", "bath-acid", acid="liquid", acid_strength="10")
    assert to_bath["chemical"] == "acetic" and to_bath["strength"].startswith("9.9"), (
        "10 g in 100 mL are 9.9 % by weight"
    )
    weak = carried("bath-acid", "acid-dilution", do="target", chemical="acetic", strength="8 %")
    assert (weak["acid"], weak["wanted"]) == ("acetic", "8%") and float(
        re.match(r"[\d.]+", weak["volume"])[0]
    ) == pytest.approx(34.9, abs=0.1)


def test_a_strong_acid_in_hand_is_what_is_thinned():
    """4.74 mL of 56 % hold the acid of 56.0 mL of 5 %; until now the way on asked for 56 % from 50 %, and was refused."""
    texts = carried("bath-acid", "acid-dilution", do="target", chemical="acetic", strength="56 %")
    assert (texts["have"], texts["wanted"]) == ("56%", "5%") and float(
        re.match(r"[\d.]+", texts["volume"])[0]
    ) == pytest.approx(56.0, abs=0.1)
    assert work_card(find_card("acid-dilution"), texts).outcome.value(
        "acid_volume"
    ) == pytest.approx(4.74, abs=0.02)


@pytest.mark.parametrize("chemical", ["ammonia", "soda-ash", "citric"])
def test_what_is_no_liquid_acid_is_not_carried_as_one(chemical):
    assert not {"wanted", "have", "volume"} & set(
        carried("bath-acid", "acid-dilution", chemical=chemical)
    )
