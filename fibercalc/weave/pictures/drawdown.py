"""A weave's draw-down: black where the warp lies on top, pick by pick from the bottom, with what
the heddle and the stick do.
"""

from ...core.answer import Picture
from ...core.picture import SOFT, Drawing, Grid
from ..draft.repeat import WARP, WEFT, filled
from ..draft.sheds import DOWN, EDGE, FLAT, HAND, UP, lifts_of
from .cloth import dashes

ENDS, LEFT, TOP, ROW = 20, 10, 10, 18
MOST_PICKS = 16
BLACK, WHITE, RULE, FRAME = (
    "#1f2328",
    "#fffdf8",
    "#c9c3b4",
    "#8c2f22",
)  # black means warp in every scheme, so these do not change with it
SAID = {UP: "up", DOWN: "down", EDGE: "stick on edge", FLAT: "up + stick flat", HAND: "by hand"}


def drawdown_picture(label: str, repeat: tuple[str, ...]) -> Picture:
    """One repeat of a weave in the way of the picks (16 at most), 20 ends wide, its longest
    floats framed.

    label   what it is called
    repeat  the weave (see draft.repeat.checked)
    Raises nothing.
    """
    lifts = lifts_of(repeat)
    picks = min(len(repeat), MOST_PICKS)
    up = ROW if picks > 4 else 22
    cell = 9.5
    bottom = TOP + up * picks
    drawing = Drawing(bottom + 76)
    weave(drawing, repeat, LEFT, bottom, ENDS, picks, cell, up)
    for pick, lift in enumerate(lifts.picks[:picks]):
        setting = f" {lift.setting}" if len(lifts.settings) > 1 and lift.setting else ""
        drawing.text(
            LEFT + ENDS * cell + 8,
            bottom - up * pick - up / 2 + 5,
            f"{pick + 1} {SAID[lift.shed]}{setting}",
            size=13,
        )
    for end in range(ENDS):
        x = LEFT + cell * (end + 0.5)
        if end % 2 == 0:  # end 1 stands in a slot
            drawing.line(x, bottom + 4, x, bottom + 14, width=1.2)
        else:
            drawing.circle(x, bottom + 9, 2.6, width=1.2)
    drawing.text(LEFT + ENDS * cell + 8, bottom + 14, "| slot, ○ hole", size=13, fill=SOFT)
    drawing.rect(LEFT, bottom + 28, 12, 12, fill=BLACK)
    drawing.text(LEFT + 18, bottom + 39, "warp on top", size=13)
    drawing.rect(LEFT + 116, bottom + 28, 12, 12, fill=WHITE)
    drawing.text(LEFT + 134, bottom + 39, "weft on top", size=13)
    drawing.rect(LEFT + 232, bottom + 28, 12, 12, stroke=FRAME, stroke_width=2.5)
    drawing.text(LEFT + 250, bottom + 39, "longest float", size=13)
    drawing.text(
        LEFT,
        bottom + 62,
        f"Repeat: {len(repeat[0])} ends × {len(repeat)} picks, from the bottom up"
        + (f"; {picks} shown" if picks < len(repeat) else ""),
        size=13,
        fill=SOFT,
    )
    return drawing.picture(
        f"{label}: the draw-down",
        f"{label}, {len(repeat[0])} ends by {len(repeat)} picks, from the first pick: "
        + ", ".join(said(repeat))
        + ".",
    )


def said(repeat: tuple[str, ...]) -> list[str]:
    """What each pick does, in words."""
    lifts = lifts_of(repeat)
    return [
        SAID[lift.shed] + (f" {lift.setting}" if lift.setting and len(lifts.settings) > 1 else "")
        for lift in lifts.picks
    ]


def weave(
    drawing: Drawing,
    repeat: tuple[str, ...],
    left: float,
    bottom: float,
    ends: int,
    picks: int,
    across: float,
    up: float,
) -> None:
    """A draw-down of so many ends and picks on a drawing, with a frame around one longest float
    of the warp and of the weft.
    """
    drawing.rect(left, bottom - up * picks, across * ends, up * picks, fill=WHITE, stroke="none")
    grid = Grid(drawing, left, bottom, across, up)
    columns = ["".join(column) for column in zip(*repeat)]
    for column in dict.fromkeys(columns):
        if WARP in column:
            grid.columns(
                [end for end in range(ends) if columns[end % len(columns)] == column],
                0,
                picks,
                dashes(column),
                BLACK,
            )
    drawing.strokes(
        [
            [(left + across * end, bottom - up * picks), (left + across * end, bottom)]
            for end in range(ends + 1)
        ]
        + [
            [(left, bottom - up * pick), (left + across * ends, bottom - up * pick)]
            for pick in range(picks + 1)
        ],
        stroke=RULE,
        width=0.8,
    )
    rows = [filled(row, ends) for row in repeat]
    warp = _longest([filled(columns[end % len(columns)], picks) for end in range(ends)], WARP)
    weft = _longest([rows[pick % len(rows)] for pick in range(picks)], WEFT)
    framed = [(warp[0], warp[1], 1, warp[2])] * (warp[2] > 1) + [(weft[1], weft[0], weft[2], 1)] * (
        weft[2] > 1
    )
    grid.boxes(framed, "none", FRAME, 2.5)
    drawing.rect(left, bottom - up * picks, across * ends, up * picks)


def _longest(lines: list[str], sign: str) -> tuple[int, int, int]:
    """(line, first place, length) of the longest run, one that lies whole within the lines rather
    than at their edge.
    """
    best, found = (0, 0), (0, 0, 0)
    for number, line in enumerate(lines):
        begin = 0
        while begin < len(line):
            run = len(line[begin:]) - len(line[begin:].lstrip(sign))
            whole = begin > 0 and begin + run < len(line)
            if run and (run, whole) > best:
                best, found = (run, whole), (number, begin, run)
            begin += max(run, 1)
    return found
