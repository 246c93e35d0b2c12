"""Every size at the own gauge, as a table and on one scale."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.picture import INDIGO, INDIGO_WASH, LINE, SOFT, Drawing, Scale, nice_ticks
from ....core.units import LENGTH
from .asked import GaugeCheck


def _sizes(out: Outcome[GaugeCheck]) -> list[tuple[str, float, float, float, float]]:
    """Every size with its girth at the own gauge and the range that the swatch leaves, cm."""
    best = out.case.sizes[out.case.best].girth
    ratio = 100 * out.value(GaugeCheck.girth) / best
    low, high = (
        100 * end / best for end in (out.low(GaugeCheck.girth), out.high(GaugeCheck.girth))
    )
    return [
        (row.name, row.girth, row.girth * ratio, row.girth * low, row.girth * high)
        for row in out.case.sizes
    ]


def table(out: Outcome[GaugeCheck]) -> Table | None:
    each = 2.54 if out.settings.system == "us" else 1.0
    rows = tuple(
        (
            name,
            *(out.number(cm / each, 1) for cm in (printed, own)),
            f"{out.number(low / each, 1)} to {out.number(high / each, 1)}",
        )
        for name, printed, own, low, high in _sizes(out)
    )
    return Table(
        f"Each size at your gauge, {'in' if each > 1 else 'cm'}",
        ("Size", "In the pattern", "At your gauge", "95 % range"),
        rows,
    )


def picture(out: Outcome[GaugeCheck]) -> Picture | None:
    """Each size's range at the own gauge on one scale, the wanted girth as a line."""
    sizes, wanted = _sizes(out), out.case.wanted
    sign = "in" if out.settings.system == "us" else "cm"
    unit = LENGTH.unit(sign)
    low, high = (
        min([wanted] + [each[3] for each in sizes]),
        max([wanted] + [each[4] for each in sizes]),
    )
    scale = Scale(low - 0.05 * (high - low), high + 0.05 * (high - low), 84, 344)
    bottom = 26 + 30 * len(sizes)
    drawing = Drawing(bottom + 40)
    for tick in nice_ticks(unit.from_base(scale.low / 100), unit.from_base(scale.high / 100), 5):
        at = scale(100 * unit.to_base(tick))
        drawing.line(at, 22, at, bottom, stroke=LINE)
        drawing.text(at, bottom + 16, f"{out.number(tick)} {sign}", anchor="middle", fill=SOFT)
    for place, (name, _, own, at_least, at_most) in enumerate(sizes):
        y, best = 26 + 30 * place, place == out.case.best
        drawing.text(76, y + 19, name[:10], anchor="end", bold=best)
        drawing.rect(
            scale(at_least),
            y + 6,
            max(scale(at_most) - scale(at_least), 2),
            18,
            fill=INDIGO if best else INDIGO_WASH,
            stroke=INDIGO,
        )
        drawing.line(scale(own), y + 3, scale(own), y + 27, width=2)
    drawing.line(scale(wanted), 18, scale(wanted), bottom, width=1.5, dash="4 3")
    drawing.text(
        scale(wanted), 13, f"wanted: {out.amount(wanted / 100, LENGTH, sign, 4)}", anchor="middle"
    )
    drawing.text(214, bottom + 35, "around the chest, at your gauge", anchor="middle", fill=SOFT)
    return drawing.picture(
        "Each size as it would come out",
        "; ".join(
            f"{name}: {own:.1f} cm, {at_least:.1f} to {at_most:.1f}"
            for name, _, own, at_least, at_most in sizes
        )
        + f"; wanted {wanted:.1f} cm.",
    )
