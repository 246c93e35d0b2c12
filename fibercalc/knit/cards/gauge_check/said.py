"""What is said of a gauge."""

from __future__ import annotations

from typing import Any

from ....core.outcome import Outcome
from ....core.table import read_table
from .asked import GaugeCheck


def say(out: Outcome[GaugeCheck]) -> str | tuple[str, ...]:
    first = (
        f"Knit size {out.case.sizes[out.case.best].name}: at your gauge it comes out at"
        f" {out.said(GaugeCheck.girth)}."
    )
    return (
        first,
        f"From {out.span(GaugeCheck.girth)}: the swatch leaves that much open."
        f" {_needle_words(out)}",
    )


def _needle_words(out: Outcome[GaugeCheck]) -> str:
    own, pattern = out.value(GaugeCheck.own_stitches), out.case.pattern_stitches
    if abs(own / pattern - 1) < 0.015:
        return "Your gauge is the pattern’s, as far as a swatch can tell."
    looser = own < pattern
    return (
        f"Your stitches are {'wider' if looser else 'narrower'} than the pattern’s by"
        f" {100 * abs(pattern / own - 1):.0f} %."
    )


def _nearest(millimeters: float) -> dict[str, Any]:
    """The needle size in the table nearest to a wanted diameter."""
    rows = read_table("knit", "needle-sizes").rows
    return min(rows, key=lambda row: abs(row["mm"] - millimeters))


def notes(out: Outcome[GaugeCheck]) -> list[str]:
    said = []
    case, asked = out.case, out.case.needle
    nearest = _nearest(case.needle_to_try)
    names = " or ".join(name for name in (nearest["us"], nearest["uk"]) if name)
    best = case.sizes[case.best]
    if abs(nearest["mm"] - asked) > 0.01:
        said.append(
            f"Needle alone: {out.number(nearest['mm'], 2).rstrip('0').rstrip('.,')}"
            f" mm{f' ({names})' if names else ''} instead of {asked:g} mm would likely bring the"
            " pattern’s gauge; then knit the size that the pattern says. Swatch again with it:"
            " this is a first try."
        )
        by_pattern = min(case.sizes, key=lambda row: abs(row.girth - case.wanted))
        if by_pattern.name != best.name:
            said.append(
                f"Size alone: keep your needle and knit {best.name} instead of {by_pattern.name}."
                " Change the needle or the size, not both: the one undoes the other."
            )
    if abs(case.row_share - 1) > 0.02:
        said.append(
            f"Rows: work {out.number(case.row_share, 2)} times the rows that the pattern counts,"
            " or measure lengths instead of counting."
        )
    if out.has(GaugeCheck.wider):
        said.append(
            f"In the wash the swatch changed by {out.text(GaugeCheck.wider)} in width and"
            f" {out.text(GaugeCheck.longer)} in length. Measure the piece on the needles with that"
            " in mind."
        )
    else:
        said.append(
            "An unwashed swatch tells the size until the first wash. Wash it as the garment will be"
            " washed."
        )
    return said
