"""Both ways on one scale, and the skeins measured."""

from __future__ import annotations

from ....core.answer import Picture
from ....core.outcome import Outcome
from ....core.picture import INDIGO, INDIGO_WASH, INK, SOFT, Drawing, Scale, nice_ticks
from .asked import SkeinLength
from .said import WAYS


def picture(out: Outcome[SkeinLength]) -> Picture | None:
    """Each way's range on one scale, the better one filled; the skeins measured as dots."""
    rows = [(name, WAYS[name].capitalize()) for name in ("by_turns", "by_sample") if out.has(name)]
    lengths = [row.length for row in out.case.skeins] if out.has(SkeinLength.printable) else []
    scale = _scale_of(out, [name for name, _ in rows], lengths)
    drawing = Drawing(54 + 52 * len(rows) + (56 if lengths else 0))
    y = 18
    for name, words in rows:
        _draw_way(drawing, scale, y, out, name, words)
        y += 52
    if lengths:
        _draw_skeins(drawing, scale, y, out, lengths)
        y += 56
    _draw_ticks(drawing, scale, y, out)
    return drawing.picture(
        "How sure each way is",
        "Length of the skein on a scale. "
        + "; ".join(f"{words}: {out.text(n)}, range {out.span(n)}" for n, words in rows)
        + ".",
    )


def _scale_of(out: Outcome[SkeinLength], ways: list[str], lengths: list[float]) -> Scale:
    """The scale on which every range, and every skein, has its place."""
    ends = [*map(out.low, ways), *map(out.high, ways), *lengths]
    if lengths:
        ends.append(out.low(SkeinLength.printable))
    low, high = min(ends), max(ends)
    margin = max(high - low, 0.01 * high) * 0.15
    return Scale(low - margin, high + margin, 16, 344)


def _draw_way(
    drawing: Drawing, scale: Scale, y: float, out: Outcome[SkeinLength], name: str, words: str
) -> None:
    best = name == out.best(SkeinLength.length)
    drawing.text(8, y, f"{words}: {out.text(name)}", bold=best)
    left, right, at = scale(out.low(name)), scale(out.high(name)), scale(out.value(name))
    fill = INDIGO_WASH if best else "none"
    drawing.rect(left, y + 8, max(right - left, 1.5), 16, fill=fill, stroke=INDIGO)
    drawing.line(at, y + 4, at, y + 28, stroke=INDIGO, width=3 if best else 1.5)


def _draw_skeins(
    drawing: Drawing, scale: Scale, y: float, out: Outcome[SkeinLength], lengths: list[float]
) -> None:
    drawing.text(8, y, "Skeins measured; thick mark: print at most")
    for length in lengths:
        drawing.circle(scale(length), y + 16, 5, stroke=INK, width=1.5)
    at = scale(out.low(SkeinLength.printable))
    drawing.line(at, y + 4, at, y + 28, width=4)


def _draw_ticks(drawing: Drawing, scale: Scale, y: float, out: Outcome[SkeinLength]) -> None:
    unit = out.units(SkeinLength.length)[0]
    drawing.line(16, y, 344, y, stroke=SOFT)
    for tick in nice_ticks(unit.from_base(scale.low), unit.from_base(scale.high), 5):
        at = scale(unit.to_base(tick))
        drawing.line(at, y, at, y + 5, stroke=SOFT)
        drawing.text(at, y + 22, f"{out.number(tick)} {unit.sign}", anchor="middle", fill=SOFT)
