"""How a kind of record is declared: fields as a card's inputs, which make its form, its checks,
its file format and its schema.

Every number in a record says how it is known. A field that names another record holds that
record's id.
"""

from collections.abc import Callable
from dataclasses import field, replace
from functools import cached_property
from typing import Any

from ..core.asked import When
from ..core.card import BENCH_RULE, CHOICE, TEXT, Basis, Card, Input, Option, Rows, case_of, row_of
from ..core.declared import declared
from ..core.ref import Field, Held, Listed, fields_of, id_of, list_of
from ..core.units import Quantity
from ..sources import COMMON_PRACTICE

MEASURED, LABEL, GUESSED, DECIDED = "measured", "label", "guessed", "decided"
KNOWN = (
    Option(MEASURED, "measured"),
    Option(LABEL, "from a label"),
    Option(GUESSED, "guessed"),
    Option(DECIDED, "decided by me"),
)
KNOWN_END = "_known"
LONGEST_NAME, LONGEST_NOTE = 80, 1000


@declared
class Kind:
    """A kind of record.

    held    its fields' names;  one, many  what people call it
    about   one sentence: what it is for
    fields  its inputs and lists, all of them optional but the one that names it
    titled  the field that names a record (its `name` where none is said);  shows  the fields that
            its line in the list shows
    newest  its date field by which a card's list that cannot hold all of them takes the newest;
            None where each counts
    derived what can be said of a record in one line, for a card that asks for it so: a function of
            the record and of all records by id

    Raises ValueError where held has a field that is not declared here, or lacks one that is.
    """

    held: Held
    one: str
    many: str
    about: str
    fields: tuple[Input[Any] | Rows[Any], ...]
    titled: Field | None = None
    shows: tuple[Field | Listed, ...] = ()
    newest: Field | None = None
    derived: dict[Field, Callable[[dict[str, Any], dict[str, dict[str, Any]]], str]] = field(
        default_factory=dict
    )

    def __post_init__(self) -> None:
        declared = {name for name in self.names if not name.endswith(KNOWN_END)}
        declared |= {each.name for each in self.derived}
        if wrong := declared ^ set(fields_of(self.held)):
            raise ValueError(
                f"kind {self.id}: {', '.join(sorted(wrong))} is named or declared alone"
            )

    @cached_property
    def id(self) -> str:
        """What files and references call it."""
        return id_of(self.held)

    @cached_property
    def title(self) -> str:
        """The name of the field that names a record."""
        return self.titled.name if self.titled else "name"

    @cached_property
    def shown(self) -> tuple[str, ...]:
        """The names of the fields that its line in the list shows."""
        return tuple(each.name if isinstance(each, Field) else list_of(each) for each in self.shows)

    @cached_property
    def refers(self) -> dict[str, str]:
        """Every field (or "list.field") that names a record, with the kind of that record."""
        return {
            name: id_of(each.to)
            for name, each in fields_of(self.held).items()
            if isinstance(each, Field) and each.to is not None
        }

    @cached_property
    def lines(self) -> dict[str, Callable[[dict[str, Any], dict[str, dict[str, Any]]], str]]:
        """What is derived, by its name."""
        return {each.name: line for each, line in self.derived.items()}

    @cached_property
    def card(self) -> Card:
        """The fields as a form's declaration."""
        return form_card(self, self.fields)

    @cached_property
    def names(self) -> dict[str, Input[Any] | Rows[Any]]:
        """Every field by its name, those of a list as "list.field"."""
        found: dict[str, Input[Any] | Rows[Any]] = {}
        for item in self.fields:
            found[item.name] = item
            if isinstance(item, Rows):
                found |= {f"{item.name}.{each.name}": each for each in item.fields}
        return found

    @cached_property
    def title_field(self) -> Input[Any]:
        """The field that names a record. Raises TypeError where a list is declared so."""
        item = self.names[self.title]
        if isinstance(item, Rows):
            raise TypeError(f"kind {self.id}: a list names no record")
        return item

    def card_with(self, choices: dict[str, tuple[Option, ...]]) -> Card:
        """The form's declaration with the records there are to choose from, by kind."""

        def chosen(each: Input[Any], name: str) -> Input[Any]:
            kind = self.refers.get(name)
            return (
                replace(each, of=CHOICE, options=(Option("", "–"), *choices.get(kind, ())))
                if kind
                else each
            )

        return form_card(
            self,
            tuple(
                (
                    replace(
                        item,
                        row=row_of(
                            tuple(chosen(each, f"{item.name}.{each.name}") for each in item.fields)
                        ),
                    )
                    if isinstance(item, Rows)
                    else chosen(item, item.name)
                )
                for item in self.fields
            ),
        )


