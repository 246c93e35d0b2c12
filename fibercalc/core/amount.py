"""Reading what people type for a measured amount, and writing amounts back.

Understood: `412 yd +/- 8`, `412 ± 2 % yd`, `10 to 12 in`, `3,5 oz`, `4 1/2 in`, `1 lb 4 oz`,
`1,200 m`, `1.2e3 m`. What was understood is always echoed. A typed spread is the half-width of a
uniform distribution (design of the bench book, section 4).
"""

import re
from dataclasses import dataclass, replace

from .number import NUMBER, canonical, read_number, tidy, write_plain
from .units import PERCENT, Quantity, Unit, quantity_of_unit

PLUS_MINUS = re.compile(r"±|\+\s*/\s*-|\+-|~")
RANGE = re.compile(r"\s+to\s+|\s*[–—]\s*|(?<=\d)\s*-\s*(?=\d+(?:[.,]\d+)?(?:\s*[^\d/\s.,-]|\s*$))")
TOO_LONG = 64
NO_BREAK = "\u00a0"  # a number and its unit stay on one line


class Unreadable(ValueError):
    """The text is not an amount of the wanted quantity; the message says why in plain words."""


class Ambiguous(Unreadable):
    """The text has two readings; the message asks which is meant."""


@dataclass(frozen=True)
class TypedAmount:
    """A typed amount as understood.

    value  in base units;  unit  the unit it was given in;  rough  half-width in base units, None
           when none was typed
    typed_rough  the half-width in that unit;  other  the second reading of an ambiguous number, in
                 base units
    """

    value: float
    unit: Unit
    rough: float | None = None
    typed_rough: float | None = None
    other: float | None = None

    def canonical(self) -> str:
        """The amount for a link or a file: "412~8yd"."""
        spread = f"~{canonical(self.typed_rough)}" if self.typed_rough else ""
        return (
            f"{canonical(self.unit.from_base(self.value))}{spread}{self.unit.sign.replace(' ', '')}"
        )


def width_in_base(unit: Unit, value: float, half_width: float) -> float:
    """A half-width given in unit around a base value, in base units (the mean of both sides for
    an inverse unit).
    """
    if not unit.inverse:
        return half_width * unit.factor
    number = unit.from_base(value)
    return (
        unit.to_base(max(number - half_width, number / 1000)) - unit.to_base(number + half_width)
    ) / 2


def width_in_unit(unit: Unit, value: float, rough: float) -> float:
    """A half-width in base units around a base value, in unit (the mean of both sides for an
    inverse unit).
    """
    if not unit.inverse:
        return rough / unit.factor
    return (unit.from_base(max(value - rough, value / 1000)) - unit.from_base(value + rough)) / 2


def read_amount(
    text: str, quantity: Quantity, default: Unit, style: str = "point", strict: bool = False
) -> TypedAmount:
    """Read text as an amount. Raises Unreadable (or Ambiguous, when strict and there are two
    readings).
    """
    plain = tidy(text)
    if len(plain) > TOO_LONG:
        raise Unreadable(f"that is longer than {TOO_LONG} characters")
    pieces = PLUS_MINUS.split(plain)
    if len(pieces) > 2:
        raise Unreadable("more than one ± sign")
    if len(pieces) == 2:
        return _with_spread(pieces[0].strip(), pieces[1].strip(), quantity, default, style, strict)
    ends = RANGE.split(plain)
    if len(ends) == 2 and all(ends) and not plain.startswith("-"):
        return _from_range(ends[0].strip(), ends[1].strip(), quantity, default, style, strict)
    return _one(plain, quantity, default, style, strict)


def _with_spread(
    left: str, right: str, quantity: Quantity, default: Unit, style: str, strict: bool
) -> TypedAmount:
    tail = re.sub(NUMBER.pattern, "", right, count=1, flags=re.IGNORECASE).strip()
    if not _has_unit(left) and tail and not tail.startswith("%"):
        left = f"{left} {tail}"  # 412 ± 8 yd
    relative = "%" in right and quantity is not PERCENT
    if relative and not _has_unit(left) and tail[1:].strip():
        left = f"{left} {tail[1:].strip()}"  # 412 ± 2 % yd
    amount = _one(left, quantity, default, style, strict)
    number, _, rest = _signed(right.split("%")[0] if relative else right, style, strict)
    if number < 0:
        raise Unreadable("the spread after ± cannot be below 0")
    if relative:
        rough = abs(amount.value) * number / 100
        typed = width_in_unit(amount.unit, amount.value, rough)
    else:
        given_in = _unit(rest, quantity, amount.unit)
        rough = width_in_base(given_in, amount.value, number)
        typed = (
            number if given_in is amount.unit else width_in_unit(amount.unit, amount.value, rough)
        )
    return replace(amount, rough=rough, typed_rough=typed)


