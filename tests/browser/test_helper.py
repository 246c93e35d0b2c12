"""The customers' yardage helper and the counter view: by link, by code, in a frame on another site, without Python, without signal, on paper."""

import json
import re
import subprocess
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import Page, expect

from fibercalc.site import helper
from fibercalc.site.serve import SiteServer
from fibercalc.workbook.base_link import BaseLink, write_link
from fibercalc.workbook.exchange import file_text
from tests.workbook.making import record

from .conftest import Watch
from .looking import barriers, compressed, looked_at
from .paper import printed, squeezed
from .records import DUNMEL, SAID, TARROW, give_file, open_workbook, write_bench
from .test_card_live import asked
from .test_hostile_links import elements, handlers
from .test_offline import FAILED_FETCH
from .test_pages import SMALLER, TARGETS
from .waiting import until

PHONE = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True}
DESK = {"viewport": {"width": 1280, "height": 800}}
BASE = BaseLink("base", 100.0, 230.0, "3", "Dunmel DK", "14", "€24")
LINK = write_link("", BASE)
FIRST_VIEW = 150_000
# The line of a phone at a fair: nothing large comes unasked.
CELLULAR = """Object.defineProperty(navigator, "connection", { value: { effectiveType: "4g", type: "cellular", saveData: false } });"""
LINKS = json.loads((Path(__file__).resolve().parents[1] / "site" / "helper-links.json").read_text("utf-8"))
HOSTILE = {
    "a script as a number": "v=1&g=%3Cscript%3Ealert(1)%3C/script%3E&m=230",
    "a script as a name": "v=1&g=100&m=230#n=%3Cscript%3Ealert(1)%3C/script%3E",
    "a picture that fails": "v=1&g=100&m=230#n=%3Cimg%20src=x%20onerror=alert(1)%3E&l=%3Cimg%20src=x%20onerror=alert(1)%3E&p=%3Csvg%20onload=alert(1)%3E",
    "an end of an attribute": "v=1&g=100&m=230#n=%22%3E%3Csvg%20onload=alert(1)%3E",
    "a script address": "v=1&g=100&m=230#n=javascript:alert(1)",
    "a huge number": "v=1&g=100&m=" + "9" * 60,
    "names of every object": "v=1&g=100&m=230&__proto__=1&constructor=2#__proto__=x&toString=y&n=constructor",
    "a later version": "v=999&g=100&m=230",
    "letters that turn the line around": "v=1&g=100&m=230#n=%E2%80%AE%E2%81%A6olleh",
    "five thousand letters": "v=1&g=100&m=230#n=" + "a" * 5_000,
    "a name without a space": "v=1&g=100&m=230#n=" + "W" * 40,
    "a scheme that is none": "v=1&g=100&m=230&theme=%22%3E%3Cscript%3E",
}


def slot(page: Page, name: str):
    return page.locator(f"[data-slot='{name}']")


def full(sure: str = helper.FIRST_SURE, project: str = "plain-woman", size: str = "woman-m", base: BaseLink = BASE) -> dict:
    """What the full calculation says here, natively."""
    return helper.say(helper.work(base.grams, base.meters, project, size), sure, helper.phrases())


def choose(page: Page, project: str, size: str, sure: str) -> None:
    page.locator("#project").select_option(project)
    page.locator("#size").select_option(size)
    page.locator(f"input[value='{sure}']").check()


@pytest.fixture
def phone(new_page):
    """A phone on a cellular line."""
    page = new_page(**PHONE)
    page.add_init_script(CELLULAR)
    return page


def test_a_link_opens_with_its_base_and_an_answer_and_no_python(phone, server):
    asked = []
    phone.context.on("request", lambda request: asked.append(request.url))
    phone.goto(server.address + LINK)
    said = full()
    expect(slot(phone, "say")).to_have_text(said["say"])
    expect(slot(phone, "fewer")).to_have_text(said["fewer"])
    expect(slot(phone, "need")).to_have_text(said["need"])
    for text in ("Dunmel DK", "100 g, 230 m", "3 Light", "lot 14", "€24 a skein"):
        expect(slot(phone, "base")).to_contain_text(text)
    expect(slot(phone, "lot")).to_contain_text("one lot (14)")
    assert phone.locator("[data-skein]").is_hidden(), "what the link says is not asked again"
    assert phone.locator("form :is(select, fieldset):visible").count() == 3, "what, which size, how sure"
    said = full("95", "hat", "man")
    choose(phone, "hat", "man", "95")
    expect(slot(phone, "say")).to_have_text(said["say"])
    phone.wait_for_timeout(2_000)
    assert not [url for url in asked if "/assets/py/" in url or url.endswith("worker.js")], "megabytes came unasked"
    assert phone.evaluate("() => document.cookie === '' && localStorage.length === 0")


