"""A card in the built site, as a person uses it: typing, units, steppers, links, mistakes, and what fails around it."""

import json
import re

import pytest
from playwright.sync_api import BrowserContext, Page, Route, expect

from .records import REEL, STORED, write_bench
from .waiting import until, until_live

CARD = "yarn/skein-length/"
ANSWER = "bench-card output.answer"


def settings() -> dict:
    return {"style": "point", "system": "both", "money": "€"}


def asked(do: str, **request) -> dict:
    """What Python says across the boundary, natively."""
    from fibercalc.site.boundary import handle

    return json.loads(handle(json.dumps({"id": 1, "do": do} | request)))["ok"]


def natively(card: str, values: dict, exact: dict | None = None) -> dict:
    """What the native package answers to the same controls: the page must show exactly this."""
    return asked("work", card=card, values=values, exact=exact or {}, settings=settings())


def text_of(html: str) -> str:
    return re.sub(r"\s+", " ", re.sub(r"<[^>]+>", "", html)).strip()


def controls(page: Page, element: str = "bench-card") -> dict:
    return page.evaluate("(element) => Object.fromEntries(new FormData(document.querySelector(`${element} form`)))", element)


def expect_answer(page: Page, values: dict) -> None:
    """The page's answer is the native one for the controls on screen with these values."""
    said = natively("skein-length", controls(page) | values)
    assert said["answered"], said
    expect(page.locator(ANSWER)).to_have_text(text_of(said["slots"]["answer"]))


def until_linked(page: Page, card: str = "skein-length") -> None:
    """Until the address is the link to the values on screen: it follows when typing has rested."""
    until(page, "(query) => location.search === (query && `?${query}`)", natively(card, controls(page))["query"])


def hold_python(context: BrowserContext):
    """Keeps Python's library back, so that what is seen before it starts is no matter of luck. Returns what lets it go."""
    held: list[Route] | None = []

    def handle(route: Route) -> None:
        if held is None:
            route.continue_()
        else:
            held.append(route)

    def let_go() -> None:
        nonlocal held
        waiting, held = held, None
        for route in waiting:
            route.continue_()

    context.route("**/python_stdlib.zip", handle)
    return let_go


def field(page: Page, name: str):
    return page.locator(f"bench-card [name='{name}']")


def why(page: Page, name: str):
    return page.locator(f"bench-card .field[data-name='{name}'] .why")


@pytest.fixture
def card(page, server) -> Page:
    """A skein-length card whose Python answers."""
    page.goto(server.address + CARD)
    until_live(page)
    return page


def test_the_example_stays_as_built_until_something_changes(page, server):
    page.goto(server.address + CARD)
    page.evaluate("""() => {
      window.changes = 0;
      new MutationObserver(() => { window.changes += 1; }).observe(document.querySelector("bench-card .rest"), { childList: true, subtree: true, characterData: true });
      new MutationObserver(() => { window.changes += 1; }).observe(document.querySelector("bench-card output"), { childList: true, subtree: true, characterData: true });
    }""")
    until_live(page)
    page.wait_for_timeout(300)
    assert page.evaluate("() => window.changes") == 0
    assert page.url == server.address + CARD


def test_an_edit_is_answered_as_the_native_package_answers(card):
    field(card, "turns").fill("300")
    expect_answer(card, {"turns": "300"})
    expect(card.locator("bench-card .field[data-name='turns'] .read")).to_have_text("read as 300")
    expect(card.locator("bench-card .working")).to_contain_text("300")
    expect(card.locator("bench-card .kept")).to_be_hidden()


def test_a_value_typed_before_python_is_ready_is_answered_as_soon_as_it_is(page, server):
    let_go = hold_python(page.context)
    page.goto(server.address + CARD, wait_until="domcontentloaded")
    field(page, "turns").fill("301")
    expect(page.locator("bench-card .kept")).to_contain_text("as soon as the calculator has started")
    let_go()
    until_live(page)
    expect_answer(page, {"turns": "301"})
    expect(page.locator("bench-card .kept")).to_be_hidden()


