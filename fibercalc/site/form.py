"""The form of a card, from its declaration. Labels, hints, units and error slots are all there
before any script runs.
"""

from collections.abc import Iterable
from typing import Any

from ..core.card import CHOICE, COLOR, TEXT, Card, Input, Rows
from ..core.color import Color
from ..core.entry import Reading, range_text
from ..core.markup import Markup, tag
from ..core.number import write_plain
from ..core.reading import Given
from ..core.settings import Settings
from ..core.units import MONEY

KEYBOARDS = {"count": "numeric", "percent": "decimal", "money": "decimal", "number": "decimal"}
LINE = 60  # characters: a longer text has a line of the paper to itself


def form(card: Card, given: Given, settings: Settings, heading: str = "What you know") -> Markup:
    """The whole form, filled with what was given."""
    shown, beside = set(given.asked()), _beside(card.inputs)
    parts = [
        (
            _rows(card.id, item, given, settings)
            if isinstance(item, Rows)
            else field(
                card.id,
                item,
                item.name,
                given,
                settings,
                item.name in shown,
                beside=beside.get(item.name),
            )
        )
        for item in card.inputs
        if not _is_beside(item)
    ]
    return tag(
        "form",
        tag("h2", heading),
        tag("div", class_="offers", data_slot="offers", hidden=True),
        *parts,
        class_="given",
        aria_label=heading,
        novalidate=True,
        autocomplete="off",
        data_search_exclude=True,
    )


def _is_beside(item: Input[Any] | Rows[Any]) -> bool:
    return isinstance(item, Input) and bool(item.beside)


def _beside(items: Iterable[Input[Any] | Rows[Any]]) -> dict[str, Input[Any]]:
    """Name of an input -> the choice that stands beside it."""
    return {item.beside.name: item for item in items if isinstance(item, Input) and item.beside}


def field(
    card_id: str,
    each: Input[Any],
    name: str,
    given: Given,
    settings: Settings,
    shown: bool = True,
    label: str = "",
    hints: str = "",
    beside: Input[Any] | None = None,
) -> Markup:
    """One input: label, hint, control with its unit, the reading echoed, and room for an error
    line. hints is the id of a hint that stands elsewhere: rows share theirs. beside is a
    choice that says something of the value.
    """
    reading = given.readings.get(name)
    label = label or each.label
    control = f"{card_id}.{name}"
    said = tag("p", reading.echo if reading else "", class_="read", id=f"{control}-read")
    about = f"{hints or f'{control}-hint'} {control}-read {control}-why"
    return tag(
        "div",
        tag("label", label, optional(each), for_=control),
        None if hints else tag("p", hint(each, settings), class_="hint", id=f"{control}-hint"),
        tag("div", *_entry(each, name, control, about, label, reading, settings), class_="entry"),
        tag("div", said, _said_of(beside, name, given, label), class_="under") if beside else said,
        tag("p", class_="why", id=f"{control}-why", hidden=True),
        class_="field long" if each.kind == TEXT and each.longest > LINE else "field",
        data_name=name,
        data_kind=each.kind,
        hidden=not shown,
    )


def _said_of(each: Input[Any], name: str, given: Given, label: str) -> Markup:
    """The choice beside a value; it has no line of its own."""
    own = f"{name.rpartition('.')[0]}.{each.name}".lstrip(".")
    reading = given.readings.get(own)
    chosen = reading.text if reading else each.default
    options = [
        tag("option", option.label, value=option.value, selected=option.value == chosen)
        for option in each.options
    ]
    return tag(
        "select", *options, class_="beside", name=own, aria_label=f"{label}: how you know it"
    )


def optional(each: Input[Any]) -> Markup | None:
    """The word that says a field may stay blank."""
    return tag("span", " (may be left blank)", class_="optional") if each.optional else None


def hint(each: Input[Any], settings: Settings) -> str:
    """How to measure it, what is usual, and how rough it usually is."""
    parts = [each.measure]
    if each.usual:
        parts.append(f"Usual: {range_text(each, each.usual, settings)}.")
    if each.rough and each.measured:
        parts.append(f"Good to ± {each.rough} unless you type your own ±.")
    return " ".join(part for part in parts if part)


