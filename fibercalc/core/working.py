"""The steps of a calculation with the numbers filled in, recorded while the answer is found.

Four kinds of step and no decorative ones: a formula (its text is evaluated again by a test), an equation solved (its residual is
checked), a value looked up (table and row are read again) and a search (the constraints it kept are checked).
"""

from collections.abc import Callable
from dataclasses import dataclass

from .amount import with_sign
from .card import Card, Rows
from .formula import write
from .number import write_plain
from .settings import Settings
from .table import STATUS_WORDS, read_table, status_of
from .units import COUNT, MONEY, NUMBER, Quantity, Unit


@dataclass(frozen=True)
class Step:
    """One step: kind is "formula", "solved", "looked up" or "searched"; text is the formula, equation or bound as declared."""

    kind: str
    name: str
    label: str
    text: str
    value: float
    unit: Unit
    of: Quantity
    look: tuple = ()  # (chapter, table, key column, key, value column)
    kept: tuple[str, ...] = ()
    using: tuple[tuple[str, Callable], ...] = ()  # functions the equation names


class Working:
    """Records steps. One made with another's decisions records none and decides nothing: it only carries roughness."""

    def __init__(self, decided: dict | None = None):
        self.steps: list[Step] = []
        self.errors: dict[str, float] = {}
        self.bands: dict[str, tuple[float, float]] = {}
        self.decisions: dict = {} if decided is None else decided
        self._muted = decided is not None

    def step(self, name: str, formula: str, value: float, of: Quantity = NUMBER, unit: str = "", label: str = "") -> float:
        """A formula in the names of inputs and earlier steps. Returns value, so a step can stand in an assignment."""
        return self._add("formula", name, formula, value, of, unit, label)

    def solved(self, name: str, equation: str, value: float, of: Quantity = NUMBER, unit: str = "", label: str = "", using: tuple[Callable, ...] = ()) -> float:
        """A value found by iteration; equation is the residual, zero at the value (which it calls by name); using are functions it names."""
        return self._add("solved", name, equation, value, of, unit, label, using=tuple((function.__name__, function) for function in using))

    def looked_up(self, name: str, chapter: str, table: str, key_column: str, key: str, column: str, of: Quantity = NUMBER, unit: str = "", label: str = "") -> float:
        """A value read from a published table, which stays the only place it is written."""
        value = read_table(chapter, table).row(key_column, key)[column]
        if value == "":
            raise KeyError(f"{table}: no {column} for {key}")
        return self._add("looked up", name, "", value, of, unit, label, look=(chapter, table, key_column, key, column))

    def searched(self, name: str, value: float, kept: tuple[str, ...], bound: str, of: Quantity = COUNT, unit: str = "", label: str = "") -> float:
        """The best value found by trying; kept are comparisons that hold, bound is a formula no value can beat."""
        return self._add("searched", name, bound, value, of, unit, label, kept=kept)

    def error(self, result: str, half_width: float) -> None:
        """The model's own error in one result as a 95 % half-width, in the result's base unit, where it depends on the case."""
        self.errors[result] = half_width

    def band(self, result: str, low: float, high: float) -> None:
        """The model's own band around one result, in the result's base unit: its ends lie at unequal distances, like a uniform distribution's."""
        self.bands[result] = (min(low, high), max(low, high))

    def decide(self, name: str, value):
        """A whole number settled on from the values as given. It stays fixed while roughness is carried, so that what follows from
        it (what is left, whether the last one is short) is the spread of a plan and not of changed plans."""
        return self.decisions.setdefault(name, value)

    def _add(self, kind, name, text, value, of, unit, label, **more) -> float:
        if not self._muted:
            label = label or name.replace("_", " ").capitalize()
            self.steps.append(Step(kind, name, label, text, value, of.unit(unit) if unit else of.base, of, **more))
        return value


def written_steps(steps: list[Step], card: Card, arguments: dict, settings: Settings) -> list[dict]:
    """The steps as plain data: label, formula in words, formula with the numbers filled in, value with its unit."""
    units = {item.name: item.work_unit for item in card.inputs if not isinstance(item, Rows) and item.measured}
    columns = {f"{item.name}.{each.name}": each for item in card.inputs if isinstance(item, Rows) for each in item.fields}
    values = dict(arguments)

    def plain(name: str) -> str:
        if "[" in name:
            rows, rest = name.split("[")
            number, column = rest.split("].")
            return f"{column.replace('_', ' ')} of {_one(card, rows)} {number}"
        if "." in name:
            rows, column = name.split(".")
            return f"all {column.replace('_', ' ')}"
        return name.replace("_", " ")

    def filled(name: str) -> str:
        if "[" in name:
            rows, rest = name.split("[")
            number, column = rest.split("].")
            return _number(getattr(values[rows][int(number) - 1], column), columns[f"{rows}.{column}"].work_unit, settings)
        if "." in name:
            rows, column = name.split(".")
            unit = columns[f"{rows}.{column}"].work_unit
            return ", ".join(_number(getattr(row, column), unit, settings) for row in values[rows])
        return _number(values[name], units[name], settings)

    written = []
    for step in steps:
        # A value stands before its own step's text is written: an equation solved speaks of the value found.
        values[step.name], units[step.name] = step.value, step.unit
        row = {"kind": step.kind, "name": step.name, "label": step.label, "value": step.value, "unit": step.unit.sign,
               "text": _number(step.value, step.unit, settings, 6 if step.of is not MONEY else 8, inside=False)}
        if step.kind == "looked up":
            row |= _looked_up(step, settings)
        elif step.kind == "searched":
            row |= {"formula": "; ".join(write(text, plain) for text in step.kept), "filled": "; ".join(write(text, filled) for text in step.kept),
                    "bound": f"nothing beats {write(step.text, plain)} = {write(step.text, filled)}"}
        else:
            zero = " = 0" if step.kind == "solved" else ""
            # a function of nothing but what the card knows is a quantity by its name: no one writes the brackets on paper
            row |= {"formula": write(step.text, plain).replace("()", "") + zero, "filled": write(step.text, filled).replace("()", "") + zero}
        written.append(row)
    return written


def _looked_up(step: Step, settings: Settings) -> dict:
    chapter, table, key_column, key, column = step.look
    found = read_table(chapter, table)
    row = found.row(key_column, key)
    status = STATUS_WORDS.get(status_of(row, column), "")
    return {"formula": f"from the table “{found.title}”", "filled": f"row {row.get('label') or key}; {status}".rstrip("; "),
            "source": row.get("source") or found.source, "table": table, "row": key}


def _one(card: Card, rows: str) -> str:
    return card.item(rows).one


def _number(value, unit: Unit, settings: Settings, digits: int = 6, inside: bool = True) -> str:
    if value is None:
        return "–"
    if isinstance(value, str):
        return value
    if unit.sign == "%" and inside:
        return write_plain(value, settings.style, digits)  # "3 ÷ 100" reads as a worker writes it; "3 % ÷ 100" would not
    return with_sign(write_plain(value, settings.style, digits), unit)