def test_with_data_to_spare_asked_for_python_waits_for_a_touch(page, server):
    page.add_init_script("Object.defineProperty(navigator, 'connection', { value: { saveData: true } })")
    page.goto(server.address + CARD)
    page.wait_for_timeout(3_000)
    expect(page.locator("bench-card > .state")).to_contain_text("starts when a field is touched")
    field(page, "turns").focus()
    until_live(page)


def test_a_link_brings_the_values_and_the_answer_to_someone_else(card, new_page, server):
    field(card, "turns").fill("250")
    card.locator("[name='circumference.unit']").select_option("in")
    field(card, "circumference").fill("59 1/2")
    expect_answer(card, {"turns": "250", "circumference": "59 1/2"})
    until_linked(card)
    answer = card.locator(ANSWER).text_content()
    other = new_page()
    let_go = hold_python(other.context)
    other.goto(card.url)
    expect(other.locator("bench-card .kept")).to_contain_text("still the example")
    let_go()
    until_live(other)
    expect(other.locator(ANSWER)).to_have_text(answer)
    expect(field(other, "turns")).to_have_value("250")
    assert other.url == card.url, "the link was already canonical"


def test_copy_link_gives_the_address_of_the_answer_on_screen(card):
    card.evaluate("() => { navigator.clipboard.writeText = async (text) => { window.copied = text; }; }")
    field(card, "turns").fill("251")
    expect_answer(card, {"turns": "251"})
    card.get_by_role("button", name="Copy link").click()
    expect(card.locator("bench-card .said")).to_contain_text("Link copied")
    assert card.evaluate("() => window.copied") == card.url
    assert "?v=" in card.url


def test_default_values_leave_a_clean_address(card, server):
    field(card, "turns").fill("250")
    until(card, "() => location.search !== ''")
    field(card, "turns").fill("280")
    until(card, "() => location.search === ''")
    assert card.url == server.address + CARD


def test_back_forward_and_reload_keep_the_values(card, server):
    field(card, "turns").fill("252")
    until(card, "() => location.search !== ''")
    address = card.url
    card.evaluate("() => { window.stillHere = true; }")
    card.locator("a[href$='yarn/'], a[href='../']").first.click()
    card.wait_for_url("**/yarn/")
    card.go_back()
    card.wait_for_url(address)
    expect(field(card, "turns")).to_have_value("252")
    expect_answer(card, {"turns": "252"})
    assert card.evaluate("() => window.stillHere"), "instant navigation kept the page, and with it Python"
    card.reload()
    until_live(card)
    expect(field(card, "turns")).to_have_value("252")
    expect_answer(card, {"turns": "252"})
    assert card.url == address


def test_a_change_of_query_on_the_same_page_is_read(card, server):
    field(card, "turns").fill("253")
    until(card, "() => location.search !== ''")
    search = card.evaluate("() => location.search")
    card.evaluate("() => history.pushState(null, '', location.pathname)")
    card.evaluate("() => history.pushState(null, '', location.pathname + '#x')")
    card.go_back()
    expect(field(card, "turns")).to_have_value("280")
    card.go_back()
    expect(field(card, "turns")).to_have_value("253")
    assert card.evaluate("() => location.search") == search


def test_a_bad_value_keeps_the_last_good_answer_and_says_what_is_allowed(card):
    field(card, "turns").fill("254")
    expect_answer(card, {"turns": "254"})
    good = card.locator(ANSWER).text_content()
    until(card, "() => location.search !== ''")
    field(card, "turns").press("End")
    field(card, "turns").press_sequentially("x")
    expect(why(card, "turns")).to_be_visible()
    expect(why(card, "turns")).to_contain_text("254x")
    expect(field(card, "turns")).to_have_attribute("aria-invalid", "true")
    assert card.locator(ANSWER).text_content() == good
    expect(card.locator("bench-card .kept")).to_have_text("This answer is still for your last good values.")
    assert "254" in card.url
    field(card, "turns").press("Backspace")
    expect(why(card, "turns")).to_be_hidden()
    expect(card.locator("bench-card .kept")).to_be_hidden()
    assert field(card, "turns").get_attribute("aria-invalid") is None


