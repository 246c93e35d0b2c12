"""The worked examples of shared/checks: each holds, each can fail, and a formula that is 1 % off is caught."""

import tomllib
from datetime import date
from importlib import import_module

import pytest

from fibercalc.core.card import CHAPTERS, TEXT, Result
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
        words = all(isinstance(value, (str, date)) for value in check.expect.values())
        assert check.claim and (check.tolerance == 0 if words else check.tolerance > 0), check.of
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
        and not isinstance(value, (str, date))
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


# Results that need no row worked elsewhere: each is the source line of a published limit, with its
# body and the date on which it was read. No working leads to it.
SOURCE_LINES = {
    ("acid-dilution", "limit"),
    ("room-air", "limit"),
    ("hazard-label", "limit"),
    ("scald", "limit"),
    ("drain-check", "limit"),
    ("mordant-limit", "limit"),
    ("lift", "limit"),
}
RESULTS = {
    (card.id, name): part
    for card in all_cards()
    for name, part in card.case.parts_by_name.items()
    if isinstance(part, Result)
}


def test_only_source_lines_are_excepted():
    """An exception is written here by its name, and no number or day is one."""
    assert {name for name, part in RESULTS.items() if part.of == TEXT and name[1] == "limit"} == (
        SOURCE_LINES
    )


@pytest.mark.parametrize("card", sorted({card for card, _ in RESULTS}))
def test_every_result_of_a_card_is_worked_elsewhere_too(card):
    """A regression row repeats the program; a row of another kind can find it wrong."""
    worked = {
        (check.of, name.split()[0])
        for _, _, check in CHECKS
        if check.is_card and check.kind != "regression"
        for name in check.expect
    }
    results = {result for result in RESULTS if result[0] == card} - SOURCE_LINES
    assert not sorted(name for _, name in results - worked)
