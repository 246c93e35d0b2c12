"""How long a bath takes to heat, what that uses, and when it has cooled."""

from __future__ import annotations

from typing import NamedTuple

from ....core.card import Result
from ....core.problem import OutOfRange, Refused
from ....core.steps import looked_up, solved
from ....core.traced import named
from ...heat import (
    cooling_rate,
    cooling_rate_by_loss,
    cooling_time,
    energy_cost,
    energy_to_heat,
    heat_capacity,
    heating_time,
    holding_energy,
    loss_from_cooling,
    plate_energy,
    power_into_bath,
)
from ...ramp import lost_in, lost_on_the_way, minutes_of_clock, program_points, ramp_time, rise_time
from ...recipe import yarn_displacement
from ...water import air_pressure, boiling_point, highest_setting, vapor_pressure
from .asked import FIBERS, HEATERS, LOSSES, BathHeat

VAPOR_PRESSURE = named("vapor pressure", vapor_pressure)
AIR_PRESSURE = named("air pressure", air_pressure)
TO_TOP, TO_WAIT = "up to the top", "up to the wait"


class Leg(NamedTuple):
    """A straight piece of the way up: °C from, °C to, minutes of waiting there; both in words."""

    cold: float
    hot: float
    wait: float
    way: str
    stay: str


def answer(case: BathHeat) -> None:
    _find_boiling_point(case)
    _find_capacity(case)
    _find_power(case)
    _find_loss(case)
    _find_heating_time(case)
    legs = _legs(case)
    _go_up(case, legs)
    if case.room + 0.5 < case.touch < case.top:
        case.cool = cooling_time(case.fall, case.top, case.touch, case.room)
    _find_level(case)
    _carry_ends(case, legs)
    case.began = _clock(case.begin)


def _find_boiling_point(case: BathHeat) -> None:
    altitude = float(case.altitude)
    case.boils = solved(
        boiling_point(altitude), lambda boils: VAPOR_PRESSURE(boils) - AIR_PRESSURE(case.altitude)
    )
    if case.top > case.boils:
        raise Refused(
            f"Heat to: water boils at {case.boils:.0f} °C at that height; give"
            f" {highest_setting(altitude):.0f} °C or less.",
            BathHeat.top,
        )
    if case.top < case.start:
        raise Refused(
            "Heat to: that is colder than the bath already is; give a higher temperature.",
            BathHeat.top,
        )


def _find_capacity(case: BathHeat) -> None:
    case.c_water = looked_up("dye", "specific-heats", "what", "water", "heat")
    case.c_fiber = looked_up("dye", "specific-heats", "what", case.fiber, "heat")
    case.c_pot = looked_up("dye", "specific-heats", "what", case.pot, "heat")
    case.capacity = heat_capacity(
        case.bath, case.fiber_mass, case.pot_mass, case.c_fiber, case.c_pot, case.c_water
    )
    case.energy = energy_to_heat(case.capacity, case.start, case.top)


def _find_power(case: BathHeat) -> None:
    case.metered = plate_energy(case.energy, _share(case))
    case.net = power_into_bath(case.power, _share(case))


def _share(case: BathHeat) -> float:
    """The share of the heater's power that reaches the bath: her own, or what is usual."""
    if case.efficiency is not None:
        return case.efficiency
    if not case.has(BathHeat.share):
        case.share = looked_up("dye", "heater-efficiencies", "heater", case.heater, "middle")
    return case.share


def _find_loss(case: BathHeat) -> None:
    if case.cooled == "yes":
        if not case.first > case.second > case.room:
            raise Refused(
                "Cooling: the second reading must be cooler than the first and warmer than the"
                " room.",
                BathHeat.second,
            )
        case.fall = cooling_rate(case.first, case.second, case.room, case.between)
        case.loss = loss_from_cooling(case.fall, case.capacity)
    else:
        case.loss = looked_up("dye", "pot-losses", "lid", case.lid, "middle")
        case.fall = cooling_rate_by_loss(case.loss, case.capacity)


def _find_heating_time(case: BathHeat) -> None:
    try:
        case.minutes = heating_time(
            case.capacity, case.net, case.start, case.top, case.loss, case.room
        )
    except OutOfRange as error:
        raise Refused(f"Plate: {error.reason}.", BathHeat.power) from None
    case.bare = heating_time(case.capacity, case.net, case.start, case.top)


def _legs(case: BathHeat) -> list[Leg]:
    """The way up in straight pieces."""
    if case.pause_at is None:
        return [Leg(case.start, case.top, case.hold, TO_TOP, "the hold")]
    if not case.start < case.pause_at < case.top:
        raise Refused(
            f"Wait on the way at: give more than the {case.start:.3g} °C of the bath and less than"
            f" the {case.top:.3g} °C it is heated to.",
            BathHeat.pause_at,
        )
    return [
        Leg(case.start, case.pause_at, case.pause, TO_WAIT, "the wait"),
        Leg(case.pause_at, case.top, case.hold, TO_TOP, "the hold"),
    ]


