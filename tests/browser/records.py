"""The workbook's page as a person uses it, and the store behind it as it is."""

import json
from pathlib import Path

from playwright.sync_api import Page, TimeoutError, expect

from .waiting import until

PLACE = "workbook/"
SAID = "bench-workbook > .said"
REEL = ("reels", {"name": "My reel", "circumference": "1.5"})
TARROW = ("bases", {"name": "Tarrow Sock", "mass": "100", "length": "420"})
DUNMEL = ("bases", {"name": "Dunmel DK", "mass": "100", "length": "230"})

STORED = """async (store) => {
  if (!(await indexedDB.databases()).some(({ name }) => name === "bench-book")) return [];  // opening it would make it
  const opened = indexedDB.open("bench-book");
  const database = await new Promise((ready, fail) => { opened.onsuccess = () => ready(opened.result); opened.onerror = () => fail(opened.error); });
  if (![...database.objectStoreNames].includes(store)) { database.close(); return []; }
  const asked = database.transaction(store).objectStore(store).getAll();
  const found = await new Promise((ready, fail) => { asked.onsuccess = () => ready(asked.result); asked.onerror = () => fail(asked.error); });
  database.close();
  return found;
}"""


def stored(page: Page) -> list[dict]:
    """Every record in the store, read past our own script."""
    return page.evaluate(STORED, "records")


WIPE = """async () => {
  const opened = indexedDB.open("bench-book");
  const database = await new Promise((ready, fail) => { opened.onsuccess = () => ready(opened.result); opened.onerror = () => fail(opened.error); });
  const change = database.transaction([...database.objectStoreNames], "readwrite");
  for (const name of change.objectStoreNames) change.objectStore(name).clear();
  await new Promise((ready) => { change.oncomplete = ready; });
  database.close();
  for (const name of ["bench-book records", "bench-book"]) { const tabs = new BroadcastChannel(name); tabs.postMessage("wiped"); tabs.close(); }
}"""


def wiped(page: Page) -> Page:
    """The same page with nothing kept, told as another tab would tell it: Python need not start anew."""
    page.evaluate(WIPE)
    if page.locator("[data-part='record']").is_visible():
        page.locator("[data-record='back']").click()
        if page.locator("[data-record='back']").is_visible():
            page.locator("[data-record='back']").click()
    until(page, "() => document.querySelector('bench-workbook [data-open]') === null && document.querySelector('bench-workbook [data-new]') !== null")
    return page


def open_workbook(page: Page, server) -> Page:
    """The page with its list, all of it open."""
    page.goto(server.address + PLACE)
    unfold(page)
    return page


def unfold(page: Page) -> None:
    until(page, "() => document.querySelector('bench-workbook [data-new]') !== null", seconds=40)
    page.evaluate("() => document.querySelectorAll('bench-workbook details').forEach((each) => { each.open = true; })")


def load_demo(page: Page) -> None:
    page.get_by_role("button", name="Load the demo workbook").click()
    expect(page.locator(SAID)).to_contain_text("brought in from the demo workbook")
    unfold(page)


def begin(page: Page, kind: str) -> None:
    """A new record's form."""
    _press(page, f"[data-new='{kind}']")


def open_record(page: Page, record_id: str) -> None:
    _press(page, f"[data-open='{record_id}']")


def _press(page: Page, line: str) -> None:
    """A line of the list, whose group may be closed, or be made anew this very moment."""
    form = page.locator("[data-part='record'] form.given")
    for _ in range(20):
        pressed = page.locator(f"bench-workbook {line}").first
        pressed.wait_for(state="attached")
        try:
            pressed.evaluate("(each) => { each.closest('details').open = true; }")
            pressed.click(timeout=1_000)
            break
        except TimeoutError:
            continue
    expect(form).to_be_visible()


def fill(page: Page, **values) -> None:
    for name, text in values.items():
        page.locator(f"[data-part='record'] [name='{name}']").fill(text)


def save(page: Page) -> None:
    """Saved and told so; the list stands again."""
    page.locator("[data-record='save']").first.click()
    expect(page.locator(SAID)).to_have_text("Saved.")
    expect(page.locator("[data-part='record']")).to_be_hidden()
    unfold(page)


def add_base(page: Page, name: str) -> None:
    begin(page, "base")
    fill(page, name=name)
    save(page)


def exported(page: Page) -> str:
    """The text of the file that the page saves."""
    with page.expect_download() as waiting:
        page.get_by_role("button", name="Save a copy as a file").click()
    return Path(waiting.value.path()).read_text("utf-8")


def give_file(page: Page, text: str, name: str = "workbook.json") -> None:
    """As if she had chosen this file."""
    with page.expect_file_chooser() as waiting:
        page.get_by_role("button", name="Read a file").click()
    waiting.value.set_files({"name": name, "mimeType": "application/json", "buffer": text.encode()})


def many(count: int, note: str = "") -> str:
    """A file with so many bases."""
    from fibercalc.workbook.exchange import file_text
    from tests.workbook.making import record

    return file_text([record(slug=f"many-{number}", name=f"Base {number}", **({"note": note} if note else {})) for number in range(count)], [], None, "2027-01-13")


def names(records: list[dict]) -> list[str]:
    return sorted(each["values"].get("name", "") for each in records)


def as_records(text: str) -> list[dict]:
    return json.loads(text)["records"]


def write_bench(page, server_address: str, *rows: tuple[str, dict[str, str]]) -> None:
    """Rows written by hand into My bench, which starts empty: each by its list and its fields."""
    page.goto(f"{server_address}bench/")
    until(page, "() => customElements.get('bench-mine') !== undefined")
    counts: dict[str, int] = {}
    for name, fields in rows:
        counts[name] = counts.get(name, 0) + 1
        page.locator(f"bench-mine [data-add='{name}']").click()
        for field, text in fields.items():
            page.locator(f"bench-mine [name='{name}.{counts[name]}.{field}']").fill(text)
