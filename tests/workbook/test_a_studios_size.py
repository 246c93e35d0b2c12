"""Offers of a studio of a real size: long names, many products, jars, sales and bases. What does not fit says so; nothing vanishes."""

import pytest

from fibercalc.core.card import TEXT, Rows
from fibercalc.core.link import LONGEST, query_of, read_query
from fibercalc.core.reading import Given, read_inputs
from fibercalc.core.ref import path_of
from fibercalc.core.registry import find_card
from fibercalc.core.settings import Settings
from fibercalc.core.work import work_given
from fibercalc.workbook.flow import offers
from tests.cards import CARDS

from .making import record

POINT = Settings()


def named(what: str, number: int, letters: int = 40) -> str:
    """A name of so many letters that ends in its number."""
    return (
        f"{what} of the long evenings by the water, all".ljust(letters, "n")[: letters - 4]
        + f" {number:03d}"
    )


def dye(number: int) -> str:
    """A dye's name: a recipe's line takes a number for a depth, so there is none in it."""
    return f"dye of the long evenings {chr(97 + number // 26)}{chr(97 + number % 26)}"


def base(number: int, letters: int = 40) -> dict:
    return record(
        "base",
        slug=f"b{number}",
        name=named("Base", number, letters),
        mass="100g",
        length="420m",
        pack="10",
        pack_price="92",
        on_hand="5",
    )


def colorway(number: int) -> dict:
    return record(
        "colorway",
        slug=f"c{number}",
        name=named("Colorway", number),
        base="base-b1",
        dyes=[{"name": dye(number), "depth": "0.5%"}, {"name": dye(number + 1), "depth": "0.25%"}],
    )


def product(number: int) -> dict:
    return record(
        "product",
        slug=f"p{number}",
        name=named("Product", number),
        sort="skein",
        net="22.50",
        other="0.30",
        parts=[{"name": "A", "base": "base-b1", "colorway": f"colorway-c{number}", "skeins": "1"}],
    )


def jar(number: int) -> dict:
    return record("jar", slug=f"j{number}", name=dye(number), left="120g", cost="48")


def sale(number: int) -> dict:
    return record(
        "sale",
        slug=f"s{number}",
        event=named("Release", number),
        day=f"2026-{1 + number // 28:02d}-{1 + number % 28:02d}",
        offered="48",
        sold=str(20 + number % 25),
    )


def workbook(products: int, jars: int = 13) -> list[dict]:
    made = [
        base(1),
        *map(jar, range(1, jars + 1)),
        *map(colorway, range(1, products + 1)),
        *map(product, range(1, products + 1)),
    ]
    plan = record(
        "plan",
        slug="big",
        name=named("Plan", 1),
        items=[
            {"product": f"product-p{number}", "count": "12"} for number in range(1, products + 1)
        ],
    )
    return [*made, plan]


def offer(card: str, records: list[dict], start: str) -> dict:
    return next(
        each for each in offers(find_card(card), records, POINT) if each["label"].startswith(start)
    )


def taken(card: str, found: dict) -> Given:
    units = {
        name.removesuffix(".unit"): value
        for name, value in found["values"].items()
        if name.endswith(".unit")
    }
    texts = {name: value for name, value in found["values"].items() if not name.endswith(".unit")}
    given = read_inputs(find_card(card), texts, POINT, units=units, counts=found["rows"])
    assert not given.problems, [problem.text for problem in given.problems]
    return given


@pytest.mark.parametrize("products, jars", [(11, 13), (40, 40)])
def test_a_plan_of_many_products_with_long_names_is_offered_and_worked(products, jars):
    found = offer("release-plan", workbook(products, jars), "Use Plan")
    assert (
        found["rows"] == {"products": products, "colorways": products, "bases": 1, "jars": jars}
        and found["why"] == ""
    )
    given = taken("release-plan", found)
    worked = work_given(given, POINT)
    assert worked.outcome.value("skeins") == 12 * products
    drawn = str(worked.pictures()[0].svg)
    assert (
        f"{12 * products} skeins" in drawn
        and f"{2 * (products - 10)} more are not drawn: see the tables." in drawn
    )
    query = query_of(given)
    assert len(query) < LONGEST
    texts, counts, notes = read_query(find_card("release-plan"), query)
    back = read_inputs(find_card("release-plan"), texts, POINT, exact=texts, counts=counts)
    asked = given.asked()
    assert (
        notes == []
        and back.asked() == asked
        and [back.readings[name].text for name in asked]
        == [given.readings[name].text for name in asked]
    )