def test_more_exact_starts_python_and_counts_the_bytes(phone, server):
    phone.goto(server.address + LINK)
    expect(slot(phone, "basis")).to_contain_text("Read from a table")
    phone.evaluate("() => { window.said = []; new MutationObserver(() => window.said.push(document.querySelector('.state').textContent)).observe(document.querySelector('.state'), { childList: true, characterData: true, subtree: true }); }")
    phone.get_by_role("button", name="More exact").click()
    expect(slot(phone, "basis")).to_have_text("From the full calculation.", timeout=40_000)
    assert any(re.search(r"\d\.\d of \d\.\d MB", each) for each in phone.evaluate("() => window.said"))
    expect(slot(phone, "say")).to_have_text(full()["say"])
    choose(phone, "cables-man", "man-xl", "80")
    expect(slot(phone, "basis")).to_have_text("From the full calculation.")
    expect(slot(phone, "say")).to_have_text(full("80", "cables-man", "man-xl")["say"])


def test_on_a_good_line_python_comes_by_itself(new_page, server):
    page = new_page(**DESK)
    page.add_init_script("""Object.defineProperty(navigator, "connection", { value: { effectiveType: "4g", saveData: false } });""")
    page.goto(server.address + LINK)
    expect(slot(page, "basis")).to_have_text("From the full calculation.", timeout=40_000)


@pytest.mark.parametrize("broken", ["/assets/py/", "worker.js"])
def test_with_python_never_loading_the_table_answers_on(new_page, server, watch, broken):
    watch.allow(r"ERR_FAILED|dynamically imported module")
    page = new_page(**PHONE)
    page.route(lambda url: broken in url, lambda route: route.abort())
    page.goto(server.address + LINK)
    expect(page.locator(".state")).to_contain_text("could not start", timeout=20_000)
    choose(page, "socks", "26", "95")
    expect(slot(page, "say")).to_have_text(full("95", "socks", "26")["say"])


def test_without_a_link_the_customer_types_what_the_label_says(phone, server):
    phone.goto(server.address + "helper/")
    expect(slot(phone, "say")).to_have_text(full()["say"])
    phone.locator("#grams").fill("3,5")
    phone.locator("[name='grams.unit']").select_option("oz")
    phone.locator("#meters").fill("251")
    expect(slot(phone, "need")).to_have_text(full(base=BaseLink("base", 3.5 * 28.349523125, 251.0))["need"])
    phone.locator("[name='meters.unit']").select_option("yd")
    wanted = full(base=BaseLink("base", 3.5 * 28.349523125, 251 * 0.9144))
    expect(slot(phone, "need")).to_have_text(wanted["need"])
    phone.locator("#meters").fill("two hundred")
    expect(phone.locator("[data-name='meters'] .why")).to_contain_text("Give the length of a skein")
    expect(phone.locator(".kept")).to_be_visible()
    expect(slot(phone, "need")).to_have_text(wanted["need"])
    phone.locator("#meters").fill("5000")
    expect(phone.locator("[data-name='meters'] .why")).to_contain_text("do not go together")
    phone.locator("#meters").fill("251")
    expect(phone.locator(".kept")).to_be_hidden()


@pytest.mark.parametrize("search, fragment", [[search, fragment] for search, fragment, kind, *_ in LINKS if kind == "broken"][:4])
def test_a_broken_link_gives_the_plain_helper_and_one_line(phone, server, search, fragment):
    phone.goto(f"{server.address}helper/{search}{fragment}")
    expect(phone.locator(".broken")).to_have_text(helper.WORDS["broken"])
    expect(slot(phone, "say")).to_have_text(helper.WORDS["empty"])
    phone.locator("#grams").fill("100")
    phone.locator("#meters").fill("230")
    expect(slot(phone, "say")).to_have_text(full()["say"])


