"""With no signal: kept whole before it is called ready, then every page, card and search; an update is offered and never forced."""

import json
import os
import shutil
import subprocess
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from fibercalc.core.link import query_of_texts
from fibercalc.core.registry import find_card
from fibercalc.site.serve import SiteServer

from .addresses import all_pages, card_pages
from .conftest import Watch
from .test_card_live import controls, field, natively, text_of, until_linked
from .waiting import until, until_live

ROOT = Path(__file__).resolve().parents[2]
CARD = "yarn/skein-length/"
LINE = "[data-offline-state]"
READY = "Ready for no signal"
FAILED_FETCH = (
    r"ERR_(INTERNET_DISCONNECTED|CONNECTION_REFUSED|FAILED)|Failed to"
    r" (load|fetch)|bad-precaching-response|404"
)

# Whenever the line first says "ready": which files of the built list are then missing from the caches? Counted by the test's own rule.
WITNESS = """
  window.missingAtReady = null;
  new MutationObserver(async () => {
    const line = document.querySelector("[data-offline-state]");
    if (window.missingAtReady || !line?.textContent.startsWith("Ready")) return;
    window.missingAtReady = ["looking"];
    const root = new URL(`${document.querySelector("meta[name=bench-base]").content}/`, location.href);
    const { files } = await (await fetch(new URL("assets/offline-manifest.json", root))).json();
    const held = (await Promise.all((await caches.keys()).map(async (name) => (await (await caches.open(name)).keys()).map((each) => each.url)))).flat();
    window.missingAtReady = files.map(({ url }) => url).filter((url) => !held.some((each) => each.split("?")[0] === new URL(url, root).href));
    window.heldAtReady = held.length;
  }).observe(document, { subtree: true, childList: true, characterData: true });
"""


def until_ready(page: Page, seconds: float = 90) -> str:
    """Until the page says that it needs no signal; what it says."""
    return until(
        page,
        """(ready) => { const said = document.querySelector("[data-offline-state]")?.textContent ?? ""; return said.startsWith(ready) && said; }""",
        READY,
        seconds,
    )


def keep(browser, server, watching: Watch):
    """A context that has visited one card and kept the whole book."""
    context = browser.new_context(service_workers="allow")
    watching.context(context)
    page = context.new_page()
    page.add_init_script(WITNESS)
    page.goto(server.address + CARD)
    until_ready(page)
    return context, page


def works_without_signal(context, address: str) -> None:
    """A shared link opens in a new tab, its card answers, search finds a page, and one more page opens by a click."""
    link = query_of_texts(find_card("skein-length"), {"turns": "250"})
    page = context.new_page()
    page.goto(f"{address}{CARD}?{link}")
    until_live(page)
    expect(field(page, "turns")).to_have_value("250")
    field(page, "turns").fill("266")
    said = natively("skein-length", controls(page))
    expect(page.locator("bench-card output.answer")).to_have_text(text_of(said["slots"]["answer"]))
    page.locator(".find__query").click()
    page.locator(".find__query").press_sequentially("regain")
    found = page.locator(".md-search-result__link[href*='yarn/regain']").first
    expect(found).to_be_visible(timeout=15_000)
    found.click()
    page.wait_for_url("**/yarn/regain/**")
    expect(page.locator(".leaf__text h1")).to_contain_text("Regain")
    page.close()


@pytest.fixture(scope="module")
def kept(browser, site):
    """One visit to one card on a server of its own; the book is kept. Gives the server's maker, the context and what it said."""
    watching = Watch()
    watching.allow(FAILED_FETCH)
    server = SiteServer(site).start()
    context, page = keep(browser, server, watching)
    yield server, context, page
    context.close()
    server.stop()
    assert not watching.unexpected, "\n".join(watching.unexpected)


@pytest.fixture
def gone(kept):
    """The same visit with its server really stopped; it is back after the test, at the same address."""
    server, context, _ = kept
    before = set(context.pages)
    server.stop()
    yield server.address, context
    for page in set(context.pages) - before:
        page.close()
    server.__init__(server.folder, server.port, server.sub_path)
    server.start()


def test_ready_is_said_when_every_file_is_held_and_not_before(kept, site):
    _, _, page = kept
    until(page, "() => window.heldAtReady", seconds=5)
    assert page.evaluate("() => window.missingAtReady") == []
    files = json.loads((site / "assets" / "offline-manifest.json").read_text("utf-8"))["files"]
    assert page.evaluate("() => window.heldAtReady") >= len(files) > 50
    assert (
        page.evaluate(
            "() => navigator.serviceWorker.getRegistration().then((each) => each.active.state)"
        )
        == "activated"
    )
    expect(page.locator(LINE)).to_contain_text("version")
    expect(page.locator("bench-card > .state")).to_have_text("Live · ready for no signal")


