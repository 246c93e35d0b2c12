"""Every worked example, run by the browser's own copy of the program through the built site; and each of them can fail there."""

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


@pytest.mark.parametrize("chapter", NATIVE)
def test_each_shifted_expectation_fails_in_the_browser(worker, server, chapter):
    """Ten tolerances off, every row of the file."""
    rows = tomllib.loads(served(worker, server, chapter))["check"]
    for row in rows:
        off = 10 * row["tolerance"]
        row["expect"] = (
            {name: value + off for name, value in row["expect"].items()}
            if isinstance(row["expect"], dict)
            else row["expect"] + off
        )
    ran = run(
        worker,
        {
            chapter: "\n".join(
                "[[check]]\n" + "\n".join(f"{key} = {as_toml(value)}" for key, value in row.items())
                for row in rows
            )
        },
        200 + list(NATIVE).index(chapter),
    )
    assert ran["passed"] == 0
    assert len(ran["failed"]) == len(NATIVE[chapter])


def as_toml(value) -> str:
    """A value as it stands in a check file."""
    if isinstance(value, dict):
        return (
            "{"
            + ", ".join(f"{json.dumps(key)} = {as_toml(inner)}" for key, inner in value.items())
            + "}"
        )
    if isinstance(value, list):
        return "[" + ", ".join(as_toml(each) for each in value) + "]"
    if isinstance(value, bool):
        return "true" if value else "false"
    return (
        json.dumps(value, ensure_ascii=False)
        if isinstance(value, (str, int, float))
        else str(value)
    )
