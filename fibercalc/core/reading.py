"""From texts as typed to values as understood, each with its echo; every bad input becomes one plain line."""

import re
import unicodedata
from dataclasses import dataclass, field, replace
from datetime import date

from .amount import Amount, Unreadable, read_amount, width_in_unit, with_sign, write_typed
from .card import CHOICE, COLOR, DATE, TEXT, Card, Input, Rows
from .color import read_color
from .number import tidy, write_plain
from .problem import Problem
from .settings import Settings
from .units import COUNT, MONEY, PERCENT

MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
CURRENCY = re.compile(r"[$€£¥₹₩₽฿]|[A-Za-z]{1,3}\.?")


@dataclass(frozen=True)
class Reading:
    """One input as understood: value for the answer function (None when blank or not asked), its roughness, echo and canonical text."""

    input: Input
    name: str
    given: str
    value: object = None
    rough: float = 0.0  # half-width, in the unit the answer function gets
    amount: Amount | None = None
    echo: str = ""
    text: str = ""
    asked: bool = True


class Row:
    """One row's values by name, for an answer function."""

    def __init__(self, values: dict):
        self.__dict__.update(values)


@dataclass
class Given:
    """All inputs of one card as understood, or the problems that stop it."""

    card: Card
    readings: dict[str, Reading] = field(default_factory=dict)
    counts: dict[str, int] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)

    def arguments(self, changed: dict[str, object] | None = None) -> dict[str, object]:
        """Keyword arguments for the answer function; changed replaces some values by full name."""
        changed = changed or {}
        arguments = {}
        for item in self.card.inputs:
            if isinstance(item, Rows):
                arguments[item.name] = [
                    Row({each.name: self._value(f"{item.name}.{number}.{each.name}", changed) for each in item.fields})
                    for number in range(1, self.counts.get(item.name, 0) + 1)
                ]
            else:
                arguments[item.name] = self._value(item.name, changed)
        return arguments

    def _value(self, name: str, changed: dict):
        return changed[name] if name in changed else self.readings[name].value

    def asked(self) -> list[str]:
        return [name for name, reading in self.readings.items() if reading.asked]


def read_inputs(card: Card, texts: dict[str, str], settings: Settings, units: dict[str, str] | None = None, exact: dict[str, str] | None = None,
                counts: dict[str, int] | None = None) -> Given:
    """Read texts by full input name ("dyes.1.depth"); a name that is missing keeps its default.

    units: the unit chosen beside a field. exact: canonical text that stands for a shown text (after a unit switch).
    counts: how many rows of a list there are, where the texts cannot say it (none).
    """
    units, exact, counts = units or {}, exact or {}, counts or {}
    given = Given(card)
    defaults = card.defaults()
    known = set(defaults)
    for item in card.inputs:
        if isinstance(item, Rows):
            count = counts.get(item.name, row_count(item, texts))
            given.counts[item.name] = count
            if not item.least <= count <= item.most:
                allowed = f"{item.least} to {item.most} rows"
                given.problems.append(Problem(item.name, str(count), allowed, f"{item.label}: {count} rows given; give {allowed}."))
                continue
            for number in range(1, count + 1):
                for each in item.fields:
                    name = f"{item.name}.{number}.{each.name}"
                    known.add(name)
                    _take(given, each, name, texts, units, exact, settings, defaults.get(name, each.default), f"{item.one.capitalize()} {number}, ")
        else:
            _take(given, item, item.name, texts, units, exact, settings, item.default, "")
    for name in texts:
        if name not in known:
            given.problems.append(Problem(name[:40], str(texts[name])[:40], "an input of this card", f"{name[:40]}: not an input of this card."))
    _apply_conditions(given)
    return given


def row_count(item: Rows, texts: dict[str, str]) -> int:
    """How many rows the texts hold: the highest row number, else the example's count. A count beyond reason is cut."""
    pattern = re.compile(re.escape(item.name) + r"\.(\d{1,4})\.")
    numbers = [int(match[1]) for name in texts if (match := pattern.match(name))]
    return max(numbers) if numbers else len(item.default)


