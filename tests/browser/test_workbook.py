"""The workbook in the browser: written, changed, taken back, carried as a file; nothing of it is lost, and nothing in it runs."""

import json
from pathlib import Path

import pytest
from playwright.sync_api import expect

from fibercalc.workbook.demo import demo_text
from fibercalc.workbook.exchange import LARGEST, file_text
from fibercalc.workbook.records import LONGEST_TEXT
from tests.workbook.making import record

from .addresses import some_each_day
from .conftest import Watch
from .looking import barriers, looked_at
from .records import (
    DUNMEL,
    PLACE,
    SAID,
    TARROW,
    add_base,
    as_records,
    begin,
    exported,
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
    wiped,
    write_bench,
)
from .test_card_live import field
from .test_pages import DESK, PHONE, SMALLER, TARGETS
from .waiting import until, until_live


@pytest.fixture(scope="module")
def one_page(browser, server):
    """One page of the workbook for the tests that stay on it."""
    watching = Watch()
    context = browser.new_context(service_workers="block")
    watching.context(context)
    yield open_workbook(context.new_page(), server)
    context.close()
    assert not watching.unexpected, "\n".join(watching.unexpected)


@pytest.fixture
def workbook(one_page, server):
    if not one_page.url.endswith(PLACE):
        open_workbook(one_page, server)
    return wiped(one_page)


def test_a_record_is_written_changed_and_taken_back(workbook):
    begin(workbook, "base")
    fill(workbook, name="Tarrow Sock", mass="3,5", length="420 m ± 8")
    workbook.locator("[name='mass.unit']").select_option("oz")
    workbook.locator("[name='length_known']").select_option("measured")
    save(workbook)
    (first,) = stored(workbook)
    assert first["kind"] == "base" and first["rev"].startswith("1-") and first["past"] == []
    assert (
        first["values"]["length"] == "420~8m"
        and first["values"]["length_known"] == "measured"
        and first["values"]["mass_known"] == "label"
    )
    expect(workbook.locator("[data-open]")).to_have_text(["Tarrow Sock"])
    expect(workbook.locator(f"[data-open='{first['id']}']")).to_be_focused()
    open_record(workbook, first["id"])
    fill(workbook, name="Tarrow")
    save(workbook)
    (second,) = stored(workbook)
    assert (
        second["values"]["name"] == "Tarrow"
        and second["rev"].startswith("2-")
        and second["past"] == [first["rev"]]
    )
    workbook.locator("[data-do='undo']").click()
    expect(workbook.locator(SAID)).to_have_text("As it was before.")
    (third,) = stored(workbook)
    assert third["values"] == first["values"] and third["past"] == [second["rev"], first["rev"]]
    open_record(workbook, first["id"])
    workbook.locator("[data-record='remove']").click()
    expect(workbook.locator(SAID)).to_contain_text("Removed.")
    assert stored(workbook) == []
    workbook.locator("[data-do='undo']").click()
    expect(workbook.locator("[data-open]")).to_have_text(["Tarrow Sock"])
    workbook.reload()
    unfold(workbook)
    expect(workbook.locator("[data-open]")).to_have_text(["Tarrow Sock"])


def test_a_mistake_is_not_saved_and_says_where(workbook):
    begin(workbook, "dye-lot")
    fill(workbook, lot="15", mass="9 t", note="for rose@example.org")
    workbook.locator("[data-record='save']").first.click()
    expect(workbook.locator("[data-part='record'] > .said")).to_have_text(
        "Not saved: 2 fields need other values."
    )
    expect(workbook.locator(".field[data-name='note'] .why")).to_contain_text("no customer details")
    expect(workbook.locator("[data-part='record'] [name='mass']")).to_be_focused()
    assert stored(workbook) == []


def test_what_is_typed_is_not_left_by_one_press(workbook):
    begin(workbook, "base")
    fill(workbook, name="Half")
    workbook.get_by_role("button", name="Back to the list").click()
    expect(workbook.locator("[data-part='record'] > .said")).to_contain_text("not saved")
    workbook.get_by_role("button", name="Back to the list").click()
    expect(workbook.locator("[data-part='record']")).to_be_hidden()
    assert stored(workbook) == []


