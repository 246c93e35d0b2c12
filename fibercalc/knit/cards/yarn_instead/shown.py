"""The chance of each number of skeins, and both yarns side by side."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.picture import INDIGO, INDIGO_WASH, INK, SOFT, Drawing, Scale
from ....core.units import LENGTH
from ...odds import each_count
from .asked import YarnInstead, spread_of


def odds(out: Outcome[YarnInstead]) -> Table | None:
    counts = each_count(out.case.skeins, spread_of(out))
    rows = tuple(
        (
            str(count),
            out.amount(count * out.case.mine_length, LENGTH, "yd"),
            out.amount(count * out.case.mine_length, LENGTH, "m"),
            out.in_100(chance),
        )
        for count, chance in counts
    )
    return Table(
        "How many of mine, and the chance that they hold the pattern’s length",
        ("Skeins", "Yards", "Meters", "Chance"),
        rows,
    )


def picture(out: Outcome[YarnInstead]) -> Picture | None:
    """Both yarns as threads of their thickness, one gram of each as long as it is."""
    case = out.case
    theirs, mine = 1000 / case.theirs_tex, 1000 / case.mine_tex  # m in a gram
    scale = Scale(0, max(theirs, mine), 16, 340)
    drawing = Drawing(112)
    for y, words, length, tex in (
        (20, "Theirs", theirs, case.theirs_tex),
        (68, "Mine", mine, case.mine_tex),
    ):
        thick = min(max(0.6 * tex**0.5, 3.0), 24.0)
        drawing.text(
            16,
            y,
            f"{words}: one gram is {out.amount(length, LENGTH, 'm', 3)}"
            f" ({out.amount(length, LENGTH, 'yd', 3)})",
            bold=words == "Mine",
        )
        drawing.rect(
            16,
            y + 19 - thick / 2,
            scale(length) - 16,
            thick,
            fill=INDIGO if words == "Mine" else INDIGO_WASH,
            stroke=INK,
        )
    drawing.text(344, 106, "length and thickness in proportion", anchor="end", size=12, fill=SOFT)
    return drawing.picture(
        "One gram of each",
        f"One gram of their yarn is {theirs:.2f} m long, one gram of mine {mine:.2f} m; the longer"
        " thread is the thinner one.",
    )