def test_an_error_waits_while_its_field_is_being_typed_in(card):
    card.evaluate("""() => {
      const why = document.querySelector("[data-name='turns'] .why"), input = document.querySelector("[name='turns']");
      input.addEventListener("input", () => { window.typedAt = performance.now(); });
      new MutationObserver(() => { if (!why.hidden) window.saidAt ??= performance.now(); }).observe(why, { attributes: true });
    }""")
    field(card, "turns").fill("none")
    expect(why(card, "turns")).to_be_visible()
    assert card.evaluate("() => window.saidAt - window.typedAt") >= 395
    assert card.evaluate("() => document.activeElement.name") == "turns", "focus never moves by itself"


def test_leaving_a_field_shows_its_error_and_a_press_beside_it_still_counts(card):
    field(card, "turns").fill("none")
    card.get_by_role("button", name="Back to the example").click()
    expect(field(card, "turns")).to_have_value("280")
    expect(why(card, "turns")).to_be_hidden()


def test_switching_the_unit_and_back_gives_the_same_digits(card):
    amount, unit = field(card, "circumference"), field(card, "circumference.unit")
    amount.fill("1.523")
    expect_answer(card, {"circumference": "1.523"})
    answer = card.locator(ANSWER).text_content()
    was, shown = unit.input_value(), {}
    for other in unit.evaluate("(select) => [...select.options].map((option) => option.value)"):
        if other == was:
            continue
        before = amount.input_value()
        unit.select_option(other)
        expect(amount).not_to_have_value(before)
        shown[other] = amount.input_value()
        expect(card.locator(ANSWER)).to_have_text(answer)
    unit.select_option(was)
    expect(amount).to_have_value("1.523")
    expect(card.locator(ANSWER)).to_have_text(answer)
    assert len(set(shown.values())) == len(shown)


def test_steppers_count_and_stop_at_the_limit_that_python_gives(card):
    more = card.locator(".field[data-name='turns'] [data-step='1']")
    more.click()
    more.click()
    expect(field(card, "turns")).to_have_value("282")
    expect_answer(card, {"turns": "282"})
    assert card.evaluate("() => document.activeElement.dataset.step") == "1", "the stepper keeps focus"
    limit = limit_of_turns(card)
    field(card, "turns").fill(str(limit))
    expect_answer(card, {"turns": str(limit)})
    more.click()
    expect(why(card, "turns")).to_contain_text(f"{limit + 1}")
    expect(field(card, "turns")).to_have_value(str(limit))
    expect_answer(card, {"turns": str(limit)})
    expect(card.locator("bench-card .kept")).to_be_hidden()


def limit_of_turns(page: Page) -> int:
    """The largest count allowed, from the card's own declaration."""
    from fibercalc.core.registry import find_card

    return int(find_card("skein-length").item("turns").allowed[1].replace(",", ""))


def test_rows_are_added_removed_and_put_back(card):
    def lengths() -> list[str]:
        return card.locator("[name^='skeins.'][name$='.length']").evaluate_all("(boxes) => boxes.map((box) => box.value)")

    field(card, "several").select_option("yes")
    rows = card.locator("fieldset[data-rows='skeins']")
    expect(rows).to_be_visible()
    before = lengths()
    rows.locator("[data-add]").click()
    added = len(before) + 1
    assert card.evaluate("() => document.activeElement.name") == f"skeins.{added}.length"
    assert rows.locator(f"#skein-length\\.skeins\\.{added}\\.length").count() == 1
    assert "{n}" not in rows.locator(".row").last.inner_html()
    field(card, f"skeins.{added}.length").fill("415")
    expect_answer(card, {})
    rows.locator("[data-remove='skeins.2']").click()
    assert lengths() == [before[0], *before[2:], "415"]
    assert card.evaluate("() => document.activeElement.dataset.remove") == "skeins.2"
    expect_answer(card, {})
    rows.get_by_role("button", name="Put row 2 back").click()
    assert lengths() == [*before, "415"]
    expect_answer(card, {})
    until_linked(card)
    card.reload()
    until_live(card)
    expect(field(card, f"skeins.{added}.length")).to_have_value("415")
    assert lengths() == [*before, "415"]


