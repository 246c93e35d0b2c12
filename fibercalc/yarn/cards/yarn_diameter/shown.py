"""Each model and its use as a table, and the three yarns cut across."""

from __future__ import annotations

from math import cos, pi, sin, sqrt

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.picture import INDIGO, INDIGO_WASH, SOFT, Drawing
from ....core.units import LENGTH, PER_LENGTH
from .asked import YarnDiameter

MODELS = (("solid", "Solid model"), ("peirce", "Peirce"), ("ashenhurst", "Ashenhurst"))
USES = {
    "solid": "a picture, a loop, a yarn that lies free",
    "peirce": "cover of woven cloth; cotton, pressed a little",
    "ashenhurst": "a sett, by the kind of yarn",
}
WIDEST = 104  # drawing units across the thickest
TURN = 60  # points of a dashed circle


def by_model(out: Outcome[YarnDiameter]) -> Table | None:
    rows = tuple(
        (
            words,
            out.both(name),
            _in_width(out, name, "per in"),
            _in_width(out, name, "per cm"),
            USES[name],
        )
        for name, words in MODELS
    )
    return Table(
        "Which model is for what",
        ("Model", "Diameter", "Side by side in an inch", "In a centimeter", "Use it for"),
        rows,
    )


def _in_width(out: Outcome[YarnDiameter], name: str, sign: str) -> str:
    """How many of these diameters lie side by side in an inch or a centimeter."""
    return out.amount(1 / (100 * out.value(name)), PER_LENGTH, sign, 3)


def picture(out: Outcome[YarnDiameter]) -> Picture | None:
    """The three cross-sections to one scale, and a measure below."""
    across = WIDEST / max(out.value(name) for name, _ in MODELS)  # for a meter of yarn width
    bottom = 10 + WIDEST
    drawing = Drawing(bottom + 86)
    for (name, words), x in zip(MODELS, (62, 180, 298)):
        radius = out.value(name) * across / 2
        drawing.circle(x, bottom - radius, radius, fill=INDIGO_WASH, stroke=INDIGO, width=2)
        drawing.text(x, bottom + 22, words, anchor="middle", bold=True)
        drawing.text(x, bottom + 40, out.text(name), anchor="middle")
    radius = out.value(YarnDiameter.solid) * across / 2
    _fiber_alone(drawing, 62, bottom - radius, radius * sqrt(out.case.packing / 100))
    drawing.line(8, bottom, 352, bottom, stroke=SOFT)
    unit = out.units(YarnDiameter.solid)[0]
    size = _round_below(unit.from_base(110 / across))
    length = unit.to_base(size) * across
    drawing.line(8, bottom + 58, 8 + length, bottom + 58, width=3)
    drawing.text(8, bottom + 78, out.amount(unit.to_base(size), LENGTH, unit.sign))
    drawing.text(352, bottom + 78, "dashed: the fiber without air", anchor="end", fill=SOFT)
    return drawing.picture(
        "The yarn cut across, all to one scale",
        "Three circles to one scale: "
        + ", ".join(f"{words} {out.text(name)}" for name, words in MODELS)
        + ". A dashed circle inside the first shows the fiber without air,"
        f" {out.number(out.case.packing)} % of the area.",
    )


def _fiber_alone(drawing: Drawing, x: float, y: float, radius: float) -> None:
    """The fiber alone, as a dashed circle inside the solid model."""
    angles = [2 * pi * step / TURN for step in range(TURN)]
    points = [(x + radius * cos(angle), y + radius * sin(angle)) for angle in angles]
    drawing.path(points, stroke=INDIGO, width=1.5, closed=True, dash="4 3")


def _round_below(value: float) -> float:
    """The largest of 1, 2, 5, 10 ... that is not above a value."""
    step = 1e-6
    while step * 10 <= value:
        step *= 10
    return max(step * number for number in (1, 2, 5) if step * number <= value)