def _go_up(case: BathHeat, legs: list[Leg]) -> None:
    """Each piece of the way up, and what they use in all."""
    lost = 0.0
    for leg in legs:
        case.ramp[leg.way] = rise_time(leg.cold, leg.hot, case.rate, _full_power(case, leg, legs))
        case.lost[leg.way] = lost_in(
            case.ramp[leg.way],
            leg.cold,
            leg.hot,
            case.rate,
            case.capacity,
            case.net,
            case.loss,
            case.room,
        )
        case.kept[leg.stay] = _kept_hot(case, leg, case.loss)
        lost += case.lost[leg.way] + case.kept[leg.stay]
    case.used = plate_energy(max(case.energy + lost, 0.0), _share(case))
    if case.price is not None:
        case.cost = energy_cost(case.used, case.price)
    case.program = program_points(
        case.start, [(leg.hot, case.ramp[leg.way], leg.wait) for leg in legs]
    )
    case.whole = case.program[-1][0]
    case.until_hold = case.program[-2 if case.hold else -1][0]
    if case.hold:
        case.hold_time = case.hold


def _full_power(case: BathHeat, leg: Leg, legs: list[Leg]) -> float:
    if len(legs) == 1:
        return case.minutes
    case.full_power[leg.way] = heating_time(
        case.capacity, case.net, leg.cold, leg.hot, case.loss, case.room
    )
    return case.full_power[leg.way]


def _kept_hot(case: BathHeat, leg: Leg, loss: float) -> float:
    """What waiting loses: nothing where the room is as warm."""
    return holding_energy(loss, max(leg.hot, case.room), case.room, leg.wait)


def _find_level(case: BathHeat) -> None:
    case.density = looked_up(
        "yarn", "morton-hearle-fiber-densities", "fiber", FIBERS[case.fiber], "at_65"
    )
    raised = yarn_displacement(case.fiber_mass, case.density) if case.fiber_mass else 0.0
    case.level = case.bath + raised


def _clock(text: str) -> int:
    try:
        return minutes_of_clock(text)
    except OutOfRange:
        raise Refused("You begin at: give a time of day such as 9:30.", BathHeat.begin) from None


def _carry_ends(case: BathHeat, legs: list[Leg]) -> None:
    """What a guessed efficiency and a guessed loss leave open.

    The plate at its worst in a pot that loses most, and the other way round.
    """
    usual, lids = HEATERS[case.heater], LOSSES[case.lid]
    ends = []
    for worse, more in (("low", "high"), ("high", "low")):
        share = usual[worse] if case.efficiency is None else case.efficiency
        loss = lids[more] if case.cooled == "no" else case.loss
        ends.append(_at_end(case, legs, share, loss))
    for result in ends[0]:
        case.band(result, *(end[result] for end in ends))


def _at_end(
    case: BathHeat, legs: list[Leg], share: float, loss: float
) -> dict[Result[float], float]:
    """The results with another share of the power and another loss."""
    minutes, whole, into = _way_up(case, legs, power_into_bath(case.power, share), loss)
    found = {
        BathHeat.minutes: minutes,
        BathHeat.whole: whole,
        BathHeat.used: plate_energy(max(into, 0.0), share),
    }
    if case.efficiency is None:
        found[BathHeat.metered] = plate_energy(case.energy, share)
    if case.has(BathHeat.cool):
        fall = cooling_rate_by_loss(loss, case.capacity)
        found[BathHeat.cool] = cooling_time(fall, case.top, case.touch, case.room)
    if case.price is not None:
        found[BathHeat.cost] = energy_cost(found[BathHeat.used], case.price)
    return found


def _way_up(case: BathHeat, legs: list[Leg], net: float, loss: float) -> tuple[float, float, float]:
    """Minutes at full power, minutes in all, and kWh into the bath."""
    bath = case.capacity, net, loss, case.room
    try:
        return (
            heating_time(case.capacity, net, case.start, case.top, loss, case.room),
            sum(ramp_time(leg.cold, leg.hot, case.rate, *bath) + leg.wait for leg in legs),
            case.energy
            + sum(
                lost_on_the_way(leg.cold, leg.hot, case.rate, *bath) + _kept_hot(case, leg, loss)
                for leg in legs
            ),
        )
    except OutOfRange:
        # So weak a plate never gets there: three times its time without losses stands for that.
        minutes = 3 * heating_time(case.capacity, net, case.start, case.top)
        into = net * minutes / 60 + _kept_hot(case, legs[-1], loss)
        return minutes, minutes + sum(leg.wait for leg in legs), into