def test_more_than_a_list_holds_is_offered_without_it_and_says_so():
    found = offer("release-plan", workbook(11, 41), "Use Plan")
    assert found["rows"]["products"] == 11 and "jars" not in found["rows"]
    assert found["why"].endswith("leaves out: Dye on hand (41 of them, this card takes 0 to 40).")


def test_past_sales_of_five_years_are_offered():
    found = offer(
        "count-to-dye", [sale(number) for number in range(1, 26)], "Use all past sales (25)"
    )
    given = taken("count-to-dye", found)
    assert (
        given.counts["releases"] == 25
        and found["why"] == ""
        and work_given(given, POINT).outcome.value("count") > 0
    )
    for sold in ({}, {"sold": "48"}):  # as they were, and every one sold out
        sales = [each | {"values": each["values"] | sold} for each in map(sale, range(1, 151))]
        many = offer("count-to-dye", sales, "Use all past sales (150)")
        assert (
            many["why"] == ""
            and work_given(taken("count-to-dye", many), POINT).outcome.value("count") > 0
        )


def test_beyond_that_the_newest_are_used_and_said():
    sales = [sale(number) for number in range(1, 201)]
    found = offer("count-to-dye", sales, "Use all past sales (150)")
    assert [found["values"][f"releases.{row}.name"] for row in range(1, 151)] == [
        each["values"]["event"] for each in sales[50:]
    ], "in the order of their days"
    assert "the last 16 of 150 are drawn" in str(
        work_given(taken("count-to-dye", found), POINT).pictures()[0].svg
    )
    assert (
        found["why"]
        == "“all past sales” leaves out: Past releases (all but the newest 150 of 200)."
    )


@pytest.mark.parametrize("card", ["base-order", "release-plan"])
def test_a_hundred_bases_are_each_there_or_said(card):
    found = offers(find_card(card), [base(number) for number in range(1, 101)], POINT)
    assert found == [
        {
            "label": "all bases",
            "kind": "All of a kind",
            "values": {},
            "rows": {},
            "own": [],
            "why": found[0]["why"],
        }
    ]
    assert "100 of them, this card takes" in found[0]["why"]
    forty = offers(find_card(card), [base(number) for number in range(1, 41)], POINT)
    assert forty[0]["label"] == "Use all bases (40)" and forty[0]["why"] == ""
    assert (
        len(offers(find_card("yarn-needed"), [base(number) for number in range(1, 101)], POINT))
        == 100
    )


def test_a_name_too_long_stays_out_and_says_so():
    found = offers(find_card("label"), [base(1, 41)], POINT)
    assert (
        "name" not in found[0]["values"]
        and found[0]["why"] == f"“{named('Base', 1, 41)}” leaves out: Name (41 letters, 40 fit)."
    )
    whole = offers(
        find_card("count-to-dye"), [record("sale", event="x" * 41, offered="10", sold="5")], POINT
    )
    assert (
        whole[0]["values"] == {}
        and whole[0]["why"]
        == "“all past sales” cannot be used here: Past releases (release 1, when: 41 letters, 40"
        " fit)."
    )


@pytest.mark.parametrize(
    "card",
    [card for card in CARDS if any(item.record for item in card.inputs)],
    ids=lambda card: card.id,
)
def test_a_name_of_forty_letters_fits_wherever_a_record_names_something(card):
    """Each field that takes a record's own name or number takes one of a usual length."""
    for item in card.inputs:
        fields = (
            item.fields
            if isinstance(item, Rows) and item.record
            else [item]
            if item.record and not isinstance(item, Rows)
            else []
        )
        for each in fields:
            wanted = path_of(each.record) if each.record else each.name
            if each.kind == TEXT:
                assert each.longest >= (24 if wanted.endswith("lot") else 40), (
                    f"{card.id}: {each.name}"
                )
