"""A run of pytest that does not run the tests once, but once to see which reach what, and then some of them for each fault."""

from __future__ import annotations

import builtins
import gc
import importlib
import json
import os
import pkgutil
import signal
import time
from argparse import Namespace
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from _pytest.runner import runtestprotocol

import fibercalc

from .faults import ROOT, Fault, with_fault, with_marks
from .patched import Loaded, forget_what_is_cached

LEFT_ALONE = ("fibercalc.__main__", "fibercalc.site.build", "fibercalc.site.serve")
ENDLESS = 30.0  # s, over the time that its tests may take: a fault that never ends is noticed


class Faults:
    """The plugin: a reconnaissance, then one process for each fault."""

    def __init__(self, faults: list[Fault], options: Namespace):
        self.faults, self.options = faults, options
        self.found: dict[int, dict[str, Any]] = {}

    @pytest.hookimpl(tryfirst=True)
    def pytest_runtestloop(self, session: pytest.Session) -> bool:
        for module in pkgutil.walk_packages(fibercalc.__path__, "fibercalc."):
            if module.name not in LEFT_ALONE and ".site.build" not in module.name:
                importlib.import_module(module.name)
        self.items, self.loaded = session.items, Loaded(ROOT / "fibercalc")
        gc.freeze()  # what is there by now is shared by all processes and stays as it is
        reached, took = self._reached()
        print(f"\n{len(took)} tests reach {len(reached)} of {len(self.faults)} faults", flush=True)
        jobs = {
            number: lambda number=number: self._try(number, reached.get(number, []), took)
            for number in range(len(self.faults))
        }
        for number, outcome in _in_processes(jobs, self.options.jobs, self._most()):
            self.found[number] = outcome or {"by": "it never ends", "ran": 0}
            self.found[number]["reach"] = len(reached.get(number, []))
            by = self.found[number]["by"]
            print("." if by else f"\nsurvives  {self.faults[number]}\n", end="", flush=True)
        return True

    def report(self, of: int, file: Path) -> int:
        """Write what became of each fault; 0 when nine of ten were noticed."""
        alive = [number for number, outcome in self.found.items() if not outcome["by"]]
        lines = [
            f"{'survives' if number in alive else 'noticed '}  {fault}"
            f"  [{self.found[number]['by'] or 'no test'}; {self.found[number]['reach']} reach it]"
            for number, fault in enumerate(self.faults)
        ]
        file.parent.mkdir(exist_ok=True)
        file.write_text("\n".join(lines) + "\n", "utf-8")
        killed, tried = len(self.found) - len(alive), max(len(self.found), 1)
        print(f"\n\n{killed} of {tried} faults noticed ({of} could have been drawn)")
        print("\n".join(line for line in lines if line.startswith("survives")))
        return 0 if killed >= 0.9 * tried else 1

    def _most(self) -> float:
        return float(self.options.seconds) + ENDLESS

    def _reached(self) -> tuple[dict[int, list[int]], dict[int, float]]:
        """For each fault the tests that come to its place, and the seconds that each test takes."""
        share = self.options.jobs
        jobs = {k: lambda k=k: self._scout(range(k, len(self.items), share)) for k in range(share)}
        reached: dict[int, list[int]] = {}
        took: dict[int, float] = {}
        for _, seen in _in_processes(jobs, share, 3600.0):
            for test, (seconds, places) in seen.items():
                took[int(test)] = seconds
                for place in places:
                    reached.setdefault(place, []).append(int(test))
        return reached, took

    def _scout(self, tests: range) -> dict[int, tuple[float, list[int]]]:
        """Run tests on code that says what is reached; those that fail by themselves are of no use."""
        by_file: dict[str, dict[int, Fault]] = {}
        for number, fault in enumerate(self.faults):
            by_file.setdefault(fault.path, {})[number] = fault
        places: set[int] = set()
        builtins.__reached__ = places.add  # type: ignore[attr-defined]
        for path, faults in by_file.items():
            source = (ROOT / path).read_text("utf-8")
            self.loaded.put(ROOT / path, with_marks(source, faults))
        forget_what_is_cached()
        seen = {}
        for place, test in enumerate(tests):
            places.clear()
            start = time.monotonic()
            after = tests[place + 1] if place + 1 < len(tests) else None
            passed = _passes(self.items[test], None if after is None else self.items[after])
            if passed:
                seen[test] = (time.monotonic() - start, sorted(places))
        return seen

    def _try(self, number: int, tests: list[int], took: dict[int, float]) -> dict[str, Any]:
        """Put one fault in and run the tests that reach it until one fails."""
        fault = self.faults[number]
        source = (ROOT / fault.path).read_text("utf-8")
        if not self.loaded.put(ROOT / fault.path, with_fault(source, fault)):
            return {"by": "", "ran": 0, "why": "no function holds it"}
        forget_what_is_cached()
        order = sorted(tests, key=lambda test: (_far(self.items[test], fault), took[test]))
        end, ran = time.monotonic() + float(self.options.seconds), 0
        for test, after in zip(order, [*order[1:], None]):
            if time.monotonic() > end:
                break
            ran += 1
            if not _passes(self.items[test], None if after is None else self.items[after]):
                return {"by": self.items[test].nodeid, "ran": ran}
        return {"by": "", "ran": ran}


def _far(item: pytest.Item, fault: Fault) -> int:
    """How far a test is from a fault: its own folder, what walks over every card, all others."""
    file = str(item.path.relative_to(ROOT / "tests"))
    if file.split("/")[0] == fault.path.split("/")[1]:
        return 0
    return 1 if file.startswith("test_every_answer") else 2


def _passes(item: pytest.Item, after: pytest.Item | None) -> bool:
    return all(
        report.outcome != "failed" for report in runtestprotocol(item, log=False, nextitem=after)
    )


def _in_processes(
    jobs: dict[int, Callable[[], Any]], at_once: int, most: float
) -> Iterator[tuple[int, Any]]:
    """Run jobs in forked processes, some at once, and give what each returns; None for one that had to be ended."""
    waiting, running = list(jobs), {}
    folder = ROOT / ".build" / "mutate"
    folder.mkdir(parents=True, exist_ok=True)
    while waiting or running:
        while waiting and len(running) < at_once:
            key = waiting.pop(0)
            file = folder / f"{os.getpid()}-{key}.json"
            if not (pid := os.fork()):
                _alone(jobs[key], file)
            running[pid] = (key, file, time.monotonic() + most)
        for pid in list(running):
            key, file, end = running[pid]
            if os.waitpid(pid, os.WNOHANG)[0]:
                del running[pid]
                yield key, json.loads(file.read_text()) if file.exists() else None
                file.unlink(missing_ok=True)
            elif time.monotonic() > end:
                os.kill(pid, signal.SIGKILL)
        time.sleep(0.01)


def _alone(job: Callable[[], Any], file: Path) -> None:
    """In a child: do the job without a word, write down what it found, and be gone."""
    nowhere = os.open(os.devnull, os.O_RDWR)
    for stream in (1, 2):
        os.dup2(nowhere, stream)
    try:
        file.write_text(json.dumps(job()))
    finally:
        os._exit(0)
