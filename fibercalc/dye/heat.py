"""Heating and cooling a bath: energy, time from the plate's power, what the pot loses, what it costs.

A bath is one lump of water, fiber and pot at one temperature. It takes energy in proportion to its heat capacity and loses it in
proportion to how much hotter than the room it is; so a heated bath nears a highest temperature, and a cooling one the room's.
"""

from math import exp, log

from ..core.problem import OutOfRange, require
from ..core.table import SourcedTable, read_table

KILOJOULES_PER_KWH = 3600.0
COLDEST, HOTTEST = -10.0, 105.0  # °C; ends of what a dye room meets
GRAMS_PER_MILLILITER = 1.0  # of water; 0.96 at the boil, which errs by less than the plate does


def specific_heats() -> SourcedTable:
    """Heat that each material takes up, J/(g K).

    Source: wool and nylon morton-hearle-heat; the rest from memory, unverified (heat-handbook).
    """
    return read_table("dye", "specific-heats")


def heater_efficiencies() -> SourcedTable:
    """Share of a heater's power that reaches the bath, %, low, middle and high.

    Source: memory, unverified (heat-handbook).
    """
    return read_table("dye", "heater-efficiencies")


def specific_heat(what: str) -> float:
    """Heat that a gram takes up for each degree, J/(g K).

    what  as in specific_heats
    Raises KeyError for a material that is not listed.
    Source: as specific_heats.
    """
    return specific_heats().row("what", what)["heat"]


def heat_capacity(water: float, fiber: float = 0.0, pot: float = 0.0, fiber_heat: float = 1.36, pot_heat: float = 0.50) -> float:
    """Heat that the whole pot takes up for each degree, kJ/K.

    water       mL, above 0 to 1,000,000
    fiber       g, dry, 0 to 100,000
    pot         g, empty, 0 to 100,000
    fiber_heat  J/(g K), 0.1 to 5 (see specific_heat)
    pot_heat    J/(g K), 0.1 to 5
    Raises OutOfRange outside these.
    Source: definition of specific heat; values from memory (heat-handbook).
    """
    require("water", water, 0.0, 1e6, above=0.0)
    require("fiber", fiber, 0.0, 1e5)
    require("pot", pot, 0.0, 1e5)
    require("fiber_heat", fiber_heat, 0.1, 5.0)
    require("pot_heat", pot_heat, 0.1, 5.0)
    return (water * GRAMS_PER_MILLILITER * specific_heat("water") + fiber * fiber_heat + pot * pot_heat) / 1000


def energy_to_heat(capacity: float, start: float, end: float) -> float:
    """Energy, kWh, that goes into the bath; the plate uses more (see plate_energy).

    capacity  kJ/K, above 0 (see heat_capacity)
    start     °C, -10 to 105
    end       °C, start to 105
    Raises OutOfRange outside these.
    Source: definition of heat capacity.
    """
    require("capacity", capacity, above=0.0)
    _require_rise(start, end)
    return capacity * (end - start) / KILOJOULES_PER_KWH


def plate_energy(energy: float, efficiency: float) -> float:
    """Energy, kWh, that the meter counts for what reaches the bath.

    energy      kWh into the bath, 0 or more
    efficiency  % of the plate's power that reaches the bath, 5 to 100
    Raises OutOfRange outside these.
    Source: definition of efficiency.
    """
    require("energy", energy, 0.0)
    require("efficiency", efficiency, 5.0, 100.0)
    return 100 * energy / efficiency


def power_into_bath(power: float, efficiency: float) -> float:
    """Power, kW, that reaches the bath.

    power       kW of the plate or burner, above 0 to 100
    efficiency  %, 5 to 100
    Raises OutOfRange outside these.
    Source: definition of efficiency.
    """
    require("power", power, 0.0, 100.0, above=0.0)
    require("efficiency", efficiency, 5.0, 100.0)
    return power * efficiency / 100


def hottest(net_power: float, loss: float, room: float) -> float:
    """Temperature, °C, that the bath would near and never pass if water did not boil: where it loses all that it gets.

    net_power  kW into the bath, 0 to 100 (see power_into_bath)
    loss       W for each degree above the room, above 0 to 1,000
    room       °C, -10 to 50
    Raises OutOfRange outside these.
    Source: definition (Newton's law of cooling, at rest).
    """
    require("net_power", net_power, 0.0, 100.0)
    require("loss", loss, 0.0, 1000.0, above=0.0)
    require("room", room, COLDEST, 50.0)
    return room + 1000 * net_power / loss


