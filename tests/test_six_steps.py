"""“Add a card in six steps” of DEVELOPERS.md is true: its own blocks, put into a copy of the project, make a card everywhere."""

import json
import re
import subprocess
import sys
from pathlib import Path

from tests.workshop import run_in, steps

BLOCKS = steps()


def test_the_guide_has_its_five_files():
    assert [name.split(" ")[0] for name in BLOCKS] == [
        "fibercalc/yarn/winding.py",
        "shared/checks/yarn.toml",
        "fibercalc/yarn/cards/winding_time.py",
        "docs/pages/yarn/winding-time.md",
        "shared/links.toml",
    ]


def test_the_card_appears_in_the_command_line(workshop):
    listed = json.loads(run_in(workshop, "-m", "fibercalc", "cards", "--json"))
    assert {
        "id": "winding-time",
        "chapter": "yarn",
        "question": "How long will winding take?",
    } in listed
    answer = json.loads(
        run_in(
            workshop,
            "-m",
            "fibercalc",
            "work",
            "winding-time",
            "turns=300",
            "speed=40 ± 0",
            "--json",
        )
    )
    assert answer["results"]["time"]["value"] == 7.5


def test_the_card_appears_in_the_site(workshop):
    site = workshop / ".build" / "site"
    page = (site / "yarn" / "winding-time" / "index.html").read_text("utf-8")
    assert (
        'data-card="winding-time"' in page
        and "Winding takes about" in page
        and "280 turns at 40 a minute" in page
    )
    for other in ("index.html", "yarn/index.html"):
        assert "How long will winding take?" in (site / other).read_text("utf-8")
    offline = (site / "assets" / "offline-manifest.json").read_text("utf-8")
    assert "yarn/winding-time/" in offline


def test_the_card_is_asked_every_question(workshop):
    """The copy's own tests pass for the new card: every-card, every-check, kept links, architecture."""
    done = subprocess.run(
        [
            sys.executable,
            "-m",
            "pytest",
            "-q",
            "-p",
            "no:cacheprovider",
            "-m",
            "not sweep",
            "-k",
            "winding or architecture",
            "tests/test_every_card.py",
            "tests/test_every_check.py",
            "tests/test_kept_links.py",
            "tests/test_architecture.py",
        ],
        cwd=workshop,
        capture_output=True,
        text=True,
        timeout=280,
    )
    assert done.returncode == 0, done.stdout[-3000:]
    assert int(re.search(r"(\d+) passed", done.stdout)[1]) > 20
    assert "winding" in (Path(workshop) / "shared" / "checks" / "yarn.toml").read_text("utf-8")
