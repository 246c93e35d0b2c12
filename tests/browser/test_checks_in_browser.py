"""Every worked example, run by the browser's own copy of the program through the built site; and one that does not hold fails there."""

import json
import tomllib

import pytest

from fibercalc.core.card import CHAPTERS
from fibercalc.core.checks import read_checks

from .conftest import Watch
from .test_runtime import START, reply

NATIVE = {chapter: read_checks(chapter) for chapter in CHAPTERS if read_checks(chapter)}


@pytest.fixture(scope="module")
def worker(browser, server):
    """One started worker, and the site's own copies of the check files."""
    watching = Watch()
    context = browser.new_context(service_workers="block")
    watching.context(context)
    page = context.new_page()
    page.goto(server.address)
    assert page.evaluate(START)["stage"] == "ready"
    yield page
    context.close()
    assert not watching.unexpected, "\n".join(watching.unexpected)


def run(page, files: dict[str, str], call: int) -> dict:
    text = json.dumps({"id": call, "do": "check", "files": files})
    page.evaluate("([call, text]) => window.worker.postMessage({ call, text })", [call, text])
    answer = reply(page, call)
    assert "ok" in answer, answer
    return answer["ok"]


def served(page, server, chapter: str) -> str:
    return page.evaluate(
        "(address) => fetch(address).then((file) => file.text())",
        f"{server.address}assets/checks/{chapter}.toml",
    )


@pytest.mark.parametrize("chapter", NATIVE)
def test_the_browser_passes_every_worked_example(worker, server, chapter):
    ran = run(worker, {chapter: served(worker, server, chapter)}, 100 + list(NATIVE).index(chapter))
    assert ran["failed"] == []
    assert ran["passed"] == len(NATIVE[chapter]) > 0


def test_a_row_that_does_not_hold_fails_in_the_browser(worker, server):
    """One number put off by ten tolerances: that row is named, the others pass."""
    text = served(worker, server, "yarn")
    row = tomllib.loads(text)["check"][0]
    wrong = text.replace(
        f"expect = {row['expect']}", f"expect = {row['expect'] + 10 * row['tolerance']}", 1
    )
    assert wrong != text
    ran = run(worker, {"yarn": wrong}, 200)
    assert ran["passed"] == len(NATIVE["yarn"]) - 1
    assert len(ran["failed"]) == 1 and row["claim"] in ran["failed"][0]