def test_by_keyboard_alone(workbook):
    workbook.locator("[data-new='base']").focus()
    workbook.keyboard.press("Enter")
    expect(workbook.locator("[data-part='record'] [name='name']")).to_be_focused()
    workbook.keyboard.type("Cobb")
    for _ in range(80):
        workbook.keyboard.press("Tab")
        if workbook.evaluate("() => document.activeElement.dataset.record") == "save":
            break
    workbook.keyboard.press("Enter")
    expect(workbook.locator(SAID)).to_have_text("Saved.")
    assert names(stored(workbook)) == ["Cobb"]


def test_the_demo_comes_with_one_press_and_goes_with_one(workbook):
    load_demo(workbook)
    assert len(stored(workbook)) == len(as_records(demo_text()))
    expect(workbook.locator("[data-do='demo']")).to_be_hidden()
    open_record(workbook, "dye-lot-demo-14")
    chosen = workbook.locator("[data-part='record'] [name='mill_lot'] option:checked")
    expect(chosen).to_have_text("TS 2611")
    workbook.get_by_role("button", name="Back to the list").click()
    workbook.locator("[data-do='drop-demo']").click()
    expect(workbook.locator(SAID)).to_have_text("The demo is removed.")
    assert stored(workbook) == []
    workbook.locator("[data-do='undo']").click()
    expect(workbook.locator("[data-open='base-demo-tarrow']")).to_be_attached()


def test_exported_wiped_and_imported_it_exports_the_same_bytes(workbook, new_page, server):
    load_demo(workbook)
    add_base(workbook, "My own <base> & “more”")
    first = exported(workbook)
    other = open_workbook(new_page(), server)
    give_file(other, first)
    expect(other.locator("[data-part='import']")).to_contain_text(
        f"{len(as_records(first))} new, 0 newer, 0 clash. Nothing is written yet."
    )
    assert stored(other) == []
    other.get_by_role("button", name="Bring it in").click()
    expect(other.locator(SAID)).to_contain_text("brought in")
    assert exported(other) == first


def test_a_file_says_what_is_new_newer_and_changed_on_both_sides_before_anything_is_written(
    workbook,
):
    ours = [
        record(slug="a", name="Ours A"),
        record(slug="b", name="Ours B", rev="2-bbbb", past=["1-aaaa"]),
    ]
    give_file(workbook, file_text(ours, [], None, "2027-01-13"))
    workbook.get_by_role("button", name="Bring it in").click()
    expect(workbook.locator(SAID)).to_contain_text("2 records brought in")
    theirs = [
        record(slug="a", name="Theirs A", rev="2-cccc", past=["1-aaaa"]),
        record(slug="b", name="Theirs B", rev="2-dddd", past=["1-aaaa"]),
        record(slug="c", name="Theirs C"),
    ]
    for choice, expected in (
        ("Leave everything as it is", ["Ours A", "Ours B"]),
        ("Bring it in, keep mine where they clash", ["Ours B", "Theirs A", "Theirs C"]),
    ):
        before = stored(workbook)
        give_file(workbook, file_text(theirs, [], None, "2027-01-14"))
        preview = workbook.locator("[data-part='import']")
        expect(preview).to_contain_text(" clash. Nothing is written yet.")
        expect(preview).to_contain_text(
            "Base “Ours B” (called “Theirs B” in the file): changed here 2027-01-13, in the file"
            " 2027-01-13."
        )
        assert stored(workbook) == before
        workbook.get_by_role("button", name=choice).click()
        expect(preview).to_be_hidden()
        assert names(stored(workbook)) == expected
    give_file(workbook, file_text(theirs, [], None, "2027-01-14"))
    expect(workbook.locator("[data-part='import']")).to_contain_text(
        "0 new, 0 newer, 1 clash; 2 are here already"
    )
    workbook.get_by_role("button", name="take the file’s where they clash").click()
    expect(workbook.locator(SAID)).to_contain_text("1 record brought in")
    assert names(stored(workbook)) == ["Theirs A", "Theirs B", "Theirs C"]


