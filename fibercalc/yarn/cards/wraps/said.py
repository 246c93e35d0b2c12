"""What the wraps are called, in words."""

from __future__ import annotations

from collections.abc import Sequence

from ....core.outcome import Outcome
from ...weight_class import COUNCIL, agreed_classes, classes_by_grist, classes_by_wraps
from .asked import PER_CM, RELAXED, Wraps


def reading(out: Outcome[Wraps]) -> tuple[float, float]:
    """The low and high of the reading in wraps per inch."""
    return out.low(Wraps.wraps) / PER_CM, out.high(Wraps.wraps) / PER_CM


def matches(out: Outcome[Wraps], published: str) -> tuple[tuple[str, ...], tuple[str, ...] | None]:
    """Names that match by wraps, and by length and weight where they are known.

    The published ranges are of relaxed wraps; other wraps match by the band of yards per pound.
    """
    by_wraps = (
        classes_by_wraps(published, *reading(out))
        if out.case.convention == RELAXED
        else classes_by_grist(published, out.low(Wraps.by_wraps), out.high(Wraps.by_wraps))
    )
    by_grist = (
        classes_by_grist(published, out.low(Wraps.by_label), out.high(Wraps.by_label))
        if out.has(Wraps.by_label)
        else None
    )
    return by_wraps, by_grist


def say(out: Outcome[Wraps]) -> str | tuple[str, ...]:
    names, by_grist = matches(out, COUNCIL)
    first = f"{out.bare(Wraps.wraps, 'per in')} wraps per inch: {listed(names)}."
    band = f"By wraps alone it has {out.span(Wraps.by_wraps)}"
    if by_grist is None:
        return first, band + "; a weighed length says it far better."
    both = agreed_classes(names, by_grist)
    if both:
        return (
            first,
            (
                f"{band}. Its length and weight say {out.text(Wraps.by_label)}, and both agree on"
                f" {listed(both)}."
            ),
        )
    return (
        first,
        (
            f"{band}. Its length and weight say {out.text(Wraps.by_label)}, which is"
            f" {listed(by_grist)}: the two do not agree."
        ),
    )


def listed(names: Sequence[str]) -> str:
    if not names:
        return "no class of the list"
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} or {names[-1]}"


def notes(out: Outcome[Wraps]) -> list[str]:
    said = [
        "The published ranges overlap and follow no single rule, so every class that the reading"
        " touches is named."
    ]
    if out.case.convention != RELAXED:
        said.append(
            "The published classes go by relaxed wraps. Here they were found from the band of yards"
            " per pound instead, so more of them match."
        )
    if len(out.case.tries) == 1:
        said.append("One try says nothing of its own spread: unwind and wrap twice more.")
    return said