def _entry(
    each: Input[Any],
    name: str,
    control: str,
    about: str,
    label: str,
    reading: Reading | None,
    settings: Settings,
) -> list[Markup]:
    if each.kind == CHOICE:
        chosen = reading.text if reading else each.default
        options = [
            tag("option", option.label, value=option.value, selected=option.value == chosen)
            for option in each.options
        ]
        return [tag("select", *options, id=control, name=name, aria_describedby=about)]
    text, unit = shown_text(each, reading, settings)
    box = tag(
        "input",
        id=control,
        name=name,
        type="text",
        inputmode=KEYBOARDS.get(each.kind, "text"),
        value=text,
        autocomplete="off",
        autocapitalize="off",
        spellcheck="false",
        enterkeyhint="next",
        aria_describedby=about,
        maxlength=None,
    )
    if each.kind == "count":
        return [_stepper(label, -1), box, _stepper(label, 1)]
    if each.kind == COLOR:
        return [
            box,
            tag(
                "input",
                type="color",
                class_="swatch",
                value=_swatch(reading),
                data_for=name,
                aria_label=f"Pick a color: {label}",
            ),
        ]
    if not each.measured:
        return [box]
    if len(each.choices) > 1:
        options = [
            tag(
                "option",
                (
                    f"{each_unit.words} ({each_unit.sign})"
                    if each_unit.sign not in each_unit.words
                    else each_unit.words
                ),
                value=each_unit.sign,
                selected=each_unit.sign == unit,
            )
            for each_unit in each.choices
        ]
        return [
            box,
            tag(
                "select",
                *options,
                class_="unit",
                name=f"{name}.unit",
                aria_label=f"Unit for {label}",
            ),
        ]
    sign = settings.money if each.of is MONEY else each.choices[0].sign
    return [box, tag("span", sign, class_="unit")] if sign else [box]


def _stepper(label: str, by: int) -> Markup:
    return tag(
        "button",
        "+" if by > 0 else "−",
        type="button",
        class_="step",
        data_step=by,
        aria_label=f"One {'more' if by > 0 else 'less'}: {label}",
    )


def _swatch(reading: Reading | None) -> str:
    color: Color | None = reading.value if reading is not None else None
    return color.hex if color is not None else "#808080"


def shown_text(each: Input[Any], reading: Reading | None, settings: Settings) -> tuple[str, str]:
    """What stands in a field and the unit chosen beside it, for an input as read."""
    if reading is None:
        return each.default, each.choices[0].sign if each.measured else ""
    if reading.amount is None:
        return reading.text or reading.given, each.choices[0].sign if each.measured else ""
    amount = reading.amount
    offered = amount.unit if amount.unit in each.choices else each.choices[0]
    text = write_plain(offered.from_base(amount.value), settings.style)
    if amount.typed_rough is not None and offered is amount.unit:
        text += f" ± {write_plain(amount.typed_rough, settings.style)}"
    return text, offered.sign


def _rows(card_id: str, item: Rows[Any], given: Given, settings: Settings) -> Markup:
    count = given.counts.get(item.name, len(item.default))
    shown = set(given.asked())
    any_shown = not item.when or any(name.startswith(f"{item.name}.") for name in shown)
    blank = _row(card_id, item, "{n}", Given(given.card), settings, None)
    return tag(
        "fieldset",
        tag("legend", item.label),
        _row_hints(card_id, item, settings),
        *(
            _row(card_id, item, str(number), given, settings, shown if any_shown else None)
            for number in range(1, count + 1)
        ),
        tag("button", f"Add a {item.one}", type="button", class_="more", data_add=item.name),
        tag("template", blank, data_template=item.name),
        class_="rows",
        data_rows=item.name,
        data_min=item.least,
        data_max=item.most,
        hidden=not any_shown,
    )


def _row_hints(card_id: str, item: Rows[Any], settings: Settings) -> Markup:
    """What is said once for all rows: how to measure, and each field's own hint."""
    lines = [item.measure] + [
        f"{each.label}: {said[0].lower()}{said[1:]}"
        for each in item.fields
        if not _is_beside(each) and (said := hint(each, settings))
    ]
    return tag(
        "div",
        *(tag("p", line, class_="hint") for line in lines if line),
        id=f"{card_id}.{item.name}-hints",
    )


def _row(
    card_id: str,
    item: Rows[Any],
    number: str,
    given: Given,
    settings: Settings,
    shown: set[str] | None,
) -> Markup:
    fields, beside = [], _beside(item.fields)
    for each in item.fields:
        if _is_beside(each):
            continue
        name = f"{item.name}.{number}.{each.name}"
        label = f"{item.one.capitalize()} {number}, {each.label[0].lower()}{each.label[1:]}"
        fields.append(
            field(
                card_id,
                each,
                name,
                given,
                settings,
                shown is None or name in shown,
                label,
                f"{card_id}.{item.name}-hints",
                beside.get(each.name),
            )
        )
    remove = tag(
        "button",
        f"Remove {item.one} {number}",
        type="button",
        class_="less",
        data_remove=f"{item.name}.{number}",
    )
    return tag("div", *fields, remove, class_="row", data_row=number)


def values_of(given: Given, settings: Settings) -> dict[str, str]:
    """The text of every control by its name, units included, for inputs as read: what a form
    shows them as.
    """
    values = {}
    for name, reading in given.readings.items():
        text, unit = shown_text(reading.input, reading, settings)
        values[name] = text
        if reading.input.measured and len(reading.input.choices) > 1:
            values[f"{name}.unit"] = unit
    return values