def _take(given: Given, each: Input, name: str, texts: dict, units: dict, exact: dict, settings: Settings, default: str, prefix: str) -> None:
    style = settings.style
    if name in exact:
        text, style = exact[name], "canonical"
    elif name in texts:
        text = texts[name]
    else:
        text, style = default, "canonical"
    reading = read_one(each, name, text, settings, style, units.get(name, ""), prefix)
    if isinstance(reading, Problem):
        given.problems.append(reading)
        reading = Reading(each, name, str(text))
    given.readings[name] = reading


def _apply_conditions(given: Given) -> None:
    """Inputs shown only when another has a certain value lose their value, and their problem, otherwise."""
    for name, reading in list(given.readings.items()):
        parent = name.rsplit(".", 1)[0] + "." if "." in name else ""
        item = reading.input
        rows = next((i for i in given.card.inputs if isinstance(i, Rows) and name.startswith(i.name + ".")), None)
        conditions = [(item.when, parent)] + ([(rows.when, "")] if rows else [])
        if not all(_holds(given, when, prefix) for when, prefix in conditions):
            given.readings[name] = replace(reading, value=None, rough=0.0, asked=False)
            given.problems = [problem for problem in given.problems if problem.input != name]


def _holds(given: Given, when: dict, prefix: str) -> bool:
    for other, values in when.items():
        reading = given.readings.get(prefix + other) or given.readings.get(other)
        if reading is None or not reading.asked or reading.value not in values:
            return False
    return True


def read_one(each: Input, name: str, text: str, settings: Settings, style: str, unit_sign: str = "", prefix: str = "") -> Reading | Problem:
    """Read one text for one input. Returns a Problem with one plain line when it cannot be used."""
    label = prefix + (each.label[0].lower() + each.label[1:] if prefix else each.label)
    text = text if isinstance(text, str) else str(text)
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


def _problem(each: Input, name: str, label: str, given: str, settings: Settings, unit_sign: str, why: str = "") -> Problem:
    allowed = allowed_text(each, settings, unit_sign)
    reason = f" ({why})" if why else ""
    return Problem(name, given, allowed, f"{label}: {given} given{reason}; give {allowed}.")


def allowed_text(each: Input, settings: Settings, unit_sign: str = "") -> str:
    """What may be given, in words: "1 g to 2 kg", "one of: by turns, by weighing"."""
    if each.kind == CHOICE:
        return "one of: " + ", ".join(option.label for option in each.options)
    if each.kind == DATE:
        return "a date such as 2027-03-05 or 5 Mar 2027"
    if each.kind == COLOR:
        return "a color such as #6b7f8f or lab(52 -3 -9)"
    if each.kind == TEXT:
        return f"up to {each.longest} characters of text"
    whole = "a whole number from " if each.of is COUNT else ""
    return whole + range_text(each, each.allowed, settings, unit_sign)


def range_text(each: Input, ends: tuple[str, str], settings: Settings, unit_sign: str = "") -> str:
    """A declared range in words. In the declared unit as it was declared, in another one converted."""
    if unit_sign and unit_sign != each.choices[0].sign and each.of.has(unit_sign):
        unit = each.of.unit(unit_sign)
        numbers = sorted(unit.from_base(each.base_value(text)) for text in ends)
        return " to ".join(with_sign(write_plain(number, settings.style, 4), unit) for number in numbers)
    parts = []
    for text in ends:
        amount = read_amount(text, each.of, each.choices[0], "canonical")
        number = write_plain(amount.unit.from_base(amount.value), settings.style)
        parts.append(_money(number, settings) if each.of is MONEY else with_sign(number, amount.unit))
    return " to ".join(parts)


def _money(number: str, settings: Settings) -> str:
    return f"{settings.money}{number}" if len(settings.money) == 1 else f"{number}\u00a0{settings.money}"


def _read_measured(each: Input, name: str, text: str, settings: Settings, style: str, unit_sign: str) -> Reading:
    default = each.of.unit(unit_sign) if unit_sign and each.of.has(unit_sign) else each.choices[0]
    plain = tidy(text)
    if each.of is MONEY:
        plain = _without_money_sign(plain, settings)
    amount = read_amount(plain, each.of, default, style, each.strict)
    low, high = each.edges
    slack = 1e-9 * max(abs(low), abs(high))  # 2 oz and 56.7 g are the same edge
    if not low - slack <= amount.value <= high + slack:
        raise _Outside
    if each.of is COUNT and amount.value != round(amount.value):
        raise _Outside
    rough = amount.rough if amount.rough is not None else each.roughness(amount.value, amount.unit)
    unit = each.work_unit
    value = int(amount.value) if each.of is COUNT else unit.from_base(amount.value)
    return Reading(each, name, text, value, width_in_unit(unit, amount.value, rough), amount, _echo(each, amount, settings), amount.canonical())


