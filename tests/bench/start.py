"""From the start of a visit, with a field edited at once, to the live answer on screen: ours beside stock Pyodide, cold and repeated.

Both sites come from servers of one kind with the same compression, without the delay of a real line. The gap that is measured is
work, not travel: compiled Python is some megabyte more to fetch once.
"""

from fibercalc.site.serve import SiteServer

from .chromium import chromium, profile, python_in_page, visitor
from .places import ROOT, SITE
from .report import NotMeasured, Report, middle
from .stock import stock_copy

CARD = "yarn/skein-length/"

# The edit comes as soon as the page's scripts have run; the end is the frame after the new answer stands in the page.
EDIT_AT_ONCE = """
  window.bench = {};
  window.Worker = class extends Worker {
    constructor(...words) {
      super(...words);
      window.bench.began = performance.now();
      this.addEventListener("message", ({ data }) => { if (data.stage === "ready") window.bench.boot = data.ms; });
    }
  };
  addEventListener("DOMContentLoaded", () => {
    const input = document.getElementById("skein-length.turns");
    if (!input) return;
    new MutationObserver(() => requestAnimationFrame(() => setTimeout(() => { window.bench.answered ??= performance.now(); })))
      .observe(document.querySelector("[data-slot=answer]"), { childList: true, subtree: true, characterData: true });
    input.value = "301";
    input.dispatchEvent(new Event("input", { bubbles: true }));
  });
"""
KEPT = """() => document.querySelector("bench-card > .state")?.dataset.state === "ready" """


# A visitor reads for some seconds before she comes again; the browser then stores what it has compiled.
READS = 2_000  # ms


def measure(report: Report, options) -> None:
    times: dict[str, list[dict]] = {
        "ours": [],
        "stock": [],
        "repeat": [],
        "no signal": [],
        "page": [],
    }
    servers = {
        "ours": SiteServer(SITE).start(),
        "stock": SiteServer(stock_copy(SITE, ROOT / ".build" / "bench" / "stock")).start(),
    }
    try:
        for round_number in range(
            options.rounds + 1
        ):  # the first warms the servers and is not counted
            order = ["ours", "stock"] if round_number % 2 else ["stock", "ours"]
            got = {name: _visits(servers[name], again=name == "ours") for name in order}
            with chromium() as browser, visitor(browser) as context:
                in_page = python_in_page(context.new_page(), servers["ours"].address + CARD)
            kept = _kept(servers["ours"])
            if round_number:
                for name in order:
                    times[name].append(got[name][0])
                times["repeat"].append(got["ours"][1])
                times["no signal"].append(kept)
                times["page"].append(in_page)
    finally:
        for server in servers.values():
            server.stop()
    _tell(report, times)


def _visits(server, again: bool) -> list[dict]:
    """A visit with nothing in the cache, and if wanted a second one with what the first left there."""
    with profile(EDIT_AT_ONCE) as context:
        context.pages[0].wait_for_timeout(READS)  # a visitor's browser has been running for a while
        return [_visit(context, server) for _ in range(2 if again else 1)]


def _kept(server) -> dict:
    """A visit when the service worker has the whole site and has served it before."""
    with profile(EDIT_AT_ONCE, service_workers="allow") as context:
        page = context.new_page()
        page.goto(server.address + CARD)
        _until(page, KEPT)
        page.close()
        return [_visit(context, server) for _ in range(2)][-1]


def _visit(context, server) -> dict:
    page = context.new_page()
    page.goto(server.address + CARD, wait_until="commit")
    _until(page, "() => Boolean(window.bench?.answered)")
    seen = page.evaluate("() => window.bench")
    page.wait_for_timeout(READS)
    page.close()
    return seen


def _until(page, question: str, seconds: float = 60) -> None:
    for _ in range(int(seconds * 10)):
        if page.evaluate(question):
            return
        page.wait_for_timeout(100)  # seldom, so that asking takes no time from what is measured
    raise NotMeasured(
        f"after {seconds:.0f} s:"
        f" {page.evaluate('() => document.querySelector(`bench-card > .state`)?.textContent')}"
    )


def _tell(report: Report, times: dict[str, list[dict]]) -> None:
    to_answer = {
        name: [each["answered"] for each in times[name]]
        for name in ("ours", "stock", "repeat", "no signal")
    }
    ratios = {
        name: middle([a / b for a, b in zip(to_answer[name], to_answer[of])])
        for name, of in (("ours", "stock"), ("repeat", "ours"), ("no signal", "ours"))
    }
    report.line("Live answer, cold cache: ours / stock", ratios["ours"], 0.5, digits=2)
    report.line("Live answer, repeat visit / cold: HTTP cache", ratios["repeat"], 1.0, digits=2)
    report.line(
        "Live answer, repeat visit / cold: service worker", ratios["no signal"], 1.0, digits=2
    )
    fastest = min(to_answer["ours"]) / min(to_answer["stock"])
    report.line("   the same by the fastest visit of each", fastest, digits=2)
    for name, values in to_answer.items():
        report.line(
            f"   navigation to live answer, {name}",
            middle(values),
            unit=" ms",
            note=f"{min(values):.0f} to {max(values):.0f}",
        )
    for name in to_answer:
        boots = [each["boot"] for each in times[name]]
        report.line(
            f"   the worker's own start, {name}",
            middle(boots),
            unit=" ms",
            note=f"{min(boots):.0f} to {max(boots):.0f}",
        )
    report.line(
        "   script asks for the worker after, ours",
        middle([each["began"] for each in times["ours"]]),
        unit=" ms",
    )
    report.line(
        "   bare WebAssembly compile, the floor",
        middle([each["compile"] for each in times["page"]]),
        unit=" ms",
    )
    report.line(
        "   Pyodide alone, all files at hand",
        middle([each["boot"] for each in times["page"]]),
        unit=" ms",
    )
    report.line(
        "In Pyodide: import fibercalc and a first answer, over bare start",
        middle([each["answer"] for each in times["page"]]),
        150,
        " ms",
    )