REFUSED = {
    "damaged": (demo_text()[:-200], "damaged"),
    "no workbook": ('{"format": "other"}', "no workbook of the bench book"),
    "newer": (
        json.dumps(json.loads(demo_text()) | {"schema": 99}),
        "made by a newer version of the book",
    ),
    "too large": (" " * (LARGEST + 1), f"larger than {LARGEST // 1_000_000} MB"),
    "names of every object": (
        demo_text().replace('"format"', '"__proto__": {}, "format"'),
        "a name that no record has",
    ),
    "far too deep": ("[" * 200_000 + "]" * 200_000, "nested more than 8 deep"),
    "too deep": (
        demo_text().replace('"made"', '"unread": [[[[[[[[[]]]]]]]]], "made"'),
        "nested more than 8 deep",
    ),
    "a text too long": (
        demo_text().replace("Loom cotton.", "x" * (LONGEST_TEXT + 1)),
        f"more than {LONGEST_TEXT} characters",
    ),
}


def test_a_file_that_cannot_be_taken_is_refused_with_one_line_and_nothing_changes(workbook):
    add_base(workbook, "Mine")
    before = stored(workbook)
    for name, (text, why) in REFUSED.items():
        give_file(workbook, text, f"{name}.json")
        expect(workbook.locator(SAID)).to_contain_text(why)
        expect(workbook.locator(SAID)).to_contain_text("Nothing was changed.")
        assert (
            stored(workbook) == before and workbook.locator("[data-part='import']").is_hidden()
        ), name
    older = (
        '{"format": "bench-book-bench", "schema": 1, "values": {"bases.1.name": "Old",'
        ' "bases.1.fiber": "wool", "bases.1.mass": "100g", "bases.1.length": "200m"}, "rows":'
        ' {"bases": 1}}'
    )
    give_file(workbook, older)
    workbook.get_by_role("button", name="Bring it in").click()
    expect(workbook.locator(SAID)).to_contain_text("1 record brought in")
    assert names(stored(workbook)) == ["Mine", "Old"]


HOSTILE = "<img src=x onerror=alert(1)><script>alert(1)</script>"


def test_hostile_text_stays_text_in_list_form_choice_and_card(workbook, server):
    dialogs = []
    workbook.on("dialog", lambda dialog: (dialogs.append(dialog.message), dialog.dismiss()))
    count = workbook.evaluate("() => document.querySelectorAll('img, script, iframe').length")
    give_file(
        workbook,
        file_text(
            [
                record(
                    slug="x",
                    name=HOSTILE,
                    note=HOSTILE,
                    mass="100g",
                    length="200m",
                    supplier="javascript:alert(1)",
                ),
                record(
                    "kept",
                    slug="y",
                    name=HOSTILE,
                    card="skein-length",
                    query=f"v=1&b={HOSTILE}",
                    answer=HOSTILE,
                ),
            ],
            [],
            None,
            "2027-01-13",
        ),
    )
    workbook.get_by_role("button", name="Bring it in").click()
    expect(workbook.locator("[data-open='base-x']")).to_have_text(HOSTILE)
    begin(workbook, "mill-lot")
    expect(workbook.locator("[data-part='record'] [name='base'] option").nth(1)).to_have_text(
        HOSTILE
    )
    workbook.get_by_role("button", name="Back to the list").click()
    open_record(workbook, "base-x")
    expect(workbook.locator("[data-part='record'] [name='note']")).to_have_value(HOSTILE)
    assert (
        workbook.evaluate("() => document.querySelectorAll('img, script, iframe').length") == count
    )
    assert not workbook.evaluate(
        "() => [...document.querySelectorAll('*')].flatMap((each) =>"
        " [...each.attributes]).filter(({ name }) => name.startsWith('on')).length"
    )
    workbook.goto(f"{server.address}knit/yarn-instead/")
    until_live(workbook)
    workbook.locator(".offers button").first.click()
    expect(field(workbook, "mine_length")).to_have_value("200")
    assert not dialogs


