"""What is known already, as text for an input that asks for it: nothing is typed twice, and its spread travels along."""

from .card import Input
from .number import write_plain
from .settings import Settings
from .units import COUNT
from .work import Worked


def carried(worked: Worked, name: str, into: Input) -> str:
    """A result or input of a card as canonical text for another input; "" when there is none. A 95 % range becomes the uniform it would come from."""
    outcome = worked.outcome
    if name in outcome.found:
        value = outcome.value(name)
        if isinstance(value, str):
            return value[: into.longest]
        if not isinstance(value, (int, float)):
            return ""
        unit = into.choices[0]
        if into.of is COUNT:
            return f"{round(value)}"
        value, low, high = (unit.from_base(v) for v in (value, outcome.low(name), outcome.high(name)))
        half = abs(high - low) / 2 / 0.95  # 95 % of a uniform distribution lies within 0.95 of its half-width
        return f"{value:.6g}{f'~{half:.3g}' if half else ''}{unit.sign.replace(' ', '')}"
    reading = worked.given.readings.get(name)
    return reading.text if reading is not None and reading.asked else ""


def texts_for(each: Input, name: str, reading, settings: Settings) -> dict[str, str]:
    """The texts that set one field of a form from a value read elsewhere, in a unit that the field offers."""
    if reading.amount is None:
        return {name: reading.text}
    amount = reading.amount
    unit = amount.unit if amount.unit in each.choices else each.choices[0]
    text = write_plain(unit.from_base(amount.value), settings.style)
    if amount.typed_rough is not None and unit is amount.unit:
        text += f" ± {write_plain(amount.typed_rough, settings.style)}"
    return {name: text} | ({f"{name}.unit": unit.sign} if len(each.choices) > 1 else {})
