"""A card's answer as an object: results with their ranges in any unit, the words, the data as JSON.

A notebook shows it as the card itself.
"""

from __future__ import annotations

from datetime import date
from functools import cached_property
from typing import TYPE_CHECKING, Any

from .amount import Amount, no_unit
from .core.onward import spread_text
from .core.units import COUNT, Quantity
from .core.work import answer_of
from .version import __version__

if TYPE_CHECKING:
    from .core.answer import Picture, Table
    from .core.outcome import Outcome
    from .core.units import Unit
    from .core.work import Worked

# What a notebook shows; the page's timers and ways on lead nowhere there.
SHOWN = ("answer", "pictures", "numbers", "tables", "notes", "cautions", "working", "basis")
# The least that it needs where the page's style sheet is not.
LOOK = """
.fibercalc-answer { max-width: 40em; padding: 0.5em 1em; background: #fff; color: #1f2328 }
.fibercalc-answer table { color: inherit; margin: 0.5em 0; border-collapse: collapse }
.fibercalc-answer th, .fibercalc-answer td { padding: 0.2em 0.6em 0.2em 0; text-align: left }
.fibercalc-answer caption { text-align: left; font-weight: 600 }
.fibercalc-answer figure { max-width: 28em; margin: 0.5em 0 }
.fibercalc-answer small, .fibercalc-answer span { display: block }
.fibercalc-answer .working .value { font-weight: 600 }
"""


class Value(Amount):
    """One result of a card: most are an Amount with a range, some are a day or words.

    name, label  what it is;  text  as the card writes it, no finer than its range, with the range
    number, unit the number (also `value`, as the data call it) and the sign of its unit: the base
                 unit of its quantity, whatever was typed, until `to` says another
    low, high    the ends of the 95 % range, each an Amount in the same unit; the number itself
                 where nothing is rough
    Given to another card it takes its range along.
    """

    def __init__(self, outcome: Outcome[Any], name: str, unit: Unit | None = None) -> None:
        self._outcome, self._found, self.name = outcome, outcome.found[name], name
        of = self._found.result.of
        self._measures = of if isinstance(of, Quantity) else None
        self._unit = unit or (self._measures.base if self._measures else None)
        self._asked = unit is not None

    @property
    def label(self) -> str:
        return self._outcome.label(self.name)

    @property
    def unit(self) -> str:
        return self._unit.sign if self._unit else ""

    @property
    def is_number(self) -> bool:
        return self._unit is not None

    @property
    def number(self) -> float:
        """The number, in `unit`. Raises TypeError for a day and for words."""
        return self._in_unit(self._found.value)

    @property
    def value(self) -> float:
        """The number, by the name that it has in the data."""
        return self.number

    @property
    def low(self) -> Amount:
        """The low end of the 95 % range, in `unit`; the number itself where nothing is rough."""
        return self._end(min(self._ends))

    @property
    def high(self) -> Amount:
        """The high end of the 95 % range, in `unit`."""
        return self._end(max(self._ends))

    @property
    def day(self) -> date:
        """The day. Raises TypeError for what is none."""
        if not isinstance(self._found.value, date):
            raise TypeError(f"{self.label}: {self.text} is no day")
        return self._found.value

    @property
    def text(self) -> str:
        unit = self.unit if self._asked else ""
        main = self._outcome.text(self.name, unit) if unit else self._outcome.both(self.name)
        span = self._outcome.span(self.name, unit)
        return f"{main} ({span})" if span else main

    def to(self, unit: str) -> Value:
        """The same in another unit.

        Raises ValueError for a unit of something else, TypeError for what is no number.
        """
        (of,) = self._measured()
        if not of.has(unit):
            raise ValueError(no_unit(unit, of))
        return Value(self._outcome, self.name, of.unit(unit))

    def canonical(self) -> str:
        """As another card reads it: with its range, a day as 2027-03-05, words as they are."""
        if isinstance(self._found.value, date):
            return self._found.value.isoformat()
        if not self.is_number:
            return self._outcome.text(self.name)
        if self._measures is COUNT:
            return f"{round(self.number)}"
        return spread_text(self.number, self.low.number, self.high.number, self.unit)

    def _measured(self) -> tuple[Quantity, ...]:
        if self._measures is None:
            raise TypeError(f"{self.label}: {self.text} is no number")
        return (self._measures,)

    def __str__(self) -> str:
        return self.text

    def __repr__(self) -> str:
        return f"<{self.label}: {self.text}>"

    @property
    def _ends(self) -> tuple[float, ...]:
        found = self._found
        return tuple(self._in_unit(each) for each in (found.low, found.value, found.high))

    def _end(self, number: float) -> Amount:
        (of,) = self._measured()
        return Amount._of(number, of, of.unit(self.unit))

    def _in_unit(self, number: object) -> float:
        if self._unit is None or not isinstance(number, (int, float)):
            raise TypeError(f"{self.label}: {self.text} is no number")
        if self._unit.inverse and number == 0:
            return 0.0
        return float(self._unit.from_base(number))


class Answer:
    """All that a card answers. `fibercalc.answer` makes one.

    card, question  the card's id and what it is asked;  text  the answer in one or two sentences
    results         a Value for each result, by its name; its number is in the base unit of its
                    quantity (which the function of the card names), whatever units were typed
    """

    def __init__(self, worked: Worked) -> None:
        self._worked = worked
        self.card, self.question = worked.card.id, worked.card.question
        self.text = " ".join(worked.sentences())

    @cached_property
    def results(self) -> dict[str, Value]:
        return {name: Value(self._worked.outcome, name) for name in self._worked.outcome.found}

    @cached_property
    def tables(self) -> list[Table]:
        return self._worked.tables()

    @cached_property
    def pictures(self) -> list[Picture]:
        return self._worked.pictures()

    @cached_property
    def cautions(self) -> list[str]:
        return list(self.as_json()["cautions"])

    @cached_property
    def notes(self) -> list[str]:
        return list(self.as_json()["notes"])

    def as_json(self) -> dict[str, Any]:
        """The whole answer as data: what `fibercalc.work` gives, and --json prints."""
        return answer_of(self._worked, __version__).as_json()

    def __str__(self) -> str:
        return self.text

    def __repr__(self) -> str:
        return f"<{self.card}: {self.text}>"

    def _repr_html_(self) -> str:
        """The card's answer as its page shows it, for a notebook."""
        from .core.markup import tag
        from .site.parts import SLOTS  # only here does the library look at the site

        slots = (tag("div", SLOTS[name](self._worked), class_=name) for name in SHOWN)
        look = tag("style", LOOK)
        return tag("div", look, tag("h3", self.question), *slots, class_="fibercalc-answer")
