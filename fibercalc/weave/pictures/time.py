"""Where the time of a run goes: one bar for each kind of work, longest as wide as the sheet."""

from collections.abc import Sequence
from typing import Any

from ...core.answer import Picture
from ...core.outcome import Outcome
from ...core.picture import INDIGO, INDIGO_WASH, INK, Drawing

LEFT, WIDEST, ROW = 140, 166, 24


def time_bars(parts: Sequence[tuple[str, float]], r: Outcome[Any]) -> Picture:
    """A bar for each part, in the order in which it is done.

    parts  (what is done, hours); those of no time are left out
    r      the outcome, which writes numbers
    Raises nothing.
    """
    parts = [(name, hours) for name, hours in parts if hours > 0]
    longest = max(hours for _, hours in parts)
    drawing = Drawing(ROW * len(parts) + 10)
    for place, (name, hours) in enumerate(parts):
        top = 4 + ROW * place
        wide = WIDEST * hours / longest
        drawing.text(LEFT - 8, top + 16, name, anchor="end", size=13)
        drawing.rect(LEFT, top + 3, wide, 17, fill=INDIGO_WASH, stroke=INDIGO)
        if name == "Weaving":
            drawing.hatch(LEFT, top + 3, wide, 17, gap=6, stroke=INDIGO)
        drawing.text(LEFT + wide + 6, top + 16, f"{r.number(hours, 1)} h", size=13, fill=INK)
    return drawing.picture(
        "Where the time goes", ", ".join(f"{name} {hours:.1f} h" for name, hours in parts) + "."
    )
