"""A copy of the project with two more cards: the one of DEVELOPERS.md's six steps, and the fixture card with every kind of input."""

import re
import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
BLOCK = re.compile(r'^(`{3,4})\w+ title="([^"]+)"\n(.*?)^\1$', re.DOTALL | re.MULTILINE)
PARTS = (
    "fibercalc",
    "docs",
    "shared",
    "tests",
    "mkdocs.yml",
    "pyproject.toml",
    "DEVELOPERS.md",
    "README.md",
    "LICENSE",
)
FIXTURE_PAGE = (
    "---\ntitle: Every kind\nchapter: yarn\n---\n\n# Does every kind of input"
    " work?\n\n```card\nevery-kind\n```\n"
)


def steps() -> dict[str, str]:
    """The blocks of the guide by their title."""
    return {
        match[2]: match[3] for match in BLOCK.finditer((ROOT / "DEVELOPERS.md").read_text("utf-8"))
    }


def make(folder: Path) -> Path:
    """Copy the project into an empty folder, do the six steps, add the fixture card, build the site. Returns the folder."""
    ignore = shutil.ignore_patterns("__pycache__", "node_modules", ".build")
    for name in (*PARTS, "site_js"):
        source = ROOT / name
        if source.is_dir():
            shutil.copytree(source, folder / name, ignore=ignore)
        elif source.exists():
            shutil.copy(source, folder / name)
    (folder / "site_js" / "node_modules").symlink_to(ROOT / "site_js" / "node_modules")
    (folder / ".build").mkdir()
    for name in ("runtime", "compiled"):  # what is made once for a version of Pyodide
        if (ROOT / ".build" / name).is_dir():
            shutil.copytree(ROOT / ".build" / name, folder / ".build" / name)
    for title, text in steps().items():
        path = folder / title.removesuffix(" (append)")
        if title.endswith("(append)"):
            with path.open("a", encoding="utf-8") as file:
                file.write("\n" + text.replace("FINGERPRINT", _fingerprint(folder)))
        else:
            path.write_text(text, "utf-8")
    card = (ROOT / "tests" / "fixture_card.py").read_text("utf-8")
    (folder / "fibercalc" / "yarn" / "cards" / "every_kind.py").write_text(card, "utf-8")
    (folder / "docs" / "pages" / "yarn" / "every-kind.md").write_text(FIXTURE_PAGE, "utf-8")
    run_in(folder, "-m", "fibercalc.site.build")
    return folder


def _fingerprint(folder: Path) -> str:
    """The new card's fingerprint, as the guide says the test prints it."""
    code = (
        "from fibercalc.core.registry import find_card; from tests.test_kept_links import"
        " fingerprint; import sys; sys.stdout.write(fingerprint(find_card('winding-time')))"
    )
    return (
        run_in(folder, "-c", code)
        if (folder / "fibercalc" / "yarn" / "cards" / "winding_time.py").is_file()
        else ""
    )


def run_in(folder: Path, *words: str) -> str:
    """Run this Python in a folder, its own fibercalc first; the output, or a failure that shows it."""
    done = subprocess.run(
        [sys.executable, *words],
        cwd=folder,
        capture_output=True,
        text=True,
        timeout=240,
        env=_environment(folder),
    )
    assert done.returncode == 0, done.stdout[-2000:] + done.stderr[-3000:]
    return done.stdout


def _environment(folder: Path) -> dict[str, str]:
    import os

    return os.environ | {"PYTHONPATH": str(folder), "NO_MKDOCS_2_WARNING": "1"}
