"""What came out: each result with its range and how it is written; handed to a card's sentence,
pictures and tables.
"""

from dataclasses import dataclass
from math import ceil, floor, log10
from typing import Any, Generic, TypeVar

from .amount import NO_BREAK, with_sign, write_typed
from .card import Card, Result
from .day import write_date
from .number import decimals_of_step, write_number
from .part import HasName, name_of
from .reading import Given
from .settings import Settings
from .spread import Parts
from .units import COUNT, MONEY, NUMBER, PERCENT, TEMPERATURE, Quantity, Unit

C = TypeVar("C")
Named = HasName | str  # a result, or its name

# So many times its near side is what the far side of a range counts for, at most, when a step is
# chosen
LOPSIDED = 3.0
LITTLE = 0.01  # an amount is written at most this share of itself away from what it is,
OF_SPREAD = 0.1  # or this share of its whole spread, whichever is more
LEAST_STEP = (
    1e-6  # six decimals are written at most; what is smaller is the arithmetic's own rounding
)
TINY = 1e-9  # keeps 459.0 from becoming 458 when rounding down a float


@dataclass(frozen=True)
class Found:
    """One result: value, low and high in base units (value alone for words and dates); best is
    the way it was found, where it had several.
    """

    result: Result[Any]
    value: Any  # a number; or words, or a day
    low: float | None = None
    high: float | None = None
    parts: Parts | None = None
    best: str = ""

    @property
    def ends(self) -> tuple[float, float]:
        """low and high. Raises TypeError for words and days, which have none."""
        if self.low is None or self.high is None:
            raise TypeError(f"result {self.result.name}: it has no range")
        return self.low, self.high

    @property
    def spread(self) -> Parts:
        """What its range is made of. Raises TypeError for words and days, which have none."""
        if self.parts is None:
            raise TypeError(f"result {self.result.name}: it has no range")
        return self.parts

    @property
    def rough(self) -> bool:
        """Whether it carries a spread at all."""
        return self.low is not None and self.high is not None and self.high > self.low