@pytest.mark.parametrize(
    "places",
    [
        pytest.param(all_pages()[::3], id="every third"),
        pytest.param(all_pages(), id="all", marks=pytest.mark.sweep),
    ],
)
def test_every_page_opens_with_the_server_stopped(gone, places):
    address, context = gone
    page = context.new_page()
    for place in places:
        page.goto(address + place)
        assert page.locator(".leaf__text h1").text_content().strip()
        rules = page.evaluate(
            "() => [...document.querySelectorAll('link[rel=stylesheet]')].map(({ sheet }) =>"
            " sheet?.cssRules.length ?? 0)"
        )
        assert len(rules) == 2 and min(rules) > 3 and sum(rules) > 200, (
            f"{place} has lost its look: {rules}"
        )
        if place in card_pages().values():
            assert page.locator("bench-card output.answer").text_content().strip()
    assert page.evaluate("() => navigator.onLine"), (
        "the browser itself does not know: nothing may rely on it"
    )


def test_a_link_a_card_and_search_work_with_the_server_stopped(gone):
    address, context = gone
    works_without_signal(context, address)


def test_a_link_a_card_and_search_work_with_the_network_off(kept):
    server, context, _ = kept
    context.set_offline(True)
    try:
        works_without_signal(context, server.address)
    finally:
        context.set_offline(False)


def test_printing_and_the_fair_check_work_with_the_server_stopped(gone):
    address, context = gone
    page = context.new_page()
    page.goto(address + CARD)
    until_live(page)
    page.evaluate(
        "() => { window.print = () => { window.printed ="
        " document.querySelector('.sheet-alone').textContent; }; }"
    )
    page.get_by_role("button", name="Print this card alone").click()
    assert "How many yards" in until(page, "() => window.printed")
    page.goto(address + "bench/")
    if page.locator("[data-do='fair-check']").count():
        page.locator("[data-do='fair-check']").click()
        expect(page.locator("[data-fair-result]")).to_contain_text(
            "Yes: ready for no signal", timeout=40_000
        )


def test_one_file_lost_from_the_cache_and_it_is_not_called_ready(kept):
    """And it is once the file is back."""
    server, context, _ = kept
    page = context.new_page()
    page.goto(server.address + CARD)
    until_ready(page)
    lost = page.evaluate("""async () => {
      const name = (await caches.keys()).find((each) => each.includes("bench-book"));
      const cache = await caches.open(name);
      const request = (await cache.keys()).find((each) => each.url.includes("yarn/regain/"));
      window.held = [name, request.url, await (await cache.match(request)).text()];
      await cache.delete(request);
      return request.url;
    }""")
    assert lost
    other = context.new_page()
    other.goto(server.address + CARD)
    until_live(other)
    expect(other.locator(LINE)).to_contain_text("not every file could be saved", timeout=20_000)
    expect(other.locator("bench-card > .state")).to_have_text("Live")
    other.close()
    page.evaluate(
        "() => caches.open(window.held[0]).then((cache) => cache.put(window.held[1], new"
        " Response(window.held[2], { headers: { 'Content-Type': 'text/html' } })))"
    )
    page.reload()
    until_ready(page)
    page.close()


def copied(site: Path, folder: Path) -> Path:
    """The site again, its files shared with the first until one is written anew."""
    shutil.copytree(site, folder, copy_function=os.link)
    return folder


def rewrite(path: Path, old: str, new: str) -> None:
    text = path.read_text("utf-8")
    assert old in text
    path.unlink()
    path.write_text(text.replace(old, new), "utf-8")


def test_one_file_that_cannot_be_fetched_and_it_is_not_called_ready(
    new_page, serve, site, tmp_path, watch
):
    watch.allow(FAILED_FETCH)
    folder = copied(site, tmp_path / "site")
    (folder / "yarn" / "regain" / "index.html").unlink()
    server = serve(folder=folder)
    page = new_page(service_workers="allow")
    page.goto(server.address + CARD)
    until_live(page)
    expect(page.locator(LINE)).to_contain_text("not every file could be saved", timeout=60_000)
    page.wait_for_timeout(1_500)
    expect(page.locator(LINE)).not_to_contain_text(READY)


