"""Once a value is hers, no name, lot, date, dye or price that the example made up is printed, said or carried; today is the device's day."""

import html
import json
import re
from datetime import date

import pytest

import fibercalc
from fibercalc.core import day
from fibercalc.core.card import TEXT, Rows
from fibercalc.core.onward import _from_before
from fibercalc.core.registry import all_cards, find_card
from fibercalc.core.settings import Settings
from fibercalc.site.boundary import handle
from fibercalc.workbook.flow import offers
from tests.own_workbook import DAY, RECORDS

LINK = re.compile(r'<a href="([^"]*)" data-carry="([^"]*)">(.*?)</a>')
SHORTEST = 4  # letters: a shorter text of the example stands in other words
# What the example made up of its own world; colors and steps that have common names are no one's.
MADE_UP = ("Culvert", "Lamps", "Rusted", "Wet Slate", "Peat Gold", "Sheepfold", "Tarrow", "Dunmel", "Brackwend", "WS-14", "L41", "L42", "L43", "L44", "L45",
           "navy", "speckle", "superwash", "5 Mar 2027", "2027-03-05", "11 Jan 2027", "2027-01-11", "26 Nov 2026", "2026-11-26", "19 Jan 2027", "2027-01-19", "24 Dec 2026", "2026-12-24",
           "2027-01-02", "2 Jan 2027")


@pytest.fixture(autouse=True)
def on_her_day(monkeypatch):
    _from_before.cache_clear()
    monkeypatch.setattr(day, "clock", lambda: date.fromisoformat(DAY))


def ask(**request):
    reply = json.loads(handle(json.dumps(request)))
    assert "ok" in reply, reply
    return reply["ok"]


def plain(markup: str) -> str:
    """The words of finished HTML, those that stand for its pictures among them."""
    spoken = " ".join(re.findall(r'aria-label="([^"]*)"', markup))
    return html.unescape(re.sub(r"<[^>]*>", " ", markup) + " " + spoken)


class Page:
    """A card as it stands on screen: what its form holds, what is hers of it, and the cards before."""

    def __init__(self, card: str, query: str = "", trail=()):
        self.card, self.trail = card, list(trail)
        self._hold(ask(do="open", card=card, query=query, trail=self.trail))

    def _hold(self, state):
        self.state, self.own = state, state["own"]
        self.values, self.exact, self.rows = state["values"], state["exact"], state["rows"]

    def use(self, label: str) -> "Page":
        """Takes what a record offers, as the page does it."""
        offer = next(each for each in offers(find_card(self.card), RECORDS, Settings()) if each["label"].startswith(f"Use {label}"))
        kept = {name: text for name, text in self.values.items() if name.split(".")[0] not in offer["rows"]}
        self.exact = {name: text for name, text in self.exact.items() if name not in offer["values"] and name.split(".")[0] not in offer["rows"]}
        return self._work(kept | offer["values"], self.rows | offer["rows"], offer["own"])

    def type(self, **texts: str) -> "Page":
        self.exact = {name: text for name, text in self.exact.items() if name not in texts}
        return self._work(self.values | texts, self.rows, list(texts))

    def _work(self, values, rows, own) -> "Page":
        self.values, self.rows, self.own = values, rows, sorted({*self.own, *own})
        self.state = ask(do="work", **self.asked())
        back = self.state["taken_back"]
        self.rows |= back["rows"]
        self.values = {name: text for name, text in (self.values | back["values"]).items() if name.split(".")[0] not in back["rows"]}
        return self

    def asked(self) -> dict:
        return {"card": self.card, "values": self.values, "exact": self.exact, "rows": self.rows, "own": self.own, "trail": self.trail}

    def links(self) -> dict[str, tuple[str, str]]:
        return {html.unescape(words): (card, html.unescape(address).partition("?")[2]) for address, card, words in LINK.findall(self.state["slots"]["carry"])}

    def on(self, words: str) -> "Page":
        card, query = self.links()[words]
        before = [step for step in self.trail if step["card"] != self.card] + [{"card": self.card, "query": self.state["query"]}]
        return Page(card, query, before)

    def printed(self) -> dict[str, str]:
        """The words of the half-page sheet and of each exact paper; a paper that is refused is left out."""
        papers = [None, *range(len(find_card(self.card).papers))]
        made = {number: ask(do="sheet", paper=number, address="https://book.example/", here="https://book.example/", **self.asked()) for number in papers}
        return {f"{self.card}, paper {number}": plain(each["html"]) for number, each in made.items() if each["html"]}


def found_in(text: str) -> list[str]:
    return [word for word in MADE_UP if re.search(rf"(?<!\w){re.escape(word)}(?!\w)", text)]


