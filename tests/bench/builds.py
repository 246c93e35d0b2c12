"""How long the site takes to build, and how long the program takes to a first answer on this machine."""

import os
import resource
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from fibercalc.core.registry import all_cards
from tests.workshop import PARTS

from .places import ROOT
from .report import NotMeasured, Report, middle

CARD = "skein-length"


def measure(report: Report, options) -> None:
    with tempfile.TemporaryDirectory(prefix="bench-book-") as folder:
        copy = _copy(Path(folder))
        for words, rounds in (("nothing compiled yet", 1), ("Pyodide compiled before", 2)):
            seconds, processor = min(_build(copy) for _ in range(rounds))
            report.line(
                f"Build of the whole site, {words}",
                seconds,
                20,
                " s",
                digits=1,
                note=f"{processor:.1f} s of the processor",
            )
    _first_answers(report, options.rounds)


def _copy(folder: Path) -> Path:
    """The project without what was built: the site that others use stays as it is."""
    ignore = shutil.ignore_patterns("__pycache__", "node_modules", ".build")
    for name in (*PARTS, "site_js"):
        source = ROOT / name
        if source.is_dir():
            shutil.copytree(source, folder / name, ignore=ignore)
        elif source.exists():
            shutil.copy(source, folder / name)
    (folder / "site_js" / "node_modules").symlink_to(ROOT / "site_js" / "node_modules")
    return folder


def _build(folder: Path) -> tuple[float, float]:
    """Seconds for one build, and those that its processes spent on the processor."""
    environment = os.environ | {"PYTHONPATH": str(folder), "NO_MKDOCS_2_WARNING": "1"}
    began, before = time.perf_counter(), _processor()
    done = subprocess.run(
        [sys.executable, "-m", "fibercalc.site.build"],
        cwd=folder,
        env=environment,
        capture_output=True,
        text=True,
    )
    seconds = time.perf_counter() - began
    if done.returncode or not (folder / ".build" / "site" / "sw.js").is_file():
        raise NotMeasured(f"the build stopped: {done.stderr[-500:]}")
    return seconds, _processor() - before


def _first_answers(report: Report, rounds: int) -> None:
    """The cost over bare Python, as the median of many pairs; then every card, to find the one that loads most."""
    report.line(
        "import fibercalc and a first answer, over bare Python",
        _over_bare(CARD, 4 * rounds),
        80,
        " ms",
    )
    report.line(
        "   the same as time of the processor alone",
        _over_bare(CARD, 2 * rounds, clock=_processor),
        unit=" ms",
    )
    report.line(
        "   the same from the command line", _over_bare(CARD, 2 * rounds, command=True), unit=" ms"
    )
    each = {card.id: _over_bare(card.id, rounds) for card in all_cards()}
    slowest = max(each, key=each.get)
    report.line(
        f"import fibercalc and a first answer, slowest card: {slowest}", each[slowest], 80, " ms"
    )


def _over_bare(card: str, rounds: int, command: bool = False, clock=time.perf_counter) -> float:
    words = (
        ["-m", "fibercalc", "work", card]
        if command
        else ["-c", f"import fibercalc; fibercalc.work('{card}')"]
    )
    _run(words)  # writes the bytecode
    return middle([_run(words, clock) - _run(["-c", "pass"], clock) for _ in range(rounds)])


def _processor() -> float:
    """Seconds that all ended child processes spent: other work on the machine does not count."""
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def _run(words: list[str], clock=time.perf_counter) -> float:
    began = clock()
    done = subprocess.run([sys.executable, *words], cwd=ROOT, capture_output=True)
    milliseconds = 1000 * (clock() - began)
    if done.returncode:
        raise NotMeasured(f"{' '.join(words)}: {done.stderr.decode()[-300:]}")
    return milliseconds
