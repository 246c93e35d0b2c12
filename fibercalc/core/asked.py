"""What a card asks: inputs, choices, and lists of the same small group of inputs."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from functools import cached_property
from typing import Any, Generic, TypeVar

from .amount import read_amount, width_in_base
from .declared import declared
from .part import HasName, Part, T, parts_of
from .ref import Field, FieldRef, RowsRef, list_of, path_of
from .units import COUNT, MONEY, NUMBER, PERCENT, Quantity, Unit

R = TypeVar("R", bound="Row")

DATE, CHOICE, TEXT, COLOR = "date", "choice", "text", "color"

# An input is asked only where these others have one of these values.
When = Mapping["Input[Any]", tuple[Any, ...]]


@declared
class Option:
    """One choice: its value in code and links, and the words a person picks."""

    value: str
    label: str


@declared
class Input(Part[T]):
    """One thing a person knows.

    of          a Quantity, or DATE, CHOICE, TEXT, COLOR
    label       what it is, in words;  measure  how to measure it
    default     the example's text, as a person would type it
    allowed     lowest and highest text;  usual  the usual range
    rough       half-width of its usual roughness: "1 g", "2 %", for a percentage "2 % of it", or
                "" (exact); for a color, CIELAB units on each axis
    units       unit signs offered, the first is the default;  unit  the unit the answer function
                gets (base when "")
    optional    may be left blank (the answer function then gets None)
    when        {another input: its values}: asked only then (the case does not have it otherwise)
    instrument  inputs read from one instrument move together when their roughness is carried
    strict      an ambiguous number such as 1,200 is refused with a question (doses, acids,
                temperatures)
    options     for CHOICE;  longest  for TEXT
    refused     for CHOICE: {word in lower case: why it is not offered}; whoever asks for it is told
    bench       the field of My bench that can be offered for it
    record      the field of a kind of record that can be offered for it; in a row, the field of its
                list where it has another name
    beside      the input that this choice stands beside and says something of, such as how its
                value is known
    lent        whether the example only lends its value, since it made it up (see core.lent);
                names, days and money are lent unless said otherwise
    today       it means this very day
    """

    of: Quantity | str
    label: str
    default: str = ""
    allowed: tuple[str, str] | None = None
    usual: tuple[str, str] | None = None
    rough: str = ""
    measure: str = ""
    units: tuple[str, ...] = ()
    unit: str = ""
    optional: bool = False
    when: When = field(default_factory=dict)
    instrument: str = ""
    strict: bool = False
    options: tuple[Option, ...] = ()
    refused: Mapping[str, str] = field(default_factory=dict)
    longest: int = 60
    bench: Field | None = None
    record: FieldRef | None = None
    beside: HasName | None = None
    lent: bool | None = None
    today: bool = False
    name: str = ""

    def __repr__(self) -> str:
        return f"Input({self.name})"

    @cached_property
    def lends(self) -> bool:
        """Whether the example only lends its value to a card on which nothing is hers."""
        return self.kind in (TEXT, DATE, "money") if self.lent is None else self.lent

    @cached_property
    def kind(self) -> str:
        """quantity, count, percent, money, number, date, choice, text or color."""
        if isinstance(self.of, str):
            return self.of
        return {COUNT: "count", PERCENT: "percent", MONEY: "money", NUMBER: "number"}.get(
            self.of, "quantity"
        )

    @property
    def measured(self) -> bool:
        """Whether the value is a number with a unit."""
        return isinstance(self.of, Quantity)

    @property
    def quantity(self) -> Quantity:
        """What is measured. Raises TypeError for words, days and colors, which measure nothing."""
        if isinstance(self.of, str):
            raise TypeError(f"input {self.name}: {self.of} is no quantity")
        return self.of

    @property
    def range(self) -> tuple[str, str]:
        """The allowed range as declared. Raises TypeError where there is none, as for words."""
        if self.allowed is None:
            raise TypeError(f"input {self.name}: it has no allowed range")
        return self.allowed

    @cached_property
    def choices(self) -> tuple[Unit, ...]:
        """The units offered, default first."""
        return tuple(map(self.quantity.unit, self.units)) or (self.quantity.base,)

    @cached_property
    def work_unit(self) -> Unit:
        """The unit in which the answer function gets the value."""
        return self.quantity.unit(self.unit) if self.unit else self.quantity.base

    @cached_property
    def edges(self) -> tuple[float, float]:
        """The allowed range in base units, lower first."""
        ends = [self.base_value(text) for text in self.range]
        return min(ends), max(ends)

    @cached_property
    def canonical(self) -> dict[str, str]:
        """Canonical texts of declared defaults, kept by core.link once it has read them."""
        return {}

    def names_others(self) -> set[str]:
        """The inputs that it speaks of."""
        return {part.name for part in (*self.when, *([self.beside] if self.beside else []))}

    def can_be(self, value: object) -> bool:
        """Whether a choice or a count can have this value, for what is asked only then."""
        if self.kind == CHOICE:
            return any(option.value == value for option in self.options)
        return self.of is COUNT and isinstance(value, int)

    def misplaced(self) -> str:
        """What is wrong with the places that it can be filled from, in words; "" when nothing is.

        In a row it is part of its list, which looks after the record.
        """
        if self.record is not None and list_of(self.record):
            return f"{path_of(self.record)} is a field of each row of a list"
        return ""

    def base_value(self, text: str) -> float:
        """A declared text in base units."""
        return read_amount(text, self.quantity, self.choices[0], "canonical").value

    def roughness(self, value: float, unit: Unit) -> float:
        """The declared half-width, in base units, around a value given in unit."""
        if not self.rough:
            return 0.0
        if self.rough.endswith("% of it") or (self.rough.endswith("%") and self.of is not PERCENT):
            return abs(value) * float(self.rough.partition("%")[0]) / 100
        amount = read_amount(self.rough, self.quantity, self.choices[0], "canonical")
        return width_in_base(amount.unit, value, amount.unit.from_base(amount.value))

    def __post_init__(self) -> None:
        if self.measured and self.allowed is None:
            raise ValueError(f"input {self.name}: an allowed range is needed")
        if self.kind == CHOICE and not self.options:
            raise ValueError(f"input {self.name}: options are needed")


class Row:
    """One row of a list: its class declares the inputs of a row and what is found for each, it
    holds their values.
    """

    fields: tuple[Input[Any], ...] = ()
    found: frozenset[str] = frozenset()

    def __init_subclass__(cls) -> None:
        cls.fields = tuple(parts_of(cls, Input))
        cls.found = frozenset(
            part.name for part in parts_of(cls, Part) if not isinstance(part, Input)
        )

    def __setattr__(self, name: str, value: Any) -> None:
        if name not in self.found:
            raise AttributeError(f"{type(self).__name__} declares no {name} to be found")
        vars(self)[name] = value

    def __init__(self, values: dict[str, Any]) -> None:
        vars(self).update(values)

    def maybe(self, part: Part[T]) -> T | None:
        """A value, or None where it was not asked."""
        return vars(self).get(part.name)


@declared
class Rows(Part[list[R]], Generic[R]):
    """A list of the same small group of inputs: dyes in a recipe, pieces on a warp, colors in an
    order.

    row      the class of a row, whose inputs are its fields;  one  what one row is called ("dye")
    default  the example's rows, each a dict of texts;  least, most  how many rows there may be
    record   what can be offered for it: the list of a kind of record, or the kind itself, for a
             row of each record; fields of the same name, or of their `record`
    lent     True, or the list beside which the example only lends these rows: once anything, or
             anything in that list, is hers they go (least is 0)
    """

    row: type[R]
    label: str
    one: str
    default: tuple[dict[str, str], ...] = ()
    least: int = 1
    most: int = 12
    measure: str = ""
    when: When = field(default_factory=dict)
    record: RowsRef | None = None
    lent: HasName | bool = False
    kind: str = "rows"
    name: str = ""

    def __repr__(self) -> str:
        return f"Rows({self.name})"

    @property
    def lends(self) -> bool:
        """Whether the example only lends its rows."""
        return bool(self.lent)

    @property
    def fields(self) -> tuple[Input[Any], ...]:
        return self.row.fields

    @property
    def fields_by_name(self) -> dict[str, Input[Any]]:
        return {each.name: each for each in self.row.fields}

    def names_others(self) -> set[str]:
        """The inputs that it and its fields speak of."""
        beside = [] if isinstance(self.lent, bool) else [self.lent]
        own = {part.name for part in (*self.when, *beside)}
        return own.union(*(each.names_others() for each in self.row.fields))

    def misplaced(self) -> str:
        """What is wrong with the places that its rows can be filled from, in words."""
        for each in self.row.fields:
            ref = each.record
            if ref is not None and ref.holder is not self.record:
                return f"{each.name} is filled from {path_of(ref)}, and its list is not"
            if each.bench is not None:
                return f"{each.name}: My bench is not offered to rows"
        return ""

    def each(self, part: Part[Any], row: int = 0) -> RowPart:
        """A value of whichever row is meant, or of one row, counted from 1."""
        if part not in self.row.fields:
            raise ValueError(f"{self.label}: a {self.one} has no such value")
        return RowPart(self, part, row)


@declared
class RowPart:
    """A value of a row of a list: of one row, or of whichever is meant, as the one that a link is
    for.
    """

    rows: HasName
    part: HasName
    row: int = 0

    @property
    def name(self) -> str:
        """The full name of that value in its one row. Raises ValueError where no row is named."""
        if not self.row:
            raise ValueError(f"{self.of(0)}: which row?")
        return self.of(self.row)

    def of(self, number: int) -> str:
        """The full name of that value where this row, counted from 1, is meant."""
        return f"{self.rows.name}.{self.row or number}.{self.part.name}"


def row_of(fields: tuple[Input[Any], ...]) -> type[Row]:
    """The class of a row with these inputs, for a list that is put together, not written down."""
    return type("SomeRow", (Row,), {each.name: each for each in fields})
