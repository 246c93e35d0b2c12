"""One page opened once, at rest, for several tests that only look: its requests, its layout shifts, its largest paint."""

import gzip
from contextlib import contextmanager
from dataclasses import dataclass, field
from itertools import takewhile
from pathlib import Path
from urllib.parse import unquote, urlsplit

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, Request

from .conftest import Watch

RULES = {
    "runOnly": {"type": "tag", "values": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]}
}
# A browser asked to spare data does not start Python by itself: the page stays as it was read.
SPARING = """Object.defineProperty(navigator, "connection", { value: { saveData: true } });"""
MEASURE = """
  window.shifts = [];
  window.paints = [];
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) if (!entry.hadRecentInput) window.shifts.push({
      value: entry.value, nodes: entry.sources.map(({ node }) => node?.outerHTML?.slice(0, 80) ?? node?.nodeName) });
  }).observe({ type: "layout-shift", buffered: true });
  new PerformanceObserver((list) => window.paints.push(...list.getEntries().map((entry) => performance.timeOrigin + entry.startTime)))
    .observe({ type: "largest-contentful-paint", buffered: true });
"""


@dataclass
class Looked:
    """A page that has come to rest. requests: everything asked for so far; first_view: what was asked for until it
    rested, or until it started Python's worker."""

    page: Page
    address: str
    requests: list[Request] = field(default_factory=list)
    first_view: set[str] = field(default_factory=set)

    @property
    def largest_paint(self) -> float:
        """When the largest thing in the first view was painted, ms since 1970."""
        return self.page.evaluate("() => window.paints.at(-1)")


@contextmanager
def looked_at(browser, server, address: str, sparing: bool = True, **options):
    """A watched page in a context of its own, opened at an address; sparing keeps Python asleep."""
    watching = Watch()
    context = browser.new_context(
        **({"service_workers": "block", "reduced_motion": "reduce"} | options)
    )
    watching.context(context)
    page = context.new_page()
    page.add_init_script(MEASURE + (SPARING if sparing else ""))
    looked = Looked(page, address)
    context.on("request", lambda request: looked.requests.append(request))
    page.goto(server.address + address)
    page.evaluate(
        "() => document.fonts.ready.then(() => new Promise((painted) => requestAnimationFrame(() =>"
        " setTimeout(painted))))"
    )
    urls = [request.url for request in looked.requests]
    looked.first_view = set(takewhile(lambda url: not url.endswith("/worker.js"), urls))
    yield looked
    context.close()
    assert not watching.unexpected, "\n".join(watching.unexpected)


def compressed(site: Path, home: str, urls) -> dict[str, int]:
    """gzip sizes of the site's files behind some addresses."""
    sizes = {}
    for url in urls:
        path = unquote(urlsplit(url).path).removeprefix(urlsplit(home).path)
        file = site / (path + "index.html" if not path or path.endswith("/") else path)
        sizes[file.relative_to(site).as_posix()] = len(gzip.compress(file.read_bytes(), 9))
    return sizes


def barriers(page: Page) -> str:
    """What axe finds against WCAG 2.2 AA; "" when nothing."""
    found = Axe().run(page, options=RULES).response
    assert found["passes"], "axe looked at nothing"
    return "\n".join(
        f"{each['id']}: {node['html'][:160]} ({node['failureSummary']})"
        for each in found["violations"]
        for node in each["nodes"]
    )
