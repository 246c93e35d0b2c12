"""Drying on the rail: water to lose, how fast the room takes it, and when yarn may be weighed and
labeled.

Wet yarn dries at a steady pace, set by how much vapor the air still lacks; below a certain
wetness the pace falls in proportion to what is left above the regain that the room's air holds it
at. It never gets drier than that. Drying is counted in points of regain. One weighing on the way
replaces the guessed pace. Wetness from two weighings is yarn.moisture.regain_from_masses.
"""

from ..core.arithmetic import exp, ln
from ..core.problem import OutOfRange, require
from .water import vapor_pressure

WETTEST = 1000.0  # % of dry weight; yarn before it is let drip
# Regain, %, below which the pace falls: low, middle, high (common practice, wide, no source).
PACE_FALLS = (30.0, 50.0, 80.0)
# Pace in still air, points of regain an hour for each kPa that the air lacks: low, middle, high;
# and what a fan does to it (common practice, wide, no source: a spun skein takes 12 to 48 hours at
# 20 °C and half-damp air).
STILL_AIR, WITH_FAN = (2.5, 5.0, 10.0), (1.5, 2.0, 3.0)
# Points of regain above rest at which yarn is dry enough to be weighed for sale (common practice)
NEAR_REST = 1.0
# %, the most that weight may change in two hours when it is at rest (the trade's rule for
# conditioning, from memory, unverified).
AT_REST = 0.25


def water_to_lose(weight: float, dry_mass: float, regain: float) -> float:
    """Water, g, to leave until the yarn is at rest in the room; 0 when it is drier already.

    weight    g now, above 0
    dry_mass  g, oven-dry, above 0
    regain    % at rest in the room, 0 to 60
    Raises OutOfRange outside these.
    Source: definition of regain (astm-d1909-extract).
    """
    require("weight", weight, above=0.0)
    require("dry_mass", dry_mass, above=0.0)
    require("regain", regain, 0.0, 60.0)
    return max(weight - dry_mass * (1 + regain / 100), 0.0)


def vapor_lack(temperature: float, humidity: float) -> float:
    """How much vapor the room's air still lacks, kPa: what it could hold less what it holds.

    temperature  °C, 1 to 60
    humidity     % relative humidity, 0 to 100
    Raises OutOfRange outside these.
    Source: definition of relative humidity; vapor pressure by antoine-water (from memory).
    """
    require("temperature", temperature, 1.0, 60.0)
    require("humidity", humidity, 0.0, 100.0)
    return vapor_pressure(temperature) * (1 - humidity / 100)


def pace_in_room(lack: float, still_air: float = STILL_AIR[1], fan: float = 1.0) -> float:
    """Pace at first, points of regain an hour, guessed from the room.

    lack       kPa, above 0 (see vapor_lack)
    still_air  points an hour for each kPa, above 0 to 100 (see STILL_AIR)
    fan        times that a fan quickens it, 1 to 10 (see WITH_FAN)
    Raises OutOfRange outside these; air that takes no more is refused with what to change.
    Source: common practice (wide; a weighing replaces it).
    """
    if lack == 0:
        raise OutOfRange(
            "lack",
            lack,
            0.0,
            None,
            "this air takes up no more water: warm the room or let in drier air",
        )
    require("lack", lack, 0.0, above=0.0)
    require("still_air", still_air, 0.0, 100.0, above=0.0)
    require("fan", fan, 1.0, 10.0)
    return lack * still_air * fan


def drying_work(wet: float, dry: float, rest: float, falls: float = PACE_FALLS[1]) -> float:
    """Drying between two wetnesses, in points at the first pace: steady above falls, a logarithm
    below it. Hours are this over the pace.

    wet    regain at the start, %, dry to 1,000
    dry    regain at the end, %, above rest
    rest   regain that the room's air holds the yarn at, %, 0 to 60
    falls  regain below which the pace falls, %, above rest to 1,000
    Raises OutOfRange outside these.
    Source: common practice (steady pace, then a falling one, as textbooks of drying have it; from
    memory).
    """
    _require_rest(rest, falls)
    require("dry", dry, rest, WETTEST, above=rest)
    require("wet", wet, dry, WETTEST)
    steady = max(wet - max(dry, falls), 0.0)
    if dry >= falls:
        return steady
    return steady + (falls - rest) * ln((min(wet, falls) - rest) / (dry - rest))


def pace_from_weighing(
    wet: float, now: float, rest: float, hours: float, falls: float = PACE_FALLS[1]
) -> float:
    """Pace at first, points of regain an hour, from one weighing on the way.

    wet    regain at the start, %, above now
    now    regain at the weighing, %, above rest
    rest   %, 0 to 60
    hours  between them, above 0 to 1,000
    falls  %, above rest to 1,000
    Raises OutOfRange outside these.
    Source: as drying_work (common practice).
    """
    require("hours", hours, 0.0, 1000.0, above=0.0)
    require("wet", wet, now, WETTEST, above=now)
    return drying_work(wet, now, rest, falls) / hours


def drying_hours(
    wet: float, dry: float, rest: float, pace: float, falls: float = PACE_FALLS[1]
) -> float:
    """Hours from one wetness to another.

    wet    regain at the start, %, dry to 1,000
    dry    regain at the end, %, above rest
    rest   %, 0 to 60
    pace   points of regain an hour at first, above 0
    falls  %, above rest to 1,000
    Raises OutOfRange outside these.
    Source: as drying_work (common practice).
    """
    require("pace", pace, above=0.0)
    return drying_work(wet, dry, rest, falls) / pace


def regain_after(
    wet: float, rest: float, pace: float, hours: float, falls: float = PACE_FALLS[1]
) -> float:
    """Regain, %, after some hours on the rail.

    wet    regain at the start, %, rest to 1,000
    rest   %, 0 to 60
    pace   points of regain an hour at first, 0 or more
    hours  0 or more
    falls  %, above rest to 1,000
    Raises OutOfRange outside these.
    Source: as drying_work (common practice), turned around.
    """
    _require_rest(rest, falls)
    require("wet", wet, rest, WETTEST)
    require("pace", pace, 0.0)
    require("hours", hours, 0.0)
    work = pace * hours
    steady = max(wet - falls, 0.0)
    if work <= steady:
        return wet - work
    return rest + (min(wet, falls) - rest) * exp(-(work - steady) / (falls - rest))


def weight_when_ready(dry_mass: float, rest: float, near: float = NEAR_REST) -> float:
    """Weight, g, at or under which the yarn may be weighed for sale and labeled.

    dry_mass  g, oven-dry, above 0
    rest      regain at rest in the room, %, 0 to 60
    near      points of regain above rest that are put up with, 0 to 10
    Raises OutOfRange outside these.
    Source: common practice.
    """
    require("dry_mass", dry_mass, above=0.0)
    require("rest", rest, 0.0, 60.0)
    require("near", near, 0.0, 10.0)
    return dry_mass * (1 + (rest + near) / 100)


def skeins_on_rail(length: float, each: float) -> int:
    """Skeins that hang on a rail at once.

    length  m of rail, above 0 to 1,000
    each    m that one takes, with air beside it, above 0 to 10
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("length", length, 0.0, 1000.0, above=0.0)
    require("each", each, 0.0, 10.0, above=0.0)
    return int(length / each + 1e-9)


def _require_rest(rest: float, falls: float) -> None:
    require("rest", rest, 0.0, 60.0)
    require("falls", falls, rest, WETTEST, above=rest)