def heating_time(capacity: float, net_power: float, start: float, end: float, loss: float = 0.0, room: float = 20.0) -> float:
    """Time, min, to heat the bath at a steady power: -(C/k) ln(1 - k dT/P) from the room's temperature, and the same from any other.

    capacity   kJ/K, above 0
    net_power  kW into the bath, above 0 to 100
    start      °C, -10 to 105
    end        °C, start to 105
    loss       W for each degree above the room, 0 to 1,000
    room       °C, -10 to 50
    Raises OutOfRange outside these, and where the bath loses so much that it never gets there.
    Source: definition (Newton's law of cooling with steady power).
    """
    require("capacity", capacity, above=0.0)
    require("net_power", net_power, 0.0, 100.0, above=0.0)
    _require_rise(start, end)
    require("loss", loss, 0.0, 1000.0)
    require("room", room, COLDEST, 50.0)
    if not loss:
        return capacity * (end - start) / (60 * net_power)
    top = hottest(net_power, loss, room)
    if end > start and end >= top:
        raise OutOfRange("end", end, start, top, f"the pot loses as much as it gets at {top:.0f} °C and does not get to {end:.0f}: put the lid on, or use more power")
    return 1000 * capacity / loss * log((top - start) / (top - end)) / 60 if end > start else 0.0


def holding_energy(loss: float, temperature: float, room: float, minutes: float) -> float:
    """Energy, kWh into the bath, that keeps it at one temperature.

    loss         W for each degree above the room, 0 to 1,000
    temperature  °C of the bath, room to 105
    room         °C, -10 to 50
    minutes      0 to 10,000
    Raises OutOfRange outside these.
    Source: definition (Newton's law of cooling, at rest).
    """
    require("loss", loss, 0.0, 1000.0)
    require("room", room, COLDEST, 50.0)
    require("temperature", temperature, room, HOTTEST)
    require("minutes", minutes, 0.0, 1e4)
    return loss / 1000 * (temperature - room) * minutes / 60


def cooling_rate(first: float, second: float, room: float, minutes: float) -> float:
    """How fast a bath with the heat off nears the room's temperature, as a share a minute, from two readings.

    first    °C at the first reading, above second, to 105
    second   °C at the second, above room
    room     °C, -10 to 50
    minutes  between them, above 0 to 10,000
    Raises OutOfRange outside these.
    Source: definition (Newton's law of cooling).
    """
    require("room", room, COLDEST, 50.0)
    require("second", second, room, HOTTEST, above=room)
    require("first", first, second, HOTTEST, above=second)
    require("minutes", minutes, 0.0, 1e4, above=0.0)
    return log((first - room) / (second - room)) / minutes


def cooling_time(rate: float, start: float, end: float, room: float) -> float:
    """Time, min, until a bath has cooled to a temperature.

    rate   share a minute, above 0 (see cooling_rate)
    start  °C now, end to 105
    end    °C wanted, above room
    room   °C, -10 to 50
    Raises OutOfRange outside these.
    Source: definition (Newton's law of cooling).
    """
    require("rate", rate, above=0.0)
    require("room", room, COLDEST, 50.0)
    require("end", end, room, HOTTEST, above=room)
    require("start", start, end, HOTTEST)
    return log((start - room) / (end - room)) / rate


def cooled_to(rate: float, start: float, room: float, minutes: float) -> float:
    """Temperature, °C, of a bath that has cooled for a time.

    rate     share a minute, 0 or more (see cooling_rate)
    start    °C when the heat went off, room to 105
    room     °C, -10 to 50
    minutes  0 or more
    Raises OutOfRange outside these.
    Source: definition (Newton's law of cooling).
    """
    require("rate", rate, 0.0)
    require("room", room, COLDEST, 50.0)
    require("start", start, room, HOTTEST)
    require("minutes", minutes, 0.0)
    return room + (start - room) * exp(-rate * minutes)


def loss_from_cooling(rate: float, capacity: float) -> float:
    """What the pot loses, W for each degree above the room, from how it cooled with the same lid on or off.

    rate      share a minute, 0 or more (see cooling_rate)
    capacity  kJ/K of the bath that cooled, above 0
    Raises OutOfRange outside these.
    Source: definition (Newton's law of cooling).
    """
    require("rate", rate, 0.0)
    require("capacity", capacity, above=0.0)
    return rate * capacity * 1000 / 60


def energy_cost(energy: float, price: float) -> float:
    """What energy costs, in the price's money.

    energy  kWh by the meter, 0 or more
    price   of a kWh, 0 or more
    Raises OutOfRange below 0.
    Source: arithmetic.
    """
    require("energy", energy, 0.0)
    require("price", price, 0.0)
    return energy * price


def _require_rise(start: float, end: float) -> None:
    require("start", start, COLDEST, HOTTEST)
    require("end", end, start, HOTTEST)
