"""The built site as files: nothing missing, nothing too much, every version true."""

import gzip
import hashlib
import json
import os
import re
import shutil
import subprocess
import sys
import sysconfig
import tomllib
import zipfile
from html.parser import HTMLParser
from pathlib import Path
from urllib.parse import unquote, urljoin, urlsplit

import pytest

ROOT = Path(__file__).resolve().parents[2]
OFFLINE_LIST = "assets/offline-manifest.json"
OWN_SCRIPTS = {"helper/index.html": "helper", "counter/index.html": "counter"}
NOT_KEPT = {"404.html", "_headers", "sw.js", OFFLINE_LIST}


@pytest.fixture(scope="module")
def names(site) -> set[str]:
    return {path.relative_to(site).as_posix() for path in site.rglob("*") if path.is_file()}


@pytest.fixture(scope="module")
def kept(site) -> dict:
    return json.loads((site / OFFLINE_LIST).read_text("utf-8"))


@pytest.fixture(scope="module")
def pages(site) -> dict[str, str]:
    return {
        path.relative_to(site).as_posix(): path.read_text("utf-8") for path in site.rglob("*.html")
    }


def the_one(site: Path, pattern: str) -> Path:
    found = list(site.glob(pattern))
    assert len(found) == 1, found
    return found[0]


def test_list_for_no_signal_names_every_file(names, kept):
    assert {each["url"] for each in kept["files"]} == names - NOT_KEPT


def test_list_gives_true_sizes_and_versions(site, kept):
    for each in kept["files"]:
        content = (site / each["url"]).read_bytes()
        assert each["bytes"] == len(content), each["url"]
        if each["revision"] is None:
            assert re.match(r"assets/(py/|app-)", each["url"]), f"{each['url']} has no version"
        else:
            assert each["revision"] == hashlib.md5(content).hexdigest(), each["url"]
    assert kept["bytes"] == sum(each["bytes"] for each in kept["files"])


def test_service_worker_keeps_what_the_list_names(site, kept):
    """And the list itself, without which a page without signal could not check anything."""
    worker = (site / "sw.js").read_text("utf-8")
    urls = set(re.findall(r'url:"([^"]+)"', worker))
    assert urls == {each["url"] for each in kept["files"]} | {OFFLINE_LIST}
    assert "importScripts" not in worker, "the worker would fetch a second file"


def test_folder_names_carry_the_hash_of_their_content(site):
    for pattern in ("assets/app-*", "assets/py/*"):
        folder = the_one(site, pattern)
        whole = hashlib.sha256()
        for path in sorted(folder.iterdir()):
            whole.update(f"{path.name}\0{hashlib.sha256(path.read_bytes()).hexdigest()}\n".encode())
        assert folder.name.endswith(whole.hexdigest()[:12]), folder


def test_nothing_is_shipped_that_no_page_asks_for(names):
    assert not [
        name
        for name in names
        if name.endswith((".map", ".gz", ".py"))
        or "/lunr/" in name
        or "fibercalc/site/build" in name
    ]


def test_all_that_is_needed_without_signal_is_at_most_10_mb(site, kept):
    compressed = sum(
        len(gzip.compress((site / each["url"]).read_bytes(), 9)) for each in kept["files"]
    )
    assert compressed <= 10_000_000, f"{compressed:,} bytes"


def test_python_in_the_browser_is_bytecode_and_tables(site):
    app = the_one(site, "assets/app-*")
    with zipfile.ZipFile(app / "fibercalc.zip") as archive:
        inside = archive.namelist()
        assert all(entry.date_time == (1980, 1, 1, 0, 0, 0) for entry in archive.infolist())
    assert {Path(name).suffix for name in inside} <= {".pyc", ".csv", ".toml", ".json"}
    assert "fibercalc/site/boundary.pyc" in inside
    terminal = ("amount", "answered", "cli", "completion", "meant", "worked")
    kept_out = ("site/build", "site/library", "site/serve", "site/sheets", *terminal)
    assert not {f"fibercalc/{name}.pyc" for name in kept_out} & set(inside)
    folders = ("fibercalc/ask/", "fibercalc/site/protocol/")
    assert not [name for name in inside if name.startswith(folders)]
    assert "fibercalc/_shared/demo/workbook.json" in inside
    for check in (ROOT / "shared" / "checks").glob("*.toml"):  # beside it, for whoever asks
        assert f"fibercalc/_shared/checks/{check.name}" not in inside
        assert (site / "assets" / "checks" / check.name).read_bytes() == check.read_bytes()


def test_lock_file_lists_the_lazy_packages_with_their_hashes(site):
    app = the_one(site, "assets/app-*")
    lock = json.loads((app / "pyodide-lock.json").read_text("utf-8"))
    lazy = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["tool"]["bench-book"]["lazy"]
    assert set(lock["packages"]) == set(lazy)
    for package in lock["packages"].values():
        assert (
            package["sha256"]
            == hashlib.sha256((app / package["file_name"]).read_bytes()).hexdigest()
        )


