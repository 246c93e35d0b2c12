"""A bath's program: ramps and holds as points of time and temperature, with clock times.

A stage is (temperature to reach, rate in °C a minute, minutes to hold there). A ramp takes as
long as its rate asks for or as long as the plate needs, whichever is more; going down, its rate
is what the person allows.
"""

from collections.abc import Sequence

from ..core.arithmetic import largest
from ..core.problem import OutOfRange, require
from .heat import COLDEST, HOTTEST, KILOJOULES_PER_KWH, heating_time

MOST_STAGES = 12
MINUTES_A_DAY = 1440


def ramp_time(
    start: float,
    end: float,
    rate: float,
    capacity: float = 0.0,
    net_power: float = 0.0,
    loss: float = 0.0,
    room: float = 20.0,
) -> float:
    """Time, min, from one temperature to another at a wanted rate, and no sooner than the plate
    can.

    start      °C, -10 to 105
    end        °C, -10 to 105
    rate       °C a minute wanted, above 0 to 20
    capacity   kJ/K of the bath, 0 or more; 0 to leave the plate out of it
    net_power  kW into the bath, 0 to 100; 0 to leave the plate out of it
    loss       W for each degree above the room, 0 to 1,000
    room       °C, -10 to 50
    Raises OutOfRange outside these, and where the plate never gets there.
    Source: arithmetic; the plate as heating_time.
    """
    require("start", start, COLDEST, HOTTEST)
    require("end", end, COLDEST, HOTTEST)
    require("rate", rate, 0.0, 20.0, above=0.0)
    require("capacity", capacity, 0.0)
    require("net_power", net_power, 0.0, 100.0)
    by_rate = abs(end - start) / rate
    if end <= start or not capacity or not net_power:
        return by_rate
    return rise_time(start, end, rate, heating_time(capacity, net_power, start, end, loss, room))


def rise_time(start: float, end: float, rate: float, full_power: float) -> float:
    """Time, min, to warm a bath at a wanted rate, and no sooner than at full power.

    start       °C, -10 to 105
    end         °C, start to 105
    rate        °C a minute wanted, above 0 to 20
    full_power  min that it takes at full power, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("start", start, COLDEST, HOTTEST)
    require("end", end, start, HOTTEST)
    require("rate", rate, 0.0, 20.0, above=0.0)
    require("full_power", full_power, 0.0)
    return largest((end - start) / rate, full_power)


def lost_on_the_way(
    start: float,
    end: float,
    rate: float,
    capacity: float,
    net_power: float,
    loss: float,
    room: float,
) -> float:
    """Energy, kWh, that the room gets while a bath warms at a pace, or as fast as the plate can;
    less than nothing where the room warms it.

    start      °C, -10 to 105
    end        °C, start to 105
    rate       °C a minute wanted, above 0 to 20
    capacity   kJ/K of the bath, above 0
    net_power  kW into the bath, above 0 to 100
    loss       W for each degree above the room, 0 to 1,000
    room       °C, -10 to 50
    Raises OutOfRange outside these, and as heating_time does.
    Source: arithmetic. Turned down, the bath warms evenly and loses by its middle; at full power
    all is lost that is not in the bath.
    """
    minutes = ramp_time(start, end, rate, capacity, net_power, loss, room)
    return lost_in(minutes, start, end, rate, capacity, net_power, loss, room)


def lost_in(
    minutes: float,
    start: float,
    end: float,
    rate: float,
    capacity: float,
    net_power: float,
    loss: float,
    room: float,
) -> float:
    """Energy, kWh, that the room gets while a bath warms for minutes that are known already.

    minutes    0 or more (see ramp_time)
    start      °C, -10 to 105
    end        °C, start to 105
    rate       °C a minute wanted, above 0 to 20
    capacity   kJ/K of the bath, above 0
    net_power  kW into the bath, above 0 to 100
    loss       W for each degree above the room, 0 to 1,000
    room       °C, -10 to 50
    Raises OutOfRange outside these.
    Source: as lost_on_the_way.
    """
    require("minutes", minutes, 0.0)
    require("start", start, COLDEST, HOTTEST)
    require("end", end, start, HOTTEST)
    require("rate", rate, 0.0, 20.0, above=0.0)
    require("capacity", capacity, above=0.0)
    require("net_power", net_power, 0.0, 100.0, above=0.0)
    require("loss", loss, 0.0, 1000.0)
    require("room", room, COLDEST, 50.0)
    if minutes > (end - start) / rate:
        return net_power * minutes / 60 - capacity * (end - start) / KILOJOULES_PER_KWH
    return loss / 1000 * ((start + end) / 2 - room) * minutes / 60


def program_points(
    start: float, stages: Sequence[tuple[float, float, float]]
) -> list[tuple[float, float]]:
    """The points of a program whose ramps are timed already.

    start   °C, -10 to 105
    stages  (°C to reach, minutes to get there, minutes to hold) each, one to twelve; a hold of 0
            adds no point
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("stages", len(stages), 1, MOST_STAGES)
    require("start", start, COLDEST, HOTTEST)
    minutes, points = 0.0, [(0.0, start)]
    for temperature, ramp, hold in stages:
        require("hold", hold, 0.0, MINUTES_A_DAY)
        minutes += ramp
        points.append((minutes, temperature))
        if hold:
            minutes += hold
            points.append((minutes, temperature))
    return points


def clock_time(begin: float, minutes: float) -> str:
    """Time of day so many minutes after a beginning, to the nearest minute: "10:45", or "01:10 +1
    day" past midnight.

    begin    minutes after midnight, 0 to 1,440
    minutes  after that, 0 to 100,000
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("begin", begin, 0.0, MINUTES_A_DAY)
    require("minutes", minutes, 0.0, 1e5)
    day, rest = divmod(int(begin + minutes + 0.5), MINUTES_A_DAY)
    later = f" +{day} day{'s' if day > 1 else ''}" if day else ""
    return f"{rest // 60:02d}:{rest % 60:02d}{later}"


def minutes_of_clock(text: str) -> int:
    """Minutes after midnight of a time of day as typed: 9:30, 09.30 or 9.

    text  hours 0 to 23, and minutes 0 to 59 after a colon or point
    Raises OutOfRange for anything else.
    Source: definition of the 24-hour clock.
    """
    hours, _, minutes = text.strip().replace(".", ":").partition(":")
    if (
        not (
            hours.isascii()
            and hours.isdigit()
            and (not minutes or (minutes.isascii() and minutes.isdigit() and len(minutes) == 2))
        )
        or int(hours) > 23
        or int(minutes or 0) > 59
    ):
        raise OutOfRange("text", 0.0, reason="give a time of day such as 9:30 or 14:05")
    return 60 * int(hours) + int(minutes or 0)
