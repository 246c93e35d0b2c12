"""Hours on a run of cloth from own speeds: winding the warp, threading, weaving, hemming; and the
sittings they fill.
"""

from math import ceil

from ..core.problem import require

NOISE = 1e-9


def winding_minutes(ends: float, warp: float, timed_length: float, timed_minutes: float) -> float:
    """Time to wind a warp, min, from a stretch of winding that was timed.

    ends           1 or more
    warp           m of one end, above 0
    timed_length   m of yarn wound while timed, above 0
    timed_minutes  it took, min, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("ends", ends, 1)
    require("warp", warp, above=0.0)
    require("timed_length", timed_length, above=0.0)
    require("timed_minutes", timed_minutes, above=0.0)
    return ends * warp / timed_length * timed_minutes


def minutes_at_pace(count: float, timed_count: float, timed_minutes: float) -> float:
    """Time for so many ends, picks or hems, min, from some that were timed.

    count          0 or more
    timed_count    done while timed, above 0
    timed_minutes  it took, min, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("count", count, 0.0)
    require("timed_count", timed_count, above=0.0)
    require("timed_minutes", timed_minutes, above=0.0)
    return count / timed_count * timed_minutes


def weaving_minutes(
    picks: float,
    timed_picks: float,
    timed_minutes: float,
    stick_share: float = 0.0,
    stick_times: float = 1.0,
) -> float:
    """Time to weave some picks, min; picks with the stick take longer than the plain ones that
    were timed.

    picks          0 or more
    timed_picks    plain picks woven while timed, above 0
    timed_minutes  it took, min, above 0
    stick_share    % of the picks that use the stick, 0 to 100
    stick_times    as long as a plain one, 1 to 20
    Raises OutOfRange outside these.
    Source: arithmetic; that a stick slows a pick is common practice.
    """
    require("stick_share", stick_share, 0.0, 100.0)
    require("stick_times", stick_times, 1.0, 20.0)
    return minutes_at_pace(picks, timed_picks, timed_minutes) * (
        1 + stick_share / 100 * (stick_times - 1)
    )


def sittings(minutes: float, sitting: float, settling: float = 0.0) -> int:
    """Sittings that some time fills, when each begins with settling down and ends with clearing
    away.

    minutes   of work, 0 or more
    sitting   min from sitting down to standing up, above settling
    settling  min of it that nothing is woven, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic (rounded up).
    """
    require("minutes", minutes, 0.0)
    require("settling", settling, 0.0)
    require("sitting", sitting, above=settling)
    return ceil(minutes / (sitting - settling) - NOISE)
