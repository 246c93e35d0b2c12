"""A number with its unit, for whoever imports the package: given to a card, and got from one."""

from __future__ import annotations

from functools import total_ordering

from .core.amount import with_sign
from .core.number import canonical, write_plain
from .core.units import KNOWN, Quantity, Unit

DIGITS = 12  # that count when two are compared: more than any scale or tape gives


@total_ordering
class Amount:
    """A number in a unit: Amount(1.5, "m").

    number  the number;  unit  the sign of its unit, as the cards write it ("yards" is "yd"); "" for
            a plain number, a count and money
    Two compare as what they measure, whatever their units: of yarn counts the heavier is the
    larger, so 2,000 yd/lb is more than 2,500. What has no unit also compares with a number.
    Raises ValueError for a unit that no card knows.
    """

    def __init__(self, number: float, unit: str = "") -> None:
        quantities = [each for each in KNOWN.values() if each.has(unit)]
        if not quantities:
            raise ValueError(f"{unit}: not a unit that any card knows")
        # One spelling may be the sign of one quantity and a nickname in another: % is both.
        quantities.sort(key=lambda each: each.unit(unit).sign != unit)
        signs = {each.unit(unit).sign for each in quantities}
        self._number, self._quantities = float(number), tuple(quantities)
        self._sign = signs.pop() if len(signs) == 1 else unit

    @classmethod
    def _of(cls, number: float, quantity: Quantity, unit: Unit) -> Amount:
        """A number in a unit of this quantity and no other."""
        made = object.__new__(Amount)
        made._number, made._sign, made._quantities = number, unit.sign, (quantity,)
        return made

    @property
    def number(self) -> float:
        return self._number

    @property
    def unit(self) -> str:
        return self._sign

    def to(self, unit: str) -> Amount:
        """The same in another unit. Raises ValueError for a unit of something else."""
        quantity = next((each for each in self._measured() if each.has(unit)), None)
        if quantity is None:
            raise ValueError(no_unit(unit, self._measured()[0]))
        found = quantity.unit(unit)
        base = quantity.unit(self.unit).to_base(self.number)
        return Amount._of(found.from_base(base), quantity, found)

    def canonical(self) -> str:
        """As a card reads it, to the last digit, whatever number style is set."""
        return f"{canonical(self.number)} {self.unit}".rstrip()

    def _measured(self) -> tuple[Quantity, ...]:
        """What it can be an amount of: 2 °C is a temperature or a difference of two."""
        return self._quantities

    def _beside(self, other: object) -> tuple[float, float] | None:
        """Both in one base unit, to the digits that count; None where they measure other things."""
        if isinstance(other, (int, float)) and not self.unit:
            other = Amount(other)
        if not isinstance(other, Amount):
            return None
        shared = [each for each in self._measured() if each in other._measured()]
        if not shared:
            return None
        ends = (shared[0].unit(each.unit).to_base(each.number) for each in (self, other))
        own, others = (float(f"{end:.{DIGITS}g}") for end in ends)
        return own, others

    def __eq__(self, other: object) -> bool:
        both = self._beside(other)
        return both is not None and both[0] == both[1]

    def __lt__(self, other: Amount | float) -> bool:
        both = self._beside(other)
        if both is None:
            what = self._measured()[0].name
            raise TypeError(f"{self!r} compares with an Amount of {what}, not with {other!r}")
        return both[0] < both[1]

    # Two that are equal may have other units, so a hash could only be the same for all.
    __hash__ = None  # type: ignore[assignment]

    def __float__(self) -> float:
        return self.number

    def __str__(self) -> str:
        unit = self._measured()[0].unit(self.unit)
        return with_sign(write_plain(self.number), unit)

    def __repr__(self) -> str:
        return f"Amount({self.number:.{DIGITS}g}, {self.unit!r})"


def no_unit(unit: str, quantity: Quantity) -> str:
    """What is said of a unit of something else."""
    signs = ", ".join(each.sign for each in quantity.units if each.sign)
    return f"{unit}: not a unit of {quantity.name}" + (f"; give {signs}" if signs else "")
