"""The size to make in words, and what comes on top of it."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.table import read_table
from ...shrink import size_after
from .asked import FINISHED, MAKE, PUBLISHED, SHRINK, WAYS, WISHED, MakeSize


def say(out: Outcome[MakeSize]) -> tuple[str, ...]:
    ways = [way for way in WAYS if out.has(MAKE[way])]
    sizes = " and ".join(f"{out.said(MAKE[way])} {WAYS[way]}" for way in ways)
    left = " and ".join(
        f"{out.span(FINISHED[way]) or out.text(FINISHED[way])} {WAYS[way]}" for way in ways
    )
    missing = (
        "" if len(ways) == 2 else " No figure was found for the other direction: measure a swatch."
    )
    return (
        f"Make it {sizes} before washing.",
        f"Made so, washing will likely leave it {left}.{missing}",
    )


def notes(out: Outcome[MakeSize]) -> list[str]:
    said = [*_divided(out)]
    if out.has(MakeSize.more):
        said.append(
            f"That is {out.text(MakeSize.more)} more cloth than will be left, and as much more"
            " yarn."
        )
    if out.case.how == PUBLISHED:
        row = read_table("wash", "shrink-ranges").row("key", out.case.cloth)
        said.append(f"{row['what']}. Others’ cloths: a swatch of your own, washed, is worth more.")
    if out.case.stitches is not None or out.case.rows is not None:
        said.append(
            "Stitches and rows are those of the cloth before washing, as it comes off the needles"
            " or the loom."
        )
    said.append(
        "Hems, fringe and draw-in come on top, in their own place: shrinkage is a percent of the"
        " size before washing, draw-in of the width in the heddle."
    )
    return said


def _divided(out: Outcome[MakeSize]) -> list[str]:
    """What adding the shrinkage, in place of dividing it out, would leave."""
    for way in WAYS:
        if not out.has(MAKE[way]) or abs(shrink := out.value(SHRINK[way])) <= 1:
            continue
        wanted: float = getattr(out.case, WISHED[way].name)
        added = wanted * (1 + shrink / 100)
        return [
            f"Divide, do not add: {in_units(out, wanted)} and {out.number(shrink, 0)} % on top are"
            f" {in_units(out, added)}, of which washing leaves"
            f" {in_units(out, size_after(added, shrink))}."
        ]
    return []


def in_units(out: Outcome[MakeSize], cm: float) -> str:
    """A length given in cm, in the user's units."""
    if out.settings.system == "us":
        return f"{out.number(cm / 2.54, 1)} in"
    return f"{out.number(cm, 1)} cm"
