"""Work a card: read its inputs, find the answer, carry the roughness, and gather everything that
is shown.
"""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date, timedelta
from functools import cached_property
from math import ceil, exp, floor, isfinite
from typing import Any

from .answer import Answer, Picture, Table
from .card import DATE, Card, Case, Caution, Chance, Result
from .case import found_in, model_of, recording, steps_of
from .color import Color
from .entry import Reading
from .lent import still_lent, still_line
from .outcome import Found, Outcome
from .problem import BadInputs, OutOfRange, Problem, Refused
from .reading import Given, read_inputs, with_changed
from .settings import Settings
from .spread import NORMAL_95, Parts
from .steps import Step
from .units import COUNT, MONEY, PERCENT, Quantity
from .written import written

COLOR_AXES = ("lightness", "a", "b")


class Worked:
    """One card worked once: its outcome, steps and everything that is shown. Made by work_card."""

    def __init__(self, card: Card, given: Given, outcome: Outcome[Any], settings: Settings) -> None:
        self.card, self.given, self.outcome, self.settings = card, given, outcome, settings

    @cached_property
    def steps(self) -> list[Step]:
        """The steps of the working: the case is worked once more with numbers that remember."""
        case = recording(self.card.case)(self.given.values())
        self.card.answer(case)
        return steps_of(case)

    def sentences(self) -> tuple[str, ...]:
        """The answer in one or two plain sentences, the first one large."""
        said = self.card.say(self.outcome)
        return (said,) if isinstance(said, str) else tuple(text for text in said if text)

    def pictures(self) -> list[Picture]:
        return [
            picture for draw in self.card.pictures if (picture := draw(self.outcome)) is not None
        ]

    def tables(self) -> list[Table]:
        return [table for make in self.card.tables if (table := make(self.outcome)) is not None]

    def cautions(self) -> list[Caution]:
        return [
            caution
            for caution in self.card.cautions
            if caution.when is None or caution.when(self.outcome)
        ]

    def still(self) -> str:
        """One line that names what is still the example's though something else is hers; "" where
        nothing is.
        """
        return still_line(self.given)

    def notes(self) -> list[str]:
        return self.given.notes + (list(self.card.notes(self.outcome)) if self.card.notes else [])

    @cached_property
    def borrowed(self) -> set[str]:
        """Sums of money and days that come out otherwise when what is still the example's is
        another: so they are no more hers than that.
        """
        lent = [
            reading
            for reading in still_lent(self.given)
            if isinstance(reading.value, (int, float, date))
        ]
        results = {
            name for name, found in self.outcome.found.items() if found.result.of in (MONEY, DATE)
        }
        if not lent or not results:
            return set()
        moved = {
            each.name: (
                each.value
                + (
                    timedelta(days=7)
                    if isinstance(each.value, date)
                    else max(1, abs(each.value) // 8)
                )
            )
            for each in lent
        }
        try:
            other = _run(self.card, with_changed(self.given.values(), moved)).values
        except (OutOfRange, Refused, ZeroDivisionError):
            return results
        return {
            name for name in results if name not in other or other[name] != self.outcome.value(name)
        }

    def working(self) -> list[dict[str, Any]]:
        return written(self.steps, self.settings)


def work_card(
    card: Card,
    texts: dict[str, str],
    settings: Settings | None = None,
    units: dict[str, str] | None = None,
    exact: dict[str, str] | None = None,
    named: Iterable[str] | None = None,
) -> Worked:
    """Work a card from texts as typed; named are those that are hers whatever they hold. Raises
    BadInputs with one line for each bad input.
    """
    settings = settings or Settings()
    return work_given(read_inputs(card, texts, settings, units, exact, named=named), settings)


def work_given(given: Given, settings: Settings) -> Worked:
    """Work a card from inputs already read. Raises BadInputs."""
    card = given.card
    if given.problems:
        raise BadInputs(given.problems)
    try:
        values = given.values()
        run = _run(card, values)
    except Refused as refusal:
        raise BadInputs(
            [Problem(refusal.input, _given_text(given, refusal.input), "", refusal.text)]
        ) from None
    except OutOfRange as error:
        raise BadInputs([_out_of_range(given, error)]) from None
    parts = _parts(given, values, run)
    found = {
        name: _found(card.result_by_name[name], value, parts.get(name))
        for name, value in run.values.items()
    }
    for result in card.results:
        if best := _narrowest(result, found):
            found[result.name] = replace(best, result=result, best=best.result.name)
    outcome: Outcome[Any] = Outcome(card, given, found, settings, run.case)
    for result in card.results:
        if result.decided is not None and (value := result.decided(outcome)) is not None:
            found[result.name] = Found(result, value, value, value, Parts())
    for result in card.results:
        if result.chance is not None and result.chance.of.name in found:
            found[result.name] = _chance(result, result.chance, outcome)
    outcome.found = {
        result.name: found[result.name] for result in card.results if result.name in found
    }
    return Worked(card, given, outcome, settings)


class _Run:
    """What answering once gave: the case, its results by name in base units, the model's own
    errors and bands, and what is settled.
    """

    def __init__(self, case: Case) -> None:
        self.case, self.values = case, found_in(case)
        self.errors, self.bands, self.settled = model_of(case)


def _run(card: Card, values: dict[str, Any], settled: dict[str, Any] | None = None) -> _Run:
    case = card.case(values, settled)
    card.answer(case)
    return _Run(case)


def _given_text(given: Given, name: str) -> str:
    reading = given.readings.get(name)
    return reading.given if reading else ""


def _out_of_range(given: Given, error: OutOfRange) -> Problem:
    reading = given.readings.get(error.name)
    label = reading.input.label if reading else error.name.replace("_", " ").capitalize()
    if error.reason:
        return Problem(error.name, _given_text(given, error.name), "", f"{label}: {error.reason}.")
    ends = [f"{edge:g}" for edge in (error.low, error.high) if edge is not None]
    allowed = (
        " to ".join(ends)
        if len(ends) == 2
        else (
            f"{'more' if error.high is None else 'less'} than {ends[0]}"
            if ends
            else "another value"
        )
    )
    return Problem(
        error.name,
        f"{error.given:g}",
        allowed,
        f"{label}: these inputs together lead to {error.given:.4g}; it must be {allowed}.",
    )


def _found(result: Result[Any], value: Any, parts: Parts | None) -> Found:
    if isinstance(value, (str, date)):
        return Found(result, value)
    if not isfinite(value):
        raise OutOfRange(result.name, value)
    parts = parts or Parts()
    down = parts.half_width("down")
    low, high = value - down, value + (down if parts.up == parts.down else parts.half_width("up"))
    if result.product and value > 0:
        factors = parts.as_factors(value)
        low, high = value * exp(-factors.half_width("down")), value * exp(factors.half_width("up"))
    if result.floor is not None:
        low = min(max(low, result.floor), value)
    if result.of is COUNT:
        low, high = floor(low), ceil(high)
    return Found(result, value, low, high, parts)


def _narrowest(result: Result[Any], found: dict[str, Found]) -> Found | None:
    ways = [found[way.name] for way in result.best_of if way.name in found]
    return min(ways, key=lambda way: way.ends[1] - way.ends[0]) if ways else None


def _chance(result: Result[Any], chance: Chance, outcome: Outcome[Any]) -> Found:
    if chance.by is not None:
        share = chance.by(outcome)
    else:
        below = outcome.chance_below(chance.of, chance.edge(outcome))
        share = below if chance.below is not None else 1 - below
    return Found(result, 100 * share, 100 * share, 100 * share, Parts())


def _parts(given: Given, given_values: dict[str, Any], run: _Run) -> dict[str, Parts]:
    """For each numeric result, what every rough input and the model itself lend to its range."""
    card, values = given.card, run.values
    numeric = {
        name: value
        for name, value in values.items()
        if name in card.result_by_name and isinstance(value, (int, float))
    }
    parts = {name: Parts() for name in numeric}
    for members in _instruments(given).values():
        ends = [
            _nudged(given, given_values, members, direction, numeric, run.settled)
            for direction in (-1, 1)
        ]
        for name, value in numeric.items():
            shifts = [end[name] - value for end in ends if end.get(name) is not None]
            if shifts:
                parts[name].down.append(max(0.0, *(-shift for shift in shifts)))
                parts[name].up.append(max(0.0, *shifts))
    for name, (low, high) in run.bands.items():
        if name in numeric:
            parts[name].down.append(max(0.0, numeric[name] - low))
            parts[name].up.append(max(0.0, high - numeric[name]))
    for name, value in numeric.items():
        half_width = _model_error(card.result_by_name[name], value, run)
        if half_width:
            parts[name].normal.append(half_width / NORMAL_95)
    return parts


def _model_error(result: Result[Any], value: float, run: _Run) -> float:
    if result.name in run.errors:
        return run.errors[result.name]
    if not result.error:
        return 0.0
    if result.error.endswith("%") and result.of is not PERCENT:
        return abs(value) * float(result.error[:-1]) / 100
    number, _, sign = result.error.partition(" ")
    return float(number) * (
        result.of.unit(sign).factor if sign and isinstance(result.of, Quantity) else 1.0
    )


def _instruments(given: Given) -> dict[str, list[tuple[str, str]]]:
    """Rough inputs in groups that move together; each member is (name, what moves)."""
    groups: dict[str, list[tuple[str, str]]] = {}
    for name, reading in given.readings.items():
        if not reading.asked or reading.value is None or not reading.rough:
            continue
        if isinstance(reading.value, Color):
            for axis in COLOR_AXES:
                groups[f"{name} {axis}"] = [(name, axis)]
        else:
            groups.setdefault(
                f"by {reading.input.instrument}" if reading.input.instrument else name, []
            ).append((name, ""))
    return groups


def _nudged(
    given: Given,
    given_values: dict[str, Any],
    members: list[tuple[str, str]],
    direction: int,
    numeric: dict[str, Any],
    decided: dict[str, Any],
) -> dict[str, Any]:
    """The results with one group of inputs at an edge of its roughness; nothing for results that
    cannot be found there.
    """
    changed = {}
    for name, axis in members:
        reading = given.readings[name]
        if axis:
            changed[name] = reading.value.moved(axis, direction * reading.rough)
            continue
        unit, edges = reading.input.work_unit, reading.input.edges
        low, high = (
            sorted(unit.from_base(edge) for edge in edges)
            if not unit.inverse or edges[0] > 0
            else (0.0, float("inf"))
        )
        changed[name] = min(max(reading.value + direction * reading.rough, low), high)
    try:
        moved = _run(given.card, with_changed(given_values, changed), decided).values
    except (OutOfRange, Refused, ZeroDivisionError):
        return {}
    return {
        name: moved.get(name)
        for name in numeric
        if isinstance(moved.get(name), (int, float)) and isfinite(moved[name])
    }


def answer_of(worked: Worked, version: str) -> Answer:
    """The whole answer as the contract has it."""
    outcome, card = worked.outcome, worked.card
    inputs = {
        name: _input_json(reading)
        for name, reading in worked.given.readings.items()
        if reading.asked
    }
    results = {}
    for name, found in outcome.found.items():
        results[name] = _result_json(outcome, name, found)
    return Answer(
        card.id,
        version,
        inputs,
        " ".join(worked.sentences()),
        results,
        worked.working(),
        {"kind": card.basis.kind, "text": card.basis.text},
        [source.id for source in card.sources],
        [f"{caution.title} {caution.text}" for caution in worked.cautions()],
        [line for line in (worked.still(), *worked.notes()) if line],
        [picture.as_json() for picture in worked.pictures()],
        [table.as_json() for table in worked.tables()],
    )


def _input_json(reading: Reading) -> dict[str, Any]:
    data: dict[str, Any] = {
        "given": reading.given,
        "understood": reading.echo.removeprefix("read as ") or reading.text,
    }
    if reading.amount is not None:
        unit = reading.amount.unit
        data |= {"value": unit.from_base(reading.amount.value), "unit": unit.sign}
    elif reading.value is not None:
        data |= {"value": reading.text, "unit": ""}
    return data


def _result_json(outcome: Outcome[Any], name: str, found: Found) -> dict[str, Any]:
    if not isinstance(found.value, (int, float)):
        return {
            "label": outcome.label(name),
            "value": str(found.value),
            "unit": "",
            "low": None,
            "high": None,
            "text": outcome.text(name),
        }
    unit = outcome.units(name)[0]
    ends = sorted(
        unit.from_base(end) if not (unit.inverse and end == 0) else 0.0
        for end in (found.ends[0], found.value, found.ends[1])
    )
    value = unit.from_base(found.value) if not (unit.inverse and found.value == 0) else 0.0
    span = outcome.span(name)
    text = outcome.both(name) + (f" ({span})" if span else "")
    return {
        "label": outcome.label(name),
        "value": value,
        "unit": unit.sign,
        "low": ends[0],
        "high": ends[-1],
        "text": text,
    }
