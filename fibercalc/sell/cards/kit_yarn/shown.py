"""A kit color by color, and what cutting skeins would save."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.units import LENGTH
from ...pictures.kits import kit_picture
from .asked import KitYarn, packed_colors, spare_in
from .worked import cuts


def by_color(out: Outcome[KitYarn]) -> Table:
    rows = [
        (
            color.name,
            out.amount(color.needed, LENGTH, "m", 4),
            out.amount(color.needed, LENGTH, "yd", 4),
            str(color.skeins),
            out.amount(color.skeins * out.case.skein_length, LENGTH, "m", 4),
            f"{out.number(spare_in(out, color))} %",
            out.in_100(color.short),
            str(out.case.packed * color.skeins),
        )
        for color in packed_colors(out)
    ]
    return Table(
        "Color by color",
        ("Color", "Pattern, m", "Pattern, yd", "Skeins", "Given", "Spare", "Short", "All kits"),
        tuple(rows),
        "Spare is over the pattern’s figure; “short” is how many knitters in 100 need more than is"
        " given.",
    )


def cutting(out: Outcome[KitYarn]) -> Table:
    rows = []
    for cut in cuts(out):
        part = (
            f"{cut.turns} turns, {out.amount(cut.length, LENGTH, 'm', 3)}"
            f" ({out.amount(cut.length, LENGTH, 'yd', 3)})"
            if cut.turns
            else "–"
        )
        rows.append(
            (
                cut.color.name,
                str(cut.whole),
                part,
                str(cut.per) if cut.per else "–",
                str(cut.skeins),
                str(max(cut.saved, 0)) if cut.per else "0",
            )
        )
    return Table(
        "If skeins were cut to what is wanted",
        ("Color", "Whole", "and a part of", "Parts a skein", "Skeins, all kits", "Saved"),
        tuple(rows),
        "A part is wound in whole turns, long enough for the wished chance. Weigh and label each: a"
        " part looks like any other small skein.",
    )


def picture(out: Outcome[KitYarn]) -> Picture:
    return kit_picture(
        [
            (
                color.name,
                color.skeins,
                color.in_skeins,
                color.in_skeins - color.spread.half_width("down"),
                color.in_skeins + color.spread.half_width("up"),
                (
                    f"{color.skeins} given, spare {spare_in(out, color):.0f} %,"
                    f" short {out.in_100(color.short)}"
                ),
            )
            for color in packed_colors(out)
        ]
    )
