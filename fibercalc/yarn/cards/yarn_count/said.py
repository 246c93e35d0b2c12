"""The answer about a yarn's counts in words."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import MASS
from .asked import BY_PUTUP, BY_SINGLES, YarnCount


def say(out: Outcome[YarnCount]) -> str | tuple[str, ...]:
    first = f"This yarn is {out.said(YarnCount.linear_density)}."
    metric, cotton, worsted = (
        out.bare(YarnCount.linear_density, sign) for sign in ("Nm", "Ne", "Nw")
    )
    others = f"Metric count {metric}, cotton count {cotton}, worsted count {worsted}."
    if out.value(YarnCount.putup_length) < 1:
        return first, others
    typed = out.readings["mass"].amount
    mass = out.amount(out.case.mass, MASS, typed.unit.sign if typed else "")
    return (
        first,
        (
            f"{others} A put-up of {mass} holds {out.promised(YarnCount.putup_length)}, rounded"
            " down as it may be printed."
        ),
    )


def notes(out: Outcome[YarnCount]) -> list[str]:
    said = [
        "A direct number (tex, denier) weighs a fixed length: bigger is thicker. All the others"
        " count length in a fixed weight: bigger is finer."
    ]
    if out.case.known == BY_SINGLES:
        said.append(
            "A name such as 2/20s is nominal: two singles of 20 make 10 with no take-up. What"
            " plying takes up makes the real yarn a little thicker."
        )
    if out.case.known == BY_PUTUP:
        said.append(
            "A put-up is only as true as its weight and its length: a skein 3 g damp makes a count"
            " 3 % too thick."
        )
    return said
