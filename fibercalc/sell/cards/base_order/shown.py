"""The order line by line, the shelf as bars, and the sheet to order by."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.day import write_date
from ....core.outcome import Outcome
from ....core.units import MASS
from ...pictures.shelf import shelf_picture
from .asked import Base, BaseOrder, DyeOrChemical, ordered_lines
from .said import packs_of


def lines_table(out: Outcome[BaseOrder]) -> Table:
    def grams(value: float) -> str:
        return out.measured(value, MASS, "g", 0.1)

    bases = [
        (
            base.name,
            str(base.needed + base.promised),
            str(base.keep),
            str(base.on_hand),
            str(round(base.net)),
            packs_of(base),
            *_landed(out, base),
        )
        for base in out.case.bases
    ]
    dyes = [
        (
            dye.name,
            grams(dye.needed),
            "–",
            grams(dye.held),
            grams(dye.short),
            packs_of(dye),
            *_landed(out, dye),
        )
        for dye in out.case.dyes
    ]
    return Table(
        "Line by line",
        ("What", "Wanted", "To keep", "There", "To get", "Packs", "Landed", "Landed, each"),
        (*bases, *dyes),
        "Carriage is shared by weight; duty is on price and carriage.",
    )


def _landed(out: Outcome[BaseOrder], line: Base | DyeOrChemical) -> tuple[str, str]:
    """What a line costs landed, and a skein or 100 g of it."""
    if not line.ordered:
        return "–", "–"
    many, words = (100, "/ 100 g") if isinstance(line, DyeOrChemical) else (1, "a skein")
    each = _money(out, line.landed_cost / line.ordered * many)
    return _money(out, line.landed_cost), f"{each} {words}"


def _money(out: Outcome[BaseOrder], value: float) -> str:
    return out.settings.money + out.number(value, 2)


def order_sheet(out: Outcome[BaseOrder]) -> tuple[Table, ...]:
    rows = tuple(
        (line.name, packs_of(line), _money(out, line.outlay), "", "☐")
        for line in ordered_lines(out.case)
    )
    return (
        Table(
            "Order",
            ("What", "Packs", "Price", "Mill lot, date", "Here"),
            rows or (("Nothing", "–", "–", "", "☐"),),
        ),
        Table(
            "When",
            ("Step", "Day", ""),
            (
                ("Order by, at the slowest lead", write_date(out.value(BaseOrder.order_by)), "☐"),
                ("To be here by", write_date(out.case.arrive), "☐"),
                ("Wanted on", write_date(out.case.needed_by), "☐"),
            ),
        ),
    )


def picture(out: Outcome[BaseOrder]) -> Picture | None:
    if not out.case.bases:
        return None
    return shelf_picture(
        [
            (base.name, base.needed, base.promised, base.keep, base.on_hand, base.ordered)
            for base in out.case.bases
        ]
    )
