"""What all tests share: the built site, and servers for it."""

import fcntl
import os
import subprocess
import sys
from pathlib import Path

import pytest
from hypothesis import settings

from fibercalc.site.serve import SiteServer
from tests.workshop import make as make_workshop

# No clock in property tests: two cores are shared, and a slow first call is no fault. The same examples in every run.
settings.register_profile("book", deadline=None, derandomize=True)
settings.load_profile("book")

ROOT = Path(__file__).resolve().parents[1]


@pytest.fixture(scope="session")
def site() -> Path:
    """The built site's folder. `make` has built it; a test run by hand builds it when there is none. BENCH_SITE names another."""
    folder = Path(os.environ.get("BENCH_SITE", ROOT / ".build" / "site")).resolve()
    if not (folder / "sw.js").is_file():
        subprocess.run(
            [sys.executable, "-m", "fibercalc.site.build", "--folder", str(folder)],
            cwd=ROOT,
            check=True,
        )
    return folder


@pytest.fixture(scope="session")
def workshop(tmp_path_factory) -> Path:
    """A built copy of the project with the guide's example card and the fixture card in it: one for all processes that share the tests."""
    shared = tmp_path_factory.getbasetemp()
    shared = shared.parent if "PYTEST_XDIST_WORKER" in os.environ else shared
    folder, built = shared / "workshop", shared / "workshop.built"
    with (shared / "workshop.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if not built.exists():
            folder.mkdir()
            make_workshop(folder)
            built.touch()
    return folder


@pytest.fixture(scope="session")
def server(site):
    """The site at the root of a free port, for the whole run. A test that stops a server takes one of its own from `serve`."""
    running = SiteServer(site).start()
    yield running
    running.stop()


@pytest.fixture
def serve(site):
    """Makes servers for one test: serve(sub_path="/book/", policy="default-src 'self'", port=0, folder=...).

    stop() makes one unreachable; serve(port=old.port) brings the same address back.
    """
    running = []

    def make(
        sub_path: str = "/", policy: str = "", port: int = 0, folder: Path = site
    ) -> SiteServer:
        running.append(SiteServer(folder, port, sub_path, policy).start())
        return running[-1]

    yield make
    for each in running:
        each.stop()
