"""What travels: everything that is needed with no signal, and what a page needs before Python."""

import gzip
import json

from fibercalc.site.serve import SiteServer
from tests.browser.addresses import all_pages, kinds_of_pages, page_id
from tests.browser.looking import SPARING, compressed

from .chromium import chromium, visitor
from .places import SITE
from .report import Report


def measure(report: Report, options) -> None:
    files = [
        each["url"]
        for each in json.loads((SITE / "assets" / "offline-manifest.json").read_text("utf-8"))[
            "files"
        ]
    ]
    sizes = {name: len(gzip.compress((SITE / name).read_bytes(), 9)) for name in files}
    report.line(
        f"All that is needed offline, compressed ({len(files)} files)",
        sum(sizes.values()) / 1e6,
        10,
        " MB",
        digits=2,
    )
    groups = {
        "Pyodide": "assets/py/",
        "our Python and scripts": "assets/app-",
        "fonts": "assets/fonts/",
        "search": "search/",
    }
    for words, head in groups.items():
        report.line(
            f"   {words}",
            sum(size for name, size in sizes.items() if name.startswith(head)) / 1e6,
            unit=" MB",
            digits=2,
        )
    pages = sum(size for name, size in sizes.items() if name.endswith(".html"))
    report.line(f"   pages ({len(all_pages())})", pages / 1e6, unit=" MB", digits=2)
    _first_views(report)


def _first_views(report: Report) -> None:
    server = SiteServer(SITE).start()
    kinds = kinds_of_pages()
    views = {}
    try:
        with chromium() as browser:
            for address in all_pages():
                views[address] = _first_view(browser, server, address)
    finally:
        server.stop()
    for address in kinds:
        report.line(
            f"First view before Python, compressed: {page_id(address)}",
            sum(views[address].values()) / 1000,
            200,
            " KB",
        )
    heaviest = max(views, key=lambda address: sum(views[address].values()))
    report.line(
        f"First view before Python, the heaviest of {len(views)}: {page_id(heaviest)}",
        sum(views[heaviest].values()) / 1000,
        200,
        " KB",
    )
    largest = sorted(views[heaviest].items(), key=lambda item: -item[1])[:5]
    report.say(
        "   its largest: "
        + ", ".join(f"{name.rsplit('/', 1)[-1]} {size / 1000:.0f}" for name, size in largest)
    )


def _first_view(browser, server, address: str) -> dict[str, int]:
    """Everything asked for until the page rests or starts Python's worker, at a phone's size."""
    with visitor(browser, SPARING, viewport={"width": 390, "height": 844}) as context:
        urls = []
        context.on("request", lambda request: urls.append(request.url))
        page = context.new_page()
        page.goto(server.address + address, wait_until="networkidle")
    before = urls[: next((at for at, url in enumerate(urls) if url.endswith("/worker.js")), None)]
    return compressed(SITE, server.address, {url for url in before if url.startswith("http")})
