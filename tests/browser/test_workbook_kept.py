"""Nothing that was confirmed is lost: a tab or the whole browser killed, two tabs, a full disk, an old store, an update, no signal."""

import os
import random
import shutil
import signal
import subprocess
import time
from contextlib import suppress

import pytest
from playwright.sync_api import Error, expect

from fibercalc.workbook.records import checked

from .conftest import ARGUMENTS
from .records import (
    PLACE,
    SAID,
    add_base,
    fill,
    give_file,
    load_demo,
    many,
    names,
    open_record,
    open_workbook,
    save,
    stored,
    unfold,
)
from .test_offline import FAILED_FETCH, build_second, keep
from .waiting import until, until_live

BLANK = "workbook-schema.json"  # of the same origin, without a script of ours


@pytest.fixture(autouse=True)
def no_icon(watch):
    """A browser asks for an icon that goes with a page that has no head."""
    watch.allow(r"404 \(Not Found\)")


def test_two_tabs_show_the_same_and_neither_writes_over_the_other_unseen(page, server):
    open_workbook(page, server)
    add_base(page, "First")
    record_id = stored(page)[0]["id"]
    other = open_workbook(page.context.new_page(), server)
    open_record(page, record_id)
    open_record(other, record_id)
    fill(page, note="typed here")
    fill(other, name="Second")
    save(other)
    said = page.locator("[data-part='record'] > .said")
    expect(said).to_contain_text("changed in another tab")
    assert names(stored(page)) == ["Second"]
    page.locator("[data-record='save']").first.click()
    expect(page.locator(SAID)).to_have_text("Saved.")
    (record,) = stored(page)
    assert (
        record["values"]["name"] == "First"
        and record["values"]["note"] == "typed here"
        and record["rev"].startswith("3-")
    ), "told first, written over on the second press"
    unfold(other)
    expect(other.locator(f"[data-open='{record_id}']")).to_have_text("First")
    page.locator("[data-do='undo']").click()
    expect(other.locator(f"[data-open='{record_id}']")).to_have_text("Second")


@pytest.mark.sweep
def test_a_tab_that_did_not_hear_is_told_by_the_store(page, server):
    """The message between tabs may come too late: the revision in the store decides, in the same transaction."""
    page.add_init_script("window.BroadcastChannel = undefined")
    open_workbook(page, server)
    add_base(page, "First")
    record_id = stored(page)[0]["id"]
    other = open_workbook(page.context.new_page(), server)
    open_record(page, record_id)
    open_record(other, record_id)
    fill(other, name="Second")
    save(other)
    fill(page, name="Third")
    page.locator("[data-record='save']").first.click()
    expect(page.locator("[data-part='record'] > .said")).to_contain_text("changed in another tab")
    assert names(stored(page)) == ["Second"]


@pytest.mark.sweep
def test_a_tab_killed_in_the_middle_of_a_save_leaves_all_of_it_or_nothing(page, server):
    rng = random.Random(6)
    whole = many(60)
    for _ in range(4):
        tab = open_workbook(page.context.new_page(), server)
        before = len(stored(tab))
        give_file(tab, whole)
        if tab.locator("[data-part='import']").is_visible() or before == 0:
            tab.get_by_role("button", name="Bring it in").click(no_wait_after=True)
        time.sleep(rng.random() * 0.05)
        tab.close()
        page.goto(server.address + BLANK)
        found = stored(page)
        assert len(found) in (0, 60) and all(checked(each) for each in found)
        if found:
            page.evaluate(
                "() => new Promise((ready) => { const gone ="
                " indexedDB.deleteDatabase('bench-book'); gone.onsuccess = gone.onblocked ="
                " ready; })"
            )


