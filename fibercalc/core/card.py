"""How a card is declared: once, as data, from which the form, command, page, sheet, link and checks are all made."""

from collections.abc import Callable
from dataclasses import field
from functools import cached_property

from ..sources import Source
from .amount import read_amount, width_in_base
from .carry import Carry
from .declared import declared
from .paper import Paper
from .result import Chance, Result  # part of what a card's file declares
from .units import COUNT, MONEY, NUMBER, PERCENT, Quantity, Unit

DATE, CHOICE, TEXT, COLOR = "date", "choice", "text", "color"
ANY = "*"

CHAPTERS = ("yarn", "knit", "weave", "spin", "wash", "dye", "safe", "sell")

# What a card's work can hurt someone with: such a card has at least one caution that is always shown.
HANDLED = ("powder", "acid", "alkali", "heat", "metal", "load")

STANDARD, MODEL, BENCH_RULE = "Standard", "Model", "Bench rule"


@declared
class Option:
    """One choice: its value in code and links, and the words a person picks."""

    value: str
    label: str


@declared
class Input:
    """One thing a person knows.

    of          a Quantity, or DATE, CHOICE, TEXT, COLOR
    label       what it is, in words;  measure  how to measure it
    default     the example's text, as a person would type it
    allowed     lowest and highest text;  usual  the usual range
    rough       half-width of its usual roughness: "1 g", "2 %", for a percentage "2 % of it", or "" (exact); for a color, CIELAB units on each axis
    units       unit signs offered, the first is the default;  unit  the unit the answer function gets (base when "")
    optional    may be left blank (the answer function then gets None)
    when        {other input: values}: asked only then (the answer function gets None otherwise)
    instrument  inputs read from one instrument move together when their roughness is carried
    strict      an ambiguous number such as 1,200 is refused with a question (doses, acids, temperatures)
    options     for CHOICE;  longest  for TEXT
    refused     for CHOICE: {word in lower case: why it is not offered}; whoever asks for it is told
    bench       the place in My bench that can be offered for it, such as "reels.circumference"
    record      the field of a kind of record that can be offered for it, such as "base.length"; in a row, the field of its list
    beside      the input that this choice stands beside and says something of, such as how its value is known
    lent        whether the example only lends its value, since it made it up (see core.lent); names, days and money are lent unless said otherwise
    today       it means this very day
    """

    name: str
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
    when: dict[str, tuple[str, ...]] = field(default_factory=dict)
    instrument: str = ""
    strict: bool = False
    options: tuple[Option, ...] = ()
    refused: dict[str, str] = field(default_factory=dict)
    longest: int = 60
    bench: str = ""
    record: str = ""
    beside: str = ""
    lent: bool | None = None
    today: bool = False

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
        return {COUNT: "count", PERCENT: "percent", MONEY: "money", NUMBER: "number"}.get(self.of, "quantity")

    @property
    def measured(self) -> bool:
        """Whether the value is a number with a unit."""
        return isinstance(self.of, Quantity)

    @cached_property
    def choices(self) -> tuple[Unit, ...]:
        """The units offered, default first."""
        return tuple(self.of.unit(sign) for sign in self.units) or (self.of.base,)

    @cached_property
    def work_unit(self) -> Unit:
        """The unit in which the answer function gets the value."""
        return self.of.unit(self.unit) if self.unit else self.of.base

    @cached_property
    def edges(self) -> tuple[float, float]:
        """The allowed range in base units, lower first."""
        ends = [self.base_value(text) for text in self.allowed]
        return min(ends), max(ends)

    @cached_property
    def canonical(self) -> dict[str, str]:
        """Canonical texts of declared defaults, kept by core.link once it has read them."""
        return {}

    def base_value(self, text: str) -> float:
        """A declared text in base units."""
        return read_amount(text, self.of, self.choices[0], "canonical").value

    def roughness(self, value: float, unit: Unit) -> float:
        """The declared half-width, in base units, around a value given in unit."""
        if not self.rough:
            return 0.0
        if self.rough.endswith("% of it") or (self.rough.endswith("%") and self.of is not PERCENT):
            return abs(value) * float(self.rough.partition("%")[0]) / 100
        amount = read_amount(self.rough, self.of, self.choices[0], "canonical")
        return width_in_base(amount.unit, value, amount.unit.from_base(amount.value))

    def __post_init__(self):
        if self.measured and self.allowed is None:
            raise ValueError(f"input {self.name}: an allowed range is needed")
        if self.kind == CHOICE and not self.options:
            raise ValueError(f"input {self.name}: options are needed")


