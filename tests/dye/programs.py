"""A bath's program from its stages, ramps timed by the plate."""

from fibercalc.dye import ramp


def program(start, stages, *plate):
    """Points (minutes, °C); stages are (°C to reach, °C a minute, minutes to hold), plate what ramp.ramp_time takes after the rate."""
    at, timed = start, []
    for temperature, rate, hold in stages:
        timed.append((temperature, ramp.ramp_time(at, temperature, rate, *plate), hold))
        at = temperature
    return ramp.program_points(start, timed)
