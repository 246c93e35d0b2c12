"""Vapor in the air of a well-mixed room, and the sums of 29 CFR 1910.1000(d) over a day and over
several vapors.
"""

from collections.abc import Mapping, Sequence
from math import pi

from ..core.arithmetic import exp, ln
from ..core.problem import require

GAS = 8.314462618  # J/(mol K)
MOLAR_VOLUME_25 = 24.45  # L/mol at 25 °C and 1 atm
KELVIN = 273.15
REFERENCE_KELVIN = 298.15
WORK_DAY = 8.0  # h


def open_surface(pots: float, width: float) -> float:
    """Open surface of round pots, m².

    pots   how many, 0 or more
    width  of one, cm, 0 or more
    Raises OutOfRange outside these.
    Source: geometry (circles).
    """
    require("pots", pots, 0.0)
    require("width", width, 0.0)
    return pots * pi * (width / 200.0) ** 2


def moles_in_bath(strength: float, molar_mass: float) -> float:
    """Acid or base in a bath, mol in a m³.

    strength    g in 100 mL, 0 or more
    molar_mass  g/mol, above 0
    Raises OutOfRange outside these.
    Source: arithmetic (10,000 times 100 mL are a m³).
    """
    require("strength", strength, 0.0)
    require("molar_mass", molar_mass, above=0.0)
    return 10_000.0 * strength / molar_mass


def solubility(henry: float, henry_slope: float, celsius: float) -> float:
    """Solubility of a vapor in a bath, mol/(m³ Pa), by Henry's law.

    henry        its solubility at 25 °C, mol/(m³ Pa), above 0
    henry_slope  K: how solubility falls with heat, d ln H / d(1/T)
    celsius      of the bath, 0 to 105 °C
    Raises OutOfRange outside these.
    Source: sander-2023 (form; formic and ammonia); acetic from memory.
    """
    require("henry", henry, above=0.0)
    require("celsius", celsius, 0.0, 105.0)
    require("henry_slope", henry_slope, 0.0)
    kelvin = celsius + KELVIN
    # 1/T - 1/T0 over one denominator
    return henry * exp(henry_slope * (1.0 - kelvin / REFERENCE_KELVIN) / kelvin)


def vapor_pressure(moles_per_cubic_meter: float, solubility: float) -> float:
    """Partial pressure over a dilute bath, Pa, by Henry's law.

    moles_per_cubic_meter  of the free (not neutralized) acid or base in the bath, 0 or more
    solubility             at the bath's temperature, mol/(m³ Pa), above 0
    Raises OutOfRange outside these.
    Source: sander-2023 (form).
    """
    require("moles_per_cubic_meter", moles_per_cubic_meter, 0.0)
    require("solubility", solubility, above=0.0)
    return moles_per_cubic_meter / solubility


def vapor_over_bath(pressure: float, celsius: float, molar_mass: float) -> float:
    """Vapor in the air right over a bath, mg/m³.

    pressure    its partial pressure, Pa, 0 or more
    celsius     of the bath, 0 to 105 °C
    molar_mass  g/mol, above 0
    Raises OutOfRange outside these.
    Source: definition (ideal gas).
    """
    require("pressure", pressure, 0.0)
    require("celsius", celsius, 0.0, 105.0)
    require("molar_mass", molar_mass, above=0.0)
    return 1000.0 * molar_mass * pressure / (GAS * (celsius + KELVIN))


def emission(area: float, velocity: float, over_bath: float) -> float:
    """Vapor that leaves a bath's surface, mg/h: an order of magnitude.

    area       open surface, m², 0 or more
    velocity   transfer velocity, mm/s, 0 or more
    over_bath  vapor right over the bath, mg/m³, 0 or more
    Raises OutOfRange outside these.
    Source: trade-memory (2 to 10 mm/s over an open bath); definition (flux is velocity times
    concentration).
    """
    require("area", area, 0.0)
    require("velocity", velocity, 0.0)
    require("over_bath", over_bath, 0.0)
    return area * velocity / 1000.0 * 3600.0 * over_bath


def room_level(
    emitted: float, fresh_air: float, room: float, hours: float, before: float = 0.0
) -> float:
    """Level of a vapor in a well-mixed room after some time, mg/m³.

    emitted    mg/h, 0 or more
    fresh_air  m³/h that counts (already divided by the mixing factor), above 0
    room       m³, above 0
    hours      0 or more
    before     level at the start, mg/m³, 0 or more
    Raises OutOfRange outside these.
    Source: definition (mass balance of a well-mixed room).
    """
    require("emitted", emitted, 0.0)
    require("fresh_air", fresh_air, above=0.0)
    require("room", room, above=0.0)
    require("hours", hours, 0.0)
    require("before", before, 0.0)
    left = exp(-fresh_air * hours / room)
    return emitted / fresh_air * (1.0 - left) + before * left


def ppm(level: float, molar_mass: float) -> float:
    """Level by volume at 25 °C and 1 atm, ppm.

    level       mg/m³, 0 or more
    molar_mass  g/mol, above 0
    Raises OutOfRange outside these.
    Source: arithmetic (24.45 L a mole at 25 °C).
    """
    require("level", level, 0.0)
    require("molar_mass", molar_mass, above=0.0)
    return level * MOLAR_VOLUME_25 / molar_mass


def clearing_time(share_left: float, changes: float, mixing: float = 1.0) -> float:
    """Time until a room's air holds only some share of what was in it, min, once nothing more is
    let in.

    share_left  what may be left, above 0, up to 1
    changes     of the room's air in an hour, above 0
    mixing      mixing factor: 1 for perfect mixing, up to 10
    Raises OutOfRange outside these.
    Source: cdc-2003 (Appendix B: minutes to purge; mixing factors up to 10).
    """
    require("share_left", share_left, 0.0, 1.0, above=0.0)
    require("changes", changes, above=0.0)
    require("mixing", mixing, 1.0, 10.0)
    return 60.0 * ln(1.0 / share_left) * mixing / changes


def day_mean(levels: Sequence[float], hours: Sequence[float]) -> float:
    """Mean over a work day of 8 hours of several exposures to one substance, in the unit of the
    levels.

    levels  each 0 or more
    hours   of each, as many as levels, each 0 or more; 24 together at most
    Raises OutOfRange outside these and ValueError for lists of different lengths.
    Source: osha-1910-1000 (paragraph (d)(1): sum of level times hours, over 8).
    """
    for level, time in zip(levels, hours, strict=True):
        require("levels", level, 0.0)
        require("hours", time, 0.0)
    require("hours", sum(hours), 0.0, 24.0)
    return sum(level * time for level, time in zip(levels, hours)) / WORK_DAY


def mixture_index(levels: Mapping[str, float], limits: Mapping[str, float]) -> float:
    """Sum of level over limit for several vapors, no unit: above 1 the limit of the mixture is
    exceeded.

    levels  by substance, each 0 or more
    limits  by substance, above 0, in the same unit
    Raises OutOfRange outside these and KeyError where a level has no limit.
    Source: osha-1910-1000 (paragraph (d)(2)).
    """
    total = 0.0
    for key, level in levels.items():
        require(key, level, 0.0)
        require(key, limits[key], above=0.0)
        total += level / limits[key]
    return total