def test_a_full_disk_is_said_and_what_was_saved_stays(page, server):
    """The room is made small before the first save: a browser remembers for a while how much there was."""
    page.goto(server.address + BLANK)
    devtools = page.context.new_cdp_session(page)
    devtools.send(
        "Storage.overrideQuotaForOrigin",
        {"origin": server.address.rstrip("/"), "quotaSize": 200_000},
    )
    open_workbook(page, server)
    add_base(page, "Before")
    before = stored(page)
    give_file(page, many(400, "x" * 1000))
    page.get_by_role("button", name="Bring it in").click()
    expect(page.locator(SAID)).to_have_text(
        "Not saved: the storage of this browser is full. What was saved before is still there.",
        timeout=20_000,
    )
    assert stored(page) == before
    add_base(page, "Small enough")
    assert names(stored(page)) == ["Before", "Small enough"]


def test_with_no_room_at_all_the_form_keeps_what_was_typed(page, server):
    page.goto(server.address + BLANK)
    devtools = page.context.new_cdp_session(page)
    devtools.send(
        "Storage.overrideQuotaForOrigin", {"origin": server.address.rstrip("/"), "quotaSize": 1}
    )
    page.goto(server.address + PLACE)
    unfold(page)
    page.locator("[data-new='base']").first.click()
    fill(page, name="Typed")
    page.locator("[data-record='save']").first.click()
    expect(page.locator("[data-part='record'] > .said")).to_have_text(
        "Not saved: the storage of this browser is full. What was saved before is still there."
    )
    expect(page.locator("[data-part='record'] [name='name']")).to_have_value("Typed")
    page.get_by_role("button", name="Back to the list").click()
    (
        expect(page.locator("[data-part='record'] > .said")).to_contain_text("not saved"),
        "and it is not left by one press",
    )


OLD_STORE = """(hold) => new Promise((ready, fail) => {
  const opened = indexedDB.open("bench-book", 1);
  opened.onupgradeneeded = () => { opened.result.createObjectStore("bench"); opened.result.createObjectStore("last"); };
  opened.onerror = () => fail(opened.error);
  opened.onsuccess = () => {
    const change = opened.result.transaction("bench", "readwrite");
    change.objectStore("bench").put({ format: "bench-book-bench", schema: 2, values: { "reels.1.name": "Oak reel", "reels.1.circumference": "59in" }, rows: { reels: 1 } }, "mine");
    change.oncomplete = () => { if (hold) window.held = opened.result; else opened.result.close(); ready(true); };
  };
})"""


def test_a_store_of_the_first_version_is_taken_over_with_my_bench_in_it(page, server):
    page.goto(server.address + BLANK)
    page.evaluate(OLD_STORE, False)
    open_workbook(page, server)
    add_base(page, "New")
    assert names(stored(page)) == ["New"]
    page.goto(f"{server.address}bench/")
    expect(page.locator("bench-mine [name='reels.1.name']")).to_have_value(
        "Oak reel", timeout=40_000
    )


SECOND_STORE = """(version) => new Promise((ready, fail) => {
  const opened = indexedDB.open("bench-book", version);
  opened.onupgradeneeded = () => { for (const name of ["bench", "last", "records", "about"]) opened.result.createObjectStore(name); };
  opened.onerror = () => fail(opened.error);
  opened.onsuccess = () => {
    const record = { id: "base-old", kind: "base", schema: 1, rev: "1-aaaa", past: [], changed: "2027-01-13T18:00:00Z", values: { name: "Old" }, rows: {} };
    const change = opened.result.transaction("records", "readwrite");
    change.objectStore("records").put(record, record.id);
    change.oncomplete = () => { opened.result.close(); ready(true); };
  };
})"""


def test_a_store_of_the_second_version_is_taken_over_with_its_records(page, server):
    page.goto(server.address + BLANK)
    page.evaluate(SECOND_STORE, 2)
    open_workbook(page, server)
    add_base(page, "New")
    assert names(stored(page)) == ["New", "Old"]
    open_record(page, "base-old")
    page.locator("[data-record='remove']").click()
    expect(page.locator(SAID)).to_contain_text("Removed.")
    assert names(stored(page)) == ["New"]


