"""Builds the site: `python -m fibercalc.site.build`. MkDocs makes the pages; what a page cannot
hold is added around them.

Before the pages: the browser's Python and the icons, and the navigation from the cards there are.
After them: the scripts, fonts and check rows; each page's head; the policy; and last the service
worker, which must see every file as it will be. Never in the browser's package. docs/hooks.py
calls prepare() and finish().
"""

from __future__ import annotations

import argparse
import base64
import hashlib
import json
import os
import re
import shutil
import subprocess
import sys
import sysconfig
import tomllib
from collections.abc import Iterable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING
from urllib.parse import urlsplit

from ..version import __version__
from ..workbook.schema import file_schema
from . import book, helper_page
from .protocol import typescript
from .serve import KEPT, VERSIONED
from .sheets import joined

if TYPE_CHECKING:
    from mkdocs.config.defaults import MkDocsConfig

ROOT = Path(__file__).resolve().parents[2]
WORK = ROOT / ".build"
SITE_JS = ROOT / "site_js"
SITE = WORK / "site"
FACES, SHEET = "assets/css/faces.css", "assets/css/book.css"

INLINE_SCRIPT = re.compile(r"<script(?![^>]*\bsrc=)([^>]*)>(.*?)</script>", re.DOTALL)
# The theme moves the sitemap's addresses to the host that serves the page, but not to its port or
# path: on any other port each link would then be a full load and Python would start anew on every
# page. The theme is pinned, and finding this line anywhere but once stops the build.
THEME_MOVES_ADDRESS = re.compile(
    r"(function \w+\((\w),(\w)\)\{return )\2\.protocol=\3\.protocol,\2\.hostname=\3\.hostname,\2\}"
)
# The theme fetches the words of the whole book with every first view, except from a file: there it
# waits until the search is opened. Waiting is right everywhere, since the words grow with each
# chapter and the first view must not.
THEME_FETCHES_WORDS = re.compile(r'\(location\.protocol!=="file:"\)(,\w+\("search"\))')


class BuildStopped(RuntimeError):
    """The site cannot be built as it stands; nothing half-made is published."""


def prepare(config: MkDocsConfig) -> MkDocsConfig:
    """Before the pages: everything whose name or content they need."""
    config.nav = book.navigation(Path(config.docs_dir))
    config.extra["version"] = __version__
    typescript.write(SITE_JS / "python" / "protocol.d.ts")
    config.extra["sheets"] = [SITE_JS / str(each) for each in config.extra_css]
    config.extra_css = [FACES, SHEET]
    return config


def finish(config: MkDocsConfig) -> None:
    """After the pages: the rest of the site, in the order in which one part needs another."""
    site = Path(config.site_dir)
    home = urlsplit(config.site_url or "").path or "/"
    runtime = _browser_python(site)
    app = _scripts(site)
    _write_sheets(site, *config.extra["sheets"])
    _copy_fonts(site)
    _copy_checks(site)
    _write_record_schema(site, config)
    _node("icons.mjs", str(site / "assets" / "icons"))
    _write_web_app_manifest(site, config, home)
    _amend_theme_script(site, home)
    _leave_out_unused(site)
    own = helper_page.write_pages(site, app, config.site_name)
    pages = {path: path.read_text("utf-8") for path in sorted(site.rglob("*.html"))}
    policy = content_policy(pages.values())
    for path, html in pages.items():
        path.write_text(
            _with_head(
                html, _base(path, site, home), runtime, app + own.get(path, "main.js"), policy
            ),
            "utf-8",
        )
    (site / "_headers").write_text(_host_headers(policy), "utf-8")
    _node("offline.mjs", str(site), __version__, _built_on())


def content_policy(pages: Iterable[str]) -> str:
    """The Content-Security-Policy for every page: our own files, and the theme's inline scripts
    by their hashes.

    One policy for all pages: instant navigation exchanges head elements, and a policy that
    changed would be added to the old one.
    """
    hashes = set()
    for html in pages:
        for attributes, script in INLINE_SCRIPT.findall(html):
            if "json" not in attributes:
                digest = hashlib.sha256(script.encode()).digest()
                hashes.add(f"'sha256-{base64.b64encode(digest).decode()}'")
    scripts = " ".join(["'self'", "'wasm-unsafe-eval'", *sorted(hashes)])
    return (
        f"default-src 'self'; script-src {scripts}; worker-src 'self'; img-src 'self' data: blob:;"
        " style-src 'self' 'unsafe-inline'; connect-src 'self'; object-src 'none'; base-uri"
        " 'none'; form-action 'none'"
    )