class Outcome(Generic[C]):
    """A card's results with their ranges, what was given, and the means to write them.

    value(name), low(name), high(name)  base-unit numbers;  text(name), span(name)  as
                                        written;  case  what was given and
    what followed;  settings  number style, unit system and money sign
    """

    def __init__(
        self, card: Card, given: Given, found: dict[str, Found], settings: Settings, case: C
    ) -> None:
        self.card, self.readings, self.found, self.settings = (
            card,
            given.readings,
            found,
            settings,
        )
        self.case = case

    def has(self, name: Named) -> bool:
        return name_of(name) in self.found

    def value(self, name: Named) -> Any:
        return self.found[name_of(name)].value

    def low(self, name: Named) -> float:
        return self.found[name_of(name)].ends[0]

    def high(self, name: Named) -> float:
        return self.found[name_of(name)].ends[1]

    def label(self, name: Named) -> str:
        """What a result is called in this answer."""
        result = self.found[name_of(name)].result
        return result.named(self) if result.named else result.label

    def best(self, name: Named) -> str:
        """Which of its several ways a result was found by."""
        return self.found[name_of(name)].best

    def rough(self, name: Named) -> bool:
        """Whether the result carries a spread at all."""
        return self.found[name_of(name)].rough

    def chance_below(self, name: Named, edge: float) -> float:
        """The chance, 0 to 1, that the true value of a result lies below an edge in its base
        unit.
        """
        found = self.found[name_of(name)]
        return found.spread.chance_below(edge - found.value)

    def units(self, name: Named) -> tuple[Unit, ...]:
        """The units a result is shown in, main one first, in the user's system."""
        return in_system(self.found[name_of(name)].result.shown, self.settings.system)

    def text(self, name: Named, unit: str = "") -> str:
        """A result as written in one unit (the main one, unless named), rounded to what its
        spread supports.
        """
        return self._write(name, unit)[0]

    def bare(self, name: Named, unit: str = "") -> str:
        """A result's number as written, without its unit, for a sentence that says the unit in
        words.
        """
        return self.text(name, unit).partition(NO_BREAK)[0]

    def span(self, name: Named, unit: str = "") -> str:
        """A result's range as written: "451 to 467 yd"; "" where there is no spread."""
        return self._write(name, unit)[1]

    def down(self, name: Named, unit: str = "", whole: bool = False) -> str:
        """The low end of a result's range in one unit, rounded down; whole keeps its finest step,
        however short it is.
        """
        found = self.found[name_of(name)]
        shown = found.result.quantity.unit(unit) if unit else self.units(name)[0]
        step = found.result.step(shown) or 1.0
        ends = sorted(map(shown.from_base, found.ends))
        if not whole:
            step = finer_where_needed(step, ends[0], ends, shown, found.result)
        return with_sign(
            write_number(
                round_to(ends[0], step, "down"), decimals_of_step(step), self.settings.style
            ),
            shown,
        )

    def both(self, name: Named) -> str:
        """A result in all its units: "459 yd · 420 m"."""
        if not isinstance(self.found[name_of(name)].result.of, Quantity):
            return self.text(name)
        return f"{NO_BREAK}· ".join(self.text(name, unit.sign) for unit in self.units(name))

    def said(self, name: Named) -> str:
        """A result for a sentence: "459 yd (420 m)"."""
        first, *rest = [self.text(name, unit.sign) for unit in self.units(name)]
        return f"{first} ({', '.join(rest)})" if rest else first

    def promised(self, name: Named) -> str:
        """The low end of a result's range for a sentence, in its units, each rounded down whole:
        what may be printed on a label.
        """
        first, *rest = [self.down(name, unit.sign, whole=True) for unit in self.units(name)]
        return f"{first} ({', '.join(rest)})" if rest else first

    def _write(self, name: Named, sign: str) -> tuple[str, str]:
        found = self.found[name_of(name)]
        result = found.result
        if isinstance(found.value, str):
            return found.value, ""
        if not isinstance(result.of, Quantity):
            return write_date(found.value), ""
        unit = result.of.unit(sign) if sign else self.units(name)[0]
        return write_found(found, unit, self.settings)

    def times(self, name: Named, factor: float, unit: str = "") -> str:
        """So many times a result, written as the result itself is: a share of a dose, or the dose
        of several lots.
        """
        found = self.found[name_of(name)]
        shown = found.result.quantity.unit(unit) if unit else self.units(name)[0]
        low, high = found.ends
        grown = Found(found.result, found.value * factor, low * factor, high * factor)
        return write_found(grown, shown, self.settings)[0]

    def measured(
        self, value: float, of: Quantity, unit: str, finest: float, rounding: str = "nearest"
    ) -> str:
        """A base value that is no result, written as a result with that finest step is."""
        result: Result[float] = Result(
            of, "", units=(unit,), finest=(finest,), rounding=rounding, name="measured"
        )
        return write_found(Found(result, value, value, value), of.unit(unit), self.settings)[0]

    def amount(self, value: float, of: Quantity, unit: str = "", digits: int = 4) -> str:
        """Any base value as a person would write it, for sentences and tables."""
        shown = of.unit(unit) if unit else of.base
        return with_sign(write_typed(value, shown, self.settings.style, digits), shown)

    def number(self, value: float, decimals: int = 0) -> str:
        """A bare number in the user's style."""
        return write_number(value, decimals, self.settings.style)

    def in_100(self, chance: float) -> str:
        """A chance in words: "78 in 100", "under 1 in 100", "over 99 in 100"."""
        if chance < 0.01:
            return "under 1 in 100"
        return "over 99 in 100" if chance > 0.99 else f"{round(100 * chance)} in 100"


def in_system(units: tuple[Unit, ...], system: str) -> tuple[Unit, ...]:
    """The units of one system, or all; never none."""
    if system == "both":
        return units
    other = "us" if system == "metric" else "metric"
    kept = tuple(
        unit
        for unit in units
        if unit.system == system
        or (unit.system == "" and (system == "metric" or not _has_us(units)))
    )
    return kept or tuple(unit for unit in units if unit.system != other) or units


def _has_us(units: tuple[Unit, ...]) -> bool:
    return any(unit.system == "us" for unit in units)