def test_hostile_links_are_text_and_nothing_else(new_page, server):
    page = new_page(**PHONE)
    page.add_init_script(CELLULAR)
    page.on("dialog", lambda dialog: pytest.fail(f"a dialog: {dialog.message}"))
    page.goto(server.address + LINK)
    expect(slot(page, "say")).to_contain_text("Buy")
    plain = elements(page)
    for name, rest in HOSTILE.items():
        page.goto("about:blank")
        page.goto(f"{server.address}helper/?{rest}")
        expect(slot(page, "say")).not_to_be_empty()
        assert page.locator(".broken").is_visible() == page.locator("[data-skein]").is_visible(), name
        assert elements(page) == plain, name
        assert handlers(page) == [], name
        assert page.evaluate("() => Object.keys(Object.prototype).length === 0 && document.documentElement.scrollWidth <= innerWidth"), name
        assert len(slot(page, "base").inner_text()) < 200, name


def decode(picture: Path) -> str:
    """What an independent reader finds in a picture of a page."""
    return subprocess.run(["zbarimg", "--quiet", "--raw", str(picture)], capture_output=True, text=True, check=True).stdout.strip()


def test_the_makers_code_read_from_the_page_opens_the_helper(new_page, server, tmp_path):
    """From the base of My bench to the customer's phone: the code is read from the rendered page by another program."""
    page = new_page(**DESK)
    page.goto(server.address + "helper-link/")
    shown = page.locator("[data-slot='code'] svg")
    expect(shown).to_be_visible(timeout=40_000)
    page.locator("[name='lot']").fill("14")
    page.locator("[name='price']").fill("24")
    expect(page.locator("bench-link [data-slot='link']")).to_contain_text("l=14&p=%E2%82%AC24")
    link = page.locator("bench-link [data-slot='link']").inner_text()
    page.wait_for_timeout(200)
    page.screenshot(path=tmp_path / "page.png")
    assert decode(tmp_path / "page.png") == link
    with page.expect_download() as download:
        page.get_by_role("button", name="Code as PNG").click()
    download.value.save_as(tmp_path / "code.png")
    assert decode(tmp_path / "code.png") == link
    page.emulate_media(media="print")
    page.evaluate("() => { window.print = () => {}; }")
    page.get_by_role("button", name="Print the booth card", include_hidden=True).evaluate("(button) => button.click()")
    card = printed(page, "A4")
    assert len(card.leaves) == 1 and squeezed("How many skeins do I need?") in card.flow and squeezed(link.partition("#")[0].partition("://")[2]) in card.flow
    (tmp_path / "card.pdf").write_bytes(card.pdf)
    subprocess.run(["pdftoppm", "-r", "150", "-png", "-singlefile", str(tmp_path / "card.pdf"), str(tmp_path / "card")], check=True)
    assert decode(tmp_path / "card.png") == link
    bars = [drawn for drawn in card.leaves[0].drawn if abs(drawn["x1"] - drawn["x0"] - 100 * 72 / 25.4) < 0.3]
    assert bars, "the bar of 100 mm"

    customer = new_page(**PHONE)
    customer.add_init_script(CELLULAR)
    customer.goto(link)
    expect(slot(customer, "base")).to_contain_text("Dunmel DK · 100 g, 230 m")
    expect(slot(customer, "say")).to_have_text(full()["say"])


SHOP = """<!doctype html><html lang="en"><head><meta charset="utf-8"><title>A shop</title><link rel="icon" href="data:,"></head><body><h1>A shop</h1>{frame}{script}</body></html>"""
# Asked until it is so: a frame of another site runs in a process of its own, which hears of its new height after the page around it has set it.
FITS = """() => Math.abs(innerHeight - document.body.getBoundingClientRect().height) <= 1 && document.documentElement.scrollHeight <= innerHeight + 1"""