def nothing_made_up(page: Page, on_screen: tuple[str, ...] = ()) -> None:
    """Nothing of the example on a paper, in a link onward; and in a sentence only what the answer itself names as the example's."""
    for where, text in page.printed().items():
        assert not found_in(text), (where, found_in(text), text[:1500])
    carried = " ".join(query for _, query in page.links().values())
    assert not found_in(html.unescape(carried).replace("%20", " ")), (page.card, carried)
    assert not [word for word in found_in(page.state["say"]) if word not in on_screen], (page.card, page.state["say"])


def test_the_list_of_what_the_example_made_up_misses_none_that_is_lent():
    """Every name that a card lends is in the list above, or has a common name that anyone's dyes and steps have."""
    common = {"black", "brown", "yellow", "red", "citric acid", "another", "another base", "another parcel", "Club", "Two skeins", "undyed", "new", "brown", "recipe", "yellow"}
    for card in all_cards():
        for item in card.inputs:
            for each in item.fields if isinstance(item, Rows) else (item,):
                lines = [row.get(each.name, each.default) for row in item.default] + [each.default] if isinstance(item, Rows) else [each.default]
                for text in [name.strip(" .0123456789") for line in lines for name in line.split(",")] if each.lends and each.kind == TEXT else ():
                    assert len(text) < SHORTEST or text in common or found_in(text) or (card.id, each.name) in (("label", "care_1"), ("label", "care_2"), ("label", "fiber")), (card.id, each.name, text)


def her_release() -> Page:
    page = Page("release-plan").use("Thaw release")
    assert page.state["answered"], page.state
    return page


def test_her_release_is_hers_alone():
    page = her_release()
    assert "Dye 180 skeins" in page.state["say"] and "156 skeins of Alder DK" in page.state["say"]
    nothing_made_up(page)


def test_every_link_of_her_release_leads_to_her_own():
    """In a room whose loads are few enough to be shared out one by one: recipes, kits, set, order, dates, run: all that is printed and handed on there is hers, two cards deep."""
    seen = set()
    page = her_release().type(load="18")
    for words in page.links():
        following = page.on(words)
        assert following.own, words
        seen.add(following.card)
        on_screen = ("navy",) if following.card in ("base-test", "lot-repeat") else ()
        nothing_made_up(following, on_screen)
        for further in following.links():
            last = following.on(further)
            if last.own:  # a way that hands nothing on leads to the whole example, and to nothing else
                nothing_made_up(last, MADE_UP)
    assert seen == {"base-order", "back-plan", "pots", "dye-recipe", "set-plan", "parcels", "label", "price"}


def test_her_kit_card_has_no_maker_color_lot_or_day_of_the_example():
    label = her_release().on("Kit card for Thicket Shawl")
    assert label.values["kit"] == "Thicket Shawl" and {label.values[name] for name in ("maker", "color", "lot", "start")} == {""}
    text = label.printed()["label, paper 0"]
    assert "Thicket Shawl" in text and "Part 1" in text


def test_her_set_takes_her_dye_and_her_days():
    for plan in (her_release().on("Shades of Lanterns"), Page("set-plan").use("Lanterns")):
        assert (plan.values["dyes.1.name"], plan.rows["dyes"], plan.values["days"]) == ("magenta", 1, "24")
        assert "Still the example’s: " in plain(plan.state["slots"]["answer"]) and "dye 1 (color of its sample)" in plain(plan.state["slots"]["answer"])
        nothing_made_up(plan)


def test_use_counts_what_is_short_from_her_open_plans():
    """180 skeins for the open plan, none for the one that is done, 24 on the shelf: 156 short, 26 packs of 6."""
    for label in ("all bases", "Thaw release", "Alder DK"):
        found = [each["label"] for each in offers(find_card("base-order"), RECORDS, Settings())]
        if not any(each.startswith(f"Use {label}") for each in found):
            continue
        order = Page("base-order").use(label)
        assert order.values["bases.1.needed"] == "180" and order.values["bases.1.on_hand"] == "24"
        assert "Order 26 × 6 of Alder DK." in order.state["say"]
        assert order.rows["dyes"] == 0, "the example's dyes are not hers to order"
        assert order.values["today"] == DAY
        nothing_made_up(order)