def test_a_store_of_a_newer_version_is_named_and_never_called_empty(page, server):
    page.goto(server.address + BLANK)
    page.evaluate(SECOND_STORE, 99)
    page.goto(server.address + PLACE)
    expect(page.locator("bench-workbook > .state")).to_contain_text(
        "a newer version of the book was open here; reload this page"
    )
    expect(page.locator("bench-workbook .empty")).to_be_hidden()
    page.get_by_role("button", name="Save a copy as a file").click()
    expect(page.locator(SAID)).to_contain_text(
        "No file was made: a newer version of the book was open here"
    )


@pytest.mark.sweep
def test_an_old_tab_that_holds_the_store_is_named(page, server):
    page.goto(server.address + BLANK)
    page.evaluate(OLD_STORE, True)
    other = open_workbook(page.context.new_page(), server)
    expect(other.locator("bench-workbook > .state")).to_contain_text(
        "another tab with the bench book holds it; close the other tabs"
    )
    page.close()
    other.reload()
    unfold(other)
    add_base(other, "Now it can")


def test_it_works_with_no_signal_and_outlives_an_update_of_the_book(
    browser, serve, site, tmp_path, watch
):
    watch.allow(FAILED_FETCH)
    server = serve()
    context, page = keep(browser, server, watch)
    try:
        open_workbook(page, server)
        load_demo(page)
        count = len(stored(page))
        server.folder = build_second(site, tmp_path / "second")
        page.reload()
        bar = page.locator(".update-bar")
        expect(bar).to_contain_text("A new version is ready.", timeout=60_000)
        unfold(page)
        open_record(page, "base-demo-cobb")
        fill(page, note="half typed")
        bar.get_by_role("button", name="Update now").click()
        expect(bar).to_contain_text("not saved yet")
        save(page)
        expect(bar).to_be_visible(timeout=20_000)
        bar.get_by_role("button", name="Update now").click()
        expect(page.locator("[data-offline-state]")).to_contain_text("9.9.9", timeout=90_000)
        server.stop()
        offline = open_workbook(context.new_page(), server)
        found = {each["id"]: each for each in stored(offline)}
        assert len(found) == count and found["base-demo-cobb"]["values"]["note"] == "half typed"
        add_base(offline, "Written with no signal")
        offline.reload()
        unfold(offline)
        assert len(stored(offline)) == count + 1
    finally:
        context.close()


def test_the_tour_goes_from_plan_to_label_with_no_signal_and_nothing_typed(browser, serve, watch):
    watch.allow(FAILED_FETCH)
    server = serve()
    context, page = keep(browser, server, watch)
    try:
        server.stop()
        page.goto(f"{server.address}tour/")
        page.get_by_role("button", name="Load the demo workbook").click()
        expect(page.locator("[data-demo-result]")).to_contain_text(
            "records are in your workbook", timeout=40_000
        )
        page.get_by_role("link", name="the release plan").click()
        until_live(page)
        example = page.locator("bench-card output.answer").text_content()
        page.locator("bench-card [name='products.1.wanted']").fill("3")
        expect(page.locator("bench-card output.answer")).not_to_have_text(example)
        page.get_by_role("button", name="Use Winter release").click()
        expect(page.locator("bench-card output.answer")).to_have_text(
            f"{example}Still the example’s: acid and energy for a skein; your hour."
        )
        page.goto(f"{server.address}sell/label/")
        until_live(page)
        page.locator("bench-card [name='lot']").fill("none")
        page.locator(".offers .chooser select").select_option(label="14")
        page.get_by_role("button", name="Use it").click()
        for name, text in (
            ("lot", "14"),
            ("color", "Wet Slate"),
            ("name", "Tarrow Sock"),
            ("fiber", "75 % superwash wool, 25 % nylon"),
            ("length", "420"),
        ):
            expect(page.locator(f"bench-card [name='{name}']")).to_have_value(text)
    finally:
        context.close()


