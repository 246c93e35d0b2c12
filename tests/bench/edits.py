"""From an edit to its answer on screen, for every card; and where that time goes inside the browser's Python.

An edit is timed from the input event to the frame after the new sentence, numbers and pictures stand in the page. Frames come
60 times a second, so up to 17 ms of it is waiting for one; the time to the change itself is told beside it.

All edits are made several times over in one visit and the best time of each counts, since a busy machine only ever adds; what the
first time over took, by a Python just started, is told beside it.
"""

from pathlib import Path

from playwright.sync_api import Error

from fibercalc.core.registry import all_cards, find_card
from fibercalc.site.serve import SiteServer

from .chromium import chromium, python_in_page, visitor
from .places import SITE
from .report import NotMeasured, Report, share
from .walks import Walk, walks

# ms for one edit. The page itself gives a calculation 5 s, then starts Python again and asks once more: on a busy machine that
# comes right by itself, and the best of the passes counts.
PATIENCE = 20_000
LIVE = """() => document.querySelector("bench-card > .state")?.dataset.state === "live" && !document.querySelector("bench-card[aria-busy]")"""

# When a question left for the worker and when its answer came back: the rest of an edit is the page's own.
TRACE = """
  window.bench = {};
  window.Worker = class extends Worker {
    constructor(...words) {
      super(...words);
      this.addEventListener("message", ({ data }) => { if (data.reply !== undefined) window.bench.heard = performance.now(); });
    }
    postMessage(data) {
      window.bench.asked = performance.now();
      super.postMessage(data);
    }
  };
"""
# Another state of the same page, reached as the back button would: Python stays.
TURN = """(query) => {
  history.replaceState(history.state, "", location.pathname + (query ? `?${query}` : ""));
  dispatchEvent(new PopStateEvent("popstate", { state: history.state }));
}"""
# One edit after the other, at the pace of someone typing, now and then with a pause in which the page writes its address.
EDIT = """async ({ card, edits, patience }) => {
  const long = [];
  const tasks = new PerformanceObserver((list) => long.push(...list.getEntries()));
  tasks.observe({ type: "longtask" });
  const host = document.querySelector(`bench-card[data-card="${card}"]`);
  const slots = ["answer", "numbers", "pictures"].map((name) => host.querySelector(`[data-slot=${name}]`));
  const says = () => ["bench-card > .state", ".field .why:not(:empty)"].map((one) => document.querySelector(one)?.textContent.trim()).filter(Boolean).join(" ") || "nothing";
  const times = [];
  for (const [at, [name, text]] of edits.entries()) {
    const input = document.getElementById(`${card}.${name}`);
    input.focus();
    await new Promise((done) => setTimeout(done, at % 8 ? 60 : 400));
    times.push(await new Promise((done, fail) => {
      const began = performance.now();
      const seen = { began };
      const watch = new MutationObserver((records) => {
        const changed = performance.now() - began;
        for (const { target } of records) seen[slots.find((slot) => slot.contains(target)).dataset.slot] ??= changed;
        if (seen.answer === undefined || seen.shown !== undefined) return;
        seen.shown = null;
        seen.asked = window.bench.heard - window.bench.asked;
        requestAnimationFrame(() => setTimeout(() => {
          seen.shown = performance.now() - began;
          watch.disconnect();
          done(seen);
        }));
      });
      for (const slot of slots) watch.observe(slot, { childList: true, subtree: true, characterData: true });
      setTimeout(() => fail(new Error(`${name} = ${text} changes nothing in ${patience / 1000} s; the page says: ${says()}`)), patience);
      input.value = text;
      input.dispatchEvent(new Event("input", { bubbles: true }));
    }));
  }
  await new Promise((done) => setTimeout(done, 100));
  tasks.disconnect();
  for (const [at, each] of times.entries()) {
    const mine = long.filter(({ startTime }) => startTime + 8 >= each.began && !(startTime + 8 >= times[at + 1]?.began));
    each.task = Math.max(0, ...mine.map(({ duration }) => duration));
  }
  return times;
}"""

PHASES = """({ source, requests }) => {
  const scope = pyodide.toPy({ __name__: "phases" });
  pyodide.runPython(source, { globals: scope });
  scope.set("requests", JSON.stringify(requests));
  return JSON.parse(pyodide.runPython("json.dumps(spent_by_phase(json.loads(requests)))", { globals: scope }));
}"""


