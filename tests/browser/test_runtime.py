"""Python in the browser, from the built site: it starts, answers, stays through instant navigation, and says why when it cannot."""

import gzip
import json
import socket
import threading
from urllib.parse import urlsplit

import pytest

import fibercalc
from fibercalc.site.boundary import handle
from fibercalc.site.serve import SiteHandler

from .conftest import Watch
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


@pytest.fixture(scope="module")
def asked_since(server):
    """What the shared server was asked for since this file's tests began: others before them may have asked for anything."""
    begin = len(server.asked)
    return lambda: server.asked[begin:]


@pytest.fixture(scope="module")
def running(browser, server, asked_since):
    """One started worker for the tests that only ask."""
    watching = Watch()
    context = browser.new_context(service_workers="block")
    watching.context(context)
    page = context.new_page()
    page.goto(server.address)
    assert page.evaluate(START)["stage"] == "ready"
    yield page
    context.close()
    assert not watching.unexpected, "\n".join(watching.unexpected)


def reply(page, call: int) -> dict:
    text = until(page, "(call) => window.heard.find((each) => each.reply === call)?.text", call)
    return json.loads(text)


def test_a_call_made_before_the_start_is_answered_after_it(running):
    hello = reply(running, 1)
    assert hello["id"] == 1
    assert hello["ok"]["version"] == fibercalc.__version__
    assert hello["ok"]["python"].startswith("3.14."), "Pyodide's Python, not this machine's"


def test_the_browser_answers_as_the_native_package_does(running):
    text = json.dumps({"id": 2, "do": "work", "card": "skein-length", "values": {}, "settings": {}})
    running.evaluate("(text) => window.worker.postMessage({ call: 2, text })", text)
    assert reply(running, 2) == json.loads(handle(text))


def test_progress_counts_up_to_the_total(running):
    steps = running.evaluate(
        "() => window.heard.filter((each) => each.stage === 'loading' && each.total)"
    )
    assert steps, "no progress was told"
    assert all(step["loaded"] <= step["total"] for step in steps)
    assert 5_000_000 < steps[-1]["total"] < 15_000_000
    assert steps[-1]["loaded"] == steps[-1]["total"]


def test_a_lazy_package_is_fetched_only_when_asked_for(running, asked_since):
    assert any(address.endswith("/python_stdlib.zip") for address in asked_since())
    assert not [address for address in asked_since() if address.endswith("/segno.zip")]


@pytest.mark.parametrize(
    "name", ["pyodide.asm.wasm", "python_stdlib.zip", "fibercalc.zip", "pyodide.mjs"]
)
def test_a_file_that_does_not_come_is_said(page, server, watch, name):
    """Pyodide itself would wait for ever."""
    watch.allow(r"404|Failed to (load|fetch)|wasm")
    page.context.route(f"**/{name}", lambda route: route.fulfill(status=404, body="gone"))
    page.goto(server.address)
    ended = page.evaluate(START)
    assert ended["stage"] == "failed"
    assert name in ended["text"]


@pytest.mark.parametrize("name", ["pyodide.asm.wasm", "python_stdlib.zip", "fibercalc.zip"])
def test_a_file_that_breaks_off_is_said(page, serve, watch, name):
    """A line lost in the middle of a file: half of it has come, and its length says that more would."""
    watch.allow(r"ERR_|Failed to (load|fetch)|wasm|network error")

    class Short(SiteHandler):
        def end_headers(self):
            super().end_headers()
            if self.path.endswith(f"/{name}"):
                self.wfile.write(b"PK or so")
                self.wfile.flush()
                self.connection.shutdown(socket.SHUT_RDWR)

    poor = serve()
    poor.RequestHandlerClass = Short
    page.goto(poor.address)
    ended = page.evaluate(START)
    assert ended["stage"] == "failed"
    assert name in ended["text"], ended["text"]
    assert ended["text"].endswith("."), "the page says more after it"


def test_sizes_that_come_late_do_not_undo_the_start(page, serve):
    """They only serve the line that counts megabytes. On a slow line they may come when Python runs already."""
    wanted, sent = threading.Event(), threading.Event()

    class Late(SiteHandler):
        def do_GET(self):
            late = self.path.endswith("/sizes.json")
            if late:
                assert wanted.wait(60)
            super().do_GET()
            if late:
                self.wfile.flush()
                sent.set()

    slow = serve()
    slow.RequestHandlerClass = Late
    page.goto(slow.address + CARD)
    until_live(page)
    wanted.set()
    assert sent.wait(10)
    page.wait_for_timeout(1_000)
    until_live(page, seconds=0)


def test_first_view_before_python_is_at_most_200_kb(page, serve, site):
    """Compressed, of everything asked for before the worker's script."""
    own = serve()
    page.goto(own.address + CARD)
    while not any(asked.endswith("/worker.js") for asked in own.asked):
        page.wait_for_timeout(50)
    asked = [urlsplit(address).path for address in own.asked]
    before = asked[: next(at for at, path in enumerate(asked) if path.endswith("/worker.js"))]
    files = {
        site / (path.lstrip("/") + ("index.html" if path.endswith("/") else "")) for path in before
    }
    compressed = {path.name: len(gzip.compress(path.read_bytes(), 9)) for path in files}
    assert "main.js" in compressed and "index.html" in compressed
    assert sum(compressed.values()) <= 200_000, compressed


def test_one_python_lives_on_from_page_to_page(page, server):
    starts = []
    page.on(
        "worker",
        lambda worker: starts.append(worker.url) if worker.url.endswith("/worker.js") else None,
    )
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


def test_a_policy_that_forbids_webassembly_is_said_at_once(page, serve, watch):
    """Pyodide itself would wait for ever. The page's own policy does not count for the worker; the host's header does."""
    watch.allow(r"WebAssembly|Content Security Policy|wasm")
    strict = serve(
        policy=(
            "default-src 'self'; script-src 'self' 'unsafe-inline'; style-src 'self'"
            " 'unsafe-inline'"
        )
    )
    page.goto(strict.address)
    ended = page.evaluate(START)
    assert ended["stage"] == "failed"
    assert "WebAssembly" in ended["text"]
    assert ended["text"].endswith(".")
