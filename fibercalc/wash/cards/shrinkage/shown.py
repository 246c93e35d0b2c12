"""Samples and washes as tables, and the first sample drawn before and after."""

from __future__ import annotations

from itertools import pairwise

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ...pictures.cloth import cloth_sizes
from ...shrink import area_change, change_percent
from .asked import Shrinkage
from .said import signed


def samples(out: Outcome[Shrinkage]) -> Table:
    rows = tuple(
        (
            str(number),
            signed(out, sample.length_change),
            signed(out, sample.width_change),
            signed(out, area_change(sample.length_change, sample.width_change)),
        )
        for number, sample in enumerate(out.case.samples, 1)
    )
    return Table(
        "Sample by sample, first wash",
        ("Sample", "Length", "Width", "Area"),
        rows,
        "Minus is shrinkage.",
    )


def washes(out: Outcome[Shrinkage]) -> Table | None:
    if not out.has(Shrinkage.later_length):
        return None
    first = out.case.samples[0]
    sizes = [
        (first.length, first.width),
        (first.length_after, first.width_after),
        *((wash.length, wash.width) for wash in out.case.later),
    ]
    rows = tuple(
        (
            str(number),
            *(signed(out, change_percent(old, new)) for old, new in zip(before, now)),
            *(signed(out, change_percent(old, new)) for old, new in zip(sizes[0], now)),
        )
        for number, (before, now) in enumerate(pairwise(sizes), 1)
    )
    return Table(
        "Sample 1, wash by wash",
        ("Wash", "Length", "Width", "Length in all", "Width in all"),
        rows,
        "Each wash is a percent of the size before it; they multiply, they do not add.",
    )


def picture(out: Outcome[Shrinkage]) -> Picture:
    first = out.case.samples[0]
    sizes = [
        ("before", first.length, first.width),
        ("after 1 wash", first.length_after, first.width_after),
    ]
    if out.has(Shrinkage.total_length):
        last = out.case.later[-1]
        sizes.append((f"after {1 + len(out.case.later)}", last.length, last.width))
    sign, each = ("in", 2.54) if out.settings.system == "us" else ("cm", 1.0)
    return cloth_sizes(
        "Sample 1 before and after",
        sizes,
        [
            f"{out.number(length / each, 1)} x {out.number(width / each, 1)} {sign}"
            for _, length, width in sizes
        ],
    )
