"""How fast the room takes the water that is to go, and how often the rail is filled."""

from __future__ import annotations

from ....core.arithmetic import largest
from ....core.problem import OutOfRange, Refused
from ....core.steps import at_least, at_most, searched
from ....yarn.moisture import oven_dry_mass, regain_from_masses
from ...drying_pace import (
    NEAR_REST,
    PACE_FALLS,
    STILL_AIR,
    WITH_FAN,
    drying_hours,
    pace_from_weighing,
    pace_in_room,
    skeins_on_rail,
    vapor_lack,
    water_to_lose,
    weight_when_ready,
)
from .asked import Drying

LEAST_GONE = 0.01  # of the water that is to go, before a weighing says anything (our own edge)
End = tuple[float, float]  # the slowest or the quickest likely: a pace, and where it falls


def answer(case: Drying) -> None:
    _find_water(case)
    ends = _pace_by_weighing(case) if case.weighed == "yes" else _pace_by_room(case)
    case.time, hours = 0.0, [0.0]
    if case.ready < case.wet:
        case.time = 60 * drying_hours(case.wet, case.ready, case.rest, case.paces[1], case.falls)
        hours = [drying_hours(case.wet, case.ready, case.rest, *end) for end in ends]
    times = [case.time, *(60 * each for each in hours)]
    case.band(Drying.time, *times)
    _fill_rail(case)
    case.all = case.time * case.rounds
    case.band(Drying.all, *(each * case.rounds for each in times))
    case.ready_mass = weight_when_ready(case.oven, case.rest)


def _find_water(case: Drying) -> None:
    case.oven = oven_dry_mass(case.dry_mass, case.dry_regain)
    if case.wet_mass <= case.oven * (1 + case.rest / 100):
        raise Refused(
            "Weight wet: that is no heavier than the yarn at rest in this room; weigh it again.",
            Drying.wet_mass,
        )
    case.wet = regain_from_masses(case.wet_mass, case.oven)
    case.water = water_to_lose(case.wet_mass, case.oven, case.rest)
    case.lack = vapor_lack(case.temperature, case.humidity)
    case.ready = case.rest + NEAR_REST
    case.falls = _falls_at(case, PACE_FALLS[1])


def _falls_at(case: Drying, usual: float) -> float:
    """The wetness below which the pace falls: never so near to rest that nothing is left."""
    return largest(usual, case.rest + 2)


def _pace_by_weighing(case: Drying) -> list[End]:
    if case.weighed_mass > case.oven:
        case.now = regain_from_masses(case.weighed_mass, case.oven)
    if not case.rest < (case.maybe(Drying.now) or 0.0) < case.wet:
        raise Refused(
            "Weighed again: it must be lighter than wet and heavier than at rest in this room.",
            Drying.weighed_mass,
        )
    if case.wet_mass - case.weighed_mass < LEAST_GONE * case.water:
        raise Refused(
            f"Weighed again: less than {100 * LEAST_GONE:g} % of the water has gone by then, which"
            " tells no pace; weigh later.",
            "weighed_mass",
        )
    hours = case.after / 60
    case.pace = pace_from_weighing(case.wet, case.now, case.rest, hours, case.falls)
    ends = []
    for usual in (PACE_FALLS[0], PACE_FALLS[2]):
        falls = _falls_at(case, usual)
        ends.append((pace_from_weighing(case.wet, case.now, case.rest, hours, falls), falls))
    paces = [case.pace, *(pace for pace, _ in ends)]
    case.paces = (min(paces), case.pace, max(paces))
    return ends


def _pace_by_room(case: Drying) -> list[End]:
    fan = WITH_FAN if case.fan == "yes" else (1.0, 1.0, 1.0)
    try:
        slow, case.guessed_pace, quick = (
            pace_in_room(case.lack, still, times) for still, times in zip(STILL_AIR, fan)
        )
    except OutOfRange as error:
        raise Refused(f"Humidity of the room: {error.reason}.", Drying.humidity) from None
    case.paces = (slow, case.guessed_pace, quick)
    return [(slow, case.falls), (quick, case.falls)]


def _fill_rail(case: Drying) -> None:
    at_once = skeins_on_rail(case.rail, case.each)
    if at_once < 1:
        raise Refused(
            "Rail: not one skein fits on it; give a longer rail or less room for each.", Drying.rail
        )
    case.on_rail = searched(
        at_once,
        lambda count: (at_most(count * case.each, case.rail),),
        lambda: case.rail / case.each,
    )
    case.rounds = searched(
        -(-int(case.skeins) // at_once),
        lambda rounds: (at_least(rounds * case.on_rail, case.skeins),),
        lambda: case.skeins / case.on_rail,
    )
