"""The fixture card, live in a built copy of the project: every kind of input is typed, answered, linked and printed in the page."""

import json
from html import unescape

import pytest
from playwright.sync_api import Page, expect

from fibercalc.site.serve import SiteServer
from tests import cards  # noqa: F401  registers the fixture card, so that the native package can be asked too
from tests.workshop import run_in

from .conftest import Watch
from .paper import MM, printed, squeezed
from .test_card_live import controls, field, natively, text_of, until_linked, why
from .test_hostile_links import IMAGE, SCRIPT, elements, handlers
from .waiting import until, until_live, until_settled

CARD = "yarn/every-kind/"
ANSWER = "bench-card output.answer"
SCREEN = {"viewport": {"width": 1280, "height": 900}, "service_workers": "block"}


@pytest.fixture(scope="module")
def place(workshop):
    running = SiteServer(workshop / ".build" / "site").start()
    yield running.address + CARD
    running.stop()


@pytest.fixture(scope="module")
def opened(browser, place):
    """One live card for all tests; each begins at the example again."""
    watching = Watch()
    context = browser.new_context(**SCREEN)
    watching.context(context)
    page = context.new_page()
    page.on("dialog", lambda dialog: pytest.fail(dialog.message))
    page.goto(place)
    until_live(page)
    yield page
    context.close()
    assert not watching.unexpected, "\n".join(watching.unexpected)


@pytest.fixture
def card(opened) -> Page:
    opened.get_by_role("button", name="Back to the example").click()
    expect(field(opened, "skeins")).to_have_value("16")
    until(opened, "() => location.search === ''")
    expect(opened.locator("bench-card .kept")).to_be_hidden()
    return opened


def expect_native(page: Page, **changed: str) -> None:
    """The page shows what the native package answers to what stands in the controls, in the slots a reader reads first."""
    said = natively("every-kind", controls(page) | changed)
    assert said["answered"], said
    for slot in ("answer", "numbers", "tables"):
        expect(page.locator(f"bench-card [data-slot='{slot}']")).to_have_text(
            unescape(text_of(said["slots"][slot]))
        )
    expect(page.locator("bench-card .kept")).to_be_hidden()


def read(page: Page, name: str):
    return page.locator(f"bench-card .field[data-name='{name}'] .read")


TYPED = {  # name: what is typed, what is read back
    "mass": ("3,5 oz", "3.5 oz"),
    "count_of_yarn": ("400 +/- 5", "400"),
    "temperature": ("90 F", "90"),
    "skeins": ("31", "read as 31"),
    "loss": ("3 1/2", "3.5"),
    "price": ("29", "29"),
    "stock_note": ("the second shelf", ""),
    "ready": ("2027-04-09", "9 Apr 2027"),
    "bath": ("4 1/2 L", "4.5 L"),
    "shade": ("#336699", "#336699"),
    "dyes.1.name": ("teal", ""),
    "dyes.2.depth": ("0.5", "0.5"),
    "dyes.1.strength": ("2 %", "2"),
}


@pytest.mark.parametrize("name", TYPED)
def test_each_kind_is_typed_read_back_and_answered(card, name):
    text, echoed = TYPED[name]
    before = natively("every-kind", controls(card))["slots"]
    field(card, name).fill(text)
    expect(read(card, name)).to_contain_text(echoed)
    expect_native(card)
    after = natively("every-kind", controls(card))["slots"]
    assert before != after, "this input changes something that is shown"
    expect(card.locator("bench-card [data-slot='working']")).to_have_text(
        unescape(text_of(after["working"]))
    )


def test_a_condition_hides_and_shows_its_field(card):
    bath = card.locator("bench-card .field[data-name='bath']")
    expect(bath).to_be_visible()
    field(card, "way").select_option("hand")
    expect(bath).to_be_hidden()
    expect_native(card)
    expect(card.locator(ANSWER)).to_contain_text("by hand")
    field(card, "way").select_option("bath")
    expect(bath).to_be_visible()
    expect(card.locator(ANSWER)).to_contain_text("in the bath")


