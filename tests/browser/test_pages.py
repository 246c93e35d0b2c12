"""Every page of the built site once: whole without scripts, within reach, still, light to load, and nothing wider than the screen."""

import re
import time
import xml.etree.ElementTree as XML
from html import unescape

import pytest

from fibercalc.core.registry import find_card
from fibercalc.site.page import checks_of

from .addresses import all_pages, card_pages, falls, page_id, some_each_day
from .looking import MEASURE, barriers, compressed, looked_at
from .test_card_live import natively, text_of
from .waiting import until_live

DESK = {"viewport": {"width": 1280, "height": 800}, "color_scheme": "light"}
PHONE = {
    "viewport": {"width": 390, "height": 844},
    "color_scheme": "dark",
    "has_touch": True,
    "is_mobile": True,
}
FIRST_VIEW = 200_000


def view_id(view) -> str:
    address, options = view
    return f"{page_id(address)}-{options['viewport']['width']}-{options['color_scheme']}"


# Each page in one view, on the desk in light or on the phone in the dark; test_states looks at each in two more.
SEEN = [
    pytest.param((address, view := (DESK, PHONE)[falls(address, 2)]), id=view_id((address, view)))
    for address in all_pages()
]
# axe takes longer than all else together: a part of the pages each day, since test_states has it look at all of them.
LOOKED_INTO = [each for each in SEEN if not falls(each.id, 5)]


@pytest.fixture(scope="module", params=SEEN)
def seen(request, browser, server):
    """A page opened once for all tests that look."""
    address, options = request.param
    with looked_at(browser, server, address, **options) as looked:
        yield looked


def test_the_sitemap_lists_the_pages_of_the_navigation(site):
    places = [
        element.text
        for element in XML.parse(site / "sitemap.xml").getroot().iter()
        if element.tag.endswith("loc")
    ]
    home = min(places, key=len)
    assert sorted(place.removeprefix(home) for place in places) == sorted(all_pages())


@pytest.mark.parametrize("seen", LOOKED_INTO, indirect=True, scope="module")
def test_no_barrier_that_axe_finds(seen):
    assert not barriers(seen.page)


def test_title_language_and_headings(seen):
    outline = seen.page.evaluate(
        "() => [...document.querySelectorAll('h1, h2, h3, h4, h5, h6')].map((each) =>"
        " [Number(each.tagName[1]), each.textContent.trim()])"
    )
    assert [level for level, _ in outline].count(1) == 1, outline
    assert outline[0][0] == 1, "something is headed before the page itself"
    assert all(text for _, text in outline), outline
    jumps = [later for earlier, later in zip(outline, outline[1:]) if later[0] > earlier[0] + 1]
    assert not jumps, f"a level is left out before {jumps}"
    assert seen.page.evaluate("() => document.documentElement.lang") == "en"
    title = seen.page.title()
    assert "Bench Book" in title and (seen.address == "" or len(title) > len("Bench Book - ")), (
        title
    )


def test_titles_differ(site):
    titles = [
        re.search(r"<title>(.*?)</title>", (site / address / "index.html").read_text("utf-8"))[1]
        for address in all_pages()
    ]
    assert len(set(titles)) == len(titles), sorted(titles)


def test_nothing_makes_the_page_scroll_sideways(seen):
    own = seen.page.viewport_size
    for width in (own["width"], *((320,) if own["width"] < 1000 else ())):
        seen.page.set_viewport_size({"width": width, "height": own["height"]})
        wide = seen.page.evaluate(
            """() => document.documentElement.scrollWidth <= document.documentElement.clientWidth ? [] :
          [...document.querySelectorAll("body *")].filter((each) => each.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
          .map((each) => each.outerHTML.slice(0, 90)).concat("the page")"""
        )
        assert not wide, f"at {width} px: {wide}"
    seen.page.set_viewport_size(own)


