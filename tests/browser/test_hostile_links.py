"""Whatever stands in a link, in a field or in a stored record is text: nothing runs, no element comes, the example stays and a note says why."""

from html import unescape
from urllib.parse import quote

import pytest
from playwright.sync_api import Page, expect

from fibercalc.core.link import query_of_texts
from fibercalc.core.registry import find_card

from .records import REEL, TARROW, write_bench
from .test_card_live import field, natively, text_of
from .waiting import until, until_live, until_settled

CARD = "yarn/skein-length/"
SCRIPT = "<script>alert(1)</script>"
IMAGE = "<img src=x onerror=alert(1)>"
# The card's own keys: turns as a link names them.
TURNS = query_of_texts(find_card("skein-length"), {"turns": "250"}).split("&")[1].split("=")[0]

HOSTILE = {
    "a script as a value": f"v=1&{TURNS}={quote(SCRIPT)}",
    "a script as a name": f"v=1&{quote(SCRIPT)}=1",
    "a picture that fails": f"v=1&{TURNS}={quote(IMAGE)}&zz={quote(IMAGE)}",
    "an end of an attribute": f"v=1&{TURNS}={quote(chr(34) + '><svg onload=alert(1)>')}",
    "a script address": f"v=1&{TURNS}={quote('javascript:alert(1)')}",
    "a huge number": f"v=1&{TURNS}=" + "9" * 60,
    "an exponent": f"v=1&{TURNS}=1e308",
    "not a number": f"v=1&{TURNS}=nan",
    "endless": f"v=1&{TURNS}=-inf",
    "a wrong type": f"v=1&{TURNS}=two%20hundred",
    "a wrong unit": f"v=1&{TURNS}=250kg",
    "a later version": f"v=999&{TURNS}=250",
    "no version": f"{TURNS}=250",
    "a version that is none": f"v={quote('1;drop')}&{TURNS}=250",
    "nothing printable": f"v=1&{TURNS}=%00%01%1b",
    "letters that turn the line around": f"v=1&{TURNS}={quote(chr(0x202E) + '052' + chr(0x2066))}",
    "five thousand letters": f"v=1&{TURNS}=" + "a" * 5_000,
    "two thousand names": "v=1&" + "&".join(f"x{number}=1" for number in range(300)),
    "names of every object": (
        "v=1&__proto__=1&constructor=2&prototype=3&__proto__[turns]=9&toString=x"
    ),
    "bytes that are no letters": f"v=1&{TURNS}=%ff%fe%80",
}


@pytest.fixture
def counted(page) -> Page:
    """A page in which no dialog may open."""
    page.on("dialog", lambda dialog: pytest.fail(f"a dialog: {dialog.message}"))
    return page


def elements(page: Page) -> dict[str, int]:
    """How many there are of what a hostile text would add."""
    return page.evaluate(
        """() => Object.fromEntries(["script", "img", "iframe", "object", "embed", "svg", "style", "base", "form", "a"].map(
      (name) => [name, document.querySelectorAll(name).length]))"""
    )


def handlers(page: Page) -> list[str]:
    return page.evaluate(
        """() => [...document.querySelectorAll("*")].flatMap((each) => [...each.attributes])
      .filter(({ name, value }) => name.startsWith("on") || /^\\s*javascript:/i.test(value)).map(({ name, value }) => `${name}=${value}`)"""
    )


@pytest.fixture(scope="module")
def plain(browser, server) -> dict[str, int]:
    """The elements of the card's page without any query."""
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    page.goto(server.address + CARD)
    until_live(page)
    counts = elements(page)
    context.close()
    return counts


OPENED = ("a script as a value", "bytes that are no letters")


@pytest.mark.parametrize(
    "name",
    [name if name in OPENED else pytest.param(name, marks=pytest.mark.sweep) for name in HOSTILE],
)
def test_a_hostile_link_opened_leaves_the_example_and_says_so(counted, server, plain, name):
    counted.goto(f"{server.address}{CARD}?{HOSTILE[name]}")
    until_live(counted)
    holds(counted, plain)


