"""One text as typed, read by the kind of its input; what cannot be used becomes one plain line."""

import re
import unicodedata
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from typing import Any

from .amount import TypedAmount, Unreadable, read_amount, width_in_unit, with_sign, write_typed
from .card import CHOICE, COLOR, DATE, TEXT, Input
from .color import read_color
from .day import read_date, write_date
from .number import tidy, write_plain
from .problem import Problem
from .settings import Settings
from .units import COUNT, MONEY

SAME_TEXTS = 2048  # from key to key all fields but one hold the text they held before
CURRENCY = re.compile(r"[$€£¥₹₩₽฿]|[A-Za-z]{1,3}\.?")


@dataclass(frozen=True)
class Reading:
    """One input as understood: value for the answer function (None when blank or not asked), its
    roughness, echo and canonical text.

    whose  HERS, LENT, OPEN or DAY of core.lent; "" for what is nobody's in particular
    """

    input: Input[Any]
    name: str
    given: str
    value: Any = None
    rough: float = 0.0  # half-width, in the unit the answer function gets
    amount: TypedAmount | None = None
    echo: str = ""
    text: str = ""
    asked: bool = True
    whose: str = ""

    @property
    def measured(self) -> TypedAmount:
        """The amount as understood. Raises TypeError where there is none: blank, or no amount."""
        if self.amount is None:
            raise TypeError(f"{self.name}: {self.given or 'nothing'} is no amount")
        return self.amount


def read_one(
    each: Input[Any],
    name: str,
    text: str,
    settings: Settings,
    style: str,
    unit_sign: str = "",
    prefix: str = "",
) -> Reading | Problem:
    """Read one text for one input. Returns a Problem with one plain line when it cannot be used."""
    return _read(
        each, name, text if isinstance(text, str) else str(text), settings, style, unit_sign, prefix
    )


@lru_cache(SAME_TEXTS)
def _read(
    each: Input[Any],
    name: str,
    text: str,
    settings: Settings,
    style: str,
    unit_sign: str,
    prefix: str,
) -> Reading | Problem:
    label = prefix + (each.label[0].lower() + each.label[1:] if prefix else each.label)
    if not text.strip():
        if each.optional:
            return Reading(each, name, text)
        return _problem(each, name, label, "nothing", settings, unit_sign)
    try:
        return READERS[each.kind](each, name, text, settings, style, unit_sign)
    except _Outside:
        return _problem(each, name, label, _shown(text), settings, unit_sign)
    except Unreadable as error:
        return _problem(each, name, label, _shown(text), settings, unit_sign, str(error))


class _Outside(ValueError):
    """The value was understood and is not allowed."""


def _shown(text: str) -> str:
    clean = "".join(c for c in text if unicodedata.category(c)[0] != "C")
    return clean if len(clean) <= 40 else clean[:39] + "…"


def _problem(
    each: Input[Any],
    name: str,
    label: str,
    given: str,
    settings: Settings,
    unit_sign: str,
    why: str = "",
) -> Problem:
    allowed = allowed_text(each, settings, unit_sign)
    reason = f" ({why})" if why else ""
    return Problem(
        name, given, allowed, f"{label.removesuffix('?')}: {given} given{reason}; give {allowed}."
    )


def allowed_text(each: Input[Any], settings: Settings, unit_sign: str = "") -> str:
    """What may be given, in words: "1 g to 2 kg", "one of: by turns, by weighing"."""
    if each.kind == CHOICE:
        labels = [option.label for option in each.options]
        return "one of: " + ("; " if any("," in label for label in labels) else ", ").join(labels)
    if each.kind == DATE:
        return "a date such as 2027-03-05 or 5 Mar 2027"
    if each.kind == COLOR:
        return "a color such as #6b7f8f or lab(52 -3 -9)"
    if each.kind == TEXT:
        return f"up to {each.longest} characters of text"
    whole = "a whole number from " if each.of is COUNT else ""
    return whole + range_text(each, each.range, settings, unit_sign)


def range_text(
    each: Input[Any], ends: tuple[str, str], settings: Settings, unit_sign: str = ""
) -> str:
    """A declared range in words. In the declared unit as it was declared, in another one
    converted.
    """
    if unit_sign and unit_sign != each.choices[0].sign and each.quantity.has(unit_sign):
        unit = each.quantity.unit(unit_sign)
        numbers = sorted(unit.from_base(each.base_value(text)) for text in ends)
        return " to ".join(
            with_sign(write_plain(number, settings.style, 4), unit) for number in numbers
        )
    parts = []
    for text in ends:
        amount = read_amount(text, each.quantity, each.choices[0], "canonical")
        number = write_plain(amount.unit.from_base(amount.value), settings.style)
        parts.append(
            _money(number, settings) if each.of is MONEY else with_sign(number, amount.unit)
        )
    return " to ".join(parts)


