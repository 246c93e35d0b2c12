"""A browser whose pages are watched: no test passes with an error in the console or a request to another host.

def test_something(page, server):              one page in a context of its own, service workers blocked
    page.goto(f"{server.address}yarn/skein-length/")

def test_offline(new_page, serve):             new_page(**context options) for any number of contexts
    page = new_page(service_workers="allow")   page.context.new_page() is watched as well

def test_refused(page, watch):                 what a test provokes, it allows: a regular expression
    watch.allow(r"404 \\(Not Found\\)")
"""

import re
import shutil
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import BrowserContext, Page, sync_playwright

ARGUMENTS = [
    "--no-sandbox",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    # Python is compiled once, not a second time for speed, in the hundreds of pages that start it: a quarter of all work.
    "--js-flags=--liftoff-only",
]


class Watch:
    """What went wrong in the watched pages, and what a test said would."""

    def __init__(self) -> None:
        self.seen: list[str] = []
        self.allowed: list[re.Pattern] = []

    def allow(self, pattern: str) -> None:
        self.allowed.append(re.compile(pattern))

    def context(self, context: BrowserContext) -> None:
        context.on(
            "console",
            lambda line: (
                self.seen.append(f"console: {line.text}") if line.type == "error" else None
            ),
        )
        context.on("weberror", lambda error: self.seen.append(f"uncaught: {error.error}"))
        context.on("request", lambda request: self._own(request.url))

    def _own(self, url: str) -> None:
        address = urlsplit(url)
        if address.scheme in ("http", "https", "ws", "wss") and address.hostname != "127.0.0.1":
            self.seen.append(f"request to another host: {url}")

    @property
    def unexpected(self) -> list[str]:
        return [
            each for each in self.seen if not any(pattern.search(each) for pattern in self.allowed)
        ]


@pytest.fixture(scope="session")
def browser():
    """Debian's Chromium, one for the whole run."""
    program = shutil.which("chromium")
    assert program, "no chromium found: `make setup` installs it"
    with sync_playwright() as playwright:
        started = playwright.chromium.launch(executable_path=program, args=ARGUMENTS)
        yield started
        started.close()


@pytest.fixture
def watch():
    watching = Watch()
    yield watching
    assert not watching.unexpected, "\n".join(watching.unexpected)


@pytest.fixture
def new_page(browser, watch, serve):
    """Makes watched pages, each in a context (storage, cache, workers) of its own. They close before the test's servers stop."""
    contexts = []

    def make(**options) -> Page:
        context = browser.new_context(**({"service_workers": "block"} | options))
        watch.context(context)
        contexts.append(context)
        return context.new_page()

    yield make
    for context in contexts:
        context.close()


@pytest.fixture
def page(new_page) -> Page:
    return new_page()
