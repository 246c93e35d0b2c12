"""Other ways to cut the skein as a table, and the skein as a bar."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.picture import INDIGO, INDIGO_WASH, INK, Drawing, Scale
from ....core.units import LENGTH
from ...putup import printed_grams
from ...reel import mass_of_turns
from ...split import left_over, most_turns_for_count
from .asked import SkeinSplit


def other_ways(out: Outcome[SkeinSplit]) -> Table | None:
    """The same skein cut into fewer and more: turns, length, weight, what is left."""
    reel, loss, usable = out.case.reel, out.case.loss_per_cut, out.case.usable
    tex = out.case.yarn_count
    rows = []
    for count in range(max(1, out.value(SkeinSplit.count) - 1), out.value(SkeinSplit.count) + 4):
        turns = most_turns_for_count(usable, count, reel, loss)
        if turns < 1:
            break
        rest = left_over(usable, count, turns * reel, loss)
        rows.append(
            (
                str(count),
                str(turns),
                out.amount(turns * reel, LENGTH, "m", 4),
                out.amount(turns * reel, LENGTH, "yd", 4),
                f"{out.number(printed_grams(mass_of_turns(turns, reel, tex)))} g",
                out.amount(rest, LENGTH, "m", 3),
            )
        )
    return Table(
        "As many turns as go",
        ("Small skeins", "Turns each", "Meters", "Yards", "Label at most", "Left over"),
        tuple(rows),
    )


def picture(out: Outcome[SkeinSplit]) -> Picture | None:
    """The full skein as a bar, cut; what is left is hatched, what is lost is blank."""
    whole = out.case.skein_length
    scale = Scale(0, whole, 8, 352)
    drawing = Drawing(118)
    count, small, loss = (
        out.value(SkeinSplit.count),
        out.value(SkeinSplit.small_length),
        out.case.loss_per_cut,
    )
    drawing.text(8, 16, f"One full skein: {out.amount(whole, LENGTH, 'm')}", bold=True)
    at = 0.0
    shown = min(count, 60)
    for number in range(1, shown + 1):
        left, right = scale(at), scale(min(at + small, whole))
        drawing.rect(left, 26, right - left, 40, fill=INDIGO_WASH, stroke=INDIGO, stroke_width=1.5)
        if right - left > 24:
            drawing.text((left + right) / 2, 51, str(number), anchor="middle", bold=True)
        at += small + loss
    usable = out.case.usable
    end = min(count * (small + loss), usable)
    if usable > end:
        drawing.hatch(scale(end), 26, scale(usable) - scale(end), 40, stroke=INK)
        drawing.rect(scale(end), 26, scale(usable) - scale(end), 40)
    drawing.rect(scale(usable), 26, scale(whole) - scale(usable), 40, stroke=INK)
    drawing.text(8, 86, f"{count} × {out.amount(small, LENGTH, 'm')}")
    drawing.text(352, 86, f"left {out.text(SkeinSplit.left, 'm')} (hatched)", anchor="end")
    drawing.text(
        352, 106, f"lost in winding {out.amount(whole - usable, LENGTH, 'm', 3)}", anchor="end"
    )
    return drawing.picture(
        "The skein, cut",
        f"A full skein of {out.amount(whole, LENGTH, 'm')} cut into {count} small skeins of"
        f" {out.amount(small, LENGTH, 'm')}; {out.text(SkeinSplit.left, 'm')} left over.",
    )
