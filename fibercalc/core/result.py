"""How a result of a card is declared: what follows, in which units, rounded which way."""

from collections.abc import Callable
from functools import cached_property

from .declared import declared
from .units import COUNT, TIME, Quantity, Unit


@declared
class Chance:
    """A result that is a chance: that another result lies below (or above) an edge given in that result's base unit.

    An edge that depends on the case is a function of the outcome, which then holds every result that is no chance.
    """

    of: str
    below: float | Callable | None = None
    above: float | Callable | None = None


@declared
class Result:
    """One thing that follows.

    units     unit signs shown, in order;  finest  the finest honest step in each of them (empty: four significant digits);
              a small amount is written finer where that step would falsify it (outcome.finer_where_needed)
    at_step   the step holds for small ones too: what a label promises in whole units, an error or a chance, known to a digit or two
    rounding  "down" for what is promised to a buyer, "up" for what must be bought, else "nearest"
    error     the model's own error as a 95 % half-width: "9 %" or an amount; "" where the inputs say it all
    floor     the lowest value there can be, in base units: a range is not carried past it
    product   a product whose factors are rough, some of them to a half and less: its range is a factor either way, and no low end is 0
    chance    this result is the chance that another one lies beyond an edge
    best_of   this result is whichever of the named ones has the narrowest range: two ways of measuring one thing
    decided   this result is settled last, from the ranges of the others: a function of the outcome ("how many to buy, to be so sure")
    timer     this time is waited for at the kettle: the page offers a timer for it
    named     what it is called in one answer, a function of the outcome, where that depends on the case (a liquid by its strength)
    """

    name: str
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
    best_of: tuple[str, ...] = ()
    decided: Callable | None = None
    timer: bool = False
    named: Callable | None = None

    @cached_property
    def shown(self) -> tuple[Unit, ...]:
        """The units shown, main one first."""
        return tuple(self.of.unit(sign) for sign in self.units) or (self.of.base,)

    def step(self, unit: Unit) -> float | None:
        """The finest honest step in one of the shown units."""
        if self.of is COUNT:
            return 1.0
        signs = [shown.sign for shown in self.shown]
        return self.finest[signs.index(unit.sign)] if self.finest else None

    def __post_init__(self):
        if self.rounding not in ("nearest", "down", "up"):
            raise ValueError(f"result {self.name}: rounding is nearest, down or up")
        if self.finest and len(self.finest) != max(len(self.units), 1):
            raise ValueError(f"result {self.name}: one finest step for each unit")
        if self.timer and self.of is not TIME:
            raise ValueError(f"result {self.name}: only a time can be a timer")
