"""What to mix for painted skeins, and the skein laid open."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.units import PERCENT, VOLUME
from ...pictures.sections import sections_picture
from .asked import PaintPlan
from .said import liquor_of, yarn_of


def mixing(out: Outcome[PaintPlan]) -> Table:
    skeins = out.case.skeins
    rows = tuple(
        (
            section.name,
            yarn_of(out, section),
            liquor_of(out, section),
            out.measured(section.strength, PERCENT, "%", 0.01),
            out.measured(section.run_stock, VOLUME, "mL", 1),
            out.measured(section.run_water, VOLUME, "mL", 1),
        )
        for section in out.case.sections
    )
    return Table(
        f"To mix for {skeins} {'skein' if skeins == 1 else 'skeins'}",
        ("Section", "Yarn", "Liquor for one", "Strength", "Stock, all", "Water, soured, all"),
        rows,
    )


def picture(out: Outcome[PaintPlan]) -> Picture:
    """The skein laid open: each section by its share, with what one skein takes of it."""
    sections = out.case.sections
    return sections_picture(
        [section.name for section in sections],
        [section.mass for section in sections],
        [f"{liquor_of(out, section)} on {yarn_of(out, section)}" for section in sections],
    )
