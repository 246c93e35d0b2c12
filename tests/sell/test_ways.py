"""Ways on from the planning cards: what is known already is there, every link opens, and nothing of the example is left among it."""

import pytest

from fibercalc.core.onward import ways_on
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card

PLANNING = (
    "release-plan",
    "set-plan",
    "kit-yarn",
    "back-plan",
    "base-order",
    "parcels",
    "count-to-dye",
)
WAYS = [(name, way) for name in PLANNING for way in find_card(name).carry]


def opened(card_id, target, label=""):
    """The next card worked with what one way on hands it."""
    worked = work_card(find_card(card_id), {})
    way = next(
        way
        for carry in find_card(card_id).carry
        if carry.card == target
        for way in ways_on(worked, carry)
        if not label or way[0] == label
    )
    defaults = find_card(target).defaults()
    texts = {name: text for name, text in defaults.items() if name.split(".")[0] not in way[2]}
    for name, count in way[2].items():
        item = find_card(target).item(name)
        texts |= {
            f"{name}.{row}.{each.name}": defaults.get(f"{name}.{row}.{each.name}", each.default)
            for row in range(1, count + 1)
            for each in item.fields
        }
    return (
        worked.outcome,
        work_card(find_card(target), texts | way[1], exact=texts | way[1]).outcome,
    )


@pytest.mark.parametrize("name, way", WAYS, ids=[f"{name}-{way.card}" for name, way in WAYS])
def test_every_way_on_opens(name, way):
    """Each link's texts are all allowed there, and the next card answers."""
    worked = work_card(find_card(name), {})
    for words, texts, counts in ways_on(worked, way):
        assert words.strip() and "{}" not in words
        for target in texts:
            find_card(way.card).item(target.split(".")[0])
        asked = {target.split(".")[0] for target in way.inputs} - {"price", "minutes"}
        assert {target.split(".")[0] for target in texts} | set(counts) >= asked - {"days"}


def test_a_release_orders_what_it_needs():
    """The order's bases and dyes are the release's, and nothing of the order's own example."""
    release, order = opened("release-plan", "base-order")
    assert [(row.name, row.needed, row.promised, row.large) for row in order.case.bases] == [
        ("Tarrow Sock", 168, 0, 0)
    ]
    assert {
        row.name: pytest.approx(row.needed, rel=1e-5) for row in order.case.dyes
    } == release.case.dyes
    assert order.value("packs") == release.value("packs") + 1  # and a jar of yellow


def test_a_release_is_dyed_in_the_room():
    """All its skeins are in the run, shade by shade."""
    release, run = opened("release-plan", "pots")
    assert (
        sum(row.skeins for row in run.case.recipes) == release.value("skeins")
        and len(run.case.recipes) == 16
    )


def test_each_colorway_has_its_recipe():
    release, pot = opened("release-plan", "dye-recipe", "Recipe for Peat Gold")
    assert (
        [(row.name, row.depth) for row in pot.case.dyes] == [("yellow", 0.55), ("brown", 0.15)]
        and pot.case.lots == 5
        and pot.case.skeins == 4
    )


def test_a_kit_is_shared_out_by_its_loads():
    release, table = opened("release-plan", "parcels", "Share out Culvert Stole by lot")
    assert table.value("packed") == 18 and table.value("good") == 72 and table.value("to_club") == 0


def test_a_set_goes_into_a_release():
    """The set's full skeins and its dye are the release's."""
    plan, release = opened("set-plan", "release-plan")
    assert release.value("skeins") == plan.value("dyed_whole") and release.value(
        "dye"
    ) == pytest.approx(plan.value("dye_whole"), rel=2e-3)
    release, plan = opened("release-plan", "set-plan", "Shades of Twelve Lamps")
    assert plan.value("dyed_whole") == 72 and plan.case.name == "Twelve Lamps"


def test_the_order_is_wanted_on_the_first_dye_day():
    plan, order = opened("back-plan", "base-order")
    assert order.case.needed_by == plan.value("dye_from") and order.value("order_by") == plan.value(
        "order"
    )


def test_a_kit_that_cannot_be_shared_out_says_why():
    """More loads than the other card lists: its way on is not there, and the answer names it."""
    card = find_card("release-plan")
    share = next(way for way in card.carry if way.card == "parcels")
    shared = [words for words, _, _ in ways_on(work_card(card, {}), share)]
    assert shared and not any("shared out" in note for note in work_card(card, {}).notes())
    worked = work_card(card, {"load": "1"})
    kit = shared[0].removeprefix("Share out ").removesuffix(" by lot")
    assert shared[0] not in [words for words, _, _ in ways_on(worked, share)]
    said = [note for note in worked.notes() if "shared out by lot" in note]
    assert len(said) == 1 and kit in said[0] and "24 loads" in said[0]
