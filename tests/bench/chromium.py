"""Debian's Chromium for the benchmark, and Python started inside a page where it can be timed step by step."""

import shutil
from contextlib import contextmanager
from tempfile import TemporaryDirectory

from playwright.sync_api import Browser, sync_playwright

from tests.browser.conftest import ARGUMENTS

from .report import NotMeasured

PATIENCE = 60_000  # ms

# Pyodide in the page itself, as the site's worker starts it, and our package imported afterwards: what each of both takes.
BOOT = """async () => {
  const content = (name) => document.querySelector(`meta[name=${name}]`).content;
  const runtime = new URL(content("bench-runtime"), new URL(`${content("bench-base")}/`, location.href)).href;
  const ours = new URL(".", document.querySelector("script[type=module][src]").src).href;
  const bytes = async (address) => new Uint8Array(await (await fetch(address)).arrayBuffer());
  const [{ loadPyodide }, program, lock, wasm] = await Promise.all([
    import(`${runtime}pyodide.mjs`), bytes(`${ours}fibercalc.zip`), bytes(`${ours}pyodide-lock.json`), bytes(`${runtime}pyodide.asm.wasm`),
    bytes(`${runtime}python_stdlib.zip`), import(`${runtime}pyodide.asm.mjs`)]);
  const times = {};
  const timed = async (name, act) => {
    const began = performance.now();
    const result = await act();
    times[name] = performance.now() - began;
    return result;
  };
  await timed("compile", () => WebAssembly.compile(wasm));
  window.pyodide = await timed("boot", () => loadPyodide({
    indexURL: runtime, stdLibURL: `${runtime}python_stdlib.zip`, lockFileContents: new TextDecoder().decode(lock), packageBaseUrl: ours,
    env: { PYTHONPATH: "/fibercalc.zip" }, fsInit: async (disk) => disk.writeFile("/fibercalc.zip", program) }));
  await timed("answer", () => {
    const boundary = pyodide.pyimport("fibercalc.site.boundary");
    const reply = boundary.handle(JSON.stringify({ id: 1, do: "work", card: "skein-length", values: {}, settings: {} }));
    if (!JSON.parse(reply).ok.answered) throw new Error(reply);
  });
  return times;
}"""


@contextmanager
def chromium():
    """One browser; each visit takes a context of its own, whose cache is empty."""
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=_program(), args=ARGUMENTS)
        yield browser
        browser.close()


def _program() -> str:
    program = shutil.which("chromium")
    if not program:
        raise NotMeasured("no chromium found: `make setup` installs it")
    return program


@contextmanager
def visitor(browser: Browser, script: str = "", **options):
    """A context that begins with nothing, and a script that runs in each page before the page's own."""
    context = browser.new_context(**({"service_workers": "block"} | options))
    context.set_default_timeout(PATIENCE)
    if script:
        context.add_init_script(script)
    yield context
    context.close()


@contextmanager
def profile(script: str = "", **options):
    """A visitor whose browser keeps what it learns, on disk and for later visits, as a private context does not: it begins with nothing."""
    with sync_playwright() as playwright, TemporaryDirectory(ignore_cleanup_errors=True) as folder:
        context = playwright.chromium.launch_persistent_context(
            folder,
            executable_path=_program(),
            args=ARGUMENTS,
            **({"service_workers": "block"} | options),
        )
        context.set_default_timeout(PATIENCE)
        context.add_init_script(script)
        yield context
        context.close()


def python_in_page(page, address: str) -> dict[str, float]:
    """Start Python in a page; ms for the bare WebAssembly compile, the start, and our import with a first answer."""
    page.goto(address)
    return page.evaluate(BOOT)