def _money(number: str, settings: Settings) -> str:
    return (
        f"{settings.money}{number}"
        if len(settings.money) == 1
        else f"{number}\u00a0{settings.money}"
    )


def _read_measured(
    each: Input[Any], name: str, text: str, settings: Settings, style: str, unit_sign: str
) -> Reading:
    of = each.quantity
    default = of.unit(unit_sign) if unit_sign and of.has(unit_sign) else each.choices[0]
    plain = tidy(text)
    if each.of is MONEY:
        plain = _without_money_sign(plain, settings)
    amount = read_amount(plain, of, default, style, each.strict)
    low, high = each.edges
    noise = 1e-13 * (high - low)  # of the conversion: 0.1763698 lb and 80 g are the same edge
    if not low - noise - 1e-9 * abs(low) <= amount.value <= high + noise + 1e-9 * abs(high):
        raise _Outside
    if each.of is COUNT and amount.value != round(amount.value):
        raise _Outside
    rough = amount.rough if amount.rough is not None else each.roughness(amount.value, amount.unit)
    unit = each.work_unit
    value = int(amount.value) if each.of is COUNT else unit.from_base(amount.value)
    return Reading(
        each,
        name,
        text,
        value,
        width_in_unit(unit, amount.value, rough),
        amount,
        _echo(each, amount, settings),
        amount.canonical(),
    )


def _echo(each: Input[Any], amount: TypedAmount, settings: Settings) -> str:
    style = settings.style
    number = write_typed(amount.value, amount.unit, style)
    if amount.typed_rough is not None:
        number += f" ± {write_plain(amount.typed_rough, style, 3)}"
    words = _money(number, settings) if each.of is MONEY else with_sign(number, amount.unit)
    other = next(
        (
            unit
            for unit in each.choices
            if unit is not amount.unit and unit.system != amount.unit.system
        ),
        None,
    )
    if other is not None:
        words += f" ({with_sign(write_typed(amount.value, other, style, 4), other)})"
    if amount.other is not None:
        words += f", not {write_typed(amount.other, amount.unit, style)}"
    return f"read as {words}"


def _without_money_sign(text: str, settings: Settings) -> str:
    for sign in CURRENCY.findall(text):
        if sign.strip(".") != settings.money.strip("."):
            raise Unreadable(f"the money sign here is {settings.money}; amounts are not exchanged")
        text = text.replace(sign, " ")
    return text.strip()


def _read_choice(
    each: Input[Any], name: str, text: str, settings: Settings, style: str, unit_sign: str
) -> Reading:
    wanted = tidy(text).lower()
    for option in each.options:
        if wanted in (option.value.lower(), option.label.lower()):
            return Reading(each, name, text, option.value, echo="", text=option.value)
    if wanted in each.refused:
        raise Unreadable(each.refused[wanted])
    raise _Outside


def _read_text(
    each: Input[Any], name: str, text: str, settings: Settings, style: str, unit_sign: str
) -> Reading:
    clean = unicodedata.normalize("NFC", tidy(text))
    if any(unicodedata.category(c) in ("Cc", "Cf", "Cs", "Co", "Cn") for c in clean):
        raise Unreadable("it holds characters that cannot be printed")
    if len(clean) > each.longest:
        raise _Outside
    return Reading(each, name, text, clean, text=clean)


def _read_color(
    each: Input[Any], name: str, text: str, settings: Settings, style: str, unit_sign: str
) -> Reading:
    try:
        color = read_color(text)
    except ValueError:
        raise _Outside from None
    rough = float(each.rough or 0)
    echo = (
        f"read as {color.text} (L* {color.lightness:.0f}, a* {round(color.a) + 0:.0f}, b*"
        f" {round(color.b) + 0:.0f})"
    )
    return Reading(each, name, text, color, rough, echo=echo, text=color.text)


def _read_date(
    each: Input[Any], name: str, text: str, settings: Settings, style: str, unit_sign: str
) -> Reading:
    day = read_date(tidy(text))
    if each.allowed and not date.fromisoformat(each.allowed[0]) <= day <= date.fromisoformat(
        each.allowed[1]
    ):
        raise _Outside
    return Reading(each, name, text, day, echo=f"read as {write_date(day)}", text=day.isoformat())


READERS = {
    "quantity": _read_measured,
    "count": _read_measured,
    "percent": _read_measured,
    "money": _read_measured,
    "number": _read_measured,
    CHOICE: _read_choice,
    TEXT: _read_text,
    COLOR: _read_color,
    DATE: _read_date,
}