def test_in_a_frame_on_another_site(browser, site, tmp_path):
    """The shop is localhost, the book 127.0.0.1: no storage, an answer, Python on touch only, and a height that fits."""
    watching = Watch()
    watching._own = lambda url: watching.seen.append(f"request to another host: {url}") if urlsplit(url).hostname not in ("127.0.0.1", "localhost", None) else None
    book = SiteServer(site).start()
    made = asked("base-link", values={"name": "Dunmel DK", "mass": "100", "length": "230"}, here=book.address)
    (tmp_path / "index.html").write_text(SHOP.format(frame=made["snippet"], script=made["listener"]), "utf-8")
    shop = SiteServer(tmp_path).start()
    context = browser.new_context(service_workers="allow", **PHONE)
    watching.context(context)
    page = context.new_page()
    try:
        page.goto(f"http://localhost:{shop.port}/")
        frame = page.frame_locator("iframe")
        expect(frame.locator("[data-slot='say']")).to_have_text(full()["say"])
        inside = next(each for each in page.frames if each.url.startswith(book.address))
        inside.evaluate("() => document.fonts.ready.then(() => new Promise((painted) => requestAnimationFrame(() => setTimeout(painted))))")
        until(inside, FITS)
        page.wait_for_timeout(1_500)
        assert not [path for path in book.asked if "/assets/py/" in path], "Python came unasked"
        assert inside.evaluate("() => { try { return localStorage.length; } catch { return 'denied'; } }") in (0, "denied")
        assert frame.get_by_role("button", name="Keep for no signal").is_hidden()
        frame.locator("#size").select_option("woman-2x")
        expect(frame.locator("[data-slot='say']")).to_have_text(full(size="woman-2x")["say"])
        frame.get_by_role("button", name="More exact").click()
        expect(frame.locator("[data-slot='basis']")).to_have_text("From the full calculation.", timeout=40_000)
        until(inside, FITS)
        shown, is_high = page.locator("iframe"), "(frame) => frame.style.height"
        tell = """(heights) => { for (const height of heights) parent.postMessage({ type: "bench:height", v: 1, height }, "*"); }"""
        before = shown.evaluate(is_high)
        page.evaluate(tell, [1e9, -5])  # the shop's page is its own parent
        page.wait_for_timeout(200)
        assert shown.evaluate(is_high) == before, "a height is believed that the frame did not say"
        for heights, kept in (([1e9], "4000px"), ([-5], "80px"), ([300, "900", None], "300px")):
            inside.evaluate(tell, heights)
            expect(shown).to_have_css("height", kept)
        page.wait_for_timeout(200)
        assert shown.evaluate(is_high) == "300px", "a height is believed that is no number"
    finally:
        context.close()
        shop.stop()
        book.stop()
    assert not watching.unexpected, "\n".join(watching.unexpected)


def test_kept_on_request_it_opens_by_itself_without_signal(browser, site):
    """No worker is registered before the button is pressed; after it the linked page answers with the server stopped, and so does Python."""
    watching = Watch()
    watching.allow(FAILED_FETCH)
    server = SiteServer(site).start()
    context = browser.new_context(service_workers="allow", **PHONE)
    watching.context(context)
    page = context.new_page()
    page.add_init_script(CELLULAR)
    try:
        page.goto(server.address + LINK)
        expect(slot(page, "say")).to_contain_text("Buy")
        page.wait_for_timeout(2_000)
        assert page.evaluate("() => navigator.serviceWorker.getRegistrations().then((all) => all.length)") == 0
        page.get_by_role("button", name="Keep for no signal").click()
        expect(page.locator("[data-offline-state]")).to_contain_text("Ready for no signal", timeout=90_000)
        server.stop()
        again = context.new_page()
        again.goto(server.address + write_link("", BaseLink("base", 50.0, 105.0, "", "Other")))
        expect(slot(again, "base")).to_contain_text("Other")
        expect(slot(again, "basis")).to_have_text("From the full calculation.", timeout=40_000)
        expect(slot(again, "say")).to_have_text(full(base=BaseLink("base", 50.0, 105.0))["say"])
        again.goto(server.address + "counter/")
        expect(slot(again, "step")).to_contain_text("no base to offer yet")
    finally:
        context.close()
        server.stop()
    assert not watching.unexpected, "\n".join(watching.unexpected)


@pytest.mark.parametrize("paper, scheme", [("A4", "dark"), ("Letter", "light")])
def test_it_prints_on_one_page(new_page, server, paper, scheme):
    page = new_page(color_scheme=scheme, **PHONE)
    page.add_init_script(CELLULAR)
    page.goto(server.address + LINK)
    expect(slot(page, "say")).to_contain_text("Buy")
    page.evaluate("() => document.fonts.ready")
    sheet = printed(page, paper)
    assert len(sheet.leaves) == 1
    for text in ("Dunmel DK", full()["say"], full()["need"], "one lot (14)", "90 in 100", "Sweater, woman", "/helper/?v=1"):
        assert squeezed(text) in sheet.flow, text
    assert "80in100" not in sheet.flow and "Copythis" not in sheet.flow
    assert sheet.darkest_background() == 255
    assert min(char["size"] for char in sheet.leaves[0].chars) >= 8