# What may be smaller, and why. Everything else that is pressed is at least 48 px each way.
SMALLER = {"p a, li a, td a, th a, dd a": "a link inside running text is as high as its line"}
TARGETS = """(allowed) => {
  const small = [];
  for (const each of document.querySelectorAll("a[href], button, input, select, textarea, summary, label[for]")) {
    if (!each.checkVisibility({ opacityProperty: true, visibilityProperty: true }) || each.closest(".md-skip")) continue;
    let box = each.getBoundingClientRect();
    if (box.width <= 1 || box.height <= 1) continue;  // for the keyboard and screen readers only
    if (each.matches("label[for]") && document.getElementById(each.htmlFor)?.matches("input, select, textarea")
        && document.getElementById(each.htmlFor).checkVisibility() && document.getElementById(each.htmlFor).type !== "checkbox") continue;  // its field is the target
    const words = each.closest(allowed);
    if (words && inText(each)) continue;
    if (box.width < 47.5 || box.height < 47.5) small.push(`${Math.round(box.width)} x ${Math.round(box.height)}: ${each.outerHTML.slice(0, 110)}`);
  }
  return small;
  function inText(link) {
    const around = link.closest("p, li, td, th, dd");
    return link.matches("a") && around !== null && around.textContent.trim().length > link.textContent.trim().length + 3;
  }
}"""


def test_what_is_pressed_is_as_large_as_a_thumb(seen):
    assert not seen.page.evaluate(TARGETS, ", ".join(SMALLER))


def test_nothing_moves_while_the_page_comes(seen):
    shifts = seen.page.evaluate("() => window.shifts")
    assert sum(each["value"] for each in shifts) <= 0.02, shifts


@pytest.mark.parametrize("view", [DESK, PHONE], ids=["desk", "phone"])
@pytest.mark.parametrize(
    "address", ["", "tour/", card_pages()["shade-steps"], "wash/superwash/"], ids=page_id
)
def test_nothing_moves_when_the_typefaces_come_late(new_page, server, address, view):
    """On a slow line text stands in a stand-in first; the real faces then take its place without pushing anything about."""

    def late(route):
        time.sleep(0.4)
        route.continue_()

    page = new_page(**view)
    page.add_init_script(MEASURE)
    page.route("**/*.woff2", late)
    page.goto(server.address + address)
    assert (
        page.evaluate(
            "() => document.fonts.ready.then(() => [...document.fonts].filter(({ family, status })"
            " => status === 'loaded' && !family.includes('stand-in')).length)"
        )
        == 2
    )
    page.wait_for_timeout(300)
    assert sum(page.evaluate("() => window.shifts.map(({ value }) => value)")) <= 0.02


def test_the_first_view_is_light(seen, site, server):
    """All that was asked for before Python, compressed."""
    sizes = compressed(site, server.address, seen.first_view)
    assert not [name for name in sizes if name.startswith("assets/py/") or name.endswith(".zip")]
    assert any(name.endswith(".css") for name in sizes) and any(
        name.endswith("main.js") for name in sizes
    )
    assert sum(sizes.values()) <= FIRST_VIEW, sizes


def test_no_file_of_python_is_asked_for_before_the_largest_paint(browser, server):
    """On a page that starts Python by itself."""
    with looked_at(browser, server, card_pages()["skein-length"], sparing=False, **DESK) as looked:
        until_live(looked.page)
        started = [
            request.timing["startTime"]
            for request in looked.requests
            if "/assets/py/" in request.url
        ]
        assert started and min(started) > 0
        assert looked.largest_paint < min(started)


@pytest.mark.parametrize("card_id", some_each_day(card_pages(), of=3))
def test_without_scripts_a_card_is_complete(new_page, server, card_id):
    page = new_page(java_script_enabled=False)
    page.goto(server.address + card_pages()[card_id])
    slots = natively(card_id, {})["slots"]
    card = page.locator("bench-card")
    for name, html in slots.items():
        if html:
            assert text_of(card.locator(f"[data-slot='{name}']").text_content()) == unescape(
                text_of(html)
            ), name
    for part in (".answer", ".working > ol", ".basis .sources", ".numbers"):
        assert card.locator(part).first.is_visible(), part
    for picture in card.locator("svg.picture").all():
        box = picture.bounding_box()
        assert box["width"] > 200 and box["height"] > 40
        assert picture.get_attribute("aria-label")
    checked = page.locator("details.checked")
    assert (
        checked.locator("tbody tr").count()
        == len([check for check in checks_of(find_card(card_id)) if check.kind != "regression"])
        > 0
    )
    checked.locator("summary").click()
    assert checked.locator("tbody tr").last.is_visible()
    for button in page.locator("bench-card button").all():
        assert not button.is_visible(), "a button that needs a script"
