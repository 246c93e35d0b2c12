"""Two real jobs of the demo studio go from card to card by their links alone: no number that the book knows is typed again."""

import html
import json
import re

import pytest

from fibercalc.core.link import read_query
from fibercalc.core.reading import read_inputs
from fibercalc.core.registry import all_cards, find_card
from fibercalc.core.settings import Settings
from fibercalc.site.boundary import handle
from tests.cards import card_id

LINK = re.compile(r'<a href="([^"]*)" data-carry="([^"]*)">(.*?)</a>')


def ask(**request):
    reply = json.loads(handle(json.dumps(request)))
    assert "ok" in reply, reply
    return reply["ok"]


class Way:
    """A person who follows links: the card on screen, its values, and the cards before."""

    def __init__(self, card: str, **typed: str):
        self.card, self.trail = card, []
        self.state = ask(do="work", card=card, values=find_card(card).defaults() | typed)
        self.values = find_card(card).defaults() | typed
        assert self.state["answered"], self.state

    def links(self) -> dict[str, tuple[str, str]]:
        return {
            html.unescape(words): (card, html.unescape(address).partition("?")[2])
            for address, card, words in LINK.findall(self.state["slots"]["carry"])
        }

    def on(self, words: str) -> "Way":
        """The next card, as the page opens it: by this link, with the way come."""
        card, query = self.links()[words]
        following = object.__new__(Way)
        following.card = card
        following.trail = [step for step in self.trail if step["card"] != self.card] + [
            {"card": self.card, "query": self.state["query"]}
        ]
        following.state = ask(do="open", card=card, query=query, trail=following.trail)
        assert following.state["answered"] and not following.state["link_notes"], following.state
        following.values = following.state["values"]
        return following

    def number(self, name: str) -> float:
        return float(re.match(r"[\d.]+", self.values[name])[0])

    def rough(self, name: str) -> float:
        """The half-width that travels with a value."""
        texts, counts, _ = read_query(find_card(self.card), self.state["query"])
        return (
            read_inputs(find_card(self.card), texts, Settings(), exact=texts, counts=counts)
            .readings[name]
            .rough
        )


def test_wet_slate_goes_through_stock_acid_heat_pots_and_drain():
    """Four skeins, 400 g, 0.62 + 0.24 + 0.04 % from 1 % stocks: 248, 96 and 16 mL; an 8 L bath with 4 g of citric acid."""
    recipe = Way("dye-recipe")
    for name, milliliters in (("navy", 248), ("black", 96), ("brown", 16)):
        stock = recipe.on(f"Make up the stock of {name}")
        assert (stock.values["name"], stock.number("volume"), stock.number("wanted")) == (
            name,
            milliliters,
            1,
        )
    acid = recipe.on("How sour will that bath be?")
    assert (acid.number("liters"), acid.number("grams"), acid.values["chemical"]) == (
        8,
        4,
        "citric",
    )
    assert acid.rough("liters") == pytest.approx(80, rel=0.1), (
        "four scales' grams in 400 g travel on: 1 % of 8 L"
    )
    heat = acid.on("How long does it take to heat?")
    assert (heat.number("bath"), heat.number("fiber_mass")) == (8, 400), (
        "the yarn is known from the recipe, the bath from the acid"
    )
    pots = heat.on("How long does the whole run take?")
    assert {
        name: pots.values[name]
        for name in (
            "recipes.1.name",
            "recipes.1.skeins",
            "skein_mass",
            "liquor_ratio",
            "pots.1.fill",
        )
    } == {
        "recipes.1.name": "the lot",
        "recipes.1.skeins": "4",
        "skein_mass": "100",
        "liquor_ratio": "20",
        "pots.1.fill": "9",
    }
    assert (
        pots.number("steps.3.minutes") == pytest.approx(47, abs=1)
        and pots.number("steps.4.minutes") == 45
    )
    assert "1 load:" in pots.state["say"]
    drain = pots.on("May each bath go down the drain?")
    assert (drain.number("volume"), drain.values["holds"]) == (8, "citric")
    assert drain.number("ph") == pytest.approx(3.19, abs=0.01) and drain.rough("ph") > 0.05, (
        "the acid's pH, with its range"
    )
    assert drain.number("alkalinity") == 40


def test_twelve_shades_go_through_recipe_pots_and_heat():
    """Twelve shades of 600 g, six skeins each, in two pots on two plates: 24 loads over four days."""
    steps = Way("shade-steps", fiber="600 g")
    darkest = steps.on("The recipe for shade 12")
    assert (
        darkest.number("skeins"),
        darkest.number("skein_mass"),
        darkest.number("dyes.1.depth"),
    ) == (6, 100, 1.92)
    assert darkest.state["rows"]["dyes"] == 1 and darkest.values["dyes.1.name"] == "navy"
    assert (
        darkest.on("Make up the stock of navy").number("volume") == 1152
    )  # 600 g x 1.92 % from 1 %
    acid = darkest.on("How sour will that bath be?")
    assert (acid.number("liters"), acid.number("grams")) == (6, 3), (
        "a pot holds three of the six skeins, not the lot"
    )
    plan = steps.on("How long does the whole run take, in skeins of about 100 g?")
    assert plan.state["rows"]["recipes"] == 12 and {
        plan.values[f"recipes.{number}.skeins"] for number in range(1, 13)
    } == {"6"}
    assert "24 loads: 4 dye days" in plan.state["say"]
    heat = plan.on("How long does heating take?")
    assert (heat.number("bath"), heat.number("fiber_mass"), heat.number("hold")) == (6, 300, 45), (
        "two loads of three skeins a shade"
    )
    again = heat.on("How long does the whole run take?")
    assert again.state["rows"]["recipes"] == 12 and again.values["recipes.12.name"] == "shade 12", (
        "the plan left behind is there again"
    )
    assert again.number("steps.3.minutes") == 41.5, (
        "83 °C at the 2 °C a minute that the card keeps to"
    )
    assert "24 loads: 4 dye days" in again.state["say"]
    assert again.on("How long do they dry?").number("skeins") == 72


def test_a_nudged_recipe_goes_on_as_it_was_nudged():
    recipe = Way("lot-repeat").on("The nudged recipe for a pot")
    assert (recipe.number("skeins"), recipe.number("skein_mass")) == (4, 100), (
        "400 g in all, not four skeins of 400 g"
    )
    assert recipe.number("dyes.1.depth") == pytest.approx(0.847, abs=0.001)


@pytest.mark.parametrize("card", all_cards(), ids=card_id)
def test_every_way_on_opens_with_an_answer(card):
    for words in Way(card.id).links():
        Way(card.id).on(words)


@pytest.mark.parametrize(
    "trail",
    [
        "x",
        [3],
        [{"card": "<b>", "query": "v=9"}],
        [{"card": "dye-recipe", "query": "v=1&a=" + "9" * 3000}],
        [{"query": None}] * 90,
    ],
)
def test_a_hostile_trail_changes_nothing(trail):
    plain = ask(do="open", card="bath-heat", query="")
    assert (
        ask(do="open", card="bath-heat", query="", trail=trail)["slots"]["answer"]
        == plain["slots"]["answer"]
    )
