"""A tube sock lying flat, with its counts: a sheet to stand beside the machine."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, SOFT, Drawing

LEFT_EDGE, WIDE, LABEL = 20, 74, 170  # of the leg's edge, across the tube, where words begin


def sock_schematic(
    hem_rounds: int,
    leg_rounds: int,
    heel: tuple[int, int, int],
    foot_rounds: int,
    toe: tuple[int, int, int],
    waste_rounds: int,
    girth_text: str,
    needles: int,
    foot_text: str = "",
    rib: str = "",
    extra: Sequence[str] = (),
) -> Picture:
    """One sock from waste to waste, cranked downward: each section with what to count.

    hem_rounds, leg_rounds, foot_rounds, waste_rounds  whole rounds
    heel, toe    (needles worked, needles left at the narrowest, rows) of each short-row pocket
    girth_text   girth of the tube at rest, as written
    needles      of the cylinder
    foot_text    knitted foot length, as written; "" to leave it out
    rib          words on the leg's mock rib, up to 26 characters; "" for plain
    extra        further lines under the picture
    Raises nothing.
    """
    sections = [
        ("waste", 36, "Waste yarn", [f"{waste_rounds} rounds"]),
        ("hem", 40, "Hem", [f"{hem_rounds} rounds, folded to {hem_rounds // 2}"]),
        ("leg", 84, "Leg", [f"{leg_rounds} rounds", *([rib] if rib else [])]),
        ("heel", 62, "Heel", _pocket_words(heel)),
        ("foot", 78, "Foot", [f"{foot_rounds} rounds"]),
        ("toe", 62, "Toe", _pocket_words(toe)),
        ("waste", 36, "Waste yarn", [f"{waste_rounds} rounds, next sock"]),
    ]
    drawing = Drawing(
        sum(high for _, high, _, _ in sections) + 50 + 20 * (len(extra) + bool(foot_text))
    )
    top, left, right = 10, LEFT_EDGE, LEFT_EDGE + WIDE
    said = []
    for kind, high, name, lines in sections:
        bottom = top + high
        if kind == "waste":
            drawing.hatch(left, top, WIDE, high, stroke=SOFT)
            drawing.path(
                [(left, top), (left, bottom), (right, bottom), (right, top)],
                stroke=SOFT,
                closed=True,
                dash="4 3",
            )
        elif kind in ("heel", "toe"):
            _pocket(drawing, top, bottom)
        else:
            drawing.rect(left, top, WIDE, high, fill=INDIGO_WASH, stroke=INK, stroke_width=1.5)
        if kind == "hem":
            drawing.line(
                left,
                (top + bottom) / 2,
                right,
                (top + bottom) / 2,
                stroke=INDIGO,
                width=1.5,
                dash="5 4",
            )
        if kind == "leg" and rib:
            drawing.strokes(
                [
                    [(left + WIDE * k / 8, top + 3), (left + WIDE * k / 8, bottom - 3)]
                    for k in range(1, 8)
                ],
                stroke=INDIGO,
                width=1,
            )
        middle = (top + bottom) / 2
        drawing.line(
            right + (40 if kind in ("heel", "toe") else 6), middle, LABEL - 8, middle, stroke=SOFT
        )
        drawing.text(LABEL, middle - 4 - 8 * (len(lines) - 1), name, bold=True)
        for place, line in enumerate(lines):
            drawing.text(LABEL, middle + 13 + 17 * place - 8 * (len(lines) - 1), line, size=13)
        said.append(f"{name.lower()} {', '.join(lines)}")
        top = bottom
    drawing.text(LEFT_EDGE, top + 20, f"{needles} needles, {girth_text} around at rest", size=13)
    for number, line in enumerate(
        [*([f"Foot knitted to {foot_text}, heel and toe included"] if foot_text else []), *extra], 1
    ):
        drawing.text(LEFT_EDGE, top + 20 + 20 * number, line, size=13)
    return drawing.picture(
        "The sock, from waste to waste",
        f"A tube sock on {needles} needles: " + "; ".join(said) + ".",
    )


def _pocket_words(pocket: tuple[int, int, int]) -> list[str]:
    worked, left, rows = pocket
    return [f"{rows} rows on {worked} needles", f"down to {left} and back to {worked}"]


def _pocket(drawing: Drawing, top: float, bottom: float) -> None:
    """A short-row pocket bulges from the tube; its two slanting seams meet where the rows were
    shortest.
    """
    left, right, middle, out = (
        LEFT_EDGE,
        LEFT_EDGE + WIDE,
        (top + bottom) / 2,
        LEFT_EDGE + WIDE + 34,
    )
    drawing.path(
        [
            (left, top),
            (right, top),
            (out, middle - 9),
            (out, middle + 9),
            (right, bottom),
            (left, bottom),
        ],
        fill=INDIGO_WASH,
        stroke=INK,
        width=1.5,
        closed=True,
    )
    drawing.line(left + WIDE / 2, middle, out, middle, stroke=INDIGO, width=1.2, dash="5 4")
    drawing.strokes(
        [[(right, top), (left + WIDE / 2, middle), (right, bottom)]], stroke=INK, width=1.5
    )
