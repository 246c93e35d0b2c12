"""The pot and its parts to scale, with the additions enlarged below."""

from collections.abc import Callable, Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, MADDER, SHEET, SOFT, Drawing, short
from .parts import moved_apart, numbered_bar

TOP, BOTTOM, LEFT, RIGHT, LABEL = 16, 216, 14, 144, 166


def pot_picture(brim: float, fill_line: float, yarn: float, carried: float, doses: Sequence[tuple[str, float]], water: float, write: Callable[[float], str]) -> Picture:
    """A pot cut open: yarn, the water it brings, all additions and the water that tops it up, as if they lay in layers.

    brim       mL that the pot holds to the brim
    fill_line  mL that it may be filled to
    yarn       mL that the yarn displaces
    carried    mL of water that the yarn brings
    doses      (name, mL) of each stock and other liquid, up to 24
    water      mL to top up
    write      how a volume in mL is written
    Raises nothing.
    """
    doses = [(name, volume) for name, volume in doses if volume > 0][:24]
    added = sum(volume for _, volume in doses)
    layers = [("yarn", yarn), ("water in the yarn", carried), ("additions", added), ("water to top up", water)]
    level = sum(volume for _, volume in layers)
    high = max(brim, level, fill_line) * 1.02
    drawing = Drawing(BOTTOM + 18 + (66 + 20 * len(doses) if doses else 0))

    def up(volume: float) -> float:
        return BOTTOM - (BOTTOM - TOP) * volume / high

    reached, labels = 0.0, []
    for words, volume in layers:
        top, bottom = up(reached + volume), up(reached)
        fill = {"yarn": INDIGO_WASH, "water in the yarn": INDIGO_WASH, "additions": INDIGO}.get(words, SHEET)
        drawing.rect(LEFT, top, RIGHT - LEFT, bottom - top, fill=fill, stroke=SOFT, stroke_width=0.8)
        if words == "yarn":
            drawing.hatch(LEFT, top, RIGHT - LEFT, bottom - top, stroke=INDIGO)
        if volume > 0:
            labels.append(((top + bottom) / 2, f"{write(volume)} {words}", INK))
        reached += volume
    labels.append((up(fill_line), f"fill line, {write(fill_line)}", MADDER))
    drawing.line(LEFT - 6, up(fill_line), RIGHT + 6, up(fill_line), stroke=MADDER, width=2, dash="6 4")
    drawing.path([(LEFT, up(max(brim, level))), (LEFT, BOTTOM), (RIGHT, BOTTOM), (RIGHT, up(max(brim, level)))], width=2.5)
    labels.sort(key=lambda label: label[0])
    for place, (y, words, color) in zip(moved_apart([y for y, _, _ in labels], 19, TOP, BOTTOM), labels):
        drawing.strokes([[(RIGHT + 3, y), (LABEL - 12, place), (LABEL - 4, place)]], stroke=color, width=0.8)
        drawing.text(LABEL, place + 5, words, size=13, fill=color)
    if doses:
        y = BOTTOM + 28
        drawing.text(LEFT, y, f"Additions, enlarged: {write(added)} in all", size=13)
        numbered_bar(drawing, LEFT, y + 8, 332, 26, [volume for _, volume in doses])
        for number, (name, volume) in enumerate(doses, 1):
            drawing.text(LEFT, y + 34 + 20 * number, f"{number}  {short(name, 26)}: {write(volume)}")
    said = ", ".join(f"{write(volume)} of {words}" for words, volume in layers if volume > 0)
    each = "; ".join(f"{name} {write(volume)}" for name, volume in doses)
    return drawing.picture("The pot, to scale", f"A pot filled to {write(level)}, with its fill line at {write(fill_line)}: {said}." + (f" Added: {each}." if each else ""))
