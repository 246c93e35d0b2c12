"""The label in words, and what is not known of it."""

from __future__ import annotations

from typing import Any

from ....core.outcome import Outcome
from ....core.table import STATUS_WORDS, read_table
from .asked import CareLabel


def say(out: Outcome[CareLabel]) -> tuple[str, ...]:
    return (
        out.case.label,
        f"For {out.case.content}. The gentlest of fiber, dye, finish and what was tried decides.",
    )


def notes(out: Outcome[CareLabel]) -> list[str]:
    said = [f"{row['words']} ({STATUS_WORDS[row['status']]})." for row in _ill_fits(out)]
    if out.case.proof in ("none", "hand"):
        said.append(
            "No machine on the label, since no sample went through one. Wash a sample, measure it"
            " before and after, and ask again."
        )
    if out.case.maybe(CareLabel.times) == 1:
        said.append(
            "One wash shows relaxing and the first loose dye. Felting and slow bleeding show later:"
            " wash the sample five times before you print labels."
        )
    if out.case.stains == "unknown":
        said.append("It was not tested for staining: so the label says to wash it separately.")
    if any(row.fiber == "superwash" for row in out.case.fibers):
        said.append("Superwash wool does not felt, it grows: dry it flat, never hung wet.")
    said.append(
        "Where the piece is sold decides what a label must say: fiber names, order, language,"
        " whether symbols may be used and of whom they must be licensed."
    )
    return said


def _ill_fits(out: Outcome[CareLabel]) -> list[dict[str, Any]]:
    """What is known of this dye on those of the fibers that it is not made for."""
    dye = out.case.dye.partition("-")[0]
    kinds = {
        read_table("dye", "fiber-kinds").row("fiber", row.fiber)["kind"] for row in out.case.fibers
    }
    return [
        row
        for row in read_table("dye", "dye-on-fiber").rows
        if row["kind"] in kinds and dye in row["dyes"].split()
    ]
