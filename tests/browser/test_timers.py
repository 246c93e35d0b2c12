"""Timers at the kettle, with a clock that the test turns: several at once, over page, reload and tab, with large targets and no barrier."""

import re

import pytest
from playwright.sync_api import Page, expect

from fibercalc.site.serve import SiteServer

from .looking import barriers
from .waiting import until_live

CARD, OTHER = "yarn/every-kind/", "yarn/skein-length/"
PHONE = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True}
HOLD = "Start a timer: hold, 47 min"  # 20 + 30 x 0.90 = 47
# What the browser was asked for, and a lock that the test can see. The real one depends on the machine.
SCREEN = """
  window.locks = [];
  Object.defineProperty(navigator, "wakeLock", { value: { async request(kind) {
    const lock = Object.assign(new EventTarget(), { kind, released: false, async release() { this.released = true; this.dispatchEvent(new Event("release")); } });
    window.locks.push(lock);
    return lock;
  } } });
"""
REFUSED = """Object.defineProperty(navigator, "wakeLock", { value: { async request() { throw new DOMException("no", "NotAllowedError"); } } });"""


@pytest.fixture(scope="module")
def place(workshop):
    running = SiteServer(workshop / ".build" / "site").start()
    yield running.address
    running.stop()


def opened(new_page, place, script: str = SCREEN, **options) -> Page:
    page = new_page(**options)
    page.add_init_script(script)
    page.clock.install()
    page.goto(place + CARD)
    return page


def elsewhere(page: Page) -> None:
    """To another page by a link, without a reload."""
    page.evaluate("() => { window.stays = true; }")
    page.locator(".chapters a[href*='knit/']").click()
    expect(page.locator("bench-card")).to_have_count(0)
    assert page.evaluate("() => window.stays")


def bar(page: Page):
    return page.locator("bench-timers")


def row(page: Page, at: int = 0):
    return bar(page).locator("li").nth(at)


def time_of(page: Page, at: int = 0):
    return row(page, at).get_by_role("timer")


def test_a_time_that_is_waited_for_is_offered_and_runs(new_page, place):
    page = opened(new_page, place)
    expect(bar(page)).to_have_count(0)
    page.get_by_role("button", name=HOLD).click()
    expect(time_of(page)).to_have_text(
        re.compile(r"^(47:00|46:5\d)$")
    )  # it runs on while a busy machine looks
    page.clock.fast_forward("10:00")
    expect(time_of(page)).to_have_text(re.compile(r"^(37:00|36:5\d)$"))
    expect(bar(page)).to_contain_text("The screen stays on.")
    assert page.evaluate("() => window.locks.length") == 1
    page.clock.fast_forward("37:05")
    expect(row(page)).to_have_attribute("data-state", "over")
    expect(row(page)).to_contain_text("Hold: over for")
    expect(bar(page).locator("[role=status]")).to_have_text("Hold is over.")
    assert page.evaluate("() => window.locks.every((lock) => lock.released)")
    page.get_by_role("button", name="Done: Hold").click()
    expect(bar(page)).to_have_count(0)


def test_the_offer_follows_the_answer(new_page, place):
    """A deeper shade, a longer hold: 20 + 30 x 1.28."""
    page = new_page()
    page.goto(place + CARD)
    until_live(page)
    page.locator("bench-card [name='dyes.1.depth']").fill("1 %")
    expect(page.get_by_role("button", name="Start a timer: hold, 58 min")).to_be_visible()


def test_two_run_at_once_on_every_page_and_after_a_reload(new_page, place):
    page = opened(new_page, place)
    page.get_by_role("button", name=HOLD).click()
    page.clock.fast_forward("05:00")
    page.get_by_role("button", name=HOLD).click()
    elsewhere(page)
    expect(bar(page).locator("li")).to_have_count(2)
    page.clock.fast_forward("10:00")
    expect(time_of(page)).to_have_text(re.compile(r"^(32:00|31:5\d)$"))
    page.reload()
    expect(time_of(page, 0)).to_have_text(re.compile(r"^(32:00|31:[45]\d)$"))
    expect(time_of(page, 1)).to_have_text(re.compile(r"^(37:00|36:[45]\d)$"))
    expect(bar(page)).to_contain_text("Touch the page once, or it cannot sound.")
    page.mouse.click(5, 300)
    page.clock.fast_forward("00:02")
    expect(bar(page)).not_to_contain_text("cannot sound")
    page.clock.fast_forward("33:00")
    expect(row(page, 0)).to_have_attribute("data-state", "over")
    expect(row(page, 1)).to_have_attribute("data-state", "running")


def test_a_page_that_slept_shows_how_long_it_has_been_over(new_page, place):
    """As a locked phone: nothing ran meanwhile, and the clock went on."""
    page = opened(new_page, place)
    page.get_by_role("button", name=HOLD).click()
    page.goto("about:blank")
    page.clock.fast_forward("01:07:00")
    page.goto(place + OTHER)
    expect(row(page)).to_contain_text(re.compile(r"over for(20:0\d|19:5\d)"))


