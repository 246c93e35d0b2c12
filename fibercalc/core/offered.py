"""A value read in one place, as the texts that set a field in another: offered, with its spread,
in a unit that the field has.
"""

from typing import Any

from .card import Input
from .entry import Reading
from .number import write_plain
from .settings import Settings


def texts_for(each: Input[Any], name: str, reading: Reading, settings: Settings) -> dict[str, str]:
    """The texts that set one field of a form from a value read elsewhere, in a unit that the
    field offers.
    """
    if reading.amount is None:
        return {name: reading.text}
    amount = reading.amount
    unit = amount.unit if amount.unit in each.choices else each.choices[0]
    text = write_plain(unit.from_base(amount.value), settings.style)
    if amount.typed_rough is not None and unit is amount.unit:
        text += f" ± {write_plain(amount.typed_rough, settings.style)}"
    return {name: text} | ({f"{name}.unit": unit.sign} if len(each.choices) > 1 else {})