def test_same_sources_give_the_same_bytes(site, tmp_path):
    """Compiled again from nothing. A difference also shows when a source has changed since the site was built."""
    lazy = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["tool"]["bench-book"]["lazy"]
    command = ["node", "site_js/build/runtime.mjs", sysconfig.get_path("purelib"), *lazy]
    made = subprocess.run(
        command,
        cwd=ROOT,
        env=os.environ | {"BENCH_WORK": str(tmp_path)},
        capture_output=True,
        text=True,
        check=True,
    )
    assert made.stdout.strip() == the_one(site, "assets/py/*").name
    app = the_one(site, "assets/app-*")
    for path in (tmp_path / "runtime" / "ours").iterdir():
        assert path.read_bytes() == (app / path.name).read_bytes(), path.name


class Addresses(HTMLParser):
    """What a page refers to, and what can be referred to in it."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.used: list[str] = []
        self.ids: set[str] = set()
        self.feed(html)

    def handle_starttag(self, tag, attributes) -> None:
        given = dict(attributes)
        self.used += [given[key] for key in ("href", "src") if given.get(key)]
        self.ids |= {given[key] for key in ("id", "name") if given.get(key)}


def test_every_address_in_every_page_leads_somewhere(site, pages):
    read = {name: Addresses(html) for name, html in pages.items()}
    lost = []
    for name, page in read.items():
        for address in page.used:
            whole = urlsplit(urljoin(f"http://127.0.0.1:8000/{name}", address))
            if whole.netloc != "127.0.0.1:8000" or whole.scheme != "http":
                continue  # a source's address; the browser tests see that none is asked for
            path = unquote(whole.path).lstrip("/")
            target = f"{path}index.html" if path.endswith("/") or not path else path
            if not (site / target).is_file():
                lost.append(f"{name}: {address}")
            elif (
                whole.fragment
                and target in read
                and unquote(whole.fragment) not in read[target].ids
            ):
                lost.append(f"{name}: {address} (no such place on the page)")
    assert not lost, "\n".join(lost)


def test_every_page_has_the_policy_first_and_one_module_script(pages):
    for name, html in pages.items():
        assert html.index("Content-Security-Policy") < html.index("<script"), name
        entry = OWN_SCRIPTS.get(name, "main")
        assert re.findall(
            r'<script type="module" src="[^"]*assets/app-[0-9a-f]{12}/(\w+)\.js">', html
        ) == [entry], name
        assert re.search(r'<meta name="bench-runtime" content="assets/py/[^"]+/">', html), name


def test_web_app_manifest_leads_to_icons_of_the_stated_size(site):
    manifest = json.loads((site / "manifest.webmanifest").read_text("utf-8"))
    assert {"name", "short_name", "id", "start_url", "scope", "display"} <= manifest.keys()
    assert {icon["purpose"] for icon in manifest["icons"]} == {"any", "maskable"}
    for icon in manifest["icons"]:
        head = (site / icon["src"]).read_bytes()[:24]
        assert head[:8] == b"\x89PNG\r\n\x1a\n"
        width, height = (int.from_bytes(head[at : at + 4], "big") for at in (16, 20))
        assert f"{width}x{height}" == icon["sizes"]


def test_pages_name_no_other_host_for_a_file(pages):
    for name, html in pages.items():
        loaded = re.findall(
            r'<(?:script|img|iframe|source)\b[^>]*\bsrc="([^"]+)"|<link\b[^>]*rel="(?:stylesheet|preload|icon|manifest)"[^>]*href="([^"]+)"',
            html,
        )
        assert not [address for pair in loaded for address in pair if "//" in address], name


@pytest.mark.sweep
def test_a_site_for_another_address_is_built_for_it(tmp_path):
    """Built for a path of a host: the theme's script is told how much of an address is the old path."""
    folder = tmp_path / "site"
    command = [sys.executable, "-m", "fibercalc.site.build", "--folder", str(folder)]
    subprocess.run(
        command, cwd=ROOT, env=os.environ | {"SITE_URL": "https://bench.example/book/"}, check=True
    )
    assert "https://bench.example/book/yarn/" in (folder / "sitemap.xml").read_text("utf-8")
    assert '<meta name="bench-base" content="/book">' in (folder / "404.html").read_text("utf-8")
    assert ".pathname.slice(6)" in the_one(folder, "assets/javascripts/bundle.*.min.js").read_text(
        "utf-8"
    )
    assert json.loads((folder / "manifest.webmanifest").read_text("utf-8"))["id"] == "/book/"
    shutil.rmtree(folder)
