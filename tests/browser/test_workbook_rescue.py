"""What could be lost without a word: records when Python cannot start, what is half typed, what was removed, a copy that is none."""

import json
from datetime import UTC, datetime, timedelta

import pytest
from playwright.sync_api import expect

from fibercalc.workbook.exchange import read_file

from .records import (PLACE, SAID, STORED, add_base, as_records, begin, exported, fill, give_file, load_demo, many, names, open_record, open_workbook, save, stored, unfold)
from .test_card_live import field, hold_python
from .waiting import until, until_live

HELD = "bench-workbook .held"
EMPTY = "bench-workbook .empty"
STATE = "bench-workbook > .state"
PUT = """async ([store, key, value]) => {
  const opened = indexedDB.open("bench-book");
  const database = await new Promise((ready, fail) => { opened.onsuccess = () => ready(opened.result); opened.onerror = () => fail(opened.error); });
  const change = database.transaction(store, "readwrite");
  change.objectStore(store).put(value, key);
  await new Promise((ready) => { change.oncomplete = ready; });
  database.close();
}"""


def about(page) -> dict:
    return page.evaluate(STORED, "about")[0]


def by_id(records) -> list[dict]:
    return sorted(records, key=lambda each: each["id"])


def no_python(context, watch) -> None:
    watch.allow(r"404 \(Not Found\)|pyodide")
    context.route("**/pyodide.asm.wasm", lambda route: route.fulfill(status=404, body="gone"))


def test_until_python_has_started_the_store_alone_says_how_many_records_there_are(page, server):
    open_workbook(page, server)
    load_demo(page)
    count = len(stored(page))
    let_go = hold_python(page.context)
    page.reload()
    expect(page.locator(HELD)).to_have_text(f"{count} records are written down here. The list needs the calculator, a copy as a file does not.")
    expect(page.locator(EMPTY)).to_be_hidden()
    let_go()
    unfold(page)
    expect(page.locator(HELD)).to_be_hidden()
    expect(page.locator(EMPTY)).to_be_hidden()


def test_nothing_is_written_down_where_nothing_is(page, server):
    let_go = hold_python(page.context)
    page.goto(server.address + PLACE)
    expect(page.locator(EMPTY)).to_be_visible()
    expect(page.locator(HELD)).to_be_hidden()
    let_go()
    unfold(page)
    expect(page.locator(EMPTY)).to_be_visible()


def test_where_python_cannot_start_every_record_is_counted_and_saved_and_the_file_is_read(page, server, new_page, watch):
    open_workbook(page, server)
    load_demo(page)
    page.evaluate(PUT, ["records", "loom-newer", {"id": "loom-newer", "kind": "loom", "schema": 9, "rev": "1-aaaa", "past": [], "more": [1]}])
    before = stored(page)
    no_python(page.context, watch)
    page.reload()
    expect(page.locator(STATE)).to_contain_text("The calculator could not start")
    expect(page.locator(STATE)).to_contain_text(f"{len(before)} records are kept on this device all the same; “Save a copy as a file” works without the calculator.")
    expect(page.locator(EMPTY)).to_be_hidden()
    text = exported(page)
    expect(page.locator(SAID)).to_contain_text("is in your downloads.")
    until(page, f"async () => (await ({STORED})('about'))[0].exported")
    file = read_file(text)
    assert by_id([*file.records, *file.unread]) == by_id(before) and [each["id"] for each in file.unread] == ["loom-newer"]
    other = open_workbook(new_page(), server)
    give_file(other, text)
    expect(other.locator("[data-part='import']")).to_contain_text(f"{len(before)} new, 0 newer, 0 clash; 1 cannot be read by this version of the book and is kept as found")
    other.get_by_role("button", name="Bring it in").click()
    expect(other.locator(SAID)).to_contain_text("brought in")
    assert by_id(stored(other)) == by_id(before)
    assert json.loads(exported(other))["unread"] == file.unread, "and it travels on"


