"""The level of each vapor in the room, and its shares of the published limits."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from ....core.arithmetic import largest
from ....core.card import Result
from ....core.steps import looked_up
from ....core.table import read_table
from ...air import (
    clearing_time,
    day_mean,
    emission,
    mixture_index,
    moles_in_bath,
    open_surface,
    ppm,
    room_level,
    solubility,
    vapor_over_bath,
    vapor_pressure,
)
from ...exposure import ceiling, dangerous, limits_words, stricter, stricter_short
from ...limits import published
from .asked import AIR_TABLE, KNOWN, LIMITS, POT_TABLE, POWDER, RoomAir, Spell

VAPOR_FIRST = (
    "1 lid on; 2 citric acid in place of vinegar (no vapor to speak of); 3 fan blowing out of the"
    " window; 4 mask with the right cartridge, last"
)
DUST_FIRST = (
    "1 still box, lid on the jar; 2 wet paper, paste with water, liquid stocks made once; 3 no fan"
    " while powder is open; 4 fitted particle mask, last"
)
# Shares of limits of which one level counts, and how the limit of a vapor is found.
OF_ONE_LEVEL: tuple[tuple[Result[float], Callable[[str], float | None]], ...] = (
    (RoomAir.short, stricter_short),
    (RoomAir.ceiling, ceiling),
    (RoomAir.idlh, dangerous),
)


def answer(case: RoomAir) -> None:
    least, most = _changes_of_air(case)
    case.fresh = _fresh(case, case.renewed)
    case.share_left = 0.01
    case.clear = clearing_time(case.share_left, case.renewed, case.mixing)
    case.band(
        RoomAir.clear,
        clearing_time(case.share_left, most, case.mixing),
        clearing_time(case.share_left, least, case.mixing),
    )
    if case.what == POWDER:
        case.controls = DUST_FIRST
        case.limit = published(
            "no limit for dye dust is compared; the nuisance-dust limit is never used for a dye",
            "hse-dyes",
        )
        return
    case.controls = VAPOR_FIRST
    case.limit = limits_words([spell.vapor for spell in case.times])
    case.area = open_surface(case.pans, case.across)
    for spell in case.times:
        _find_level(case, spell)
    _find_shares(case)
    _carry_ends(case, _fresh(case, least), _fresh(case, most))


def _changes_of_air(case: RoomAir) -> tuple[float, float]:
    """The fewest and the most changes of the room's air in an hour."""
    if case.air == KNOWN:
        case.renewed = case.changes
        return case.changes, case.changes
    case.renewed = looked_up("safe", AIR_TABLE, "key", case.air, "middle")
    row = read_table("safe", AIR_TABLE).row("key", case.air)
    return row["low"], row["high"]


def _fresh(case: RoomAir, changes: float) -> float:
    return case.room * changes / case.mixing


def _find_level(case: RoomAir, spell: Spell) -> None:
    spell.mass = looked_up("safe", LIMITS, "key", spell.vapor, "molar_mass")
    spell.henry = looked_up("safe", LIMITS, "key", spell.vapor, "henry")
    spell.slope = looked_up("safe", LIMITS, "key", spell.vapor, "henry_slope")
    spell.hot = looked_up("safe", POT_TABLE, "key", spell.pot, "celsius")
    spell.speed = looked_up("safe", POT_TABLE, "key", spell.pot, "middle")
    spell.moles = moles_in_bath(spell.strength, spell.mass)
    spell.solubility = solubility(spell.henry, spell.slope, spell.hot)
    spell.pressure = vapor_pressure(spell.moles, spell.solubility)
    spell.over_bath = vapor_over_bath(spell.pressure, spell.hot, spell.mass)
    spell.emitted = emission(case.area, spell.speed, spell.over_bath)
    spell.level = _level(case, spell, spell.emitted, case.fresh)


def _level(case: RoomAir, spell: Spell, emitted: float, fresh: float) -> float:
    return ppm(room_level(emitted, fresh, case.room, spell.time), spell.mass)


def _find_shares(case: RoomAir) -> None:
    levels = [spell.level for spell in case.times]
    for vapor, mean in _means(case, levels).items():
        case.mean[vapor] = mean
    case.index = _index(case.mean)
    case.peak = largest(levels)
    for result, limit_of in OF_ONE_LEVEL:
        share = _highest_share(case, levels, limit_of)
        if share is not None:
            setattr(case, result.name, share)


def _means(case: RoomAir, levels: Sequence[float]) -> dict[str, float]:
    """Mean over the day of each vapor."""
    spells = list(zip(case.times, levels))
    return {
        vapor: day_mean(
            [level for spell, level in spells if spell.vapor == vapor],
            [spell.time for spell, _ in spells if spell.vapor == vapor],
        )
        for vapor in dict.fromkeys(spell.vapor for spell in case.times)
    }


def _index(means: dict[str, float]) -> float:
    return 100.0 * mixture_index(means, {vapor: stricter(vapor) for vapor in means})


def _highest_share(
    case: RoomAir, levels: Sequence[float], limit_of: Callable[[str], float | None]
) -> float | None:
    """The highest level as a share of a limit for one moment, %; None where no vapor has one."""
    shares = [
        level / limit
        for spell, level in zip(case.times, levels)
        if (limit := limit_of(spell.vapor)) is not None
    ]
    if not shares:
        return None
    return 100.0 * (largest(shares) if len(shares) > 1 else shares[0])


def _carry_ends(case: RoomAir, least_fresh: float, most_fresh: float) -> None:
    """The band of each result: a pot that lets off little, well aired, and the other way round."""
    low = _levels(case, most_fresh, "low")
    high = _levels(case, least_fresh, "high")
    case.band(RoomAir.index, *(_index(_means(case, levels)) for levels in (low, high)))
    case.band(RoomAir.peak, max(low), max(high))
    for result, limit_of in OF_ONE_LEVEL:
        if case.has(result):
            shares = [_highest_share(case, levels, limit_of) for levels in (low, high)]
            case.band(result, *(share for share in shares if share is not None))


def _levels(case: RoomAir, fresh: float, speeds: str) -> list[float]:
    """The level of each spell with other fresh air, and another column of transfer velocities."""
    pots = read_table("safe", POT_TABLE)
    levels = []
    for spell in case.times:
        speed = pots.row("key", spell.pot)[speeds]
        emitted = emission(case.area, speed, spell.over_bath)
        levels.append(_level(case, spell, emitted, fresh))
    return levels
