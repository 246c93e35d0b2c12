"""The chance that each whole number of skeins is enough, as bars."""

from typing import Any

from ...core.answer import Picture
from ...core.outcome import Outcome
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, SOFT, Drawing, Scale

ROW = 21


def odds_picture(counts: list[tuple[int, float]], sure: float, r: Outcome[Any]) -> Picture:
    """Bars of chance for whole numbers of skeins, each (count, chance 0 to 1); sure is the wished
    chance; r writes the words."""
    scale = Scale(0.0, 1.0, 92, 344)
    bottom = 26 + ROW * len(counts)
    drawing = Drawing(bottom + 40)
    for tick in (0, 25, 50, 75, 100):
        at = scale(tick / 100)
        drawing.line(at, 22, at, bottom, stroke=LINE)
        drawing.text(at, bottom + 16, f"{tick}", anchor="middle", fill=SOFT)
    drawing.text(
        scale(0.5), bottom + 34, "knitters in 100 for whom it is enough", anchor="middle", fill=SOFT
    )
    first_enough = next((count for count, chance in counts if chance >= sure), None)
    for at, (count, chance) in enumerate(counts):
        y = 26 + ROW * at
        chosen = count == first_enough
        drawing.text(
            84, y + 15, f"{count} {'skein' if count == 1 else 'skeins'}", anchor="end", bold=chosen
        )
        drawing.rect(
            scale(0),
            y + 2,
            max(scale(chance) - scale(0), 1),
            17,
            fill=INDIGO if chosen else INDIGO_WASH,
            stroke=INDIGO,
        )
        words = r.in_100(chance).removesuffix(" in 100")
        inside = scale(chance) - scale(0) > 60
        end = (
            min(scale(chance), scale(sure)) if inside else scale(chance)
        )  # so that the wished line does not cross the words
        drawing.text(
            end + (-6 if inside else 6),
            y + 15,
            words,
            anchor="end" if inside else "start",
            bold=chosen,
            fill="var(--sheet, #fffdf8)" if chosen and inside else INK,
        )
    wished = scale(sure)
    drawing.line(wished, 18, wished, bottom, stroke=INK, width=1.5, dash="4 3")
    drawing.text(wished, 13, f"wished: {100 * sure:.0f} in 100", anchor="middle")
    return drawing.picture(
        "Odds of each number of skeins",
        "Chance that so many skeins are enough: "
        + "; ".join(f"{count} skeins {r.in_100(chance)}" for count, chance in counts)
        + ".",
    )