@declared
class Rows:
    """A list of the same small group of inputs: dyes in a recipe, pieces on a warp, colors in an order.

    one      what one row is called ("dye");  fields  the inputs of a row
    default  the example's rows, each a dict of texts;  least, most  how many rows there may be
    record   the list of a kind of record that can be offered for it, such as "colorway.dyes": fields of the same name, or of their `record`
    lent     ANY, or the list beside which the example only lends these rows: once anything, or anything in that list, is hers they go (least is 0)
    """

    name: str
    label: str
    one: str
    fields: tuple[Input, ...]
    default: tuple[dict[str, str], ...]
    least: int = 1
    most: int = 12
    measure: str = ""
    when: dict[str, tuple[str, ...]] = field(default_factory=dict)
    record: str = ""
    lent: str = ""
    kind: str = "rows"

    @property
    def lends(self) -> bool:
        """Whether the example only lends its rows."""
        return bool(self.lent)


@declared
class Caution:
    """A caution that prints with the card and cannot be hidden; when decides from the outcome whether it applies (always, if None)."""

    title: str
    text: str
    when: Callable | None = None


@declared
class Basis:
    """What an answer rests on: kind is STANDARD, MODEL or BENCH_RULE; text says so in a sentence or two."""

    kind: str
    text: str


@declared
class Save:
    """A record that this card's values can be kept as: fields maps the record's fields, or lists, to inputs or results of this card.

    only when the inputs in `when` have one of the values named.
    """

    kind: str
    words: str
    fields: dict[str, str]
    when: dict[str, tuple[str, ...]] = field(default_factory=dict)


@declared
class Card:
    """One question with its live calculator; see DEVELOPERS.md, "Add a card in six steps".

    place       its place in the chapter
    tall_sheet  printed alone it keeps a tall picture and takes the page that needs: a sheet to stand beside the work, not half a page
    handles     what its work can hurt someone with, of HANDLED
    papers      exact papers that it prints besides
    saves       the records that its values can be kept as; every answer can be kept as it is
    """

    id: str
    chapter: str
    place: int
    question: str
    inputs: tuple[Input | Rows, ...]
    results: tuple[Result, ...]
    answer: Callable
    say: Callable
    basis: Basis
    sources: tuple[Source, ...]
    pictures: tuple[Callable, ...] = ()
    tables: tuple[Callable, ...] = ()
    cautions: tuple[Caution, ...] = ()
    notes: Callable | None = None
    carry: tuple[Carry, ...] = ()
    link_version: int = 1
    upgrades: dict[int, Callable] = field(default_factory=dict)
    tall_sheet: bool = False
    handles: tuple[str, ...] = ()
    papers: tuple[Paper, ...] = ()
    saves: tuple[Save, ...] = ()

    def __post_init__(self):
        if self.chapter not in CHAPTERS:
            raise ValueError(f"card {self.id}: {self.chapter} is not a chapter")
        if not self.question.endswith("?"):
            raise ValueError(f"card {self.id}: its question ends with a question mark")
        names = [item.name for item in self.inputs]
        if len(set(names)) != len(names):
            raise ValueError(f"card {self.id}: an input is declared twice")
        if set(self.upgrades) != set(range(1, self.link_version)):
            raise ValueError(f"card {self.id}: every older link version needs its upgrade")
        if not set(self.handles) <= set(HANDLED):
            raise ValueError(f"card {self.id}: handles is of {', '.join(HANDLED)}")
        if self.handles and all(caution.when for caution in self.cautions):
            raise ValueError(f"card {self.id}: it handles {', '.join(self.handles)} and has no caution that is always shown")

    def __repr__(self) -> str:
        return f"Card({self.id})"

    @cached_property
    def result_by_name(self) -> dict[str, Result]:
        return {result.name: result for result in self.results}

    @cached_property
    def examples(self) -> dict[str, str]:
        """The example's texts by input name, made once."""
        return self.defaults()

    def item(self, name: str) -> Input | Rows:
        """The input or rows of that name. Raises KeyError."""
        return {item.name: item for item in self.inputs}[name]

    def defaults(self) -> dict[str, str]:
        """The example's texts by input name, rows as "dyes.1.depth"."""
        texts = {}
        for item in self.inputs:
            if isinstance(item, Rows):
                for number, row in enumerate(item.default, 1):
                    texts |= {f"{item.name}.{number}.{each.name}": row.get(each.name, each.default) for each in item.fields}
            else:
                texts[item.name] = item.default
        return texts
