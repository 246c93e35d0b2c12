"""Water as vapor: its pressure by temperature, the air's pressure by altitude,
and so where a pot boils."""

from math import log10

from ..core.problem import require

# Antoine equation of water, pressure in mmHg, temperature in °C, from 1 to 100 °C
# (from memory, unverified). Below the sea water boils up to 1.4 °C above that: so far they are
# carried on.
ANTOINE = (8.07131, 1730.63, 233.426)
COLDEST, HOTTEST = 1.0, 102.0  # °C
KILOPASCALS_PER_MMHG = 0.133322
SEA_LEVEL_PRESSURE = 101.325  # kPa, standard atmosphere
LOWEST, HIGHEST = -400.0, 5000.0  # m of altitude; beyond these nobody dyes


def vapor_pressure(temperature: float) -> float:
    """Pressure of water vapor over water, kPa; in the air of a room, the most that it can hold.

    temperature  °C, 1 to 102
    Raises OutOfRange outside this.
    Source: antoine-water (constants from memory, unverified), given for 1 to 100 °C.
    """
    require("temperature", temperature, COLDEST, HOTTEST)
    a, b, c = ANTOINE
    return KILOPASCALS_PER_MMHG * 10 ** (a - b / (c + temperature))


def air_pressure(altitude: float) -> float:
    """Usual pressure of the air, kPa. Weather moves it by about 3 % either way, the
    boiling point by about 0.8 °C.

    altitude  m above the sea, -400 to 5,000
    Raises OutOfRange outside this.
    Source: standard-atmosphere (constants from memory, unverified).
    """
    require("altitude", altitude, LOWEST, HIGHEST)
    pressure: float = SEA_LEVEL_PRESSURE * (1 - 2.25577e-5 * altitude) ** 5.25588
    return pressure


def boiling_point(altitude: float) -> float:
    """Temperature, °C, at which water boils: where its vapor presses as hard as the air.

    altitude  m above the sea, -400 to 5,000
    Raises OutOfRange outside this.
    Source: antoine-water and standard-atmosphere (from memory); within 0.5 °C of points of a
    handbook (pocket-ref-boiling).
    """
    a, b, c = ANTOINE
    return b / (a - log10(air_pressure(altitude) / KILOPASCALS_PER_MMHG)) - c


def highest_setting(altitude: float, below: float = 1.0) -> float:
    """Highest bath temperature, °C, worth asking for: a little below boiling, where
    a bath still holds still.

    altitude  m above the sea, -400 to 5,000
    below     °C kept below boiling, 0 to 20
    Raises OutOfRange outside these.
    Source: common practice.
    """
    require("below", below, 0.0, 20.0)
    return boiling_point(altitude) - below
