"""How long it is, how sure, and what may be printed."""

from __future__ import annotations

from ....core.outcome import Outcome
from .asked import SkeinLength

WAYS = {"by_turns": "by turns of the reel", "by_sample": "by the weighed sample"}


def say(out: Outcome[SkeinLength]) -> str | tuple[str, ...]:
    first = f"This skein holds about {out.said(SkeinLength.length)}."
    if out.has(SkeinLength.printable):
        if out.low(SkeinLength.printable) <= 0:
            return (
                first,
                (
                    f"{len(out.case.skeins)} skeins that average {out.text(SkeinLength.average)}"
                    " differ too much for a length to print: measure more of them, wound alike."
                ),
            )
        return (
            first,
            (
                f"From {len(out.case.skeins)} skeins that average {out.text(SkeinLength.average)},"
                f" print no more than {out.promised(SkeinLength.printable)}."
            ),
        )
    if not out.rough(SkeinLength.length):
        return first
    return (
        first,
        (
            f"From {out.span(SkeinLength.length)}, {WAYS[out.best(SkeinLength.length)]}. With one"
            f" skein measured, print no more than {out.promised(SkeinLength.length)}."
        ),
    )


def notes(out: Outcome[SkeinLength]) -> list[str]:
    said = []
    if out.has(SkeinLength.by_turns) and out.has(SkeinLength.by_sample):
        better = out.best(SkeinLength.length)
        other = "by_sample" if better == "by_turns" else "by_turns"
        said.append(
            f"The two ways give {out.text(SkeinLength.by_turns)} and"
            f" {out.text(SkeinLength.by_sample)}. The better one here is {WAYS[better]}: its range"
            " is the narrower."
        )
        if out.low(better) > out.high(other) or out.low(other) > out.high(better):
            said.append(
                "Their ranges do not meet: measure the circumference on the yarn again, and see"
                " that sample and skein are equally dry."
            )
    if out.has(SkeinLength.printable) and out.low(SkeinLength.printable) > 0:
        single = (
            f" One single skein may be as short as {out.down(SkeinLength.next_skein)}."
            if out.low(SkeinLength.next_skein) > 0
            else ""
        )
        said.append(
            "The limit to print is for the average of the whole delivery (19 in 20 sure, the"
            f" reel's own error taken off).{single}"
        )
    return said
