"""How a result of a card is declared: what follows, in which units, rounded which way."""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property
from typing import TYPE_CHECKING, Any

from .declared import declared
from .part import HasName, Part, T
from .units import COUNT, TIME, Quantity, Unit

if TYPE_CHECKING:
    from .outcome import Outcome


@declared
class Chance:
    """A result that is a chance: that another result lies below (or above) an edge given in that
    result's base unit.

    An edge that depends on the case is a function of the outcome, which then holds every result
    that is no chance. Where several things must hold, `by` gives the chance itself, 0 to 1.
    """

    of: HasName
    below: float | Callable[[Outcome[Any]], float] | None = None
    above: float | Callable[[Outcome[Any]], float] | None = None
    by: Callable[[Outcome[Any]], float] | None = None

    def edge(self, outcome: Outcome[Any]) -> float:
        """The edge in base units. Raises TypeError where none was declared."""
        edge = self.below if self.below is not None else self.above
        if edge is None:
            raise TypeError(f"chance of {self.of.name}: it has no edge")
        return edge(outcome) if callable(edge) else edge


@declared
class Result(Part[T]):
    """One thing that follows.

    units     unit signs shown, in order;  finest  the finest honest step in each of them (empty:
              four significant digits); a small amount is written finer where that step would
              falsify it (outcome.finer_where_needed)
    at_step   the step holds for small ones too: what a label promises in whole units, an error or
              a chance, known to a digit or two
    rounding  "down" for what is promised to a buyer, "up" for what must be bought, else "nearest"
    error     the model's own error as a 95 % half-width: "9 %" or an amount; "" where the inputs
              say it all
    floor     the lowest value there can be, in base units: a range is not carried past it
    product   a product whose factors are rough, some of them to a half and less: its range is a
              factor either way, and no low end is 0
    chance    this result is the chance that another one lies beyond an edge
    best_of   this result is whichever of these has the narrowest range: two ways of measuring one
              thing
    decided   this result is settled last, from the ranges of the others: a function of the
              outcome ("how many to buy, to be so sure")
    unit      the unit it is worked in (the base one when "");  fixed  a whole number settled on
              from the values as given, which stays while roughness is carried: what follows from
              it is the spread of one plan and not of changed plans
    timer     this time is waited for at the kettle: the page offers a timer for it
    named     what it is called in one answer, a function of the outcome, where that depends on
              the case (a liquid by its strength)
    """

    of: Quantity | str
    label: str
    units: tuple[str, ...] = ()
    finest: tuple[float, ...] = ()
    at_step: bool = False
    rounding: str = "nearest"
    error: str = ""
    floor: float | None = None
    product: bool = False
    chance: Chance | None = None
    best_of: tuple[HasName, ...] = ()
    decided: Callable[[Outcome[Any]], float | None] | None = None
    timer: bool = False
    named: Callable[[Outcome[Any]], str] | None = None
    unit: str = ""
    fixed: bool = False
    name: str = ""

    def __repr__(self) -> str:
        return f"Result({self.name})"

    @property
    def quantity(self) -> Quantity:
        """What it measures. Raises TypeError for words and days, which measure nothing."""
        if isinstance(self.of, str):
            raise TypeError(f"result {self.name}: {self.of} is no quantity")
        return self.of

    @property
    def work_unit(self) -> Unit:
        """The unit in which the answer function gives the value."""
        return self.quantity.unit(self.unit) if self.unit else self.quantity.base

    def names_others(self) -> set[str]:
        """The results that it speaks of."""
        return {part.name for part in (*self.best_of, *([self.chance.of] if self.chance else []))}

    @cached_property
    def shown(self) -> tuple[Unit, ...]:
        """The units shown, main one first."""
        return tuple(map(self.quantity.unit, self.units)) or (self.quantity.base,)

    def step(self, unit: Unit) -> float | None:
        """The finest honest step in one of the shown units."""
        if self.of is COUNT:
            return 1.0
        signs = [shown.sign for shown in self.shown]
        return self.finest[signs.index(unit.sign)] if self.finest else None

    def __post_init__(self) -> None:
        if self.rounding not in ("nearest", "down", "up"):
            raise ValueError(f"result {self.name}: rounding is nearest, down or up")
        if self.finest and len(self.finest) != max(len(self.units), 1):
            raise ValueError(f"result {self.name}: one finest step for each unit")
        if self.timer and self.of is not TIME:
            raise ValueError(f"result {self.name}: only a time can be a timer")
