"""The planning cards' examples are the demo studio's data, so that one job runs through the chapter."""

import tomllib
from pathlib import Path

import pytest

from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.sell.notation import read_held, read_recipe

DEMO = Path(__file__).parents[2] / "shared" / "demo"
RELEASE = tomllib.loads((DEMO / "release.toml").read_text("utf-8"))
COLORWAYS = {row["name"]: row for row in tomllib.loads((DEMO / "colorways.toml").read_text("utf-8"))["colorway"]}
STUDIO = tomllib.loads((DEMO / "studio.toml").read_text("utf-8"))


def given(card_id):
    return work_card(find_card(card_id), {}).outcome.given


def test_the_release_is_the_demo_kit_set_and_colorway():
    release = given("release-plan")
    kit, whole, single = release["products"]
    assert (kit.wanted, kit.spare) == (RELEASE["kit"]["kits"], RELEASE["kit"]["kits_spare"])
    assert dict(read_held(kit.holds)) == {name: count for name, count in RELEASE["kit"]["colorways"].values()}
    assert (whole.wanted, whole.spare) == (RELEASE["set"]["sets_sold"], RELEASE["set"]["sets_spare"])
    assert (single.holds, single.wanted) == (RELEASE["single"]["colorway"], RELEASE["single"]["skeins"])
    for row in release["colorways"][:3]:
        assert dict(read_recipe(row.recipe)) == pytest.approx(COLORWAYS[row.name]["depth_percent"])
    ground, speckle = COLORWAYS["Wet Slate"]["depth_percent"], COLORWAYS["Rusted Gate"]
    assert dict(read_recipe(release["colorways"][4].recipe)) == pytest.approx(ground | {"speckle": speckle["colors"] * speckle["grams_of_each_a_skein"]})  # g on a skein of 100 g
    low, high, days = RELEASE["set"]["palest_depth_percent"], RELEASE["set"]["deepest_depth_percent"], RELEASE["set"]["days"]
    mean = sum(low * (high / low) ** (at / (days - 1)) for at in range(days)) / days
    assert dict(read_recipe(release["colorways"][3].recipe))["navy"] == pytest.approx(mean, abs=5e-4)


def test_the_shelf_is_the_demo_shelf():
    release, shelf = given("release-plan"), RELEASE["shelf"]
    base = release["bases"][0]
    assert (base.on_hand, base.pack, base.price) == (shelf["tarrow_on_hand"], shelf["pack"], shelf["pack_price"])
    assert {row.dye: row.on_hand for row in release["jars"]} == shelf["dye_grams"]
    pots = STUDIO["pots"]
    assert (release["load"], release["a_day"]) == (pots["skeins_a_load"], pots["plates"] * pots["rounds_a_day"])


def test_past_sales_prices_and_the_post_are_the_demo_s():
    past, count = RELEASE["past"], given("count-to-dye")
    assert [(row.name, row.offered, row.sold) for row in count["releases"]] == list(zip(past["names"], past["offered"], past["sold"]))
    assert [count[name] for name in ("usual_spread", "price", "cost", "left_value", "seconds", "lost")] == [past[name] for name in ("spread_percent", "one_sold_brings", "one_costs", "one_left_brings", "seconds_percent", "lost_percent")]
    assert [(row.most, row.price) for row in given("parcels")["bands"]] == list(zip(RELEASE["post"]["grams"], RELEASE["post"]["price"]))
    dates = given("back-plan")
    assert [dates[f"home{end}"] for end in ("_quick", "", "_slow")] == RELEASE["post"]["home_days"] and [dates[f"abroad{end}"] for end in ("_quick", "", "_slow")] == RELEASE["post"]["abroad_days"]
    assert (dates["start"], dates["supplier_quick"], dates["supplier_slow"]) == (RELEASE["kit"]["part_one"], *RELEASE["kit"]["supplier_lead_weeks"])


def test_the_demo_set_is_planned():
    plan, whole = given("set-plan"), RELEASE["set"]
    assert (plan["name"], plan["days"], plan["sets"], plan["spare"], plan["wanted_turns"], plan["loss_share"]) == (whole["name"], whole["days"], whole["sets_sold"], whole["sets_spare"], whole["turns_that_give_five"], whole["loss_percent"])
    assert {row.name: row.needed for row in given("kit-yarn")["colors"]} == RELEASE["kit"]["needed_meters"]


def test_what_is_short_rounds_up_and_no_further():
    """18 skeins of 100 g at 0.55 % take 9.9 g of yellow; 8 g in the jar leave 1.9 g to buy, in the sentence and in the table."""
    worked = work_card(find_card("release-plan"), {})
    assert "1.9\u00a0g of yellow" in " ".join(worked.sentences())
    shelf = next(table for table in worked.tables() if "Short" in table.columns)
    assert next(row for row in shelf.rows if row[0] == "yellow")[shelf.columns.index("Short")] == "1.9\u00a0g"
    little = work_card(find_card("release-plan"), {"jars.4.on_hand": "7.95 g"})
    assert "1.95\u00a0g of yellow" in " ".join(little.sentences())  # not rounded down, and not up by more than a hundredth
    more = work_card(find_card("release-plan"), {"jars.4.on_hand": "0.05 g"})
    assert "9.9\u00a0g of yellow" in " ".join(more.sentences())  # 9.85 g: what must be bought rounds up