def test_the_answer_is_copied_as_text(new_page, server):
    page = new_page(permissions=["clipboard-read", "clipboard-write"], **PHONE)
    page.add_init_script(CELLULAR)
    page.goto(server.address + LINK)
    page.get_by_role("button", name="Copy this answer").click()
    expect(page.locator(".told")).to_have_text("Copied.")
    text = page.evaluate("() => navigator.clipboard.readText()")
    for part in ("Dunmel DK", "Sweater, woman", "90 in 100 sure", full()["say"], "one lot (14)", LINK):
        assert part in text
    assert re.search(r"\d{4}-\d\d-\d\d", text)


VIEWS = [(address, scheme, view) for address in (LINK, "helper/?v=7&g=1", "helper/", "counter/") for scheme in ("light", "dark") for view in (PHONE, DESK)]
DAILY = [(LINK, "light", PHONE), (LINK, "dark", PHONE), (LINK, "light", DESK), ("helper/?v=7&g=1", "dark", PHONE), ("counter/", "light", PHONE)]


@pytest.mark.parametrize("address, scheme, view", [pytest.param(*each, marks=() if each in DAILY else pytest.mark.sweep) for each in VIEWS])
def test_each_page_is_still_light_within_reach_and_without_barriers(browser, server, site, address, scheme, view):
    with looked_at(browser, server, address, **view | {"color_scheme": scheme}) as looked:
        page = looked.page
        expect(page.locator("[data-slot='step'], [data-slot='say']").filter(has_text=re.compile(r"\w")).first).to_be_visible()
        assert not barriers(page)
        shifts = page.evaluate("() => window.shifts")
        allowed = 0.1 if "v=7" in address else 0.02  # a broken link moves once, to say so and to ask
        assert sum(each["value"] for each in shifts) <= allowed, shifts
        assert not page.evaluate(TARGETS, ", ".join(SMALLER))
        sizes = compressed(site, server.address, looked.first_view)
        assert sum(sizes.values()) <= FIRST_VIEW, sizes
        for width in (view["viewport"]["width"], 320):
            page.set_viewport_size({"width": width, "height": view["viewport"]["height"]})
            assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth"), width
        dark = page.evaluate("() => getComputedStyle(document.body).backgroundColor.match(/\\d+/g).slice(0, 3).every((part) => part < 60)")
        assert dark == (scheme == "dark" and address != "counter/")


def test_both_pages_run_under_the_policy_as_a_header(new_page, serve, site):
    first = next(line for line in (site / "_headers").read_text("utf-8").splitlines() if "Content-Security-Policy:" in line)
    strict = serve(policy=first.split(":", 1)[1].strip(), sub_path="/book/")
    page = new_page(**PHONE)
    page.goto(strict.address + LINK)
    expect(slot(page, "say")).to_have_text(full()["say"])
    expect(slot(page, "basis")).to_have_text("From the full calculation.", timeout=40_000)
    page.goto(strict.address + "counter/")
    expect(slot(page, "step")).to_contain_text("no base to offer yet")


@pytest.mark.parametrize("theme, scheme", [("dark", "light"), ("light", "dark")])
def test_the_scheme_of_the_address_wins(new_page, server, theme, scheme):
    page = new_page(color_scheme=scheme, **PHONE)
    page.goto(server.address + LINK.replace("#", f"&theme={theme}#"))
    assert page.evaluate("() => getComputedStyle(document.documentElement).colorScheme") == theme


def test_by_keyboard_alone(new_page, server):
    page = new_page(**DESK)
    page.add_init_script(CELLULAR)
    page.goto(server.address + LINK)
    expect(slot(page, "say")).to_contain_text("Buy")
    reached = []
    for _ in range(8):
        page.keyboard.press("Tab")
        reached.append(page.evaluate("() => document.activeElement.id || document.activeElement.name || document.activeElement.dataset.do || document.activeElement.tagName"))
    assert reached[:5] == ["project", "size", "sure", "copy", "print"], reached
    page.locator("#project").focus()
    page.keyboard.press("ArrowDown")
    expect(slot(page, "say")).to_have_text(full(project="plain-man", size="man-m")["say"])
    page.locator("[name='sure']:checked").focus()
    page.keyboard.press("ArrowRight")
    expect(slot(page, "say")).to_have_text(full("95", "plain-man", "man-m")["say"])


