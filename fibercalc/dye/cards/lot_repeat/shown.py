"""The nudged recipe, and the lots side by side."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.table import read_table
from ....core.units import MASS, PERCENT
from ...color.difference import between
from ...pictures.lots import lots_picture
from .asked import LotRepeat

SHORT = read_table("dye", "visible-differences").rows


def changes(out: Outcome[LotRepeat]) -> Table:
    return Table(
        "The nudged recipe",
        ("Dye", "Was", "Becomes", f"On {out.case.fiber:g} g"),
        tuple(
            (
                dye.name,
                f"{dye.depth:g} %",
                out.measured(dye.next_depth, PERCENT, "%", 0.001),
                _with_sign(dye.change, out.measured(abs(dye.change_mass), MASS, "g", 0.01)),
            )
            for dye in out.case.dyes
        ),
    )


def _with_sign(change: float, amount: str) -> str:
    return f"{'+' if change > 0 else '−' if change < 0 else ''}{amount}"


def picture(out: Outcome[LotRepeat]) -> Picture:
    _, new = out.case.colors
    return lots_picture(
        ("Old lot", "New lot", "After the nudge"),
        (*out.case.colors, out.case.next_color),
        (_short(out.case.before), _short(between(new, out.case.next_color))),
    )


def _short(difference: float) -> str:
    name = next(row["name"] for row in reversed(SHORT) if difference >= row["above"])
    return f"{difference:.1f}: {name}"