def test_hostile_links_one_after_another_leave_the_example_and_say_so(counted, server, plain):
    """All of them in one page, by going back to each."""
    page = counted
    page.goto(server.address + CARD)
    until_live(page)
    for name, query in HOSTILE.items():
        field(page, "turns").fill("251")
        until(page, "() => location.search !== ''")
        until_settled(page)  # a late answer would write its own link over this one
        page.evaluate(
            "(query) => { history.replaceState(history.state, '', `?${query}`);"
            " history.pushState(null, '', '#on'); history.back(); }",
            query,
        )
        try:
            holds(page, plain)
        except AssertionError as error:
            raise AssertionError(f"{name}: {error}") from error


def holds(page: Page, plain: dict[str, int]) -> None:
    """The example stands, a note says why, and nothing came in."""
    expect(page.locator("bench-card .link-notes")).to_be_visible()
    assert page.locator("bench-card .link-notes").inner_text().strip()
    expect(field(page, "turns")).to_have_value(find_card("skein-length").item("turns").default)
    expect(page.locator("bench-card output.answer")).to_have_text(
        unescape(text_of(natively("skein-length", {})["slots"]["answer"]))
    )
    assert elements(page) == plain
    assert handlers(page) == []
    assert page.evaluate(
        "() => Object.keys(Object.prototype).length === 0 && ({}).turns === undefined"
    )
    assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth"), (
        "it widens the page"
    )


def test_a_value_given_twice_is_used_once_and_said(counted, server, plain):
    counted.goto(f"{server.address}{CARD}?v=1&{TURNS}=250&{TURNS}=260")
    until_live(counted)
    expect(counted.locator("bench-card .link-notes")).to_contain_text("twice")
    expect(field(counted, "turns")).to_have_value("250")
    assert elements(counted) == plain


TYPED = [
    SCRIPT,
    IMAGE,
    '"><svg onload=alert(1)>',
    "javascript:alert(1)",
    "\u202e052\u2066",
    "=1+1",
    "{n}",
    "&lt;b&gt;",
    "x" * 5_000,
]


def test_hostile_text_typed_into_a_number_is_repeated_as_text(counted, server, plain):
    page = counted
    page.goto(server.address + CARD)
    until_live(page)
    for text in TYPED:
        field(page, "turns").fill(text)
        expect(page.locator(".field[data-name='turns'] .why")).to_be_visible()
        assert elements(page) == plain, text
        assert handlers(page) == []
        assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth"), text
    field(page, "turns").fill("251")
    expect(page.locator("bench-card .kept")).to_be_hidden()


TAMPER = """(image) => new Promise((done, failed) => {
  const opening = indexedDB.open("bench-book");
  opening.onerror = failed;
  opening.onsuccess = () => {
    const store = opening.result.transaction("bench", "readwrite").objectStore("bench");
    store.get("mine").onsuccess = ({ target }) => {
      const spoiled = (value) => typeof value === "string" ? image : Array.isArray(value) ? value.map(spoiled)
        : value && typeof value === "object" ? Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, key === "format" ? inner : spoiled(inner)])) : value;
      const record = spoiled(target.result);
      record[image] = image;
      store.put(record, "mine").onsuccess = () => { opening.result.close(); done(JSON.stringify(record).split("onerror").length - 1); };
    };
  };
})"""


def test_a_hostile_record_in_this_browser_stays_text(counted, server, plain):
    """A bench record as another program could have left it: My bench and a card open, and say what they can use."""
    page = counted
    page.goto(server.address + "bench/")
    until(page, "() => customElements.get('bench-mine') !== undefined")
    before = elements(page)  # spoiled, no row of the record can be used
    write_bench(page, server.address, REEL, TARROW)
    page.get_by_role("button", name="Save my bench").click()
    expect(page.locator("bench-mine .state")).to_contain_text("Saved.", timeout=40_000)
    assert page.evaluate(TAMPER, IMAGE) > 3
    page.reload()
    expect(page.locator("bench-mine .state")).not_to_be_empty(timeout=40_000)
    page.wait_for_timeout(1_000)
    assert elements(page) == before
    assert handlers(page) == []
    page.goto(server.address + CARD)
    until_live(page)
    field(page, "turns").fill("252")
    expect(page.locator("bench-card .kept")).to_be_hidden()
    assert {name: count for name, count in elements(page).items() if name != "a"} == {
        name: count for name, count in plain.items() if name != "a"
    }
    assert handlers(page) == []
