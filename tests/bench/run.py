"""`make bench`: times and sizes of the built site, each beside its limit. All of one run, on one machine, so ratios mean something.

    python tests/bench/run.py [start] [edits] [sizes] [builds] [CARD ...] [--rounds N] [--edits N] [--passes N]

A part that is named is run alone; a card that is named is edited alone, and without a part only edits are made:

    python tests/bench/run.py edits                          every card, about 15 minutes on a quiet machine
    python tests/bench/run.py dye-recipe yarn-needed         these two
    make bench BENCH="sizes builds"                          the same through make

Each card gets 24 edits, made twice over: its 95th percentile is the second slowest of them. --edits 60 --passes 3 tells finer.
Results are printed as they come. Nothing here is a test: a busy machine is no fault. The exit code is 1 only when something could not be measured.
"""

import argparse
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[0] = str(
    ROOT
)  # in place of this folder: the benchmark's files and the tests' helpers are found from the root

from fibercalc.core.registry import all_cards  # noqa: E402
from tests.bench import builds, edits, sizes, start  # noqa: E402
from tests.bench.report import Report  # noqa: E402

PARTS = {
    "start": start.measure,
    "edits": edits.measure,
    "sizes": sizes.measure,
    "builds": builds.measure,
}


def main() -> int:
    options = argparse.ArgumentParser(prog="make bench", description="Measure the bench book.")
    options.add_argument(
        "named",
        nargs="*",
        metavar="part or card",
        help=f"any of {', '.join(PARTS)}, and cards to edit; everything when none is named",
    )
    options.add_argument("--rounds", type=int, default=7, help="fresh starts of each kind (7)")
    options.add_argument("--edits", type=int, default=24, help="edits for each card (24)")
    options.add_argument(
        "--passes", type=int, default=2, help="how many times all edits of a card are made (2)"
    )
    chosen = options.parse_args()
    chosen.cards = [name for name in chosen.named if name not in PARTS]
    parts = [name for name in chosen.named if name in PARTS] or (
        ["edits"] if chosen.cards else list(PARTS)
    )
    known = {card.id for card in all_cards()}
    if unknown := [name for name in chosen.cards if name not in known]:
        options.error(f"no part and no card is called {', '.join(unknown)}")
    report = Report(sys.stdout)
    for name, measure in PARTS.items():
        if name in parts:
            report.part(name, measure, chosen)
    return report.end()


if __name__ == "__main__":
    sys.exit(main())