def test_a_color_and_its_swatch_follow_each_other(card):
    swatch = card.locator("input.swatch[data-for='shade']")
    field(card, "shade").fill("#a03020")
    expect(swatch).to_have_value("#a03020")
    expect_native(card)
    swatch.evaluate(
        "(each) => { each.value = '#10a0b0'; each.dispatchEvent(new Event('input', { bubbles: true"
        " })); }"
    )
    expect(field(card, "shade")).to_have_value("#10a0b0")
    expect_native(card)
    assert card.locator("bench-card svg.picture rect").first.get_attribute("fill") == "#10a0b0"


def test_an_ambiguous_number_in_a_strict_field_is_asked_about(card):
    answer = card.locator(ANSWER).text_content()
    field(card, "bath").fill("1,200 mL")
    expect(why(card, "bath")).to_be_visible()
    asked = why(card, "bath").text_content()
    assert "1200" in asked and "1.2" in asked, asked
    expect(field(card, "bath")).to_have_attribute("aria-invalid", "true")
    assert card.locator(ANSWER).text_content() == answer
    expect(card.locator("bench-card .kept")).to_have_text(
        "This answer is still for your last good values."
    )
    field(card, "bath").fill("1200 mL")
    expect(why(card, "bath")).to_be_hidden()
    expect_native(card)


def test_what_is_optional_may_be_left_blank(card):
    expect(card.locator("bench-card [data-slot='numbers']")).to_contain_text("Price in all")
    field(card, "price").fill("")
    field(card, "stock_note").fill("")
    expect(card.locator(ANSWER)).to_contain_text("for the shelf")
    expect(why(card, "price")).to_be_hidden()
    expect_native(card)


def test_a_day_that_is_none_is_refused_in_words(card):
    field(card, "ready").fill("2027-02-30")
    expect(why(card, "ready")).to_be_visible()
    expect(why(card, "ready")).to_contain_text("2027-02-30")


def test_a_refusal_of_values_that_are_each_fine_stands_at_the_field(card):
    field(card, "dyes.1.depth").fill("8")
    field(card, "dyes.2.depth").fill("8")
    expect(why(card, "dyes.1.depth")).to_contain_text("together they are above 10")


def column(page: Page, name: str) -> list[str]:
    return page.locator(f"[name^='dyes.'][name$='.{name}']").evaluate_all(
        "(boxes) => boxes.map((box) => box.value)"
    )


def test_rows_are_added_removed_renumbered_and_put_back(card):
    rows = card.locator("fieldset[data-rows='dyes']")
    assert column(card, "name") == ["navy", "black", "brown"]
    rows.locator("[data-add]").click()
    assert card.evaluate("() => document.activeElement.name") == "dyes.4.name"
    assert rows.locator(".row").last.locator("label").first.text_content().startswith("Dye 4")
    field(card, "dyes.4.name").fill("teal")
    field(card, "dyes.4.depth").fill("0.3")
    expect_native(card)
    expect(card.locator("bench-card [data-slot='tables'] tbody tr")).to_have_count(4)
    rows.locator("[data-remove='dyes.2']").click()
    assert column(card, "name") == ["navy", "brown", "teal"]
    assert rows.locator("[data-remove]").evaluate_all(
        "(all) => all.map((each) => each.dataset.remove)"
    ) == ["dyes.1", "dyes.2", "dyes.3"]
    expect(card.locator("bench-card [data-slot='tables'] tbody tr")).to_have_count(3)
    expect_native(card)
    rows.get_by_role("button", name="Put row 2 back").click()
    assert column(card, "name") == ["navy", "black", "brown", "teal"]
    assert column(card, "depth")[3] == "0.3"
    expect_native(card)
    for _ in range(3):
        rows.locator("[data-add]").click()
    expect(rows.locator(".row")).to_have_count(6)
    expect(rows.locator(".said")).to_have_text("6 at most.")