def test_of_quick_edits_only_the_newest_is_shown(card):
    card.evaluate("""() => {
      window.shown = [];
      const output = document.querySelector("bench-card output"), input = document.querySelector("[name='turns']");
      new MutationObserver(() => window.shown.push(output.textContent)).observe(output, { childList: true, subtree: true, characterData: true });
      for (const turns of ["101", "102", "103", "104"]) {
        input.value = turns;
        input.dispatchEvent(new Event("input", { bubbles: true }));
      }
    }""")
    expect_answer(card, {"turns": "104"})
    assert len(set(card.evaluate("() => window.shown"))) == 1


def test_back_to_the_example_can_be_undone(card, server):
    field(card, "turns").fill("255")
    until(card, "() => location.search !== ''")
    address = card.url
    card.get_by_role("button", name="Back to the example").click()
    expect(field(card, "turns")).to_have_value("280")
    until(card, "() => location.search === ''")
    card.get_by_role("button", name="Put my values back").click()
    expect(field(card, "turns")).to_have_value("255")
    expect_answer(card, {"turns": "255"})
    card.wait_for_url(address)


def test_last_values_are_offered_after_a_reload_and_never_filled_in(card, server):
    field(card, "turns").fill("256")
    until(card, f"async ([store, query]) => (await ({STORED})(store)).some((each) => each.query === query)", ["last", natively("skein-length", controls(card))["query"]])
    card.goto(server.address + CARD)
    until_live(card)
    offer = card.get_by_role("button", name="Put my last values back")
    expect(offer).to_be_visible()
    expect(field(card, "turns")).to_have_value("280")
    offer.click()
    expect(field(card, "turns")).to_have_value("256")
    expect_answer(card, {"turns": "256"})


def test_the_half_page_sheet_is_printed_and_put_away(card):
    card.evaluate("""() => { window.print = () => {
      window.printed = document.querySelector(".sheet-alone").textContent + document.documentElement.className;
      dispatchEvent(new Event("afterprint"));
    }; }""")
    field(card, "turns").fill("257")
    expect_answer(card, {"turns": "257"})
    card.get_by_role("button", name="Print this card alone").click()
    printed = until(card, "() => window.printed")
    assert "257" in printed and "print-alone" in printed
    assert card.locator(".sheet-alone").count() == 0
    assert "print-alone" not in card.evaluate("() => document.documentElement.className")


def test_python_failing_to_load_is_said_and_can_be_tried_again(page, server, watch):
    watch.allow(r"ERR_FAILED|Failed to (load|fetch)|wasm")
    page.context.route("**/*.wasm", lambda route: route.abort())
    page.goto(server.address + CARD)
    state = page.locator("bench-card > .state")
    expect(state).to_contain_text("The calculator could not start", timeout=40_000)
    expect(state).to_contain_text("The page stays a complete reference.")
    example = page.locator(ANSWER).text_content()
    field(page, "turns").fill("258")
    expect(page.locator("bench-card .kept")).to_contain_text("the calculator is not running")
    assert page.locator(ANSWER).text_content() == example
    page.context.unroute("**/*.wasm")
    state.get_by_role("button", name="Try again").click()
    until_live(page)
    expect_answer(page, {"turns": "258"})


