"""The program by the clock, as a table and drawn."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.units import TEMPERATURE
from ...heat import cooled_to
from ...pictures.heat import heat_picture
from ...ramp import clock_time
from .asked import BathHeat

COOLING_POINTS = 8


def _points(out: Outcome[BathHeat]) -> list[str]:
    """What each point of the program is."""
    if out.case.pause_at is None:
        waits = []
    else:
        waits = ["Wait begins", "Wait ends"] if out.case.pause else ["On the way"]
    return ["Into the bath", *waits, "At temperature", *(["Hold ends"] if out.case.hold else [])]


def clock(out: Outcome[BathHeat]) -> Table:
    case = out.case

    def row(minutes: float, words: str, temperature: float) -> tuple[str, ...]:
        both = (out.amount(temperature, TEMPERATURE, unit, 3) for unit in ("°C", "°F"))
        return (clock_time(case.began, minutes), words, *both)

    rows = [
        row(minutes, words, temperature)
        for (minutes, temperature), words in zip(case.program, _points(out))
    ]
    if out.has(BathHeat.cool):
        rows.append(row(case.whole + case.cool, "Cooled down", case.touch))
    return Table("By the clock", ("Time", "What", "°C", "°F"), tuple(rows))


def picture(out: Outcome[BathHeat]) -> Picture:
    case, unit = out.case, "°F" if out.settings.system == "us" else "°C"
    shown = TEMPERATURE.unit(unit).from_base
    times = (
        [case.cool * k / COOLING_POINTS for k in range(1, COOLING_POINTS + 1)]
        if out.has(BathHeat.cool)
        else []
    )
    cooling = [
        (case.whole + minutes, shown(cooled_to(case.fall, case.top, case.room, minutes)))
        for minutes in times
    ]
    return heat_picture(
        [(minutes, shown(temperature)) for minutes, temperature in case.program],
        [words[0].lower() + words[1:] for words in _points(out)],
        case.began,
        shown(case.boils),
        unit,
        cooling,
    )
