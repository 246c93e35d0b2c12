"""What others install: a wheel, put into an empty environment with no network, and read as a zip."""

import email
import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

import fibercalc
from fibercalc.core.checks import read_checks
from fibercalc.core.registry import UnknownChapter, all_cards, chapters
from fibercalc.workbook.demo import demo_text

ROOT = Path(fibercalc.__file__).parents[1]
OUTSIDE = {name: value for name, value in os.environ.items() if not name.startswith("PYTHON")}
COUNT = (
    "import json; from fibercalc.core.checks import read_checks;"
    f" print(json.dumps([len(read_checks(each)) for each in {chapters()}]))"
)


def run(*words, cwd=ROOT, env=None) -> str:
    done = subprocess.run(
        [str(word) for word in words],
        check=False,
        capture_output=True,
        text=True,
        cwd=cwd,
        env=env,
        timeout=120,
    )
    assert done.returncode == 0, done.stdout[-1000:] + done.stderr[-3000:]
    return done.stdout


@pytest.fixture(scope="module")
def wheel(tmp_path_factory) -> Path:
    """The wheel, built as `make wheel` builds it."""
    folder = tmp_path_factory.mktemp("dist")
    run(sys.executable, "-m", "hatchling", "build", "--target", "wheel", "--directory", folder)
    (made,) = folder.iterdir()
    return made


@pytest.fixture(scope="module")
def empty(wheel, tmp_path_factory) -> Path:
    """The programs of an environment that holds the wheel and nothing else."""
    home = tmp_path_factory.mktemp("empty")
    run(sys.executable, "-m", "venv", "--without-pip", home)
    pip = [sys.executable, "-m", "pip", "--python", home / "bin" / "python", "install"]
    run(*pip, "--quiet", "--no-deps", "--no-index", "--no-compile", wheel)
    return home / "bin"


@pytest.fixture
def outside(tmp_path):
    """Runs words in a folder that holds no checkout, without what the tests' own Python is told."""
    return lambda *words: run(*words, cwd=tmp_path, env=OUTSIDE)


def test_the_installed_command_and_module_answer_as_the_checkout_does(empty, outside):
    here = json.loads(json.dumps(fibercalc.work("skein-length")))
    assert json.loads(outside(empty / "fibercalc", "work", "skein-length", "--json")) == here
    module = [empty / "python", "-m", "fibercalc", "work", "skein-length"]
    assert outside(*module).startswith(here["answer"])


def test_every_card_of_the_installed_package_answers(empty, outside):
    code = (
        "import fibercalc; assert 'site-packages' in fibercalc.__file__;"
        " print(sum(bool(fibercalc.work(card['id'])['answer']) for card in fibercalc.cards()))"
    )
    assert int(outside(empty / "python", "-c", code)) == len(all_cards())


def test_the_installed_package_has_every_worked_example_and_the_demo(empty, outside):
    counts = json.loads(outside(empty / "python", "-c", COUNT))
    assert counts == [len(read_checks(chapter)) for chapter in chapters()] and all(counts)
    code = "import sys; from fibercalc.workbook.demo import demo_text; print(len(demo_text()))"
    assert int(outside(empty / "python", "-c", code)) == len(demo_text())


def test_a_zip_on_the_path_is_as_good(wheel, outside):
    code = f"import sys; sys.path.insert(0, {str(wheel)!r}); "
    counts = json.loads(outside(sys.executable, "-I", "-S", "-c", code + COUNT))
    assert counts == [len(read_checks(chapter)) for chapter in chapters()]
    ask = "import fibercalc; print(fibercalc.work('wraps')['answer'])"
    told = outside(sys.executable, "-I", "-S", "-c", code + ask)
    assert told.strip() == fibercalc.work("wraps")["answer"]


def test_missing_examples_are_an_error_and_not_silence(wheel, tmp_path, outside):
    with zipfile.ZipFile(wheel) as whole, zipfile.ZipFile(tmp_path / "part.zip", "w") as part:
        for name in whole.namelist():
            if "_shared" not in name:
                part.writestr(name, whole.read(name))
    code = (
        "import sys; sys.path.insert(0, 'part.zip')\n"
        "from fibercalc.core.checks import read_checks\n"
        "try: read_checks('yarn')\n"
        "except FileNotFoundError as error: print(error)"
    )
    told = outside(sys.executable, "-I", "-S", "-c", code)
    assert told == "checks/yarn.toml is neither in this package nor beside it\n"
    with pytest.raises(UnknownChapter):
        read_checks("yarm")
    assert read_checks("spin") == []  # it is to come


def test_the_wheel_holds_the_package_and_what_is_said_of_it(wheel):
    with zipfile.ZipFile(wheel) as archive:
        names = archive.namelist()
        (said,) = [name for name in names if name.endswith(".dist-info/METADATA")]
        metadata = email.message_from_bytes(archive.read(said))
    tops = {name.partition("/")[0] for name in names}
    assert tops == {"fibercalc", f"fibercalc-{fibercalc.__version__}.dist-info"}
    assert "fibercalc/py.typed" in names and not [name for name in names if "__pycache__" in name]
    assert "Typing :: Typed" in metadata.get_all("Classifier")
    assert metadata.get_payload(decode=True) == (ROOT / "README.md").read_bytes()
    needed = [each for each in metadata.get_all("Requires-Dist") or [] if "extra ==" not in each]
    assert needed == []