def write_found(found: Found, unit: Unit, settings: Settings) -> tuple[str, str]:
    """A result and its range in one unit. The value is rounded in the declared direction, the
    range outward, at one step.
    """
    result = found.result
    value = unit.from_base(found.value) if not (unit.inverse and found.value == 0) else 0.0
    ends = [value]
    if found.rough:
        ends = sorted(unit.from_base(end) for end in found.ends if not (unit.inverse and end <= 0))
        ends = ends if len(ends) == 2 else [value]
    near, far = sorted((abs(value - ends[0]), abs(ends[-1] - value)))
    half = (
        min(far, LOPSIDED * near) if near > 0 else far
    )  # a long tail on one side must not round the other one away
    if result.product and ends[0] > 0:
        half = min(half, 4 * ends[0])  # nor may it round a low end that is not 0 away
    step = finer_where_needed(
        rounding_step(value, half, result.step(unit)), value, ends, unit, result
    )
    decimals = decimals_of_step(step)
    sign = settings.money if result.of is MONEY else ""
    if result.of is MONEY and decimals == 1:
        decimals = 2  # money is written with both places of its cents, or none

    def written(number: float) -> str:
        text = write_number(number, decimals, settings.style)
        return with_money(text, sign) if sign else text

    if result.chance is not None:
        return _chance_words(value), ""
    text = written(round_to(value, step, result.rounding))
    text = text if sign else with_sign(text, unit)
    if half == 0:
        return text, ""
    low, high = written(round_to(ends[0], step, "down")), written(round_to(ends[-1], step, "up"))
    return text, f"{low} to {high}" if sign else with_sign(f"{low} to {high}", unit)


def with_money(text: str, sign: str) -> str:
    """A number as written with the user's money sign: before it when it is a sign, after it when
    it is letters; a minus stays first.
    """
    if len(sign) > 1:
        return f"{text}{NO_BREAK}{sign}"
    minus, digits = ("−", text[1:]) if text.startswith("−") else ("", text)
    return f"{minus}{sign}{digits}"


def _chance_words(percent: float) -> str:
    return (
        "under 1 in 100"
        if percent < 1
        else "over 99 in 100"
        if percent > 99
        else f"{round(percent)} in 100"
    )


def rounding_step(value: float, half_width: float, finest: float | None) -> float:
    """The step a value is rounded to: a quarter of the half-width at most, as a power of ten, and
    never finer than honest.
    """
    if half_width > 0:
        step = 10.0 ** floor(log10(half_width / 4) + TINY)
        return max(step, finest) if finest else step
    if finest:
        return finest
    return 10.0 ** (floor(log10(abs(value))) - 3) if value else 1.0


def finer_where_needed(
    step: float, value: float, ends: list[float], unit: Unit, result: Result[Any]
) -> float:
    """The step an amount is written at: the wanted one, or the coarsest finer power of ten that
    does not falsify it.

    A finest step is chosen for amounts of the usual size. Of a small one it would make nothing,
    or twice as much; so no amount is written as zero, nor moved by more than LITTLE of itself or
    OF_SPREAD of its spread. What is no amount keeps its step:
    - whole counts, money (its cents) and temperatures, which are not measured from nothing: a
      hundredth of 9 °C says nothing;
    - what a label promises (at_step), rounded down to the whole units it is promised in: less
      than there is, on purpose;
    - bare numbers (ratings, ratios, rows), whole percents, errors and chances (at_step): known to
      their step and no better.
    Of the last two only a zero gives way, and not one that is rounded down to or is as good as
    their spread. Where a range runs across zero, nothing at all may be true.
    """
    if value == 0 or result.of in (COUNT, MONEY, TEMPERATURE):
        return step
    low, high = ends[0], ends[-1]
    only_zero = (
        result.at_step
        or result.of is NUMBER
        or (result.of is PERCENT and (result.step(unit) or 0) >= 1)
    )
    slight = OF_SPREAD * (high - low)
    near = max(LITTLE * abs(value), slight) * (1 + TINY)
    zero_is_true = low < 0 < high or (
        only_zero and (result.rounding == "down" or abs(value) <= slight)
    )
    finer = step
    while finer > LEAST_STEP * (1 - TINY):
        written = round_to(value, finer, result.rounding)
        from_nothing = (
            low > slight and round_to(low, finer, "down") == 0
        )  # a range would begin at nothing that does not
        if (only_zero or (abs(written - value) <= near and not from_nothing)) and (
            zero_is_true or written != 0
        ):
            return finer
        finer = 10.0 ** (ceil(log10(finer) - TINY) - 1)
    return step


def round_to(value: float, step: float, direction: str) -> float:
    """value at a whole number of steps, in one direction."""
    steps = value / step
    if direction == "down":
        return floor(steps + TINY * max(1.0, abs(steps))) * step
    if direction == "up":
        return ceil(steps - TINY * max(1.0, abs(steps))) * step
    return floor(steps + 0.5) * step