def test_a_kit_is_priced_by_all_its_skeins():
    """6 skeins at 11.75 of base; 90 minutes for the kit are 15 a skein."""
    price = Page("price").use("Thicket Shawl")
    assert (price.values["skeins"], price.values["asked"], price.values["base"], price.values["minutes"]) == ("6", "148", "11.75", "15")
    answer = fibercalc.work("price", {"asked": "148", "base": "11.75", "skeins": "6", "minutes": "15", "dye": "0.5", "energy": "0.6", "wage": "18", "loss": "0", "label": "0", "overhead": "0",
                                      "fee_percent": "0", "fee_fixed": "0", "tax_place": "none"})
    assert answer["results"]["cost"]["value"] == pytest.approx(6 * (11.75 + 0.5 + 0.6 + 15 * 18 / 60))
    assert Page("price").use("Lanterns").values["skeins"] == "4.8"  # 24 small ones, 5 from a full skein


def test_a_label_with_her_base_keeps_nothing_of_the_example():
    label = Page("label").use("Alder DK")
    assert label.values["name"] == "Alder DK" and {label.values[name] for name in ("maker", "lot", "color", "care_1", "care_2")} == {""}
    assert label.values["fiber"] == "100 % wool"
    nothing_made_up(label)


def test_what_was_taken_back_can_be_typed_again_even_as_the_example_has_it():
    label = Page("label").type(copies="5")
    assert label.values["maker"] == "" and label.state["taken_back"]["values"]["lot"] == ""
    label.type(maker="Brackwend Dyehouse")
    assert label.values["maker"] == "Brackwend Dyehouse" and "Brackwend Dyehouse" in label.state["slots"]["pictures"] and label.values["lot"] == ""
    again = Page("label", label.state["query"])
    assert again.values["maker"] == "Brackwend Dyehouse" and again.values["lot"] == "" and again.values["copies"] == "5"


@pytest.mark.parametrize("card, typed, taken", [("back-plan", {"dye_days": "6"}, "It starts on"), ("base-order", {"carriage": "30"}, "Wanted on")])
def test_today_is_the_devices_day_once_a_value_is_hers(card, typed, taken):
    example = Page(card)
    assert example.values["today"] == "2026-11-26"
    page = Page(card).type(**typed)
    assert page.values["today"] == DAY and page.rows["closed"] == 0
    assert "today" not in page.own and f"a0={DAY}" not in page.state["query"]
    assert taken.lower() in plain(page.state["slots"]["answer"]).lower()
    answer = fibercalc.work(card, typed)
    assert answer["inputs"]["today"]["value"] == DAY and answer["notes"][0].startswith("Still the example’s: ")
    assert fibercalc.work(card, typed | {"today": "2028-02-01"})["inputs"]["today"]["value"] == "2028-02-01"


def test_a_paper_with_the_examples_day_leaves_its_days_open():
    page = Page("back-plan").type(dye_days="6")
    text = page.printed()["back-plan, paper 0"]
    assert "____" in text and not re.search(r"\d{1,2} [A-Z][a-z]{2} 202[78](?!.*0\.1\.0)", text.partition("0.1.0")[0])
    assert "16 Jun 2028" in Page("back-plan").use("Thaw release").printed()["back-plan, paper 0"]


def test_the_price_says_which_sums_are_still_the_examples():
    answer = fibercalc.work("price", {"asked": "35"})
    assert answer["notes"][0] == ("Still the example’s: tax rate; base yarn, a skein; dye, a skein; acid and energy, a skein; your wage, an hour; label and packing, a skein; "
                                  "overhead, a skein’s share; payment and shop fee; and for each payment.")
    assert "month_costs" not in [name for name, each in answer["inputs"].items() if each.get("value")]


def test_a_sum_that_rests_on_the_examples_is_not_handed_on():
    """Her price goes on; what is left of it after the example's costs does not."""
    links = Page("price").type(asked="35").links()
    fair = Page(*links["What must sell to pay for a fair?"])
    assert fair.values["price"] == "35" and "contribution" not in fair.own


def test_a_number_typed_back_is_the_examples_again_but_a_name_is_hers():
    assert Page("skein-length").type(turns="285").type(turns="280").state["query"] == ""
    label = Page("label").type(lot="WS-14")
    assert label.own == ["lot"] and label.values["maker"] == "" and label.state["query"] == "v=1&k=WS-14"


def test_hostile_names_of_what_is_hers_change_nothing():
    plain_ = ask(do="work", card="label", values=find_card("label").defaults(), own=[])
    odd = ask(do="work", card="label", values=find_card("label").defaults(), own=["nowhere", "contents.99.what", "<b>", 7, None, "contents.x"])
    assert odd["slots"]["answer"] == plain_["slots"]["answer"]


def test_a_choice_alone_makes_nothing_hers():
    assert Page("label").type(kind="kit").values["maker"] == "Brackwend Dyehouse"


def test_the_example_walks_on_as_the_example():
    """Nothing is hers there, so links stay short and names stay."""
    page = Page("release-plan")
    assert page.own == [] and page.on("Kit card for Culvert Stole").values["kit"] == "Culvert Stole"
