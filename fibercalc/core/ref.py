"""References to what is held outside a card: the fields of records and of My bench, by themselves.

Their names are declared once, as classes of `Field`s. A card says `RECORD.base.mass`, so a name
that is not there is an error where it is written; what a field is (its label, its unit, its check)
is declared where the records are, under these names.
"""

from __future__ import annotations


class Field:
    """A field of a kind of record, or of the rows of a list in one.

    to  the kind of record that it names, where it names one
    """

    name: str
    _holder: Group

    def __init__(self, to: type[Held] | None = None) -> None:
        self.to = to

    def __set_name__(self, owner: type, name: str) -> None:
        self.name = name

    @property
    def holder(self) -> Group:
        """The record, or the list in one, of which it is a field."""
        return self._holder

    def then(self, further: Field) -> Through:
        """A field of the record that this one names.

        Raises ValueError where it names none, or one of another kind.
        """
        if self.to is None or not isinstance(further.holder, self.to):
            raise ValueError(f"{path_of(self)} names no record with {path_of(further)}")
        return Through(self, further)


class Through:
    """A field of the record that a field of another names."""

    def __init__(self, first: Field, further: Field) -> None:
        self.first, self.further, self.holder = first, further, first.holder


class Group:
    """Fields that stand together. Its class declares them and has one object; what else that
    holds is private, since a field may have any name.
    """

    _name: str
    _holder: Group

    def __set_name__(self, owner: type, name: str) -> None:
        type(self)._name = name  # on the class, by which a field refers to it
        for each in _parts(self).values():
            each._holder = self


class Listed(Group):
    """The fields of each row of a list in a record."""


class Held(Group):
    """The fields of a kind of record, or of My bench."""


# What an input may be filled from, and what a list may: a list of one record, or every record.
FieldRef = Field | Through
RowsRef = Listed | Held
PARTS = (Field, Listed)  # what a group is made of


def _parts(group: Group) -> dict[str, Field | Listed]:
    return {name: each for name, each in vars(type(group)).items() if isinstance(each, PARTS)}


def held_of(ref: FieldRef | RowsRef) -> Held:
    """The kind of record that a reference starts from. Raises TypeError where it stands in none."""
    group = ref if isinstance(ref, Group) else ref.holder
    held = group if isinstance(group, Held) else group._holder
    if not isinstance(held, Held):
        raise TypeError(f"{group._name} stands in no record")
    return held


def id_of(held: Held | type[Held]) -> str:
    """The name of a kind of record as files write it: "mill-lot"."""
    return held._name.replace("_", "-")


def list_of(ref: FieldRef | RowsRef) -> str:
    """The name of the list in which a reference stands; "" where it stands in none."""
    group = ref if isinstance(ref, Group) else ref.holder
    return group._name if isinstance(group, Listed) else ""


def path_of(ref: FieldRef | RowsRef) -> str:
    """A reference in words: "base.mass", "colorway.dyes.depth", "plan.items.product>name"."""
    if isinstance(ref, Through):
        return f"{path_of(ref.first)}>{ref.further.name}"
    own = ref.name if isinstance(ref, Field) else ""
    return ".".join(filter(None, (id_of(held_of(ref)), list_of(ref), own)))


def fields_of(held: Held) -> dict[str, Field | Listed]:
    """All that a kind of record declares, by name, the fields of a list as "list.field"."""
    found: dict[str, Field | Listed] = {}
    for name, each in _parts(held).items():
        found[name] = each
        if isinstance(each, Listed):
            found |= {f"{name}.{field}": inside for field, inside in _parts(each).items()}
    return found