def test_without_scripts_there_is_a_table(new_page, server):
    page = new_page(java_script_enabled=False, **PHONE)
    page.goto(server.address + "helper/")
    rows = page.locator("noscript table tbody tr")
    assert rows.count() == len(helper.projects()) and rows.first.is_visible()
    assert helper.written_need(helper.phrases(), helper.work(100, 200, "plain-woman", "woman-m").need) in rows.first.inner_text()
    assert page.locator("form").is_hidden()


def save_bench(page: Page, address: str) -> None:
    """Two bases, one with a lot and a price, by hand."""
    write_bench(page, address, (TARROW[0], TARROW[1] | {"price": "27", "lot": "7"}), DUNMEL)
    page.get_by_role("button", name="Save my bench").click()
    expect(page.locator("bench-mine .state")).to_contain_text("Saved.", timeout=40_000)


def test_at_the_counter_three_presses_lead_to_an_answer_with_its_price(new_page, server, tmp_path):
    page = new_page(**PHONE)
    page.goto(server.address + "counter/")
    expect(slot(page, "step")).to_contain_text("no base to offer yet")
    save_bench(page, server.address)
    page.goto(server.address + "counter/")
    page.get_by_role("button", name="Tarrow Sock").click(timeout=40_000)
    for button in page.locator(".picks button").all():
        assert button.bounding_box()["height"] >= 64
    page.get_by_role("button", name="Sweater, woman", exact=True).click()
    page.get_by_role("button", name=re.compile("^M")).click()
    base = BaseLink("base", 100.0, 420.0)
    said = full(base=base)
    expect(slot(page, "say")).to_have_text(said["say"])
    expect(slot(page, "cost")).to_have_text(f"€{27 * said['count']}")
    expect(slot(page, "lot")).to_contain_text("one lot (7)")
    last = page.locator(".picks button").last.bounding_box()
    assert last["y"] + last["height"] > 0.8 * 844, "what is pressed lies at the bottom, under the thumb"
    page.get_by_role("button", name="95 in 100").click()
    expect(slot(page, "say")).to_have_text(full("95", base=base)["say"])
    assert not barriers(page)
    page.get_by_role("button", name="Code to take home").click()
    expect(slot(page, "code")).to_be_visible(timeout=40_000)
    page.screenshot(path=tmp_path / "counter.png")
    assert decode(tmp_path / "counter.png") == write_link(server.address, BaseLink("base", 100.0, 420.0, "", "Tarrow Sock", "7"))
    page.get_by_role("button", name="Done").click()
    page.get_by_role("button", name="Next customer").click()
    expect(slot(page, "step")).to_have_text("Which base?")
    page.route(lambda url: "/assets/py/" in url or url.endswith("worker.js"), lambda route: route.abort())
    page.reload()
    page.get_by_role("button", name="Dunmel DK").click()
    expect(slot(page, "step")).to_have_text("What is it for?")


def test_a_base_of_the_workbook_stands_at_the_counter_and_the_others_are_named(new_page, server):
    page = new_page(**PHONE)
    open_workbook(page, server)
    records = [record(slug="bump", name="Bump", mass="100g", length="37m", price="19.5"), record(slug="bare", name="Bare", mass="100g")]
    give_file(page, file_text(records, [], None, "2027-01-13"))
    page.get_by_role("button", name="Bring it in").click()
    expect(page.locator(SAID)).to_contain_text("2 records brought in")
    page.goto(server.address + "counter/")
    expect(page.get_by_role("button", name="Bump")).to_be_visible(timeout=40_000)
    expect(slot(page, "notes")).to_have_text("Bare: what a skein holds is not written down.")
    expect(page.locator(".picks button")).to_have_count(1)
    page.get_by_role("button", name="Bump").click()
    expect(slot(page, "notes")).to_be_hidden()
    page.get_by_role("button", name="Hat", exact=True).click()
    page.get_by_role("button", name=re.compile("^Woman")).click()
    said = helper.say(helper.work(100, 37, "hat", "woman"), "90", helper.phrases())
    expect(slot(page, "say")).to_have_text(said["say"])
    expect(slot(page, "cost")).to_have_text(f"€{19.5 * said['count']:g}")


def test_how_it_is_worked_out_is_behind_a_fold(new_page, server):
    page = new_page(**PHONE)
    page.goto(server.address + "helper/")
    expect(slot(page, "say")).to_contain_text("Buy")
    assert "unverified" not in page.locator("body").inner_text()
    page.get_by_text("How it is worked out").click()
    expect(slot(page, "sizes-from")).to_contain_text("most of them are from memory, unverified")
