"""How a sett follows from the yarn, the weave and the use, and which threading comes nearest."""

from __future__ import annotations

from ....core.problem import Refused
from ....core.steps import looked_up
from ....yarn.diameter import ashenhurst_diameters_per_inch
from ....yarn.wrapping import wrap_conventions
from ...cover import (
    TOUCHING,
    closest_picks,
    cloth_cover,
    cover_factor,
    left_to_bend,
    touching_per_inch,
)
from ...heddle import dents_per_inch
from ...setting import cotton_hanks, maximum_sett, working_sett, yards_in_a_pound
from ...settings import OWN, PER_10_CM, PER_INCH, nearest, threadings
from .asked import ASHENHURST_K, PACKED, PEIRCE, RELAXED, Sett

# Of what a close-packed wrap would count: below lies another way of wrapping (between the bands of
# the wrap conventions).
LOOSE = 0.75


def answer(case: Sett) -> None:
    _thickness(case)
    case.ends, case.crossings = (
        looked_up("weave", "interlacings", "key", case.weave, column)
        for column in ("ends", "crossings")
    )
    case.closest = maximum_sett(case.diameters, case.ends, case.crossings)
    case.share_low, case.share_high = (
        looked_up("weave", "sett-uses", "key", case.use, column) for column in ("low", "high")
    )
    case.working = working_sett(case.closest, (case.share_low + case.share_high) / 2)
    case.band(
        Sett.working,
        *(
            PER_INCH.to_base(working_sett(case.closest, share))
            for share in (case.share_low, case.share_high)
        ),
    )
    _threading(case)
    case.closeness = 100 * case.sett / case.closest
    weft = case.maybe(Sett.picks) or case.sett
    case.balance = weft / case.sett
    if case.has(Sett.cotton_count):
        _cover(case, weft)


def _thickness(case: Sett) -> None:
    """Diameters side by side in an inch."""
    tex = case.maybe(Sett.known_count) if case.by == PACKED else case.count
    if tex:
        case.yards_per_pound = yards_in_a_pound(tex)
        case.cotton_count = cotton_hanks(case.yards_per_pound)
    if case.by == ASHENHURST_K:
        case.constant = looked_up("yarn", "ashenhurst-constants", "name", case.kind, "constant")
        case.diameters = ashenhurst_diameters_per_inch(case.yards_per_pound, case.constant)
    elif case.by == PEIRCE:
        case.diameters = touching_per_inch(case.cotton_count)
    else:
        case.diameters = case.wraps
        if tex:
            case.wrap_ratio = case.wraps / case.yards_per_pound**0.5
            _refuse_loose(case)


def _refuse_loose(case: Sett) -> None:
    packed, yards = wrap_conventions().row("name", "packed"), case.yards_per_pound
    if case.wrap_ratio < LOOSE * packed["middle"]:
        raise Refused(
            f"Wraps: {case.wraps:.3g} in an inch of a yarn of {yards:,.0f} yd/lb are no"
            f" close-packed wrap, which would count {packed['low'] * yards**0.5:.0f} to"
            f" {packed['high'] * yards**0.5:.0f}; {RELAXED}.",
            Sett.wraps,
        )


def _threading(case: Sett) -> None:
    """The ways at hand, nearest first, and what the nearest gives."""
    own = tuple(float(heddle.dents) for heddle in case.own) if case.made == OWN else ()
    wanted = PER_INCH.to_base(float(case.working))
    case.ways = nearest(threadings(case.on, case.made, own), wanted)
    way = case.ways[0]
    case.threading = f"{way.name}, {way.words(case.on)}"
    if way.per is PER_10_CM:
        case.dents_in_10_cm = way.number
        case.dents = dents_per_inch(case.dents_in_10_cm)
    else:
        case.dents = way.number
    case.heddles = way.heddles
    case.ends_of_the_order, case.dents_of_the_order = sum(way.order), len(way.order)
    case.sett = case.dents * case.heddles * case.ends_of_the_order / case.dents_of_the_order


def _cover(case: Sett, weft: float) -> None:
    """Peirce's cover, and for plain weave the most picks; nothing where ends would overlie."""
    case.warp_cover = cover_factor(case.sett, case.cotton_count)
    case.weft_cover = cover_factor(weft, case.cotton_count)
    if max(case.warp_cover, case.weft_cover) > TOUCHING:
        return
    case.cover = 100 * cloth_cover(case.warp_cover, case.weft_cover) / TOUCHING
    if case.weave == "plain":
        case.diameter = 1 / touching_per_inch(case.cotton_count)
        case.reach = left_to_bend(case.sett, case.diameter, case.diameter)
        case.most_picks = closest_picks(case.sett, case.diameter, case.diameter, left=case.reach)
