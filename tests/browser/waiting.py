"""Waiting in a page without a script from text, which the site's policy forbids there: ask from outside until it is so."""

import time

from playwright.sync_api import Frame, Page


def until(page: Page | Frame, question: str, argument=None, seconds: float = 20):
    """The first truthy answer of a JavaScript function run in the page, or in a frame of it. Raises AssertionError with the last answer."""
    end = time.monotonic() + seconds
    while True:
        answer = page.evaluate(question, argument)
        if answer:
            return answer
        assert time.monotonic() < end, f"after {seconds} s still {answer!r}: {question}"
        page.wait_for_timeout(50)


def until_settled(page: Page, still: float = 0.4, seconds: float = 20) -> None:
    """Until the address has stayed the same for so long: no answer is on its way that would write another."""
    end, since, last = time.monotonic() + seconds, time.monotonic(), page.url
    while time.monotonic() - since < still:
        assert time.monotonic() < end, f"the address still changes: {last}"
        page.wait_for_timeout(50)
        if page.url != last:
            since, last = time.monotonic(), page.url


SAYS = """() => {
  const state = document.querySelector("bench-card > .state");
  return [document.querySelector("bench-card")?.dataset.card, state?.dataset.state, state?.textContent.trim(), document.visibilityState];
}"""


def until_live(page: Page, seconds: float = 40, card: str = "") -> None:
    """Until the page's card says that Python answers. Name the card after a link: the address changes on the click, and the card of the page before stands there until the next page has come."""
    try:
        until(
            page,
            """(card) => {
          const shown = document.querySelector("bench-card");
          return (!card || shown?.dataset.card === card) && ["live", "ready"].includes(shown?.querySelector(":scope > .state")?.dataset.state);
        }""",
            card,
            seconds=seconds,
        )
    except AssertionError as late:
        raise AssertionError(f"{late}\nThe card says: {page.evaluate(SAYS)}") from None
