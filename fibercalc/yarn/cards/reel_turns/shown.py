"""The turns around the answer, as a table and as marks on a line of length."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.picture import INDIGO, INDIGO_WASH, MADDER, SOFT, Drawing, Scale
from ....core.units import LENGTH, MASS
from ...reel import mass_of_turns
from .asked import BY_LENGTH, ReelTurns

NEIGHBORS = 2  # turns shown on either side
LINE = 72  # where the line of length lies in the picture


def neighbors(out: Outcome[ReelTurns]) -> Table | None:
    """Some turns fewer and more: length and weight of each."""
    rested, tex = out.value(ReelTurns.rested_turn), out.case.count
    rows = []
    for number in _around(out.value(ReelTurns.turns)):
        row = (
            out.number(number),
            out.amount(number * rested, LENGTH, "yd", 4),
            out.amount(number * rested, LENGTH, "m", 4),
        )
        weight = () if tex is None else (_weight(out, number, tex, 4),)
        rows.append(row + weight)
    return Table(
        "A turn more or less",
        ("Turns", "Yards", "Meters") + (() if tex is None else ("Weight",)),
        tuple(rows),
    )


def picture(out: Outcome[ReelTurns]) -> Picture | None:
    """Whole turns on a line of length, the wanted length among them; how sure the answer is."""
    turns, rested = out.value(ReelTurns.turns), out.value(ReelTurns.rested_turn)
    marks = _around(turns)
    scale = Scale((marks[0] - 0.45) * rested, (marks[-1] + 0.45) * rested, 8, 352)
    drawing = Drawing(126 + 18 * (len(out.units(ReelTurns.length)) + (out.case.count is not None)))
    low, high = scale(out.low(ReelTurns.length)), scale(out.high(ReelTurns.length))
    drawing.rect(low, LINE - 9, high - low, 18, fill=INDIGO_WASH, stroke=INDIGO)
    drawing.line(8, LINE, 352, LINE)
    for number in marks:
        _mark(drawing, out, number, scale(number * rested))
    drawing.text(8, 16, "turns", fill=SOFT)
    words = f", {_mark_wanted(drawing, out, scale)} wanted" if out.has(ReelTurns.need) else ""
    drawing.text(8, drawing.height - 8, "shaded: how sure the length is", fill=SOFT)
    return drawing.picture(
        "Whole turns around the wanted length" if words else "A turn more or less",
        f"Marks for {out.number(marks[0])} to {out.number(marks[-1])} turns on a line of"
        f" length{words}. {out.number(turns)} turns hold {out.text(ReelTurns.length)}"
        + (f", {out.span(ReelTurns.length)}." if out.span(ReelTurns.length) else "."),
    )


def _around(turns: int) -> range:
    return range(max(1, turns - NEIGHBORS), turns + NEIGHBORS + 1)


def _mark(drawing: Drawing, out: Outcome[ReelTurns], number: int, at: float) -> None:
    """One number of turns on the line, with its length and weight below; the answer stands out."""
    chosen = number == out.value(ReelTurns.turns)
    reach, width = (16, 4) if chosen else (8, 1.5)
    drawing.line(at, LINE - reach, at, LINE + reach, stroke=INDIGO, width=width)
    drawing.text(at, LINE - 22, out.number(number), anchor="middle", bold=chosen, size=14)
    length = number * out.value(ReelTurns.rested_turn)
    below = [_short(out, length, unit.sign) for unit in out.units(ReelTurns.length)]
    if out.case.count is not None:
        below.append(_weight(out, number, out.case.count, 3))
    for place, words in enumerate(below):
        y = LINE + 34 + 18 * place
        drawing.text(at, y, words, anchor="middle", size=12, bold=chosen)


def _mark_wanted(drawing: Drawing, out: Outcome[ReelTurns], scale: Scale) -> str:
    """The wanted length as a dashed line, past the number of turns; gives it as written."""
    at = scale(out.case.wanted)
    for top, bottom in ((22, LINE - 36), (LINE - 17, LINE + 20)):
        drawing.line(at, top, at, bottom, stroke=MADDER, width=2, dash="5 3")
    typed = out.readings["wanted_length"].amount if out.case.wanted_by == BY_LENGTH else None
    as_typed = typed.unit.sign if typed else out.units(ReelTurns.length)[0].sign
    wanted = out.amount(out.case.wanted, LENGTH, as_typed)
    drawing.text(at, 16, f"wanted {wanted}", anchor="middle")
    return wanted


def _weight(out: Outcome[ReelTurns], turns: int, tex: float, digits: int) -> str:
    return out.amount(
        mass_of_turns(turns, out.value(ReelTurns.rested_turn), tex), MASS, "g", digits
    )


def _short(out: Outcome[ReelTurns], length: float, sign: str) -> str:
    """A length for a label: one decimal, none from a thousand on."""
    number = LENGTH.unit(sign).from_base(length)
    return f"{out.number(number, 1 if number < 1000 else 0)} {sign}"
