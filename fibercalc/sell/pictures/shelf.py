"""Each base as one bar: what is spoken for and to be kept, beside what is on hand and on order."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, SHEET, SOFT, Drawing, Scale, short

LEFT, RIGHT, ROW = 8, 352, 74


def shelf_picture(lines: Sequence[tuple[str, float, float, float, float, float]]) -> Picture:
    """Two bars for each line: (name, needed by plans, promised, to keep, on hand, ordered), in skeins.

    Raises nothing.
    """
    most = max([needed + promised + keep for _, needed, promised, keep, _, _ in lines] + [held + ordered for *_, held, ordered in lines] + [1.0])
    across, said = Scale(0, most, LEFT, RIGHT), []
    drawing = Drawing(ROW * len(lines) + 44)
    for place, (name, needed, promised, keep, held, ordered) in enumerate(lines):
        y = ROW * place
        drawing.text(LEFT, y + 16, f"{short(name, 14)}: {needed + promised + keep:.0f} wanted, {held + ordered:.0f} there will be", size=13, bold=True)
        at = 0.0
        for value, fill, hatched in ((needed, INDIGO, False), (promised, INDIGO_WASH, False), (keep, SHEET, True)):
            if value > 0:
                drawing.rect(across(at), y + 23, across(at + value) - across(at), 17, fill=fill, stroke=INDIGO)
                if hatched:
                    drawing.hatch(across(at), y + 23, across(at + value) - across(at), 17, gap=5, stroke=INDIGO)
                at += value
        at = 0.0
        for value, width in ((held, 2.2), (ordered, 1.0)):
            if value > 0:
                drawing.rect(across(at), y + 44, across(at + value) - across(at), 17, fill=SHEET, stroke=INK, stroke_width=width)
                if across(at + value) - across(at) > 8 * len(f"{value:.0f}") + 6:
                    drawing.text((across(at) + across(at + value)) / 2, y + 57, f"{value:.0f}", anchor="middle", size=12)
                at += value
        said.append(f"{name}: {needed:.0f} for plans, {promised:.0f} promised, {keep:.0f} to keep; {held:.0f} on hand, {ordered:.0f} ordered")
    y = ROW * len(lines)
    drawing.rect(LEFT, y + 3, 16, 12, fill=INDIGO, stroke=INDIGO)
    drawing.text(LEFT + 21, y + 14, "plans", size=12)
    drawing.rect(90, y + 3, 16, 12, fill=INDIGO_WASH, stroke=INDIGO)
    drawing.text(111, y + 14, "promised", size=12)
    drawing.hatch(196, y + 3, 16, 12, gap=5, stroke=INDIGO)
    drawing.rect(196, y + 3, 16, 12, stroke=INDIGO)
    drawing.text(217, y + 14, "to keep", size=12)
    drawing.text(LEFT, y + 36, "lower bar: on hand (thick line), then ordered", size=12, fill=SOFT)
    return drawing.picture("Wanted, and there", "; ".join(said) + ".")