def form_card(kind: Kind, fields: tuple[Input[Any] | Rows[Any], ...]) -> Card:
    """A form that is no card of a chapter."""
    return Card(
        id=f"record-{kind.id}",
        chapter="yarn",
        place=0,
        question=f"What is this {kind.one}?",
        case=case_of(fields),
        answer=lambda case: None,
        say=lambda r: "",
        basis=Basis(BENCH_RULE, "What you wrote down yourself."),
        sources=(COMMON_PRACTICE,),
    )


def name(
    label: str = "Name", measure: str = "", what: Field | None = None, longest: int = LONGEST_NAME
) -> Input[Any]:
    """The field that names a record: the only one that must be filled in."""
    return Input(TEXT, label, measure=measure, longest=longest, name=what.name if what else "name")


def words(what: Field, label: str, measure: str = "", longest: int = LONGEST_NAME) -> Input[Any]:
    """A text that may be left blank."""
    return Input(TEXT, label, measure=measure, optional=True, longest=longest, name=what.name)


def note() -> Input[Any]:
    """Anything else worth remembering."""
    return Input(
        TEXT,
        "Note",
        measure="No customer’s name or address: this book keeps none.",
        optional=True,
        longest=LONGEST_NOTE,
        name="note",
    )


def names(what: Field, label: str, measure: str = "") -> Input[Any]:
    """A field that names another record by its id; `what.to` is the kind of that record."""
    return Input(TEXT, label, measure=measure, optional=True, longest=60, name=what.name)


def choice(
    what: Field, label: str, *options: tuple[str, str], measure: str = "", when: When | None = None
) -> Input[Any]:
    """One of a few words, the first unless another is chosen; a first one that is blank may stay
    so.
    """
    return Input(
        CHOICE,
        label,
        default=options[0][0],
        optional=not options[0][0],
        measure=measure,
        options=tuple(Option(value, words) for value, words in options),
        when=when or {},
        name=what.name,
    )


def number(
    what: Field,
    of: Quantity,
    label: str,
    allowed: tuple[str, str],
    units: tuple[str, ...] = (),
    known: str = MEASURED,
    measure: str = "",
    strict: bool = False,
    when: When | None = None,
    default: str = "",
) -> tuple[Input[Any], Input[Any]]:
    """A number that may be left blank, unless it has a default; and beside it how it is known."""
    value: Input[Any] = Input(
        of,
        label,
        default=default,
        allowed=allowed,
        units=units,
        optional=not default,
        measure=measure,
        strict=strict,
        when=when or {},
        name=what.name,
    )
    return value, Input(
        CHOICE,
        f"{label}: how you know it",
        default=known,
        options=KNOWN,
        beside=value,
        when=when or {},
        name=f"{what.name}{KNOWN_END}",
    )


def as_asked(
    what: Field, like: Input[Any], label: str = "", known: str = MEASURED, measure: str = ""
) -> tuple[Input[Any], Input[Any]]:
    """A number that a card asks too, within the same bounds."""
    return number(
        what,
        like.quantity,
        label or like.label,
        like.range,
        like.units,
        known=known,
        measure=measure,
        strict=like.strict,
    )


def rows(
    what: Listed, label: str, one: str, *fields: Input[Any], most: int, measure: str = ""
) -> Rows[Any]:
    """A list that may be empty."""
    return Rows(
        row_of(fields),
        label,
        one,
        default=(),
        least=0,
        most=most,
        measure=measure,
        name=list_of(what),
    )
