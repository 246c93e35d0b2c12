"""Links are short, canonical and versioned, and are read as hostile input."""

import dataclasses
from urllib.parse import quote

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.link import LONGEST, _quoted, query_of, read_query, short_key
from fibercalc.core.reading import read_inputs
from fibercalc.core.registry import find_card
from fibercalc.core.settings import Settings
from tests.fixture_card import CARD as EVERY_KIND

POINT = Settings()
SKEIN = find_card("skein-length")


def read_back(card, query):
    texts, counts, notes = read_query(card, query)
    return read_inputs(card, texts, POINT, exact=texts, counts=counts), notes


def test_keys_count_like_columns():
    assert [short_key(n) for n in (0, 1, 25, 26, 27, 51, 52)] == [
        "a",
        "b",
        "z",
        "aa",
        "ab",
        "az",
        "ba",
    ]


def test_only_what_differs_travels_with_its_spread():
    given_ = read_inputs(SKEIN, {"turns": "285", "circumference": "59 in +/- 0.25"}, POINT)
    assert query_of(given_) == "v=1&b=285&c=59~0.25in"
    back, notes = read_back(SKEIN, query_of(given_))
    assert not notes and back.readings["circumference"].amount.typed_rough == 0.25


def test_a_comma_writer_s_link_is_read_the_same_by_a_point_writer():
    given_ = read_inputs(SKEIN, {"skein_mass": "99,5"}, Settings("comma"))
    assert query_of(given_) == "v=1&g=99.5g"


def test_rows_can_be_added_removed_and_changed():
    texts = EVERY_KIND.defaults() | {
        "dyes.2.depth": "0.3 %",
        "dyes.4.name": "ochre",
        "dyes.4.depth": "1 %",
    }
    query = query_of(read_inputs(EVERY_KIND, texts, POINT))
    back, notes = read_back(EVERY_KIND, query)
    assert not notes and back.counts["dyes"] == 4
    assert (
        back.readings["dyes.4.name"].value == "ochre" and back.readings["dyes.2.depth"].value == 0.3
    )
    fewer = read_inputs(
        EVERY_KIND,
        {
            name: text
            for name, text in EVERY_KIND.defaults().items()
            if not name.startswith(("dyes.2", "dyes.3"))
        },
        POINT,
    )
    back, notes = read_back(EVERY_KIND, query_of(fewer))
    assert back.counts["dyes"] == 1 and not notes


def test_a_link_that_changes_one_row_keeps_the_others():
    back, notes = read_back(EVERY_KIND, "v=1&l1b=0.5%25")
    assert not notes and back.counts["dyes"] == 3
    assert [back.readings[f"dyes.{n}.depth"].value for n in (1, 2, 3)] == [0.5, 0.24, 0.04]


def test_a_field_left_blank_on_purpose_stays_blank():
    query = query_of(read_inputs(EVERY_KIND, {"price": ""}, POINT))
    back, _ = read_back(EVERY_KIND, query)
    assert query == "v=1&f=-" and back.readings["price"].value is None


HOSTILE = [
    "v=1&b=<script>alert(1)</script>",
    "v=1&b=1e308",
    "v=1&b=-5",
    "v=1&b=" + "9" * 500,
    "v=99&b=285",
    "v=&b=285",
    "b=285",
    "v=1&zz=1",
    "v=1&b=285&b=300",
    "v=1&h=yes&i=99999",
    "v=1&i=-1",
    "v=1&h=constructor",
    "v=1&__proto__=1",
    "v=1&b=%00",
    "v=1&b=NaN",
    "v=1&b=javascript:alert(1)",
    "&&&===",
    "v=1&i1a=5;DROP",
    "v=1&b=" + "%F0%9F%A7%B6" * 30,
    "x" * (LONGEST + 1),
    "v=٣&b=٢",
]


@pytest.mark.parametrize("query", HOSTILE, ids=range(len(HOSTILE)))
def test_a_hostile_link_falls_back_to_the_example_and_says_so(query):
    back, notes = read_back(SKEIN, query)
    assert not back.problems
    assert all("<" not in note for note in notes)
    if "285" not in query or "v=1" not in query:
        assert back.readings["turns"].value == 280 and (
            notes or "=" not in query or query.startswith(("b", "&"))
        )


@given(st.text(max_size=300))
def test_any_text_can_be_opened(query):
    back, _ = read_back(EVERY_KIND, query)
    assert not back.problems


@given(st.text(st.characters(exclude_categories=["Cs"])))
def test_a_value_is_quoted_as_the_standard_library_quotes_it(text):
    assert _quoted(text) == quote(text, safe="~,()")


def test_an_older_link_goes_through_its_upgrade():
    newer = dataclasses.replace(
        SKEIN, link_version=2, upgrades={1: lambda pairs: {"b": pairs.get("z", "1")}}
    )
    texts, _, notes = read_query(newer, "v=1&z=300")
    assert texts["turns"] == "300" and not notes
    assert query_of(read_inputs(newer, {"turns": "300"}, POINT)) == "v=2&b=300"


def test_the_letters_of_version_and_search_are_no_input_s():
    """The 17th and the 22nd input of a card: v is the link's version, and for q the theme opens its search over the page."""
    card = find_card("warp-plan")
    assert (card.inputs[16].name, card.inputs[21].name) == ("hem_picks", "sample")
    given_ = read_inputs(
        card, {"hem_yarn": "other", "hem_picks": "12 per cm", "sample": "15 cm"}, POINT
    )
    query = query_of(given_)
    assert query == "v=1&p=other&q0=12percm&v0=15cm"
    back, notes = read_back(card, query)
    assert (
        not notes
        and back.readings["sample"].value == 15.0
        and back.readings["hem_picks"].value == 12.0
    )
    old, notes = read_back(card, "v=1&p=other&q=12percm")
    assert not notes and old.readings["hem_picks"].value == 12.0
