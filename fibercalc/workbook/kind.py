"""How a kind of record is declared: fields as a card's inputs, which make its form, its checks, its file format and its schema.

Every number in a record says how it is known. A field that names another record holds that record's id.
"""

from collections.abc import Callable
from dataclasses import field, replace
from functools import cached_property

from ..core.card import BENCH_RULE, CHOICE, TEXT, Basis, Card, Input, Option, Rows
from ..core.declared import declared
from ..core.units import Quantity
from ..sources import COMMON_PRACTICE

MEASURED, LABEL, GUESSED, DECIDED = "measured", "label", "guessed", "decided"
KNOWN = (Option(MEASURED, "measured"), Option(LABEL, "from a label"), Option(GUESSED, "guessed"), Option(DECIDED, "decided by me"))
KNOWN_END = "_known"
LONGEST_NAME, LONGEST_NOTE = 80, 1000


@declared
class Kind:
    """A kind of record.

    id      what files and references call it;  one, many  what people call it
    about   one sentence: what it is for
    fields  its inputs and lists, all of them optional but the one that names it
    title   the field that names a record;  shown  the fields that its line in the list shows
    newest  its date field by which a card's list that cannot hold all of them takes the newest; "" where each counts
    refers  field (or "list.field") -> the kind of the record that it names
    derived what can be said of a record in one line, for a card that asks for it so: name -> function of the record and of all records by id
    """

    id: str
    one: str
    many: str
    about: str
    fields: tuple[Input | Rows, ...]
    title: str = "name"
    shown: tuple[str, ...] = ()
    newest: str = ""
    refers: dict[str, str] = field(default_factory=dict)
    derived: dict[str, Callable[[dict, dict], str]] = field(default_factory=dict)

    @cached_property
    def card(self) -> Card:
        """The fields as a form's declaration."""
        return form_card(self, self.fields)

    @cached_property
    def names(self) -> dict[str, Input | Rows]:
        """Every field by its name, those of a list as "list.field"."""
        found: dict[str, Input | Rows] = {}
        for item in self.fields:
            found[item.name] = item
            if isinstance(item, Rows):
                found |= {f"{item.name}.{each.name}": each for each in item.fields}
        return found

    def card_with(self, choices: dict[str, tuple[Option, ...]]) -> Card:
        """The form's declaration with the records there are to choose from, by kind."""
        def chosen(each: Input, name: str) -> Input:
            kind = self.refers.get(name)
            return replace(each, of=CHOICE, options=(Option("", "–"), *choices.get(kind, ()))) if kind else each

        return form_card(self, tuple(
            replace(item, fields=tuple(chosen(each, f"{item.name}.{each.name}") for each in item.fields)) if isinstance(item, Rows) else chosen(item, item.name)
            for item in self.fields))


def form_card(kind: Kind, fields: tuple[Input | Rows, ...]) -> Card:
    """A form that is no card of a chapter."""
    return Card(
        id=f"record-{kind.id}", chapter="yarn", place=0, question=f"What is this {kind.one}?", inputs=fields, results=(),
        answer=lambda w, **given: {}, say=lambda r: "", basis=Basis(BENCH_RULE, "What you wrote down yourself."), sources=(COMMON_PRACTICE,))


def name(label: str = "Name", measure: str = "", what: str = "name", longest: int = LONGEST_NAME) -> Input:
    """The field that names a record: the only one that must be filled in."""
    return Input(what, TEXT, label, measure=measure, longest=longest)


def words(what: str, label: str, measure: str = "", longest: int = LONGEST_NAME, when: dict | None = None) -> Input:
    """A text that may be left blank."""
    return Input(what, TEXT, label, measure=measure, optional=True, longest=longest, when=when or {})


def note() -> Input:
    """Anything else worth remembering."""
    return words("note", "Note", "No customer’s name or address: this book keeps none.", LONGEST_NOTE)


def names(what: str, label: str, measure: str = "") -> Input:
    """A field that names another record by its id; Kind.refers says of which kind."""
    return Input(what, TEXT, label, measure=measure, optional=True, longest=60)


def choice(what: str, label: str, *options: tuple[str, str], measure: str = "", when: dict | None = None) -> Input:
    """One of a few words, the first unless another is chosen; a first one that is blank may stay so."""
    return Input(what, CHOICE, label, default=options[0][0], optional=not options[0][0], measure=measure, options=tuple(Option(value, words) for value, words in options), when=when or {})


def number(what: str, of: Quantity, label: str, allowed: tuple[str, str], units: tuple[str, ...] = (), known: str = MEASURED, measure: str = "",
           strict: bool = False, when: dict | None = None, default: str = "") -> tuple[Input, Input]:
    """A number that may be left blank, unless it has a default; and beside it how it is known."""
    return (Input(what, of, label, default=default, allowed=allowed, units=units, optional=not default, measure=measure, strict=strict, when=when or {}),
            Input(f"{what}{KNOWN_END}", CHOICE, f"{label}: how you know it", default=known, options=KNOWN, beside=what, when=when or {}))


def rows(what: str, label: str, one: str, *fields: Input, most: int, measure: str = "") -> Rows:
    """A list that may be empty."""
    return Rows(what, label, one, fields=fields, default=(), least=0, most=most, measure=measure)