def test_a_card_is_filled_from_a_record_and_keeps_its_values_as_one(workbook, server):
    load_demo(workbook)
    workbook.goto(f"{server.address}dye/dye-recipe/")
    until_live(workbook)
    field(workbook, "dyes.1.depth").fill("3")
    chooser = workbook.locator(".offers .chooser")
    expect(chooser).to_be_visible()
    expect(field(workbook, "dyes.1.depth")).to_have_value("3"), "nothing is filled in by itself"
    chooser.locator("select").select_option(
        label=next(
            text.strip()
            for text in chooser.locator("option").all_text_contents()
            if text.startswith("Wet Slate")
        )
    )
    chooser.get_by_role("button", name="Use it").click()
    expect(field(workbook, "dyes.1.depth")).to_have_value("0.62")
    field(workbook, "dyes.1.depth").fill("0.7")
    workbook.get_by_role("button", name="Save to the workbook").click()
    workbook.locator("form.keep input").fill("Wetter Slate")
    workbook.locator("form.keep button[type=submit]").click()
    expect(workbook.locator("bench-card .said")).to_contain_text("Saved to the workbook.")
    kept = next(each for each in stored(workbook) if each["values"].get("name") == "Wetter Slate")
    assert (
        kept["kind"] == "colorway"
        and kept["values"]["dyes.1.depth"] == "0.7%"
        and kept["rows"] == {"dyes": 3}
    )
    workbook.get_by_role("link", name="See it in the workbook").click()
    expect(workbook.locator("[data-part='record'] [name='name']")).to_have_value(
        "Wetter Slate", timeout=20_000
    )


def test_any_answer_is_kept_and_opened_again(page, server):
    page.goto(f"{server.address}yarn/skein-length/")
    until_live(page)
    field(page, "turns").fill("285")
    until(page, "() => location.search !== ''")
    page.get_by_role("button", name="Save to the workbook").click()
    page.locator("form.keep select").select_option("kept")
    page.locator("form.keep button[type=submit]").click()
    expect(page.locator("form.keep .why")).to_have_text("Give it a name first.")
    page.locator("form.keep input").fill("The odd skein")
    page.locator("form.keep button[type=submit]").click()
    expect(page.locator("bench-card .said")).to_contain_text("Saved to the workbook.")
    open_workbook(page, server)
    page.get_by_role("link", name="Open the card with these values").click()
    until_live(page)
    expect(field(page, "turns")).to_have_value("285")


def test_a_table_for_a_spreadsheet_holds_no_formula(workbook):
    add_base(workbook, "=1+1")
    with workbook.expect_download() as waiting:
        workbook.get_by_role("button", name="Bases as a table (CSV)").click()
    lines = Path(waiting.value.path()).read_bytes().decode("utf-8").split("\r\n")
    assert (
        lines[0].startswith("id,changed,Name")
        and "'=1+1" in lines[1]
        and waiting.value.suggested_filename.endswith(".csv")
    )


def test_a_lot_is_traced_and_printed(workbook):
    load_demo(workbook)
    workbook.locator("#workbook-asked").fill("14")
    workbook.keyboard.press("Enter")
    expect(workbook.locator(".traced")).to_contain_text("TS 2611")
    expect(workbook.locator(".traced")).to_contain_text("Order 1042")
    workbook.evaluate(
        "() => { window.print = () => { window.printed ="
        " document.querySelector('.sheet-alone').textContent; }; }"
    )
    workbook.locator("[data-do='print-trace']").click()
    assert "N-207" in until(workbook, "() => window.printed")


def test_an_old_export_is_reminded_of(workbook):
    for number in range(10):
        expect(workbook.locator(".reminder")).to_be_hidden()
        add_base(workbook, f"Base {number}")
    expect(workbook.locator(".reminder")).to_contain_text("It was never exported. 10 changes")
    exported(workbook)
    expect(workbook.locator(".reminder")).to_be_hidden()
    expect(workbook.locator("bench-workbook > .state")).to_contain_text("Last copy as a file")


def test_my_benchs_bases_are_brought_in_when_asked(page, server):
    write_bench(page, server.address, TARROW, DUNMEL)
    page.get_by_role("button", name="Save my bench").click()
    expect(page.locator("bench-mine .state")).to_contain_text("Saved.", timeout=40_000)
    open_workbook(page, server)
    assert stored(page) == []
    page.get_by_role("button", name="Bring in the bases of My bench").click()
    expect(page.locator(SAID)).to_contain_text("2 records brought in from My bench")
    assert names(stored(page)) == ["Dunmel DK", "Tarrow Sock"]
    assert set(json.loads(exported(page))["bench"]["rows"]) == {"reels", "pots", "bases"}, (
        "and the file holds My bench too"
    )


