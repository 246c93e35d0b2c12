"""Pages in the states that they come to: a value changed, a mistake, the search open. Each is as free of barriers as the page at rest."""

import pytest
from playwright.sync_api import Page, expect

from .addresses import all_pages, card_pages, falls, page_id
from .looking import barriers, looked_at
from .paper import enter_two
from .test_pages import DESK, PHONE, SMALLER, TARGETS
from .waiting import until_live

CARD = card_pages()["skein-length"]
VIEWS = {
    f"{options['viewport']['width']}-{scheme}": options | {"color_scheme": scheme}
    for options in (DESK, PHONE)
    for scheme in ("light", "dark")
}


def search_open(page: Page) -> None:
    if not page.locator(".find__query").is_visible():
        page.locator(".find__icon").click()
    page.locator(".find__query").click()
    page.locator(".find__query").press_sequentially("yarn")
    expect(page.locator(".md-search-result__link").first).to_be_visible(timeout=15_000)


# What would be printed on another ground than white.
GROUNDS = """() => [...document.querySelectorAll("body, body *")]
  .filter((each) => each.checkVisibility() && !each.closest("svg, select, input, button"))
  .map((each) => [each.tagName + "." + each.className, getComputedStyle(each).backgroundColor])
  .filter(([, ground]) => ground !== "rgb(255, 255, 255)" && !/, 0\\)$/.test(ground))"""


def changed(page: Page) -> None:
    until_live(page)
    enter_two(page)


def wrong(page: Page) -> None:
    until_live(page)
    page.locator(
        "bench-card .field:not([data-kind='text'], [data-kind='color']) .entry > input:visible"
    ).first.fill("much")
    expect(page.locator("bench-card .why:visible").first).to_be_visible()
    expect(page.locator("bench-card .kept")).to_be_visible()


def all_open(page: Page) -> None:
    closed = page.locator("details:not([open]) > summary")
    while closed.count():  # each one opened is closed no more: the next is then the first
        closed.first.click()


# One page comes to its states one after another, as it does in use. A card that answers a changed value is live, so that needs no state of its own.
ON_CARDS = {"all open": all_open, "changed": changed, "wrong": wrong}
ON_WORDS = {"all open": all_open}
DAILY = [(CARD, "1280-light"), (CARD, "390-dark")]
# Each page is seen at both widths and in both schemes, in two views that have nothing in common: which two, its name says.
PAIRS = (("1280-light", "390-dark"), ("1280-dark", "390-light"))
WIDE = [
    (address, view)
    for address in all_pages()
    for view in PAIRS[0 if address == CARD else falls(address, 2)]
]


def opens_search(address: str, view: str) -> bool:
    """The open search covers the page below it: every fourth page in one of its views, the pages of every day in both."""
    return (address, view) in DAILY or falls(f"{address} {view}", 8) == 0


def at_rest(page: Page) -> None:
    """Nothing has moved while it came; a narrower phone scrolls no way but down; paper has no dark ground."""
    assert sum(each["value"] for each in page.evaluate("() => window.shifts")) <= 0.02
    own = page.viewport_size
    if own["width"] < 1000:
        page.set_viewport_size({"width": 320, "height": own["height"]})
        assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")
        page.set_viewport_size(own)
    page.emulate_media(media="print")
    assert not page.evaluate(GROUNDS)
    page.emulate_media(media="screen")


@pytest.mark.parametrize(
    "address, view",
    [
        pytest.param(
            *case,
            marks=() if case in DAILY else pytest.mark.sweep,
            id=f"{page_id(case[0])}-{case[1]}",
        )
        for case in WIDE
    ],
)
def test_no_barrier_in_any_state(browser, server, address, view):
    is_card = address in card_pages().values()
    states = (ON_CARDS if is_card else ON_WORDS) | (
        {"search open": search_open} if opens_search(address, view) else {}
    )
    with looked_at(browser, server, address, sparing=not is_card, **VIEWS[view]) as looked:
        for state, come_to in {"at rest": at_rest, **states}.items():
            come_to(looked.page)
            assert not barriers(looked.page), state
            assert looked.page.evaluate(
                "() => document.documentElement.scrollWidth <= innerWidth"
            ), state
            assert not looked.page.evaluate(TARGETS, ", ".join(SMALLER)), state


def test_a_mistake_is_told_to_those_who_listen(browser, server):
    """The error line is joined to its field, and the page says that the answer is an older one."""
    with looked_at(browser, server, CARD, sparing=False, **DESK) as looked:
        wrong(looked.page)
        box = looked.page.locator("bench-card [aria-invalid='true']")
        described = box.get_attribute("aria-describedby").split()
        told = [
            looked.page.evaluate(
                "(id) => document.getElementById(id)?.checkVisibility() &&"
                " document.getElementById(id).textContent",
                each,
            )
            for each in described
        ]
        assert any(text and "much" in text for text in told), told