def _browser_python(site: Path) -> str:
    """Copy Pyodide's folder; its address from the site's root. It changes with Pyodide alone, so
    an update need not fetch it again.
    """
    lazy = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["tool"]["bench-book"]["lazy"]
    name = _node("runtime.mjs", sysconfig.get_path("purelib"), *lazy).strip()
    folder = f"assets/py/{name}/"
    shutil.copytree(WORK / "runtime" / name, site / folder)
    return folder


def _scripts(site: Path) -> str:
    """Put the page's scripts, our Python and the helper's table into one folder named for its
    content; its address from the root.

    They share a folder, and so a version: page script and Python speak one protocol and must
    never be of two builds.
    """
    unnamed = site / "assets" / "app"
    shutil.copytree(WORK / "runtime" / "ours", unnamed)
    _node("scripts.mjs", str(unnamed))
    helper_page.write_parts(unnamed)
    whole = hashlib.sha256()
    for path in sorted(unnamed.iterdir()):
        whole.update(f"{path.name}\0{hashlib.sha256(path.read_bytes()).hexdigest()}\n".encode())
    named = unnamed.with_name(f"app-{whole.hexdigest()[:12]}")
    unnamed.rename(named)
    return f"assets/{named.name}/"


def _write_sheets(site: Path, faces: Path, *sheets: Path) -> None:
    """One file out of the look's many: each would be a request that holds up the first view. The
    typefaces, named first, stay apart (see faces.css).
    """
    (site / SHEET).parent.mkdir(parents=True, exist_ok=True)
    shutil.copy(faces, site / FACES)
    (site / SHEET).write_text(joined(sheets), "utf-8")


def _copy_fonts(site: Path) -> None:
    target = site / "assets" / "fonts"
    target.mkdir(parents=True, exist_ok=True)
    for face in ("source-serif-4", "atkinson-hyperlegible-next"):
        name = f"{face}-latin-wght-normal.woff2"
        shutil.copy(
            SITE_JS / "node_modules" / "@fontsource-variable" / face / "files" / name, target / name
        )


def _copy_checks(site: Path) -> None:
    target = site / "assets" / "checks"
    target.mkdir(parents=True, exist_ok=True)
    for path in (ROOT / "shared" / "checks").glob("*.toml"):
        shutil.copy(path, target / path.name)


def _write_record_schema(site: Path, config: MkDocsConfig) -> None:
    """What a workbook's file holds, for other programs; the address stays, the schema number
    stands inside.
    """
    schema = file_schema(f"{(config.site_url or '/').rstrip('/')}/workbook-schema.json")
    (site / "workbook-schema.json").write_text(
        json.dumps(schema, ensure_ascii=False, indent=1) + "\n", "utf-8"
    )


def _write_web_app_manifest(site: Path, config: MkDocsConfig, home: str) -> None:
    """Addresses in it are relative to the manifest itself, so that the book may stand below a
    path.
    """
    icons = [
        ("icon-192.png", "192x192", "any"),
        ("icon-512.png", "512x512", "any"),
        ("icon-maskable-512.png", "512x512", "maskable"),
    ]
    content = {
        "id": home,
        "name": config.site_name,
        "short_name": config.site_name,
        "description": config.site_description,
        "lang": "en",
        "start_url": "./",
        "scope": "./",
        "display": "standalone",
        "background_color": "#f7f4ec",
        "theme_color": "#f7f4ec",
        "icons": [
            {"src": f"assets/icons/{name}", "sizes": sizes, "type": "image/png", "purpose": use}
            for name, sizes, use in icons
        ],
    }
    (site / "manifest.webmanifest").write_text(json.dumps(content, indent=1), "utf-8")


