"""One case of a card: what was given, and what follows from it, each by its name.

A card declares its case as a class of parts: `Input` and `Rows` are what is asked, `Result` what
is answered, `Between` a number on the way, `Plain` whatever else the words and pictures need. The
card's `answer` takes a case and assigns to it. Worked for its working, the numbers are traced: a
value that is assigned becomes a step, its formula is how it came about, and what follows knows it
by its name.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any, TypeVar

from .asked import Input, Rows
from .declared import declared
from .part import Part, T, parts_of
from .result import Result
from .steps import LookedUp, Searched, Solved, Step
from .traced import Leaf, Traced, tree_of
from .units import Quantity, Unit

P = TypeVar("P")


@declared
class Between(Part[T]):
    """A number on the way to a result: unit is the one it is worked in (the base one, unless
    named).

    fixed  a whole number settled on from the values as given: it stays while roughness is
           carried, so that what follows from it is the spread of one plan and not of changed
           plans
    """

    of: Quantity
    label: str
    unit: str = ""
    fixed: bool = False
    name: str = ""

    @property
    def work_unit(self) -> Unit:
        return self.of.unit(self.unit) if self.unit else self.of.base


@declared
class Plain(Part[T]):
    """Anything else that words, tables and pictures need; fixed as a number between may be."""

    fixed: bool = False
    name: str = ""


@declared
class Many(Part["dict[str, float]"]):
    """Numbers on the way, one for each of several things: `case.mean["acetic"] = ...`. "{}" in
    label is what it is one of.
    """

    of: Quantity
    label: str
    unit: str = ""
    name: str = ""

    @property
    def work_unit(self) -> Unit:
        return self.of.unit(self.unit) if self.unit else self.of.base


class Case:
    """What was given to a card and what follows. A name that its class does not declare is an
    error where it is written.
    """

    inputs: tuple[Input[Any] | Rows[Any], ...] = ()
    results: tuple[Result[Any], ...] = ()
    parts_by_name: dict[str, Part[Any]] = {}

    def __init_subclass__(cls) -> None:
        cls.inputs = tuple(parts_of(cls, (Input, Rows)))
        cls.results = tuple(parts_of(cls, Result))
        cls.parts_by_name = {part.name: part for part in parts_of(cls, Part)}
        if any(isinstance(each, Part) for each in vars(cls).values()):  # no copy that records
            _check(cls)

    def __init__(self, given: dict[str, Any], settled: dict[str, Any] | None = None) -> None:
        """given: values by input name, without those that were not asked. settled: what another
        case has settled on already.
        """
        values = vars(self)
        values.update(given)
        for name, part in self.parts_by_name.items():
            if (
                isinstance(part, Rows) and name in given
            ):  # a row holds what is found for it: each case has its own
                values[name] = [type(row)(vars(row)) for row in given[name]]
            elif isinstance(part, Many):
                values[name] = {}
        values["_settled"] = {} if settled is None else settled
        values["_errors"], values["_bands"] = {}, {}

    def __setattr__(self, name: str, value: Any) -> None:
        part = self.parts_by_name.get(name)
        if not isinstance(part, (Result, Between, Plain)):
            raise AttributeError(f"{type(self).__name__} declares no {name} to be found")
        if part.fixed:
            value = vars(self)["_settled"].setdefault(name, value)
        vars(self)[name] = value

    def has(self, part: Part[Any]) -> bool:
        """Whether it was asked, or has been found."""
        return vars(self).get(part.name) is not None

    def maybe(self, part: Part[P]) -> P | None:
        """Its value, or None where it was not asked or found."""
        value: P | None = vars(self).get(part.name)
        return value

    def settled(self, part: Part[P]) -> P | None:
        """What an earlier run of it has settled on for a fixed part that takes long to find; None
        in the first.
        """
        value: P | None = vars(self)["_settled"].get(part.name)
        return value

    def error(self, result: Part[Any], half_width: float) -> None:
        """The model's own error in one result as a 95 % half-width, in the result's base unit,
        where it depends on the case.
        """
        vars(self)["_errors"][result.name] = float(half_width)

    def band(self, result: Part[Any], *ends: float) -> None:
        """The model's own band around one result, in its base unit: its ends lie at unequal
        distances, like a uniform's.
        """
        vars(self)["_bands"][result.name] = (float(min(ends)), float(max(ends)))


def _check(case: type[Case]) -> None:
    """Raises ValueError for the first part that speaks of what is not there."""
    for part in (*case.inputs, *case.results):
        for wrong in _wrong_in(part, case.parts_by_name):
            raise ValueError(f"{case.__name__}.{part.name}: {wrong}")


def _wrong_in(part: Any, known: dict[str, Part[Any]]) -> Iterator[str]:
    """What a part speaks of and is not there: a part of the case, a value of a choice, a place
    from which it could be filled.
    """
    fields = part.fields if isinstance(part, Rows) else ()
    known = known | {each.name: each for each in fields}
    for name in sorted(part.names_others() - set(known)):
        yield f"it speaks of {name or 'a part without a name'}, which is not declared"
    if isinstance(part, Result):
        return
    for each in (part, *fields):
        for other, values in each.when.items():
            asked = known[other.name]
            for value in values:
                if not (isinstance(asked, Input) and asked.can_be(value)):
                    yield f"it is asked when {other.name} is {value}, which it cannot be"
    if why := part.misplaced():
        yield why


def case_of(parts: Iterable[Part[Any]]) -> type[Case]:
    """The class of a case with these parts, for a form that is put together, not written down."""
    return type("Form", (Case,), {part.name: part for part in parts})


def found_in(case: Case) -> dict[str, Any]:
    """The results that a case has, numbers as plain ones in base units."""
    values = vars(case)
    found: dict[str, Any] = {}
    for result in case.results:
        value = values.get(result.name)
        if isinstance(value, (int, float)):
            found[result.name] = result.work_unit.to_base(value) if result.unit else value
        elif value is not None:
            found[result.name] = value
    return found


def model_of(case: Case) -> tuple[dict[str, float], dict[str, tuple[float, float]], dict[str, Any]]:
    """What a case says of its model: errors, bands, and what it has settled on."""
    return vars(case)["_errors"], vars(case)["_bands"], vars(case)["_settled"]


def steps_of(case: Case) -> list[Step]:
    """The working that a recorded case has written down."""
    steps: list[Step] = vars(case)["_steps"]
    return steps


def recording(kind: type[Case]) -> type[Case]:
    """The same class of case, whose numbers are traced and whose assignments are steps."""
    return type(kind.__name__, (_Recorded, kind), {})


class _Recorded:
    """A case that writes down its working."""

    parts_by_name: dict[str, Part[Any]]

    def __init__(self, given: dict[str, Any], settled: dict[str, Any] | None = None) -> None:
        super().__init__(given, settled)  # type: ignore[call-arg]
        values = vars(self)
        steps: list[Step] = []
        values["_steps"] = steps
        for name, part in self.parts_by_name.items():
            if isinstance(part, Rows) and name in given:
                recorded = type(part.row.__name__, (_RecordedRow, part.row), {})
                values[name] = [
                    recorded(vars(row), part.one, number, steps)
                    for number, row in enumerate(given[name], 1)
                ]
            elif isinstance(part, Many):
                values[name] = _RecordedMany(part, steps)
            elif isinstance(part, Input) and part.measured and given.get(name) is not None:
                values[name] = Traced(given[name], Leaf(_words(name), given[name], part.work_unit))

    def __setattr__(self, name: str, value: Any) -> None:
        super().__setattr__(name, value)
        values, part = vars(self), self.parts_by_name[name]
        if isinstance(part, (Result, Between)) and _is_number(value):
            values[name] = _noted(values["_steps"], part, value, part.label, _words(name))


class _RecordedRow:
    """A row of a case that writes down its working."""

    def __init__(self, values: dict[str, Any], one: str, number: int, steps: list[Step]) -> None:
        super().__init__(values)  # type: ignore[call-arg]
        mine = vars(self)
        title = values.get("name")
        mine["_one"], mine["_steps"] = f"{one} {number}", steps
        mine["_title"] = (
            title if isinstance(title, str) and title else f"{one.capitalize()} {number}"
        )
        for part in parts_of(type(self), Input):
            if part.measured and values.get(part.name) is not None:
                mine[part.name] = Traced(
                    values[part.name], self._leaf(part.name, values[part.name], part.work_unit)
                )

    def _leaf(self, name: str, value: float, unit: Unit) -> Leaf:
        words = _words(name)
        return Leaf(f"{words} of {vars(self)['_one']}", value, unit, f"all {words}")

    def __setattr__(self, name: str, value: Any) -> None:
        super().__setattr__(name, value)
        part = getattr(type(self), name)
        if isinstance(part, Between) and _is_number(value):
            mine = vars(self)
            label = f"{mine['_title']}: {part.label[0].lower()}{part.label[1:]}"
            mine[name] = _noted(
                mine["_steps"],
                part,
                value,
                label,
                f"{_words(name)} of {mine['_one']}",
                f"all {_words(name)}",
            )


class _RecordedMany(dict[str, float]):
    """Numbers on the way of a case that writes down its working."""

    def __init__(self, part: Many, steps: list[Step]) -> None:
        super().__init__()
        self.part, self.steps = part, steps

    def __setitem__(self, key: str, value: float) -> None:
        words = f"{_words(self.part.name)}, {key}"
        super().__setitem__(
            key,
            _noted(
                self.steps,
                self.part,
                value,
                self.part.label.format(key),
                words,
                f"all {_words(self.part.name)}",
            ),
        )


def _words(name: str) -> str:
    return name.replace("_", " ")


def _is_number(value: Any) -> bool:
    return isinstance(value, (int, float)) and not isinstance(value, bool)


def _noted(
    steps: list[Step], part: Any, value: float, label: str, words: str, column: str = ""
) -> Traced:
    """A value that got a name: what follows knows it by that. How it was made is a step, unless
    nothing is known of it.
    """
    leaf = Leaf(
        words, int(value) if isinstance(value, int) else float(value), part.work_unit, column
    )
    if isinstance(value, LookedUp):
        steps.append(Step("looked up", part, label, leaf, look=value.look))
    elif isinstance(value, Solved):
        steps.append(
            Step("solved", part, label, leaf, tree_of(value.residual(Traced(value, leaf))))
        )
    elif isinstance(value, Searched):
        kept = value.kept(Traced(value, leaf))
        steps.append(Step("searched", part, label, leaf, tree_of(value.bound()), kept=kept))
    elif isinstance(value, Traced) and not isinstance(value.tree, Leaf):
        steps.append(Step("formula", part, label, leaf, value.tree))
    return Traced(value, leaf)
