"""The browser layer lies in rooms: imports between them run one way, and no line is too long."""

import re
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
SITE_JS = ROOT / "site_js"
COLUMNS = 100
# A room may use those named, which stand lower; main.js, on top, may use any.
LOWER = {
    "dom": set(),
    "python": {"dom"},
    "timers": {"dom"},
    "offline": {"dom", "python"},
    "rows": {"dom", "python"},
    "workbook": {"dom", "python", "rows"},
    "helper": {"dom", "python", "rows", "workbook", "offline"},
    "card": {"dom", "python", "rows", "workbook", "offline"},
}
IMPORT = re.compile(r"""^(?:import|export)\b[^;"']*["'](\.[^"']+)["']""", re.MULTILINE)
TYPE = re.compile(r"""\bimport\("(\.[^"]+)"\)\.""")
# What stands in build/ runs in Node alone.
SCRIPTS = sorted(
    path for path in SITE_JS.glob("*/*.js") if path.parent.name not in ("build", "node_modules")
)
TEXTS = (".js", ".mjs", ".ts", ".css", ".py")
PICTURE = re.compile(r'\s*url\("data:image/svg\+xml,[^"]*"\)[;,]?')  # one word: it cannot be broken


def where(path: Path) -> str:
    return path.relative_to(SITE_JS).as_posix()


def own_texts() -> list[Path]:
    """Every script and style sheet of our own, and the Python beside them."""
    whole = (path for part in ("site_js", "docs") for path in (ROOT / part).rglob("*.*"))
    return sorted(
        path for path in whole if path.suffix in TEXTS and "node_modules" not in path.parts
    )


def led_to(path: Path, pattern: re.Pattern[str]) -> list[Path]:
    return [(path.parent / name).resolve() for name in pattern.findall(path.read_text("utf-8"))]


def test_every_room_is_known():
    assert {path.parent.name for path in SCRIPTS} == LOWER.keys()


def test_the_order_of_the_rooms_has_no_way_round():
    placed: set[str] = set()
    for room, lower in LOWER.items():
        assert lower <= placed, f"{room} uses a room that stands above it"
        placed.add(room)


@pytest.mark.parametrize("path", SCRIPTS, ids=where)
def test_imports_between_rooms_run_one_way(path):
    own = path.parent.name
    for other in led_to(path, IMPORT) + led_to(path, TYPE):
        room = other.parent.name
        assert room == own or room in LOWER[own], f"{where(path)} looks up to {where(other)}"


def test_no_script_comes_back_to_itself():
    ways = {path: led_to(path, IMPORT) for path in SCRIPTS}
    done: set[Path] = set()

    def walk(path: Path, come: tuple[Path, ...]) -> None:
        assert path not in come, " -> ".join(map(where, (*come, path)))
        if path not in done:
            for other in ways.get(path, ()):
                walk(other, (*come, path))
            done.add(path)

    for path in SCRIPTS:
        walk(path, ())


def test_no_line_is_longer_than_a_page_is_wide():
    paths = own_texts()
    assert {path.suffix for path in paths} == set(TEXTS)
    long = [
        f"{path.relative_to(ROOT)}:{number}"
        for path in paths
        for number, line in enumerate(path.read_text("utf-8").splitlines(), 1)
        if len(line) > COLUMNS and not PICTURE.fullmatch(line)
    ]
    assert not long