def _amend_theme_script(site: Path, home: str) -> None:
    """Two lines of the theme's script; see THEME_MOVES_ADDRESS and THEME_FETCHES_WORDS."""
    bundles = list((site / "assets" / "javascripts").glob("bundle.*.min.js"))
    if len(bundles) != 1:
        raise BuildStopped(f"the theme has {len(bundles)} scripts where it had one")
    script = bundles[0].read_text("utf-8")
    moved = (
        rf"\1\2.pathname=\3.pathname+\2.pathname.slice({len(home)}),"
        r"\2.protocol=\3.protocol,\2.host=\3.host,\2}"
    )
    for pattern, ours in ((THEME_MOVES_ADDRESS, moved), (THEME_FETCHES_WORDS, r"(!1)\1")):
        script, found = pattern.subn(ours, script)
        if found != 1:
            raise BuildStopped(
                f"the theme's script has changed: {pattern.pattern} is found {found} times; see"
                " fibercalc/site/build.py"
            )
    bundles[0].write_text(script, "utf-8")


def _leave_out_unused(site: Path) -> None:
    """What the theme brings and no page of ours asks for: maps, its own look, word lists of other
    languages.
    """
    shutil.rmtree(site / "assets" / "javascripts" / "lunr")
    shutil.rmtree(site / "assets" / "stylesheets")
    (site / "assets" / "images" / "favicon.png").unlink()
    (site / "sitemap.xml.gz").unlink()
    for path in site.rglob("*.map"):
        path.unlink()


def _base(path: Path, site: Path, home: str) -> str:
    """The way from a page to the site's root. The page for lost addresses may be shown at any
    depth, so it has the full path.
    """
    if path.name == "404.html":
        return home.rstrip("/")
    return "/".join([".."] * (len(path.relative_to(site).parts) - 1)) or "."


def _with_head(html: str, base: str, runtime: str, script: str, policy: str) -> str:
    first = f'<meta http-equiv="Content-Security-Policy" content="{policy}">'
    last = (
        f'<meta name="bench-runtime" content="{runtime}"><meta name="bench-base"'
        f' content="{base or "/"}"><link rel="manifest" href="{base}/manifest.webmanifest"><link'
        f' rel="apple-touch-icon" href="{base}/assets/icons/apple-touch-icon.png"><script'
        f' type="module" src="{base}/{script}"></script>'
    )
    html, opened = re.subn(r"(<meta charset=[^>]*>)", lambda found: found[1] + first, html, count=1)
    html, closed = re.subn(r"</head>", lambda _: last + "</head>", html, count=1)
    if not (opened and closed):
        raise BuildStopped(
            "a page has no <meta charset> or no </head>; where would its policy and scripts go?"
        )
    return html


def _host_headers(policy: str) -> str:
    """A sample for hosts that read such a file: the policy for workers too, and years of keeping
    for names that carry a hash.
    """
    return (
        f"/*\n  Content-Security-Policy: {policy}; frame-ancestors *\n  X-Content-Type-Options:"
        " nosniff\n  Referrer-Policy: no-referrer\n"
        + "".join(f"{start}*\n  Cache-Control: {KEPT}\n" for start in VERSIONED)
    )


def _built_on() -> str:
    """Today, or the day that SOURCE_DATE_EPOCH names for a build that must come out the same
    again.
    """
    moment = os.environ.get("SOURCE_DATE_EPOCH")
    return (date.fromtimestamp(int(moment)) if moment else date.today()).isoformat()


def _node(script: str, *arguments: str) -> str:
    done = subprocess.run(
        ["node", str(SITE_JS / "build" / script), *arguments],
        capture_output=True,
        text=True,
        cwd=ROOT,
        check=False,
    )
    if done.returncode:
        raise BuildStopped(f"{script}: {done.stderr.strip() or done.stdout.strip()}")
    return done.stdout


def main() -> None:
    """Build beside the old site and exchange the two at the end: whoever reads the old one never
    sees half of each.
    """
    options = argparse.ArgumentParser(
        prog="python -m fibercalc.site.build", description="Build the bench book's site."
    )
    options.add_argument("--folder", type=Path, default=SITE)
    folder = options.parse_args().folder.resolve()
    made = folder.with_name(folder.name + ".part")
    command = [sys.executable, "-m", "mkdocs", "build", "--quiet", "--site-dir", str(made)]
    done = subprocess.run(
        command, check=False, cwd=ROOT, env=os.environ | {"NO_MKDOCS_2_WARNING": "1"}
    )
    if done.returncode:
        raise SystemExit(done.returncode)
    old = folder.with_name(folder.name + ".old")
    shutil.rmtree(old, ignore_errors=True)
    if folder.exists():
        folder.rename(old)
    made.rename(folder)
    shutil.rmtree(old, ignore_errors=True)


if __name__ == "__main__":
    main()
