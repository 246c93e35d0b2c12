"""Faults of the kinds that once went unnoticed, each put into the running code: the frozen answers or the worked examples of its card notice.

`make mutate` tries a larger sample, with all native tests.
"""

import tomllib
from pathlib import Path

import pytest

from fibercalc.core.checks import run_check
from fibercalc.core.registry import find_card
from tests.answers import file_of, written
from tests.mutate.faults import ROOT
from tests.mutate.patched import Loaded, forget_what_is_cached
from tests.test_every_check import CHECKS

FAULTS = tomllib.loads((Path(__file__).parent / "mutate" / "fixed.toml").read_text("utf-8"))[
    "fault"
]


def noticed(card_id: str) -> bool:
    """Whether a card answers otherwise than was accepted, or a worked example of its own does not hold."""
    card = find_card(card_id)
    try:
        same = written(card) == file_of(card).read_text("utf-8")
        rows = [check for _, _, check in CHECKS if check.of == card_id]
        return not same or not all(run_check(check).passed for check in rows)
    except Exception:
        return True


@pytest.mark.sweep
@pytest.mark.parametrize(
    "fault", FAULTS, ids=[f"{each['card']}: {each['kind']}" for each in FAULTS]
)
def test_a_fault_that_once_went_unnoticed_is_noticed(fault):
    path = ROOT / fault["path"]
    source = path.read_text("utf-8")
    assert source.count(fault["before"]) == 1, "the fault no longer fits its place"
    assert not noticed(fault["card"]), "it differs before anything is broken"
    loaded = Loaded(ROOT / "fibercalc")
    with loaded.changed(path, source.replace(fault["before"], fault["after"])):
        forget_what_is_cached()
        assert noticed(fault["card"])
    forget_what_is_cached()
    assert not noticed(fault["card"])
