"""Every range that a formula's docstring names is kept: its ends are taken, what lies past them is refused.

The other arguments are those of a call that a card makes, so that nothing but the one argument is out of the ordinary.
"""

import inspect
import re
import sys
from functools import cache
from types import FunctionType

import pytest

from fibercalc.core.problem import BadInputs, OutOfRange
from fibercalc.core.work import answer_of, work_card
from tests.cards import BOOK
from tests.mutate.patched import forget_what_is_cached
from tests.states import own_states_of, states_of
from tests.test_every_check import CHECKS
from tests.test_every_formula import FORMULAS

NUMBER = r"-?\d[\d,]*(?:\.\d+)?(?:e\d+)?"
RANGE = re.compile(
    rf"(?:(?P<above>above|over) )?(?P<low>{NUMBER}) to (?P<under>under )?(?P<high>{NUMBER})(?! to)"
    rf"|(?P<least>{NUMBER}) or more"
    rf"|(?:above|over) (?P<past>{NUMBER})(?P<most> and (?:up to|at most) (?P<top>{NUMBER}))?"
)
SPOKEN = {function.values[0]: function.id for function in FORMULAS}


@cache
def calls() -> dict[str, dict[str, object]]:
    """For each formula the arguments of one call: of a worked example, else of the first card that makes it."""
    found: dict[str, dict[str, object]] = {}
    wanted = {each.values[0] for each in ranges()}
    by_code = {inspect.unwrap(one).__code__: (SPOKEN[one], one) for one in wanted}

    arguments = {SPOKEN[one]: len(inspect.signature(one).parameters) for one in wanted}

    def note(frame, event, _):
        if event == "call" and frame.f_code in by_code:
            name, function = by_code[frame.f_code]
            if name not in found:
                found[name] = {
                    one: frame.f_locals[one] for one in inspect.signature(function).parameters
                }

    for _, _, check in CHECKS:
        if not check.is_card and len(check.given) == arguments.get(check.of):
            found.setdefault(check.of, dict(check.given))
    forget_what_is_cached()
    # The examples first: with them most are found.
    states = [(card, {}) for card in BOOK]
    states += [(card, state) for card in BOOK for state in own_states_of(card)]
    states += [(card, state) for card in BOOK for state in states_of(card)]
    for card, state in states:
        if found.keys() >= {SPOKEN[one] for one in wanted}:
            break
        sys.setprofile(note)
        try:
            answer_of(work_card(card, state), "")
        except BadInputs:
            pass
        finally:
            sys.setprofile(None)
    for _, _, check in CHECKS:
        if not check.is_card:  # the rest is called with what it takes when nothing is said
            found.setdefault(check.of, dict(check.given))
    return found


@cache
def ranges() -> list:
    """Each argument that is a number with its range: (function, argument, lowest, highest, whether the ends belong to it)."""
    found = []
    for function, name in SPOKEN.items():
        text = inspect.getdoc(function) or ""
        for argument, one in inspect.signature(function).parameters.items():
            if str(one.annotation) not in ("float", "int", "<class 'float'>", "<class 'int'>"):
                continue
            line = re.search(rf"^{argument} {{2,}}(.+(?:\n {{3,}}.+)*)", text, re.MULTILINE)
            match = RANGE.search(" ".join(line[1].split())) if line else None
            if match:
                found.append(
                    pytest.param(function, argument, *_ends(match), id=f"{name}-{argument}")
                )
    return found


def _ends(match: re.Match) -> tuple[float | None, float | None, bool, bool]:
    def number(name: str) -> float | None:
        return float(match[name].replace(",", "")) if match[name] else None

    low = next((number(name) for name in ("low", "least", "past") if match[name]), None)
    high = number("high") if match["high"] else number("top")
    return low, high, not (match["above"] or match["past"]), not match["under"]


def _refused(function: FunctionType, given: dict[str, object]) -> str:
    """The name of what is refused, here or in a function that it is handed on to; nothing where all is taken, a dash where there is
    another reason than the argument's own range."""
    try:
        function(**given)
    except OutOfRange as error:
        return "-" if error.reason else error.name
    return ""


@pytest.mark.parametrize("function, argument, low, high, with_low, with_high", ranges())
def test_what_lies_past_the_ends_is_refused(function, argument, low, high, with_low, with_high):
    given = calls().get(SPOKEN[function])
    assert given is not None, "no card and no worked example calls it"
    whole = inspect.signature(function).parameters[argument].annotation in (int, "int")
    for end, inside, way in ((low, with_low, -1), (high, with_high, 1)):
        if end is None:
            continue
        step = 1 if whole else max(abs(end) * 1e-3, 1e-6)
        past = end + way * step if inside else end
        past = int(past) if whole else past
        assert _refused(function, given | {argument: past}), f"{past:g} is taken"
        if inside:
            at = int(end) if whole else end
            assert _refused(function, given | {argument: at}) != argument, f"{at:g} is refused"
