"""The answer about a yarn's thickness in words."""

from __future__ import annotations

from ....core.outcome import Outcome
from ...wrapping import wrap_conventions, wraps_from_yards_per_pound
from .asked import YarnDiameter

FINEST_WRAPPED = 100_000  # yd/lb; what is known of wraps holds up to it


def say(out: Outcome[YarnDiameter]) -> str | tuple[str, ...]:
    span = out.span(YarnDiameter.solid)
    first = f"This yarn is about {out.said(YarnDiameter.solid)} thick" + (
        f" (from {span})." if span else "."
    )
    return (
        first,
        (
            f"Peirce makes it {out.text(YarnDiameter.peirce)}, Ashenhurst"
            f" {out.text(YarnDiameter.ashenhurst)} ({out.text(YarnDiameter.side_by_side)}, side by"
            " side). Use Ashenhurst for a sett, Peirce for cover of cloth, the solid model for a"
            " picture or a loop."
        ),
    )


def notes(out: Outcome[YarnDiameter]) -> list[str]:
    ratio = wrap_conventions().row("name", "relaxed")
    yards = out.case.yards_per_pound
    said = [
        (
            f"The models lie {out.number(out.value(YarnDiameter.apart))} % apart here, because they"
            " mean different things: yarn at rest, yarn pressed in cloth, and yarn set side by"
            " side."
        ),
        (
            "The ranges carry how well count and packing are known, not whether a model fits your"
            " yarn. Packing decides most: 60 % is close-spun, 30 to 45 % soft or woolen (from"
            " memory, unverified)."
        ),
    ]
    if yards <= FINEST_WRAPPED:
        low, high = (wraps_from_yards_per_pound(yards, ratio[end]) for end in ("low", "high"))
        said.append(
            f"A relaxed hand wrap of this yarn would give about {out.number(low)} to"
            f" {out.number(high)} turns in an inch. That is not a diameter and does not belong in"
            " any of these."
        )
    return said
