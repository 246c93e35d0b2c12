"""Where things are: the project, and the built site (BENCH_SITE names another, as for the tests)."""

import os
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SITE = Path(os.environ.get("BENCH_SITE", ROOT / ".build" / "site")).resolve()
