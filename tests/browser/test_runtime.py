"""Python in the browser, from the built site: it starts, answers, stays through instant navigation, and says why when it cannot."""

import json
import platform

import pytest

import fibercalc

from .waiting import until, until_live

CARD = "yarn/skein-length/"

# A worker of the test's own, made just as the site's page makes it.
START = """() => new Promise((ready) => {
  const content = (name) => document.querySelector(`meta[name=${name}]`).content;
  const root = new URL(`${content("bench-base")}/`, location.href);
  const main = document.querySelector("script[type=module][src]").src;
  const worker = new Worker(new URL("worker.js", main), { type: "module" });
  const heard = (window.heard = []);
  window.worker = worker;
  worker.onmessage = ({ data }) => { heard.push(data); if (data.stage === "ready" || data.stage === "failed") ready(data); };
  worker.postMessage({ boot: { runtime: new URL(content("bench-runtime"), root).href } });
  worker.postMessage({ call: 1, text: JSON.stringify({ id: 1, do: "hello" }) });
})"""


def reply(page, call: int) -> dict:
    text = until(page, "(call) => window.heard.find((each) => each.reply === call)?.text", call)
    return json.loads(text)


def say(page, call: int, request: dict) -> dict:
    page.evaluate("([call, text]) => window.worker.postMessage({ call, text })", [call, json.dumps(request)])
    return reply(page, call)


def test_a_call_made_before_the_start_is_answered_after_it(page, server):
    page.goto(server.address)
    assert page.evaluate(START)["stage"] == "ready"
    hello = reply(page, 1)
    assert hello["id"] == 1
    assert hello["ok"]["version"] == fibercalc.__version__
    assert hello["ok"]["python"].startswith("3.14.")


def test_the_browser_answers_as_the_native_package_does(page, server):
    from fibercalc.site.boundary import handle

    page.goto(server.address)
    page.evaluate(START)
    request = {"id": 2, "do": "work", "card": "skein-length", "values": {}, "settings": {}}
    assert say(page, 2, request) == json.loads(handle(json.dumps(request)))


def test_progress_counts_up_to_the_total(page, server):
    page.goto(server.address)
    page.evaluate(START)
    steps = page.evaluate("() => window.heard.filter((each) => each.stage === 'loading' && each.total)")
    assert steps, "no progress was told"
    assert all(earlier["loaded"] <= later["loaded"] for earlier, later in zip(steps, steps[1:]))
    assert 5_000_000 < steps[-1]["total"] < 10_000_000
    assert steps[-1]["loaded"] <= steps[-1]["total"] * 1.02


@pytest.mark.parametrize("name", ["pyodide.asm.wasm", "python_stdlib.zip", "fibercalc.zip", "pyodide.mjs"])
def test_a_file_that_does_not_come_is_said(page, server, watch, name):
    """Pyodide itself would wait for ever."""
    watch.allow(r"404|Failed to (load|fetch)|wasm")
    page.context.route(f"**/{name}", lambda route: route.fulfill(status=404, body="gone"))
    page.goto(server.address)
    ended = page.evaluate(START)
    assert ended["stage"] == "failed"
    assert name in ended["text"]


def test_a_lazy_package_is_fetched_only_when_asked_for(page, server):
    page.goto(server.address)
    page.evaluate(START)
    asked = [address.rsplit("/", 1)[-1] for address in server.asked]
    assert "segno.zip" not in asked


def test_one_python_lives_on_from_page_to_page(page, server):
    starts = []
    page.on("worker", lambda worker: starts.append(worker.url) if worker.url.endswith("/worker.js") else None)
    page.goto(server.address + CARD)
    until_live(page)
    page.evaluate("() => { window.stillHere = true; }")
    page.locator("a[href$='yarn/'], a[href='../']").first.click()
    page.wait_for_url("**/yarn/")
    page.locator("a[href*='skein-length']").first.click()
    page.wait_for_url("**/skein-length/")
    until_live(page, seconds=10)
    assert page.evaluate("() => window.stillHere"), "the page was loaded anew"
    assert len(starts) == 1


@pytest.mark.parametrize("sub_path", ["/book/", "/a/deep er/place/"])
def test_the_site_stands_below_any_path_on_any_port(page, serve, sub_path):
    below = serve(sub_path=sub_path.replace(" ", "%20"))
    page.goto(below.address + CARD)
    until_live(page)
    page.evaluate("() => { window.stillHere = true; }")
    page.locator("a[href$='yarn/'], a[href='../']").first.click()
    page.wait_for_url("**/yarn/")
    assert page.evaluate("() => window.stillHere"), "the page was loaded anew"
    assert page.url == below.address + "yarn/"


def test_python_runs_under_the_policy_as_a_header(page, serve, site):
    """The sample for hosts: there the worker obeys it too."""
    first = (site / "_headers").read_text("utf-8").splitlines()[1]
    strict = serve(policy=first.split(":", 1)[1].strip())
    page.goto(strict.address + CARD)
    until_live(page)


def test_native_and_browser_run_different_pythons(page, server):
    """So that the comparison above compares two."""
    page.goto(server.address)
    page.evaluate(START)
    assert reply(page, 1)["ok"]["python"] != platform.python_version()