def measure(report: Report, options) -> None:
    cards = [find_card(card_id) for card_id in options.cards] or all_cards()
    report.say(
        f"  {len(cards)} cards, {options.edits} edits of each, made {options.passes} times over"
    )
    server = SiteServer(SITE).start()
    tasks: list[float] = []
    try:
        with chromium() as browser:
            for card in cards:
                try:
                    plan = walks(card, options.edits)
                    tasks += _on_screen(report, browser, server, card, plan, options.passes)
                    _inside(report, browser, server, card, plan, options.passes)
                except (
                    NotMeasured,
                    Error,
                ) as gap:  # one card that stands still must not keep the others from being measured
                    report.missed(f"{card.id}: {str(gap).splitlines()[0]}")
    finally:
        server.stop()
    if tasks:
        report.line(
            f"Longest task of the page's own thread in {len(tasks)} edits",
            max(tasks),
            50,
            " ms",
            note="0: none over 50 ms",
        )


def _on_screen(report: Report, browser, server, card, plan: list[Walk], passes: int) -> list[float]:
    """The lines of one card; the longest task of each of its edits."""
    edits, first, by_state = [], [], {}
    with visitor(browser, TRACE) as context:
        page = context.new_page()
        page.goto(f"{server.address}{card.chapter}/{card.id}/")
        for walk in plan:
            rounds = [_walk(page, card.id, walk) for _ in range(passes)]
            best = [_best(each) for each in zip(*rounds)]
            edits += best
            first += [each["shown"] for each in rounds[0]]
            by_state[walk.words] = max(each["shown"] for each in best)
    slowest = max(by_state, key=by_state.get)
    note = (
        f"to the worker and back {share([each['asked'] for each in edits]):.0f}, to the change"
        f" {share([each['answer'] for each in edits]):.0f}; the first time over {share(first):.0f};"
        f" slowest state: {slowest} {by_state[slowest]:.0f}"
    )
    report.line(
        f"{card.id}: edit to sentence and numbers, 95 % of {len(edits)} edits",
        share([each["shown"] for each in edits]),
        50,
        " ms",
        note=note,
    )
    pictures = [each["shown"] for each in edits if "pictures" in each]
    if pictures:
        report.line(
            f"{card.id}: edit to pictures, 95 % of {len(pictures)} edits",
            share(pictures),
            150,
            " ms",
        )
    return [each["task"] for each in edits]


def _walk(page, card_id: str, walk: Walk) -> list[dict]:
    """All edits of one state once, from where its link leads."""
    _until_live(page)
    page.wait_for_timeout(400)  # until the page has written its address
    page.evaluate(TURN, walk.query)
    page.wait_for_timeout(100)
    _until_live(page)
    return page.evaluate(EDIT, {"card": card_id, "edits": walk.edits, "patience": PATIENCE})


def _best(rounds: tuple[dict, ...]) -> dict:
    """One edit's best time for each thing that was seen."""
    return {
        name: min(each[name] for each in rounds if name in each) for name in set().union(*rounds)
    }


def _inside(report: Report, browser, server, card, plan: list[Walk], passes: int) -> None:
    """The same edits in a Python of the page's own, phase by phase."""
    requests = [request for walk in plan for request in walk.requests]
    source = Path(__file__).with_name("phases.py").read_text("utf-8")
    with visitor(browser) as context:
        page = context.new_page()
        python_in_page(page, f"{server.address}{card.chapter}/{card.id}/")
        rounds = [
            page.evaluate(PHASES, {"source": source, "requests": requests}) for _ in range(passes)
        ]
    phases = {
        name: [min(times) for times in zip(*(each[name] for each in rounds))] for name in rounds[0]
    }
    whole = phases.pop("whole")
    parts = sorted(
        ((name, share(times)) for name, times in phases.items()), key=lambda each: -each[1]
    )
    report.line(
        f"   inside Python, 95 % of {len(whole)}",
        share(whole),
        unit=" ms",
        digits=1,
        note=", ".join(f"{name} {time:.1f}" for name, time in parts),
    )


def _until_live(page, seconds: float = 60) -> None:
    for _ in range(int(seconds * 10)):
        if page.evaluate(LIVE):
            return
        page.wait_for_timeout(100)
    raise NotMeasured(f"{page.url} is not live after {seconds:.0f} s")