def test_a_worker_that_dies_is_replaced_and_the_value_answered(page, server, watch):
    watch.allow("a test breaks it")
    page.context.route("**/worker.js", lambda route: route.fulfill(
        content_type="text/javascript", body=route.fetch().text() + "; const hear = self.onmessage; self.onmessage = (event) => {"
        "if (event.data.text?.includes('\"259\"')) setTimeout(() => { throw new Error('a test breaks it'); }); else hear(event); };"))
    page.goto(server.address + CARD)
    until_live(page)
    field(page, "turns").fill("259")
    expect(page.locator("bench-card .kept")).to_contain_text("stopped while working", timeout=60_000)
    until_live(page)
    field(page, "turns").fill("260")
    expect_answer(page, {"turns": "260"})


def test_without_storage_a_card_works_and_my_bench_says_so(page, server):
    page.add_init_script("""
      const denied = { get() { throw new DOMException("denied by the test", "SecurityError"); } };
      Object.defineProperty(window, "indexedDB", denied);
    """)
    page.goto(server.address + CARD)
    until_live(page)
    field(page, "turns").fill("261")
    expect_answer(page, {"turns": "261"})
    page.goto(server.address + "bench/")
    expect(page.locator("bench-mine .state")).to_contain_text("Nothing can be kept here")


def test_the_keyboard_alone_is_enough(card):
    field(card, "turns").focus()
    card.keyboard.press("Control+A")
    card.keyboard.type("262")
    card.keyboard.press("Enter")
    expect_answer(card, {"turns": "262"})
    assert card.evaluate("() => document.activeElement.name") == "turns"
    card.keyboard.press("Shift+Tab")
    card.keyboard.press("Space")
    expect(field(card, "turns")).to_have_value("261")
    card.get_by_role("button", name="Save to the workbook").focus()
    card.keyboard.press("Tab")
    card.keyboard.press("Enter")
    expect(field(card, "turns")).to_have_value("280")


def test_on_a_phone_the_answer_stays_in_sight_while_typing(new_page, server):
    page = new_page(viewport={"width": 390, "height": 844}, has_touch=True, is_mobile=True)
    page.goto(server.address + CARD)
    until_live(page)
    field(page, "turns").tap()
    field(page, "turns").fill("263")
    expect_answer(page, {"turns": "263"})
    expect(page.locator(ANSWER)).to_be_in_viewport()
    page.locator(".field[data-name='turns'] [data-step='1']").tap()
    expect(field(page, "turns")).to_have_value("264")
    assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth"), "nothing makes the page scroll sideways"


def test_a_hostile_link_is_text_and_nothing_else(page, server):
    page.goto(server.address + CARD + "?v=1&a=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E&zz=%3Cscript%3Ealert(1)%3C%2Fscript%3E&b=" + "9" * 300)
    page.on("dialog", lambda dialog: pytest.fail(dialog.message))
    until_live(page)
    expect(page.locator("bench-card .link-notes")).to_be_visible()
    assert page.locator("bench-card :is(img, script, iframe)").count() == 0
    expect(page.locator("bench-card > .state")).not_to_have_attribute("data-state", "failed")


def test_my_bench_is_saved_offered_and_removed(page, server):
    write_bench(page, server.address, REEL)
    reel = page.locator("bench-mine [name='reels.1.circumference']")
    reel.fill("1.61")
    page.get_by_role("button", name="Save my bench").click()
    state = page.locator("bench-mine .state")
    expect(state).to_contain_text("Saved.", timeout=40_000)
    expect(state).to_contain_text("on this device only")
    page.reload()
    expect(reel).to_have_value("1.61", timeout=40_000)
    page.goto(server.address + CARD)
    until_live(page)
    expect(field(page, "circumference")).to_have_value("1.5")
    page.locator("bench-card .offers").get_by_role("button", name=re.compile("1.61")).click()
    expect(field(page, "circumference")).to_have_value("1.61")
    expect_answer(page, {"circumference": "1.61"})
    page.goto(server.address + "bench/")
    expect(reel).to_have_value("1.61", timeout=40_000)
    page.get_by_role("button", name="Remove everything").click()
    expect(reel).to_have_count(0)
    page.get_by_role("button", name="Undo").click()
    expect(reel).to_have_value("1.61")


