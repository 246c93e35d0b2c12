"""The dyes of a test, as table and picture."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.picture import INDIGO, INDIGO_WASH, LINE, SOFT, Drawing, Scale
from ....core.units import PERCENT
from ...base_factor import AS_USUAL, factored_depth
from .asked import BaseTest


def recipes(out: Outcome[BaseTest]) -> Table:
    rows = tuple(
        (
            dye.name,
            f"{dye.usual:g} %",
            f"{dye.new:g} %",
            out.number(dye.factor, 2),
            out.measured(factored_depth(dye.usual, dye.factor), PERCENT, "%", 0.01),
        )
        for dye in out.case.dyes
    )
    return Table(
        "Dye by dye", ("Dye", "Usual base", "This base, to match", "Factor", "Depth to use"), rows
    )


def picture(out: Outcome[BaseTest]) -> Picture:
    factors = [dye.factor for dye in out.case.dyes]
    scale = Scale(min(0.6, *factors) * 0.95, max(1.6, *factors) * 1.05, 90, 344, logarithmic=True)
    bottom = 24 + 30 * len(factors)
    drawing = Drawing(bottom + 38)
    drawing.rect(
        scale(1 / AS_USUAL),
        16,
        scale(AS_USUAL) - scale(1 / AS_USUAL),
        bottom - 16,
        fill=INDIGO_WASH,
        stroke=INDIGO_WASH,
    )
    for tick in (0.5, 0.75, 1, 1.5, 2, 3):
        if scale.low <= tick <= scale.high:
            drawing.line(scale(tick), 16, scale(tick), bottom, stroke=LINE)
            drawing.text(scale(tick), bottom + 16, f"{tick:g}", anchor="middle", fill=SOFT)
    for place, dye in enumerate(out.case.dyes):
        y = 34 + 30 * place
        drawing.text(84, y + 5, dye.name[:11], anchor="end")
        drawing.line(scale(1), y, scale(dye.factor), y, stroke=INDIGO, width=2)
        drawing.circle(scale(dye.factor), y, 6, fill=INDIGO, stroke=INDIGO)
    drawing.text(
        217, bottom + 34, "depth factor; the band is “as usual”", anchor="middle", fill=SOFT
    )
    return drawing.picture(
        "Depth factors", "; ".join(f"{dye.name} {dye.factor:.2f}" for dye in out.case.dyes) + "."
    )