def test_a_link_brings_everything_back_after_a_reload(card, place):
    card.locator("[name='mass.unit']").select_option("oz")
    values = {
        "mass": "3.2",
        "skeins": "12",
        "price": "",
        "stock_note": "with a & and a ?",
        "ready": "2028-02-29",
        "shade": "#00ff7f",
        "dyes.1.name": "rust <b>",
    }
    for name, text in values.items():
        field(card, name).fill(text)
        if name == "mass":
            until_settled(card)  # what the example lent is given up with the first value of hers
    field(card, "way").select_option("hand")
    card.locator("fieldset[data-rows='dyes'] [data-remove='dyes.3']").click()
    expect_native(card)
    until_linked(card, "every-kind")
    shown, answer, address = controls(card), card.locator("bench-card .rest").inner_text(), card.url
    assert "?v=1&" in address
    card.reload()
    until_live(card)
    expect(field(card, "skeins")).to_have_value("12")
    expect(card.locator(ANSWER)).to_contain_text("with a & and a ?")
    assert controls(card) == shown
    assert card.locator("bench-card .rest").inner_text() == answer
    assert card.url == address
    assert card.locator("bench-card .link-notes").count() == 0


def test_hostile_words_in_a_text_field_stay_words(card):
    before = elements(card)
    for text in (IMAGE, SCRIPT, '"><b onclick=1>', "{n}", "&lt;i&gt;"):
        field(card, "stock_note").fill(text[:30])
        expect(card.locator(ANSWER)).to_contain_text(text[:30])
        field(card, "dyes.1.name").fill(text[:20])
        card.wait_for_timeout(100)
        assert elements(card) == before, text
        assert handlers(card) == []
    field(card, "stock_note").fill(IMAGE[:30])
    expect(card.locator(ANSWER)).to_contain_text(IMAGE[:30])
    expect(card.locator("bench-card svg.picture")).to_contain_text(IMAGE[:30])
    field(card, "stock_note").fill("\u202eback")  # would turn the line around
    expect(why(card, "stock_note")).to_contain_text("cannot be printed")
    assert "\u202e" not in card.locator("bench-card").inner_text()


def test_its_sheet_holds_every_value(card):
    field(card, "skeins").fill("18")
    field(card, "stock_note").fill("second shelf")
    for name, text in (
        ("ready", "6 Mar 2027"),
        ("price", "28.5"),
        ("dyes.1.name", "magenta"),
    ):  # what the example only lends is not printed
        field(card, name).fill(text)
    expect_native(card)
    card.evaluate("() => { window.asked = false; window.print = () => { window.asked = true; }; }")
    card.get_by_role("button", name="Print this card alone").click()
    until(card, "() => window.asked")
    sheet = printed(card, "Letter")
    card.evaluate("() => dispatchEvent(new Event('afterprint'))")
    assert len(sheet.leaves) == 1
    lowest = max(sheet.leaves[0].chars, key=lambda char: char["bottom"])
    assert lowest["bottom"] <= (12 + 125) * MM + 1, f"{lowest['bottom'] / MM - 12:.0f} mm"
    for text in (
        "second shelf",
        "18",
        "magenta",
        "0.62 %",
        "In a bath",
        "6 Mar 2027",
        "#6b7f8f",
        "28.5",
        "Hot.",
    ):
        assert squeezed(text) in sheet.flow, text


def test_the_command_line_and_the_page_say_the_same(card, workshop):
    """The same fixture, asked in a shell of the built copy."""
    field(card, "skeins").fill("20")
    expect_native(card)
    told = json.loads(
        run_in(workshop, "-m", "fibercalc", "work", "every-kind", "skeins=20", "--json")
    )
    assert text_of(f"{told['answer']} {told['notes'][0]}") == text_of(
        card.locator(ANSWER).inner_text().replace("\n", " ")
    )