def test_my_bench_goes_into_a_file_and_comes_back(page, server, tmp_path):
    """Read again after a change it is as it was; a file that is no bench record changes nothing. Either way no control is left in the page."""
    write_bench(page, server.address, REEL)
    reel, state = page.locator("bench-mine [name='reels.1.circumference']"), page.locator("bench-mine .state")
    reel.fill("1.61")
    page.get_by_role("button", name="Save my bench").click()
    expect(state).to_contain_text("Saved.", timeout=40_000)
    with page.expect_download() as download:
        page.get_by_role("button", name="Save a copy as a file").click()
    download.value.save_as(tmp_path / "bench.json")
    reel.fill("1.7")
    page.get_by_role("button", name="Save my bench").click()
    expect(state).to_contain_text("Saved.")
    (tmp_path / "other.json").write_text("[]", "utf-8")
    for name, said, length in (("other.json", "Nothing was changed.", "1.7"), ("bench.json", "Imported from bench.json.", "1.61")):
        with page.expect_file_chooser() as chooser:
            page.get_by_role("button", name="Read a file").click()
        chooser.value.set_files(tmp_path / name)
        expect(state).to_contain_text(said)
        expect(reel).to_have_value(length)
        expect(page.locator("input[type='file']")).to_have_count(0)
    page.reload()
    expect(reel).to_have_value("1.61", timeout=40_000)


def test_an_edit_costs_the_main_thread_less_than_50_ms(card):
    """In time of the thread itself, which other work on the machine does not lengthen; a task of 50 ms counts as long."""
    tools = card.context.new_cdp_session(card)
    tools.send("Performance.enable", {"timeDomain": "threadTicks"})

    def spent() -> float:
        return next(each["value"] for each in tools.send("Performance.getMetrics")["metrics"] if each["name"] == "TaskDuration")

    costs = []
    for turns in range(270, 279):
        before = spent()
        card.evaluate("""(turns) => new Promise((shown) => {
          const input = document.querySelector("[name='turns']");
          new MutationObserver(() => requestAnimationFrame(() => setTimeout(shown))).observe(document.querySelector("bench-card output"), { childList: true });
          input.value = turns;
          input.dispatchEvent(new Event("input", { bubbles: true }));
        })""", str(turns))
        costs.append((spent() - before) * 1000)
    assert 0 < sorted(costs)[len(costs) // 2] < 50, costs


def test_from_card_to_card_nothing_is_typed_twice(page, server):
    """A recipe for six skeins, by way of its heating to the plan of the run: the plan has the skeins of the one and the minutes of the other, after a reload too."""
    page.goto(f"{server.address}dye/dye-recipe/")
    until_live(page)
    field(page, "skeins").fill("6")
    until(page, "() => location.search !== ''")
    page.get_by_role("link", name="How long does it take to heat?").click()
    until_live(page, card="bath-heat")
    expect(field(page, "fiber_mass")).to_have_value("300 ± 3")  # two potfuls of three, and what the scale leaves open
    expect(field(page, "bath")).to_have_value("6 ± 0.06")
    field(page, "hold").fill("30")
    link = page.get_by_role("link", name="How long does the whole run take?")
    expect(link).to_have_attribute("href", re.compile(r"a1b=6.*30min|30min.*a1b=6"))
    link.click()
    until_live(page, card="pots")
    for _ in range(2):
        expect(field(page, "recipes.1.skeins")).to_have_value("6")
        expect(field(page, "steps.4.minutes")).to_have_value("30")
        expect(field(page, "recipes.2.skeins")).to_have_count(0)
        page.reload()
        until_live(page, card="pots")
    expect(page.get_by_role("link", name="May each bath go down the drain?")).to_have_attribute("href", re.compile("e=citric"))