def empty(page) -> None:
    unfold(page)


def form_open(page) -> None:
    unfold(page)
    load_demo(page)
    open_record(page, "dye-lot-demo-14")


def mistake(page) -> None:
    form_open(page)
    fill(page, mass="much")
    page.locator("[data-record='save']").first.click()
    expect(page.locator(".field.bad .why").first).to_be_visible()


def previewed(page) -> None:
    unfold(page)
    give_file(page, many(3))
    expect(page.locator("[data-part='import']")).to_be_visible()


def whole_list(page) -> None:
    unfold(page)
    load_demo(page)
    page.locator("#workbook-asked").fill("14")
    page.locator("#workbook-asked").press("Enter")
    expect(page.locator(".traced")).to_be_visible()


STATES = {each.__name__: each for each in (empty, form_open, mistake, previewed, whole_list)}


VIEWED = [(state, view) for state in STATES for view in ("desk", "phone")]


@pytest.mark.parametrize(
    "state, view", some_each_day(VIEWED, ["-".join(case) for case in VIEWED], of=4)
)
def test_no_barrier_in_any_state(browser, server, state, view):
    with looked_at(
        browser, server, PLACE, sparing=False, **{"desk": DESK, "phone": PHONE}[view]
    ) as looked:
        STATES[state](looked.page)
        assert not barriers(looked.page)
        assert looked.page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")
        assert not looked.page.evaluate(TARGETS, ", ".join(SMALLER))


@pytest.mark.parametrize(
    "view", (pytest.param(DESK, marks=pytest.mark.sweep), PHONE), ids=("desk", "phone")
)
def test_no_barrier_on_a_card_with_records(browser, server, view):
    with looked_at(browser, server, PLACE, sparing=False, **view) as looked:
        unfold(looked.page)
        load_demo(looked.page)
        looked.page.goto(f"{server.address}dye/dye-recipe/")
        until_live(looked.page)
        expect(looked.page.locator(".offers .chooser")).to_be_visible()
        looked.page.get_by_role("button", name="Save to the workbook").click()
        expect(looked.page.locator("form.keep")).to_be_visible()
        assert not barriers(looked.page)
        assert looked.page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")
        assert not looked.page.evaluate(TARGETS, ", ".join(SMALLER))


def test_an_offer_that_cannot_be_used_stays_in_sight_and_says_why(page, server):
    """Few records: a line beneath the buttons. Many: the list names it, and says why when it is chosen."""
    name = "A base with a name of more than forty letters"
    open_workbook(page, server)
    give_file(
        page,
        file_text(
            [record(slug="long", name=name, mass="100g", length="200m")], [], None, "2027-01-13"
        ),
    )
    page.get_by_role("button", name="Bring it in").click()
    expect(page.locator(SAID)).to_contain_text("1 record brought in")
    page.goto(f"{server.address}sell/base-order/")
    until_live(page)
    offers = page.locator("bench-card .offers")
    expect(offers).to_have_text(
        "“all bases” cannot be used here: Bases (base 1, name: 45 letters, 40 fit).", timeout=40_000
    )
    page.goto(f"{server.address}sell/label/")
    until_live(page)
    expect(offers.get_by_role("button")).to_have_text([f"Use {name} (200 m)"], timeout=40_000)
    expect(offers.locator(".why-not")).to_have_text(
        f"“{name}” leaves out: Name (45 letters, 40 fit)."
    )
    open_workbook(page, server)
    give_file(page, many(100))
    page.get_by_role("button", name="Bring it in").click()
    expect(page.locator(SAID)).to_contain_text("100 records brought in")
    page.goto(f"{server.address}sell/release-plan/")
    until_live(page)
    expect(offers).to_have_text(
        "“all bases” cannot be used here: Bases (101 of them, this card takes 1 to 40).",
        timeout=40_000,
    )
    page.goto(f"{server.address}sell/label/")
    until_live(page)
    chooser = page.get_by_label("From the workbook")
    chooser.select_option(label=f"{name} (200 m)")
    expect(offers.locator(".why-not")).to_have_text(
        f"“{name}” leaves out: Name (45 letters, 40 fit)."
    )
