"""`make mutate`: put faults into the project one at a time and count how many the native tests notice.

A seeded sample is drawn of all faults there are. One pass of all native tests finds which of them reach each fault's place; then every
fault is put into a process of its own, and the tests that reach it are run, the nearest and quickest first, until one fails.
"""

from __future__ import annotations

import argparse
import random
import sys
from pathlib import Path

import pytest

from fibercalc.core.card import CHAPTERS

from .faults import ROOT, Fault, faults_of
from .session import Faults

ROOMS = ("core", "workbook", *CHAPTERS)
# Where a picture's lines stand is looked at, not computed with.
NOT_IN = ("picture", "pictures", "charts")
BOUNDARY = "fibercalc/site/boundary*.py"


def all_faults() -> list[Fault]:
    """Every fault of formulas, cards, workbook, core and boundary."""
    files = sorted(path for room in ROOMS for path in (ROOT / "fibercalc" / room).rglob("*.py"))
    files = [path for path in files if not set(path.parts) & set(NOT_IN)]
    files += sorted(ROOT.glob(BOUNDARY))
    return [fault for path in files for fault in faults_of(path)]


def main() -> int:
    parser = argparse.ArgumentParser(prog="python -m tests.mutate", description=__doc__)
    parser.add_argument("--sample", type=int, default=200, help="how many faults (200)")
    parser.add_argument("--seed", type=int, default=1, help="which sample (1)")
    parser.add_argument("--in", dest="within", default="", help="only in files of this path")
    parser.add_argument("--seconds", type=float, default=60, help="of tests for one fault (60)")
    parser.add_argument("--jobs", type=int, default=2, help="processes at once (2)")
    options = parser.parse_args()
    faults = [fault for fault in all_faults() if fault.path.startswith(options.within)]
    drawn = random.Random(options.seed).sample(faults, min(options.sample, len(faults)))
    run = Faults(sorted(drawn, key=lambda fault: (fault.path, fault.line)), options)
    tests = ["-q", "-p", "no:xdist", "-p", "no:cacheprovider", "-m", "not sweep"]
    away = [f"--ignore={ROOT / 'tests' / name}" for name in ("browser", "test_wheel.py")]
    pytest.main([*tests, *away, str(ROOT / "tests")], plugins=[run])
    return run.report(len(faults), Path(ROOT / ".build" / "mutants.txt"))


if __name__ == "__main__":
    sys.exit(main())