def _from_range(
    low: str, high: str, quantity: Quantity, default: Unit, style: str, strict: bool
) -> TypedAmount:
    top = _one(high, quantity, default, style, strict)
    bottom = _one(low, quantity, top.unit, style, strict)
    value, rough = (bottom.value + top.value) / 2, abs(top.value - bottom.value) / 2
    return TypedAmount(value, top.unit, rough, width_in_unit(top.unit, value, rough))


def _has_unit(text: str) -> bool:
    return bool(re.sub(NUMBER.pattern, "", text, flags=re.IGNORECASE).strip(" +-"))


def _one(text: str, quantity: Quantity, default: Unit, style: str, strict: bool) -> TypedAmount:
    """One amount without a spread; parts like "1 lb 4 oz" are added."""
    number, other, rest = _signed(text, style, strict)
    parts = []
    while True:
        match = NUMBER.search(rest)
        # A digit inside a unit sign ("m/100 g") is not a second part.
        if match is None or quantity.has(rest) or _unit_prefix(rest[: match.start()]):
            parts.append((number, other, rest))
            break
        parts.append((number, other, rest[: match.start()].strip()))
        number, other, rest = _signed(rest[match.start() :], style, strict)
    if len(parts) == 1:
        unit = _unit(rest, quantity, default)
        return _amount(number, other, unit)
    units = [_unit(sign, quantity, None) for _, _, sign in parts]
    if any(unit.inverse or unit.offset for unit in units) or any(
        a.factor <= b.factor for a, b in zip(units, units[1:])
    ):
        raise Unreadable("several numbers were found; give one")
    total = sum(unit.to_base(part[0]) for unit, part in zip(units, parts))
    return TypedAmount(total, units[0])


def _unit_prefix(text: str) -> bool:
    return text.rstrip().endswith(("/", "per"))


def _amount(number: float, other: float | None, unit: Unit) -> TypedAmount:
    if unit.inverse and number == 0:
        raise Unreadable(f"0 {unit.sign} has no meaning")
    second = None if other is None else unit.to_base(other)
    return TypedAmount(unit.to_base(number), unit, other=second)


def _signed(text: str, style: str, strict: bool) -> tuple[float, float | None, str]:
    """The leading signed number, its other reading, and the text after it."""
    text = text.strip()
    sign = -1.0 if text.startswith("-") else 1.0
    text = text.lstrip("+-").strip()
    match = NUMBER.match(text)
    if match is None:
        raise Unreadable("no number was found" if text else "nothing was given")
    try:
        found = read_number(match[0], style)
    except ValueError as error:
        raise Unreadable(str(error)) from None
    if strict and found.other is not None:
        small, large = sorted((found.value, found.other))
        raise Ambiguous(
            f"is that {write_plain(small, style)} or {large:.0f}? Write it without the mark, or"
            " with other digits after it"
        )
    return (
        sign * found.value,
        None if found.other is None else sign * found.other,
        text[match.end() :].strip(),
    )


def _unit(sign: str, quantity: Quantity, default: Unit | None) -> Unit:
    sign = sign.strip()
    if not sign and default is not None:
        return default
    if not sign:
        raise Unreadable("several numbers were found; give one, or a unit with each")
    if quantity.has(sign):
        return quantity.unit(sign)
    meant = quantity_of_unit(sign)
    if meant is not None:
        raise Unreadable(f"that is {meant.article} {meant.name}")
    raise Unreadable(f"“{sign[:20]}” is not a unit of {quantity.name}")


def with_sign(number: str, unit: Unit) -> str:
    """A written number followed by its unit sign; the degree of an angle stands close, everything
    else after a space.
    """
    if not unit.sign:
        return number
    return f"{number}{'' if unit.sign == '°' else NO_BREAK}{unit.sign.replace(' ', NO_BREAK)}"


def write_typed(value: float, unit: Unit, style: str = "point", digits: int = 6) -> str:
    """A base value in a unit as a person would type it, without the unit sign."""
    return write_plain(unit.from_base(value), style, digits)