def test_a_file_that_does_not_read_back_is_no_copy(page, server):
    page.add_init_script("Blob.prototype.text = async () => JSON.stringify({ records: [] });")
    open_workbook(page, server)
    add_base(page, "One")
    add_base(page, "Two")
    assert len(as_records(exported(page))) == 2
    expect(page.locator(SAID)).to_contain_text("does not count as a copy: 2 records are not in it as they stand here now.")
    assert about(page)["exported"] is None and about(page)["saves"] == 2
    expect(page.locator(STATE)).to_contain_text("There is no copy as a file yet.")


def test_what_is_half_typed_outlives_a_click_on_another_chapter_and_a_reload(page, server):
    open_workbook(page, server)
    begin(page, "base")
    fill(page, name="Half", length="420 m ± 8", note="as it ca")
    page.locator("[data-part='record'] [name='mass.unit']").select_option("oz")
    page.locator("header a[href*='yarn/'], nav a[href*='yarn/']").first.click()
    page.wait_for_url("**/yarn/**")
    page.goto(server.address + PLACE)
    drafts = page.locator("[data-slot='drafts']")
    expect(drafts).to_contain_text("New base “Half”")
    unfold(page)
    page.reload()
    unfold(page)
    drafts.locator("[data-draft]").click()
    expect(page.locator("[data-part='record'] > .said")).to_contain_text("not saved yet")
    for name, text in (("name", "Half"), ("length", "420 m ± 8"), ("note", "as it ca"), ("mass.unit", "oz")):
        expect(page.locator(f"[data-part='record'] [name='{name}']")).to_have_value(text)
    assert stored(page) == []
    save(page)
    assert names(stored(page)) == ["Half"]
    expect(drafts).to_be_empty()
    assert page.evaluate(STORED, "drafts") == []


def test_a_record_half_changed_opens_as_it_was_left_until_it_is_dropped(page, server):
    open_workbook(page, server)
    add_base(page, "First")
    record_id = stored(page)[0]["id"]
    open_record(page, record_id)
    fill(page, name="Second")
    until(page, f"async () => (await ({STORED})('drafts')).length === 1")
    page.reload()
    unfold(page)
    expect(page.locator(f"[data-open='{record_id}']")).to_have_text("First")
    open_record(page, record_id)
    expect(page.locator("[data-part='record'] [name='name']")).to_have_value("Second")
    for _ in range(2):
        page.get_by_role("button", name="Back to the list").click()
    expect(page.locator("[data-slot='drafts']")).to_be_empty()
    open_record(page, record_id)
    expect(page.locator("[data-part='record'] [name='name']")).to_have_value("First")
    assert names(stored(page)) == ["First"]


def test_what_was_removed_comes_back_after_a_reload_and_is_in_no_list_trace_or_file(page, server):
    open_workbook(page, server)
    load_demo(page)
    before = stored(page)
    lot = next(each for each in before if each["id"] == "dye-lot-demo-14")
    open_record(page, lot["id"])
    page.locator("[data-record='remove']").click()
    expect(page.locator(SAID)).to_contain_text("Removed.")
    page.reload()
    unfold(page)
    expect(page.locator(f"[data-open='{lot['id']}']")).to_have_count(0)
    assert lot["id"] not in [each["id"] for each in as_records(exported(page))]
    page.locator("#workbook-asked").fill("14")
    page.locator("#workbook-asked").press("Enter")
    expect(page.locator("[data-slot='trace']")).to_contain_text("Nothing here is called")
    gone = page.locator("[data-slot='removed']")
    unfold(page)
    expect(gone).to_contain_text("Dye lot 14 · removed")
    gone.get_by_role("button", name="Bring back").click()
    expect(page.locator(SAID)).to_have_text("Brought back.")
    assert by_id(stored(page)) == by_id(before) and page.evaluate(STORED, "removed") == []
    expect(gone).to_be_empty()