def test_python_that_never_answered_and_it_is_not_called_ready(new_page, serve, watch):
    watch.allow(FAILED_FETCH)
    server = serve()
    page = new_page(service_workers="allow")
    page.add_init_script("""
      const send = Worker.prototype.postMessage;
      Worker.prototype.postMessage = function (message, ...more) { if (!message?.call) send.call(this, message, ...more); };
    """)  # it starts, and no question reaches it
    page.goto(server.address + CARD)
    expect(page.locator(LINE)).to_contain_text(
        "the calculator has not answered here yet", timeout=90_000
    )
    expect(page.locator(LINE)).not_to_contain_text(READY)


def build_second(site: Path, folder: Path) -> Path:
    """The next version: a changed page, and its service worker and list made as the build makes them."""
    copied(site, folder)
    rewrite(
        folder / CARD / "index.html",
        "How many yards are in this skein?</h1>",
        "How many yards, second printing?</h1>",
    )
    rewrite(folder / "yarn" / "wraps" / "index.html", "</h1>", " (second printing)</h1>")
    for name in ("sw.js", "assets/offline-manifest.json"):
        (folder / name).unlink()
    subprocess.run(
        [
            "node",
            str(ROOT / "site_js" / "build" / "offline.mjs"),
            str(folder),
            "9.9.9",
            "2099-01-01",
        ],
        check=True,
        cwd=ROOT,
    )
    return folder


def test_an_update_is_offered_and_the_old_book_stays_whole_until_it_is_taken(
    browser, serve, site, tmp_path, watch
):
    watch.allow(FAILED_FETCH)
    server = serve()
    context, page = keep(browser, server, watch)
    try:
        server.folder = build_second(site, tmp_path / "second")
        page.reload()
        bar = page.locator(".update-bar")
        expect(bar).to_contain_text("A new version is ready.", timeout=60_000)
        expect(page.locator(".leaf__text h1")).to_have_text("How many yards are in this skein?")
        bar.get_by_role("button", name="Later").click()
        expect(bar).to_have_count(0)
        for place in (CARD, "yarn/wraps/"):
            page.goto(server.address + place)
            assert "second printing" not in page.locator(".leaf__text h1").text_content()
        page.goto(server.address + CARD)
        until_live(page)
        field(page, "turns").fill("not a number")
        expect(page.locator(".field[data-name='turns'] .why")).to_be_visible()
        page.wait_for_timeout(1_500)
        if bar.count():  # it came before the mistake was made: then taking it is refused until the value is right
            bar.get_by_role("button", name="Update now").click()
            expect(bar).to_contain_text("not saved yet")
        assert "second" not in page.locator(".leaf__text h1").text_content()
        field(page, "turns").fill("267")
        expect(bar).to_be_visible(timeout=20_000)
        until_linked(page)
        bar.get_by_role("button", name="Update now").click()
        expect(page.locator(".leaf__text h1")).to_have_text(
            "How many yards, second printing?", timeout=60_000
        )
        expect(field(page, "turns")).to_have_value("267", timeout=40_000)
        until_ready(page)
        expect(page.locator(LINE)).to_contain_text("9.9.9")
        server.stop()
        page.goto(server.address + "yarn/wraps/")
        expect(page.locator(".leaf__text h1")).to_contain_text("second printing")
    finally:
        context.close()


def test_below_a_path_it_works_too(browser, serve, watch):
    watch.allow(FAILED_FETCH)
    server = serve(sub_path="/book/")
    context, _ = keep(browser, server, watch)
    try:
        server.stop()
        works_without_signal(context, server.address)
    finally:
        context.close()


def test_the_web_app_manifest_is_valid_and_its_icons_are_what_it_says(page, server, site):
    page.goto(server.address + CARD)
    told = page.context.new_cdp_session(page).send("Page.getAppManifest")
    assert not told["errors"]
    assert told["url"] == server.address + "manifest.webmanifest"
    manifest = json.loads(told["data"])
    assert manifest["name"] and manifest["short_name"] and manifest["display"] == "standalone"
    assert {manifest["start_url"], manifest["scope"]} == {"./"}
    assert {(each["sizes"], each["purpose"]) for each in manifest["icons"]} >= {
        ("192x192", "any"),
        ("512x512", "any"),
        ("512x512", "maskable"),
    }
    touch = (
        page.locator("link[rel='apple-touch-icon']")
        .evaluate("(link) => link.href")
        .removeprefix(server.address)
    )
    for source, sizes in [(each["src"], each["sizes"]) for each in manifest["icons"]] + [
        (touch, "180x180")
    ]:
        header = (site / source).read_bytes()[:24]
        assert header[:8] == b"\x89PNG\r\n\x1a\n", source
        assert f"{int.from_bytes(header[16:20])}x{int.from_bytes(header[20:24])}" == sizes, source
