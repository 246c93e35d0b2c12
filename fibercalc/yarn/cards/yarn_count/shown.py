"""The yarn in every system, as a table and as rulers side by side."""

from __future__ import annotations

from ....core.amount import NO_BREAK
from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.picture import INDIGO, SOFT, Drawing, Scale
from ....core.units import LINEAR_DENSITY
from ...count import count_systems
from .asked import YarnCount

RULERS = (("tex", ""), ("m/100 g", ""), ("yd/lb", ""), ("Ne", ", cotton"), ("Nw", ", worsted"))
ROUND_NUMBERS = (1, 1.5, 2, 3, 5, 7)


def every_system(out: Outcome[YarnCount]) -> Table | None:
    rows = tuple(
        (
            row["name"].capitalize(),
            out.text(YarnCount.linear_density, row["unit"]),
            row["counts"],
            "thicker" if row["kind"] == "direct" else "finer",
        )
        for row in count_systems().rows
    )
    return Table(
        "This yarn in every system", ("System", "This yarn", "It counts", "Bigger is"), rows
    )


def picture(out: Outcome[YarnCount]) -> Picture | None:
    """The systems as rulers, this yarn under one line through all: thicker to the right."""
    tex, reach = out.value(YarnCount.linear_density), 2.6
    scale = Scale(tex / reach, tex * reach, 16, 344, logarithmic=True)
    drawing = Drawing(30 + 54 * len(RULERS))
    drawing.text(16, 16, "← finer", fill=SOFT)
    drawing.text(344, 16, "thicker →", anchor="end", fill=SOFT)
    drawing.line(180, 22, 180, 20 + 54 * len(RULERS), stroke=INDIGO, width=2.5)
    y = 44
    for sign, kind in RULERS:
        unit = LINEAR_DENSITY.unit(sign)
        drawing.text(188, y - 4, out.text(YarnCount.linear_density, sign) + kind, bold=True)
        drawing.line(16, y + 4, 344, y + 4)
        for number in _ticks(*sorted((unit.from_base(tex / reach), unit.from_base(tex * reach)))):
            at = scale(unit.to_base(number))
            drawing.line(at, y + 4, at, y + 10)
            if abs(at - 180) > 24:
                written = (
                    out.number(number)
                    if number >= 1000
                    else out.amount(unit.to_base(number), LINEAR_DENSITY, sign).partition(NO_BREAK)[
                        0
                    ]
                )
                drawing.text(at, y + 23, written, anchor="middle", size=12, fill=SOFT)
        y += 54
    return drawing.picture(
        "The same yarn on five rulers",
        "Rulers of count systems with one line through them at this yarn: "
        + ", ".join(out.text(YarnCount.linear_density, sign) + kind for sign, kind in RULERS)
        + ". Thicker yarn lies to the right.",
    )


def _ticks(low: float, high: float) -> list[float]:
    """Round numbers between two ends, for a logarithmic ruler."""
    found: list[float] = []
    decade = 1e-6
    while decade <= high:
        found += [decade * number for number in ROUND_NUMBERS if low <= decade * number <= high]
        decade *= 10
    return found