SAVING = """(round) => { void (async () => {
  const wait = (ready) => new Promise((done) => { const look = () => (ready() ? done() : setTimeout(look, 2)); look(); });
  const find = (what) => document.querySelector(`bench-workbook ${what}`);
  for (let number = 1; ; number += 1) {
    const name = `round ${round} save ${number}`;
    find("[data-new='base']").click();
    await wait(() => find("[data-part='record'] [name='name']") && !find("[data-part='record']").hidden);
    find("[data-part='record'] [name='name']").value = name;
    find("[data-record='save']").click();
    await wait(() => document.querySelector("bench-workbook > .said").textContent === "Saved.");
    console.log(`confirmed: ${name}`);
  }
})(); }"""


class OwnBrowser:
    """A browser process of the test's own, with a profile on the disk, that can be killed like a pulled plug."""

    def __init__(self, browser, profile):
        self.profile = profile
        port = profile / "DevToolsActivePort"
        port.unlink(missing_ok=True)
        self.process = subprocess.Popen(
            [
                shutil.which("chromium"),
                "--headless=new",
                "--remote-debugging-port=0",
                f"--user-data-dir={profile}",
                *ARGUMENTS,
                "about:blank",
            ],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            start_new_session=True,
        )
        end = time.monotonic() + 60
        while not (port.is_file() and port.read_text().count("\n") >= 1):
            assert time.monotonic() < end, "the browser did not start"
            time.sleep(0.05)
        self.connection = browser.browser_type.connect_over_cdp(
            f"http://127.0.0.1:{port.read_text().splitlines()[0]}"
        )

    def page(self):
        return self.connection.contexts[0].new_page()

    def kill(self) -> None:
        """Every process of it at once, without a word before."""
        os.killpg(self.process.pid, signal.SIGKILL)
        self.process.wait(30)
        with suppress(Error):  # it is gone already
            self.connection.close()


def killed_while_saving(browser, server, profile, rounds: int) -> None:
    rng = random.Random(rounds)
    confirmed: list[str] = []
    for number in range(rounds):
        own = OwnBrowser(browser, profile)
        try:
            page = own.page()
            page.on(
                "console",
                lambda line: (
                    confirmed.append(line.text.removeprefix("confirmed: "))
                    if line.text.startswith("confirmed: ")
                    else None
                ),
            )
            page.goto(server.address + BLANK)
            found = stored(page) if number else []
            assert all(checked(each) for each in found), "whole records only"
            assert set(confirmed) <= set(names(found)), "a save that was confirmed is lost"
            before = len(confirmed)
            page.goto(server.address + PLACE)
            until(
                page,
                "() => document.querySelector(\"bench-workbook [data-new='base']\") !== null",
                seconds=60,
            )
            page.evaluate(SAVING, number)
            end = time.monotonic() + 60
            while len(confirmed) == before:
                assert time.monotonic() < end, "nothing was saved in this round"
                page.wait_for_timeout(20)
            page.wait_for_timeout(1000 * rng.uniform(0, 1.5))
        finally:
            own.kill()
    own = OwnBrowser(browser, profile)
    try:
        page = own.page()
        page.goto(server.address + BLANK)
        assert set(confirmed) <= set(names(stored(page)))
    finally:
        own.kill()


@pytest.mark.timeout(600)
def test_the_browser_killed_while_saving_loses_nothing_confirmed(browser, server, tmp_path):
    killed_while_saving(browser, server, tmp_path / "profile", rounds=2)


@pytest.mark.sweep
@pytest.mark.timeout(1800)
def test_the_browser_killed_at_twenty_moments_while_saving_loses_nothing_confirmed(
    browser, server, tmp_path
):
    """A power cut is not tried: the machine's own disk is never in doubt here."""
    killed_while_saving(browser, server, tmp_path / "profile", rounds=20)