def _echo(each: Input, amount: Amount, settings: Settings) -> str:
    style = settings.style
    number = write_typed(amount.value, amount.unit, style)
    if amount.typed_rough is not None:
        number += f" ± {write_plain(amount.typed_rough, style, 3)}"
    words = _money(number, settings) if each.of is MONEY else with_sign(number, amount.unit)
    other = next((unit for unit in each.choices if unit is not amount.unit and unit.system != amount.unit.system), None)
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


def _read_choice(each: Input, name: str, text: str, settings: Settings, style: str, unit_sign: str) -> Reading:
    wanted = tidy(text).lower()
    for option in each.options:
        if wanted in (option.value.lower(), option.label.lower()):
            return Reading(each, name, text, option.value, echo="", text=option.value)
    raise _Outside


def _read_text(each: Input, name: str, text: str, settings: Settings, style: str, unit_sign: str) -> Reading:
    clean = unicodedata.normalize("NFC", tidy(text))
    if any(unicodedata.category(c) in ("Cc", "Cf", "Cs", "Co", "Cn") for c in clean):
        raise Unreadable("it holds characters that cannot be printed")
    if len(clean) > each.longest:
        raise _Outside
    return Reading(each, name, text, clean, text=clean)


def _read_color(each: Input, name: str, text: str, settings: Settings, style: str, unit_sign: str) -> Reading:
    try:
        color = read_color(text)
    except ValueError:
        raise _Outside from None
    rough = float(each.rough or 0)
    echo = f"read as {color.text} (L* {color.lightness:.0f}, a* {color.a:.0f}, b* {color.b:.0f})"
    return Reading(each, name, text, color, rough, echo=echo, text=color.text)


def _read_date(each: Input, name: str, text: str, settings: Settings, style: str, unit_sign: str) -> Reading:
    day = read_date(tidy(text))
    if each.allowed and not date.fromisoformat(each.allowed[0]) <= day <= date.fromisoformat(each.allowed[1]):
        raise _Outside
    return Reading(each, name, text, day, echo=f"read as {write_date(day)}", text=day.isoformat())


def read_date(text: str) -> date:
    """A date from 2027-03-05, 5 Mar 2027 or March 5, 2027. Raises Unreadable; 3/5/2027 is refused with a question."""
    numbers = re.findall(r"\d+", text)
    words = [word.lower()[:3] for word in re.findall(r"[A-Za-z]+", text)]
    month = next((MONTHS.index(word) + 1 for word in words if word in MONTHS), None)
    try:
        if re.fullmatch(r"\d{4}-\d{1,2}-\d{1,2}", text):
            return date(*map(int, text.split("-")))
        if month and len(numbers) == 2:
            day, year = sorted(map(int, numbers))
            return date(year, month, day)
        if not month and len(numbers) == 3 and len(numbers[2]) == 4:
            first, second, year = map(int, numbers)
            if first > 12 or second > 12 or first == second:
                day, month = (first, second) if first > 12 or first == second else (second, first)
                return date(year, month, day)
            raise Unreadable(f"is that {write_date(date(year, second, first))} or {write_date(date(year, first, second))}?")
    except Unreadable:
        raise
    except ValueError:
        raise Unreadable("there is no such day") from None
    raise Unreadable("no date was found")


def write_date(day: date) -> str:
    """A date with its weekday: "Fri 5 Mar 2027"."""
    weekday = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")[day.weekday()]
    return f"{weekday} {day.day} {MONTHS[day.month - 1].capitalize()} {day.year}"


READERS = {"quantity": _read_measured, "count": _read_measured, "percent": _read_measured, "money": _read_measured, "number": _read_measured,
           CHOICE: _read_choice, TEXT: _read_text, COLOR: _read_color, DATE: _read_date}