def test_a_slip_of_the_hand_is_put_back(new_page, place):
    page = opened(new_page, place)
    page.get_by_role("button", name=HOLD).click()
    page.get_by_role("button", name="Stop: Hold").click()
    expect(row(page)).to_contain_text("stopped at")
    page.get_by_role("button", name="Put back: Hold").click()
    expect(row(page)).to_have_attribute("data-state", "running")
    page.get_by_role("button", name="5 min more: Hold").click()
    expect(time_of(page)).to_have_text(re.compile(r"^5[12]:\d\d$"))
    page.get_by_role("button", name="Stop: Hold").click()
    page.clock.fast_forward("00:11")
    expect(bar(page)).to_have_count(0)


def test_it_sounds_when_it_is_over_and_is_quiet_when_it_is_done(new_page, place):
    page = opened(
        new_page,
        place,
        SCREEN
        + """
      window.tones = 0;
      const start = OscillatorNode.prototype.start;
      OscillatorNode.prototype.start = function (...when) { window.tones += 1; return start.apply(this, when); };
      window.shakes = 0;
      navigator.vibrate = () => { window.shakes += 1; return true; };
    """,
    )
    page.get_by_role("button", name=HOLD).click()
    page.clock.fast_forward("46:00")
    assert page.evaluate("() => [window.tones, window.shakes]") == [0, 0]
    page.clock.fast_forward("01:05")
    expect(row(page)).to_have_attribute("data-state", "over")
    first = page.evaluate("() => [window.tones, window.shakes]")
    assert first[0] >= 3 and first[1] >= 1
    page.clock.run_for(9_000)
    later = page.evaluate("() => window.tones")
    assert later > first[0]
    page.get_by_role("button", name="Done: Hold").click()
    page.clock.run_for(9_000)
    assert page.evaluate("() => window.tones") == later


def test_what_the_browser_does_not_do_is_said(new_page, place):
    page = opened(
        new_page,
        place,
        REFUSED
        + """
      for (const name of ["getItem", "setItem"]) {
        const native = Storage.prototype[name];
        Storage.prototype[name] = function (key, ...rest) {
          if (key === "bench-book timers") throw new DOMException("denied by the test", "SecurityError");
          return native.call(this, key, ...rest);
        };
      }
    """,
    )
    page.get_by_role("button", name=HOLD).click()
    expect(bar(page)).to_contain_text("This browser does not keep the screen on.")
    expect(bar(page)).to_contain_text("a reload loses the timers")
    elsewhere(page)
    expect(time_of(page)).to_be_visible()


def test_another_tab_shows_the_same(new_page, place):
    page = new_page()
    page.goto(place + CARD)
    other = page.context.new_page()
    other.goto(place + OTHER)
    page.get_by_role("button", name=HOLD).click()
    expect(time_of(other)).to_have_text(re.compile(r"^4[67]:"))
    other.get_by_role("button", name="Stop: Hold").click()
    expect(row(page)).to_have_attribute("data-state", "stopped")


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_targets_are_for_wet_gloves_and_there_is_no_barrier(new_page, place, scheme):
    """64 px each way; nothing wider than the screen, also at 320 px; axe finds nothing while one runs, one is stopped and one is over."""
    page = opened(new_page, place, color_scheme=scheme, reduced_motion="reduce", **PHONE)
    for _ in range(3):
        page.get_by_role("button", name=HOLD).tap()
    page.clock.fast_forward("00:10")
    page.get_by_role("button", name="5 min more: Hold").nth(2).tap()
    page.clock.fast_forward("47:00")
    page.get_by_role("button", name="5 min more: Hold").nth(1).tap()
    page.get_by_role("button", name="Stop: Hold").nth(1).tap()
    assert [row(page, at).get_attribute("data-state") for at in range(3)] == [
        "over",
        "running",
        "stopped",
    ]
    for target in (
        *bar(page).locator("button:visible").all(),
        page.get_by_role("button", name=HOLD),
    ):
        box = target.bounding_box()
        assert box["width"] >= 64 and box["height"] >= 64, target.text_content()
    assert not barriers(page)
    for width in (390, 320):
        page.set_viewport_size({"width": width, "height": 844})
        assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")
        assert bar(page).bounding_box()["height"] <= 0.41 * 844


def test_on_paper_there_are_no_timers(new_page, place):
    page = opened(new_page, place)
    page.get_by_role("button", name=HOLD).click()
    page.emulate_media(media="print")
    expect(bar(page)).to_be_hidden()
    expect(page.locator(".timer-offers")).to_be_hidden()


def test_without_scripts_no_timer_is_offered(new_page, place):
    page = new_page(java_script_enabled=False)
    page.goto(place + CARD)
    expect(page.locator(".timer-offers")).to_be_hidden()
