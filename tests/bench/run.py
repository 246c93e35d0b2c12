"""`make bench`: times and sizes of the built site, each beside its limit. All of one run, on one machine, so ratios mean something.

    python tests/bench/run.py [start] [edits] [sizes] [builds] [--rounds N] [--edits N] [--passes N] [--card ID ...]

Nothing here is a test: a busy machine is no fault. The exit code is 1 only when something could not be measured.
"""

import argparse
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[0] = str(ROOT)  # in place of this folder: the benchmark's files and the tests' helpers are found from the root

from tests.bench import builds, edits, sizes, start  # noqa: E402
from tests.bench.report import Report  # noqa: E402

PARTS = {"start": start.measure, "edits": edits.measure, "sizes": sizes.measure, "builds": builds.measure}


def main() -> int:
    options = argparse.ArgumentParser(prog="make bench", description="Measure the bench book.")
    options.add_argument("parts", nargs="*", metavar="part", help=f"any of {', '.join(PARTS)}; all when none is named")
    options.add_argument("--rounds", type=int, default=7, help="fresh starts of each kind (7)")
    options.add_argument("--edits", type=int, default=40, help="edits for each card (40)")
    options.add_argument("--passes", type=int, default=3, help="how many times all edits of a card are made (3)")
    options.add_argument("--card", action="append", default=[], help="edit this card only; may be given again")
    chosen = options.parse_args()
    if unknown := set(chosen.parts) - set(PARTS):
        options.error(f"no part is called {', '.join(sorted(unknown))}")
    report = Report(sys.stdout)
    for name, measure in PARTS.items():
        if not chosen.parts or name in chosen.parts:
            report.part(name, measure, chosen)
    return report.end()


if __name__ == "__main__":
    sys.exit(main())
