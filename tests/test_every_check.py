"""The worked examples of shared/checks: each holds, each can fail, and a formula that is 1 % off is caught."""

import tomllib
from importlib import import_module

import pytest

from fibercalc.core.card import CHAPTERS
from fibercalc.core.checks import read_checks, run_check, shared_folder
from fibercalc.core.registry import all_cards
from fibercalc.sources import all_sources

CHECKS = [
    (chapter, number, check)
    for chapter in CHAPTERS
    for number, check in enumerate(read_checks(chapter), 1)
]
every_check = pytest.mark.parametrize(
    "check",
    [check for _, _, check in CHECKS],
    ids=[f"{chapter}-{number}-{check.of}" for chapter, number, check in CHECKS],
)


def test_there_are_checks_for_every_chapter_with_cards():
    assert {card.chapter for card in all_cards()} <= {chapter for chapter, _, _ in CHECKS}


@every_check
def test_the_worked_example_holds(check):
    outcome = run_check(check)
    assert outcome.passed, outcome.line()


def test_every_source_is_known_and_every_kind_is_honest():
    for _, _, check in CHECKS:
        assert check.claim and check.tolerance > 0, check.of
        if check.source:
            assert check.source in all_sources(), check.source
        if check.kind == "published":
            assert check.status in ("read", "secondary", "memory"), check.claim
            source = all_sources()[check.source]
            assert not (source.how == "memory" and check.status == "read"), (
                f"{check.source} is from memory"
            )


def test_no_tolerance_lets_everything_pass():
    """A row that says nothing of why it is loose holds its number to a hundredth, or to the half unit of a last printed digit."""
    loose = [
        f"{check.of}: {check.claim}"
        for _, _, check in CHECKS
        for value in check.expect.values()
        if not check.because
        and check.tolerance > max(0.01 * abs(value), 0.5 * _last_digit(value)) * (1 + 1e-9)
    ]
    assert not loose, loose


def _last_digit(value: float) -> float:
    """One of the last digit that a number is written with."""
    return 10.0 ** -len(repr(value).partition(".")[2]) if "." in repr(value) else 1.0


def test_no_row_is_written_twice():
    for path in sorted((shared_folder() / "checks").glob("*.toml")):
        rows = [
            (row["of"], str(row["given"]), str(row["expect"]))
            for row in tomllib.loads(path.read_text("utf-8"))["check"]
        ]
        assert len(set(rows)) == len(rows), path.name


FUNCTIONS = sorted({check.of for _, _, check in CHECKS if not check.is_card})


@pytest.mark.parametrize("name", FUNCTIONS)
def test_a_result_one_percent_off_is_caught(name, monkeypatch):
    """Some row that is not a regression row must fail when the function's result is scaled by 1.01 (a whole number: is one more)."""
    module, _, function = name.rpartition(".")
    home = import_module(f"fibercalc.{module}")
    original = getattr(home, function)

    def off(*args, **kwargs):
        result = original(*args, **kwargs)
        return result + 1 if isinstance(result, int) else result * 1.01

    monkeypatch.setattr(home, function, off)
    rows = [check for _, _, check in CHECKS if check.of == name and check.kind != "regression"]
    assert any(not run_check(check).passed for check in rows), f"{name}: no row notices 1 %"