def test_many_removed_at_once_come_back_at_once_and_none_after_thirty_days(page, server):
    open_workbook(page, server)
    give_file(page, many(40))
    page.get_by_role("button", name="Bring it in").click()
    expect(page.locator(SAID)).to_contain_text("40 records brought in")
    page.locator("[data-do='undo']").click()
    expect(page.locator(SAID)).to_have_text("As it was before.")
    page.reload()
    unfold(page)
    expect(page.locator("[data-slot='removed'] li")).to_have_count(1)
    expect(page.locator("[data-slot='removed']")).to_contain_text(" and 37 more")
    old = page.evaluate(STORED, "removed")
    for days, left in ((29, 40), (31, 39)):
        moment = (datetime.now(UTC) - timedelta(days=days)).strftime("%Y-%m-%dT%H:%M:%SZ")
        page.evaluate(PUT, ["removed", old[0]["record"]["id"], old[0] | {"removed": moment, "batch": "other"}])
        page.reload()
        unfold(page)
        until(page, f"async () => (await ({STORED})('removed')).length === {left}")
    page.locator("[data-slot='removed'] [data-back]").click()
    expect(page.locator(SAID)).to_have_text("Brought back.")
    assert len(stored(page)) == 39


def test_removed_ones_go_for_good_on_a_second_press(page, server):
    open_workbook(page, server)
    add_base(page, "Gone")
    open_record(page, stored(page)[0]["id"])
    page.locator("[data-record='remove']").click()
    expect(page.locator(SAID)).to_contain_text("Removed.")
    unfold(page)
    page.locator("[data-do='forget-removed']").click()
    expect(page.locator(SAID)).to_contain_text("cannot be undone")
    assert len(page.evaluate(STORED, "removed")) == 1
    page.locator("[data-do='forget-removed']").click()
    expect(page.locator(SAID)).to_have_text("They are gone for good.")
    assert page.evaluate(STORED, "removed") == []


DEEP = "[" * 200_000 + "]" * 200_000  # 400 kB


@pytest.mark.parametrize("text", [DEEP, '{"format": "bench-book-bench", "schema": 2, "values": ' + "[" * 3000 + "]" * 3000 + "}"], ids=["400 kB", "3000 deep"])
def test_nesting_in_a_file_of_my_bench_is_refused_and_the_calculator_lives(page, server, text):
    page.goto(f"{server.address}bench/")
    until(page, "() => customElements.get('bench-mine') !== undefined")
    with page.expect_file_chooser() as waiting:
        page.locator("bench-mine [data-do='import']").click()
    waiting.value.set_files({"name": "deep.json", "mimeType": "application/json", "buffer": text.encode()})
    expect(page.locator("bench-mine .state")).to_have_text("deep.json is not a bench record (it is nested more than 8 deep). Nothing was changed.")
    page.get_by_role("button", name="Save my bench").click()
    expect(page.locator("bench-mine .state")).to_contain_text("Saved.", timeout=40_000)


def test_nesting_in_a_file_of_the_workbook_is_refused_and_the_calculator_lives(page, server):
    open_workbook(page, server)
    for text in (DEEP, '{"format": "bench-book", "schema": 1, "records": [], "unread": ' + "[" * 5000 + "]" * 5000 + "}"):
        give_file(page, text)
        expect(page.locator(SAID)).to_have_text("This file was not read: it is nested more than 8 deep. Nothing was changed.")
        page.locator(SAID).evaluate("(said) => { said.textContent = ''; }")
    add_base(page, "Still here")


NESTED = """([store, key, depth]) => { let value = 1; for (let at = 0; at < depth; at += 1) value = [value]; return (%s)([store, key, { id: key, more: value }]); }""" % PUT


def test_nesting_in_the_store_does_not_end_the_interpreter(page, server):
    open_workbook(page, server)
    page.evaluate(NESTED, ["records", "deep", 1500])
    page.reload()
    expect(page.locator(SAID)).to_have_text("What was asked is nested more than 20 deep, and was not read.", timeout=40_000)
    expect(page.locator(HELD)).to_contain_text("1 record is written down here.")
    page.goto(f"{server.address}yarn/skein-length/")
    until_live(page)


@pytest.mark.parametrize("languages", [["C"], ["C", "de-AT"]], ids=["C alone", "C and German"])
def test_a_browser_that_calls_its_language_c_wakes_every_card(page, server, languages):
    page.add_init_script(f"for (const [name, value] of [['language', {json.dumps(languages[0])}], ['languages', {json.dumps(languages)}]])"
                         " Object.defineProperty(Navigator.prototype, name, { get: () => value });")
    page.goto(f"{server.address}yarn/skein-length/")
    until_live(page)
    field(page, "turns").fill("285")
    until(page, "() => location.search.includes('b=285')")
