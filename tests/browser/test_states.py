"""Pages in the states that they come to: a value changed, a mistake, the search open. Each is as free of barriers as the page at rest."""

from itertools import product

import pytest
from playwright.sync_api import Page, expect

from .addresses import all_pages, card_pages, page_id
from .looking import barriers, looked_at
from .paper import enter_two
from .test_pages import DESK, PHONE, SMALLER, TARGETS
from .waiting import until_live

CARD = card_pages()["skein-length"]
VIEWS = {f"{options['viewport']['width']}-{scheme}": options | {"color_scheme": scheme} for options in (DESK, PHONE) for scheme in ("light", "dark")}


def as_live(page: Page) -> None:
    until_live(page)


def search_open(page: Page) -> None:
    if not page.locator(".find__query").is_visible():
        page.locator(".find__icon").click()
    page.locator(".find__query").click()
    page.locator(".find__query").press_sequentially("yarn")
    expect(page.locator(".md-search-result__link").first).to_be_visible(timeout=15_000)


def changed(page: Page) -> None:
    until_live(page)
    enter_two(page)


def wrong(page: Page) -> None:
    until_live(page)
    page.locator("bench-card .entry > input:not(.swatch):visible").first.fill("much")
    expect(page.locator("bench-card .why:visible").first).to_be_visible()
    expect(page.locator("bench-card .kept")).to_be_visible()


def all_open(page: Page) -> None:
    for summary in page.locator("details:not([open]) > summary").all():
        summary.click()


ON_CARDS = {"live": as_live, "changed": changed, "wrong": wrong}
ON_ALL = {"search open": search_open, "all open": all_open}
DAILY = [(CARD, view, state) for view in ("1280-light", "390-dark") for state in ("changed", "wrong", "search open", "all open")]
WIDE = [(address, view, state) for address, view in product(all_pages(), VIEWS)
        for state in (*ON_ALL, *(ON_CARDS if address in card_pages().values() else ()))]


def name_of(case) -> str:
    return "-".join((page_id(case[0]), *case[1:]))


@pytest.mark.parametrize("case", [pytest.param(case, marks=() if case in DAILY else pytest.mark.sweep, id=name_of(case)) for case in WIDE])
def test_no_barrier_in_a_state(browser, server, case):
    address, view, state = case
    with looked_at(browser, server, address, sparing=state in ON_ALL, **VIEWS[view]) as looked:
        (ON_CARDS | ON_ALL)[state](looked.page)
        assert not barriers(looked.page)
        assert looked.page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")
        assert not looked.page.evaluate(TARGETS, ", ".join(SMALLER))


@pytest.mark.sweep
@pytest.mark.parametrize("view", ("1280-dark", "390-light"))  # the other two are looked at every day
@pytest.mark.parametrize("address", all_pages(), ids=page_id)
def test_no_barrier_at_rest_in_the_other_scheme(browser, server, address, view):
    with looked_at(browser, server, address, **VIEWS[view]) as looked:
        assert not barriers(looked.page)


def test_a_mistake_is_told_to_those_who_listen(browser, server):
    """The error line is joined to its field, and the page says that the answer is an older one."""
    with looked_at(browser, server, CARD, sparing=False, **DESK) as looked:
        wrong(looked.page)
        box = looked.page.locator("bench-card [aria-invalid='true']")
        described = box.get_attribute("aria-describedby").split()
        told = [looked.page.evaluate("(id) => document.getElementById(id)?.checkVisibility() && document.getElementById(id).textContent", each) for each in described]
        assert any(text and "much" in text for text in told), told
