"""The answer about a yarn and its water in words."""

from __future__ import annotations

from typing import Any

from ....core.card import Input
from ....core.outcome import Outcome
from ....core.units import MASS
from ...regain import fiber_family, has_curve
from .asked import BY_HUMIDITY, TrueWeight


def without_curve(out: Outcome[TrueWeight]) -> list[str]:
    """The fibers of this yarn that have no curve of regain."""
    return [row.fiber for row in out.case.fibers if not has_curve(fiber_family(row.fiber))]


def as_typed(out: Outcome[TrueWeight], weight: Input[Any]) -> str:
    """A given weight in the unit it was given in."""
    amount = out.readings[weight.name].amount
    return out.amount(amount.value, MASS, amount.unit.sign) if amount else ""


def say(out: Outcome[TrueWeight]) -> str | tuple[str, ...]:
    first = f"It is about {out.text(TrueWeight.conditioned)} of yarn at the standard atmosphere."
    opening = (
        f"From {out.span(TrueWeight.conditioned)}; of"
        if out.rough(TrueWeight.conditioned)
        else "Of"
    )
    weighed = as_typed(out, TrueWeight.weighed)
    water = f"{opening} your {weighed}, about {out.text(TrueWeight.water)} is water"
    agreed = f"by the agreed allowances it counts as {out.text(TrueWeight.eu_mass)} in the EU" + (
        f" and {out.text(TrueWeight.us_mass)} in the US."
        if out.has(TrueWeight.us_mass)
        else "; there is no US figure for it."
    )
    labelled = out.case.labelled
    if labelled is None:
        return first, f"{water}; {agreed}"
    full = 1 - out.chance_below(TrueWeight.conditioned, labelled)
    return (
        first,
        (
            f"{water}. That it is a full {as_typed(out, TrueWeight.labelled)}, as labelled, has a"
            f" chance of {out.in_100(full)}; {agreed}"
        ),
    )


def notes(out: Outcome[TrueWeight]) -> list[str]:
    said = [_two_rules(out)] if out.has(TrueWeight.us_mass) else []
    if out.case.dampness == BY_HUMIDITY:
        said.append(
            "The curve of regain against humidity is from memory, unverified, and may be 15 % off."
            " Yarn that dried from wet holds more than yarn that was damped from dry."
        )
    if out.case.dampness == BY_HUMIDITY and (lacking := without_curve(out)):
        said.append(
            f"No curve is at hand for {' and '.join(dict.fromkeys(lacking))}: the value at 65 %"
            " stands for every humidity, with an error as wide as the steepest curve moves."
        )
    return said


def _two_rules(out: Outcome[TrueWeight]) -> str:
    """How far the EU and the US figures lie apart, and whether the label stands between them."""
    eu_mass, us_mass = out.value(TrueWeight.eu_mass), out.value(TrueWeight.us_mass)
    apart = abs(eu_mass - us_mass)
    how_far = (
        f"lie {out.amount(apart, MASS, out.units(TrueWeight.water)[0].sign, 2)} apart"
        if apart > 0.0005 * out.case.weighed
        else "agree here"
    )
    line = (
        f"The EU and the US figures {how_far}. They are agreed for invoices, not found on a"
        " scale: ask which one your seller goes by."
    )
    labelled = out.case.labelled
    if labelled is not None and (eu_mass - labelled) * (us_mass - labelled) < 0:
        line += " Here one calls the label right and the other calls it short."
    return line
