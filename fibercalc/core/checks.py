"""Worked examples as data: read from shared/checks/<chapter>.toml and run the same way natively,
in the browser and for the page.
"""

import tomllib
from dataclasses import dataclass
from datetime import date
from importlib import import_module
from pathlib import Path
from typing import Any

from .card import CHAPTERS
from .registry import UnknownChapter, chapters, find_card
from .shared import shared_text
from .work import work_card

KINDS = ("published", "common practice", "by hand", "regression")


@dataclass(frozen=True)
class Check:
    """One worked example: of (a function "yarn.count.tex_from_denier" or a card id), given,
    expect, tolerance, and where it is from. A word or a day is expected as it is, without one.
    """

    of: str
    given: dict[str, Any]
    expect: dict[str, Any]
    kind: str
    claim: str
    tolerance: float = 0.0
    source: str = ""
    where: str = ""
    status: str = ""
    read: str = ""
    because: str = ""

    @property
    def is_card(self) -> bool:
        return "." not in self.of


@dataclass(frozen=True)
class Outcome:
    """What a check gave: for each expected name the found value, and whether all lie within the
    tolerance.
    """

    check: Check
    found: dict[str, Any]
    passed: bool

    def line(self) -> str:
        """One line for a report."""
        return (
            f"{self.check.of}: {self.check.claim}: expected {self.check.expect}, found {self.found}"
        )


def shared_folder() -> Path:
    """The project's shared/ folder: beside the package in a checkout, inside it in the browser."""
    inside = Path(__file__).parents[1] / "_shared"
    return inside if inside.is_dir() else Path(__file__).parents[2] / "shared"


def read_checks(chapter: str) -> list[Check]:
    """The checks of one chapter; one that has no cards yet has none.

    Raises UnknownChapter, FileNotFoundError where the data are missing, ValueError for a row that
    breaks the rules.
    """
    if chapter not in CHAPTERS:
        raise UnknownChapter(chapter)
    return parse_checks(shared_text("checks", f"{chapter}.toml")) if chapter in chapters() else []


def parse_checks(text: str) -> list[Check]:
    """Checks from the text of a file."""
    checks = []
    for row in tomllib.loads(text)["check"]:
        expect = row["expect"] if isinstance(row["expect"], dict) else {"": row["expect"]}
        check = Check(**(row | {"expect": expect, "read": str(row.get("read", ""))}))
        if check.kind not in KINDS:
            raise ValueError(f"check of {check.of}: unknown kind {check.kind}")
        if check.kind == "published" and not (check.source and check.where):
            raise ValueError(
                f"check of {check.of}: a published row names its source and where in it"
            )
        checks.append(check)
    return checks


def run_check(check: Check) -> Outcome:
    """Run one check."""
    found = _card_results(check) if check.is_card else {"": _call(check)}
    passed = all(
        _holds(found[name], value, check.tolerance) for name, value in check.expect.items()
    )
    return Outcome(check, {name: found[name] for name in check.expect}, passed)


def _holds(found: Any, expected: Any, tolerance: float) -> bool:
    """Whether a number lies within the tolerance, or a word or day is the one expected."""
    if isinstance(expected, (str, date)):
        return bool(found == expected)
    # A tolerance is half a unit of the last printed digit; the last bits of a float must not
    # decide.
    return bool(abs(found - expected) <= tolerance * (1 + 1e-9))


def _call(check: Check) -> Any:
    module, _, function = check.of.rpartition(".")
    return getattr(import_module(f"fibercalc.{module}"), function)(**check.given)


def _card_results(check: Check) -> dict[str, Any]:
    outcome = work_card(
        find_card(check.of),
        {name: str(text) for name, text in check.given.items()},
        named=check.given,
    ).outcome
    found = {}
    for name in check.expect:
        result, _, sign = name.partition(" ")  # "length yd" asks for the value in yards
        value = outcome.value(result)
        found[name] = (
            outcome.found[result].result.quantity.unit(sign).from_base(value) if sign else value
        )
    return found
