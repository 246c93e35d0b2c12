"""The chain of sizes: one piece from the warp to the finished cloth, length and width as bars to
one scale; and the warp from end to end.
"""

from collections.abc import Callable, Sequence

from ...core.answer import Picture
from ...core.picture import (
    INDIGO,
    INDIGO_WASH,
    INK,
    MADDER,
    SHEET,
    SOFT,
    Drawing,
    Scale,
    nice_ticks,
)

LEFT, RIGHT, BAR, PITCH = 8, 352, 13, 37
STRIP, HIGH = 30, 44


def chain_of_sizes(
    title: str, groups: Sequence[tuple[str, Sequence[tuple[str, float, str]]]]
) -> Picture:
    """Bars of length and width, each step of the chain under the last.

    title   of the picture
    groups  ("Length", steps) and ("Width", steps); a step is (what it is, size in one unit above 0,
            that size as it is to be read)
    """
    longest = max(size for _, steps in groups for _, size, _ in steps)
    drawing, y, said = Drawing(sum(24 + PITCH * len(steps) for _, steps in groups) + 4), 0.0, []
    for name, steps in groups:
        drawing.text(LEFT, y + 17, name, bold=True)
        y += 24
        for at, (words, size, written) in enumerate(steps):
            wide = (RIGHT - LEFT) * size / longest
            drawing.text(LEFT, y + 12, words, size=13)
            drawing.text(RIGHT, y + 12, written, anchor="end", size=13, bold=True)
            drawing.rect(
                LEFT,
                y + 17,
                wide,
                BAR,
                fill=INDIGO if at == len(steps) - 1 else INDIGO_WASH,
                stroke=INDIGO,
            )
            if at:
                before = (RIGHT - LEFT) * steps[at - 1][1] / longest
                drawing.line(
                    LEFT + before, y + 17, LEFT + before, y + 17 + BAR, stroke=SOFT, dash="3 2"
                )
            y += PITCH
        said.append(f"{name}: " + ", ".join(f"{words} {written}" for words, _, written in steps))
    return drawing.picture(title, "; ".join(said) + ".")


def warp_from_end_to_end(
    title: str,
    parts: Sequence[tuple[str, float, str]],
    limit: float | None,
    unit: tuple[str, float],
    write: Callable[[float], str],
    said: str,
) -> Picture:
    """The warp as one strip: sample, dividers, pieces with their numbers, and the loom waste
    hatched at its end.

    title  of the picture
    parts  (kind, warp in meters, number to write) in the order of weaving; kinds are sample,
           divider, piece, fringe and waste
    limit  warp that there is, m, or None
    unit   sign and meters of the unit of the ticks
    write  a length in meters as it is to be read
    said   words for those who cannot see it
    """
    whole = sum(length for _, length, _ in parts)
    scale = Scale(0.0, max(whole, limit or 0.0), LEFT, RIGHT)
    drawing, at = Drawing(STRIP + HIGH + 52), 0.0
    ends = []
    for kind, length, number in parts:
        left, right = scale(at), scale(at + length)
        at += length
        if kind == "waste":
            drawing.rect(left, STRIP, right - left, HIGH, fill=SHEET)
            drawing.hatch(left, STRIP, right - left, HIGH, stroke=INK)
        elif kind == "piece":
            drawing.rect(
                left, STRIP, right - left, HIGH, fill=INDIGO_WASH, stroke=INDIGO, stroke_width=1.5
            )
            ends.append((left, right, number))
        elif kind == "sample":
            drawing.rect(left, STRIP, right - left, HIGH, fill=SHEET, stroke=INDIGO)
    room = all(right - left >= 8 * len(number) + 4 for left, right, number in ends)
    for left, right, number in ends if room else (ends[0], ends[-1]):
        drawing.text(
            (left + right) / 2,
            STRIP + HIGH / 2 + 5,
            number,
            anchor="middle",
            bold=True,
            halo=not room,
        )
    drawing.line(LEFT, STRIP + HIGH + 6, scale(whole), STRIP + HIGH + 6, stroke=SOFT)
    sign, meters = unit
    for tick in nice_ticks(0.0, whole / meters, 6):
        x = scale(tick * meters)
        drawing.line(x, STRIP + HIGH + 3, x, STRIP + HIGH + 9, stroke=SOFT)
        drawing.text(
            x,
            STRIP + HIGH + 24,
            f"{tick:g}" + (f" {sign}" if tick else ""),
            anchor="middle",
            size=13,
            fill=SOFT,
        )
    drawing.text(LEFT, STRIP + HIGH + 46, f"{write(whole)} in all", size=13, bold=True)
    drawing.text(
        RIGHT, STRIP + HIGH + 46, "hatched: loom waste, both ends", anchor="end", size=13, fill=SOFT
    )
    if limit is None:
        drawing.text(LEFT, 18, "woven from this end", size=13, fill=SOFT)
    else:
        x = scale(limit)
        drawing.line(x, STRIP - 8, x, STRIP + HIGH + 8, stroke=MADDER, width=2.5)
        drawing.text(
            x - 4 if x > 200 else x + 4,
            18,
            f"there is {write(limit)}",
            anchor="end" if x > 200 else "start",
            size=13,
            bold=True,
            fill=MADDER,
            halo=True,
        )
    return drawing.picture(title, said)
