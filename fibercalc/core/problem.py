"""What can go wrong with an input, as values that carry their facts.

A formula raises OutOfRange; reading an input makes a Problem; the command line and the page show
the same one line.
"""

from dataclasses import dataclass
from typing import Any

from .part import HasName, name_of


class OutOfRange(ValueError):
    """A formula was asked outside the range it holds for.

    name is the argument, given the value, low and high the allowed edges (None where there is no
    edge); reason is an optional plain sentence used instead of the standard line.
    """

    def __init__(
        self,
        name: str,
        given: float,
        low: float | None = None,
        high: float | None = None,
        reason: str = "",
    ):
        self.name, self.given, self.low, self.high, self.reason = name, given, low, high, reason
        super().__init__(reason or f"{name}: {given:g} given; allowed {_edges(low, high)}")


def _edges(low: float | None, high: float | None) -> str:
    if low is None:
        return "a finite number" if high is None else f"up to {high:g}"
    return f"{low:g} and up" if high is None else f"{low:g} to {high:g}"


def require(
    name: str,
    given: float,
    low: float | None = None,
    high: float | None = None,
    above: float | None = None,
) -> None:
    """Raise OutOfRange unless low <= given <= high (and given > above, where an edge itself is
    not allowed).
    """
    finite = given == given and abs(given) != float("inf")
    if (
        not finite
        or (low is not None and given < low)
        or (high is not None and given > high)
        or (above is not None and given <= above)
    ):
        raise OutOfRange(name, given, low if above is None else above, high)


@dataclass(frozen=True)
class Problem:
    """One bad input: which, what was given, what is allowed; text is the one line shown to a
    person.
    """

    input: str
    given: str
    allowed: str
    text: str

    def as_json(self) -> dict[str, Any]:
        return {
            "input": self.input,
            "given": self.given,
            "allowed": self.allowed,
            "text": self.text,
        }


class BadInputs(ValueError):
    """One or more inputs could not be used; problems holds a Problem for each."""

    def __init__(self, problems: list[Problem]):
        self.problems = problems
        super().__init__("; ".join(problem.text for problem in problems))


class Refused(ValueError):
    """Inputs that are each fine but cannot go together: a card raises this with one plain line
    and the input to change: a part of its case, or its full name.
    """

    def __init__(self, text: str, input: HasName | str = ""):
        self.text, self.input = text, name_of(input)
        super().__init__(text)
