"""The same site with stock Pyodide: standard library and our package as sources, nothing else different."""

import os
import shutil
import zipfile
from pathlib import Path

from .places import ROOT
from .report import NotMeasured

PYODIDE = ROOT / "site_js" / "node_modules" / "pyodide"


def stock_copy(site: Path, folder: Path) -> Path:
    """Make the copy (files are linked, not copied) and return its folder."""
    shutil.rmtree(folder, ignore_errors=True)
    shutil.copytree(site, folder, copy_function=os.link)
    _replace(
        _only(folder, "assets/py/*/python_stdlib.zip"), (PYODIDE / "python_stdlib.zip").read_bytes()
    )
    package = _only(folder, "assets/app-*/fibercalc.zip")
    sources = folder / "sources.zip"
    _uncompiled(package, sources)
    _replace(package, sources.read_bytes())
    sources.unlink()
    return folder


def _only(folder: Path, pattern: str) -> Path:
    found = list(folder.glob(pattern))
    if len(found) != 1:
        raise NotMeasured(f"{pattern} is found {len(found)} times in {folder}")
    return found[0]


def _replace(path: Path, content: bytes) -> None:
    path.unlink()  # else the site's own file, which this is a link to, would change
    path.write_bytes(content)


def _uncompiled(compiled: Path, out: Path) -> None:
    """The same files with each .pyc replaced by its source."""
    with (
        zipfile.ZipFile(compiled) as given,
        zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as made,
    ):
        for name in given.namelist():
            if name.endswith(".pyc"):
                made.write(ROOT / name[:-1], name[:-1])
            else:
                made.writestr(name, given.read(name))
