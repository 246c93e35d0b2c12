"""The small skeins of a full one, the shades, and what the set takes cut first and dyed whole."""

from __future__ import annotations

from functools import lru_cache

from ....core.arithmetic import mean
from ....core.color import Color
from ....core.problem import OutOfRange, Refused
from ....core.steps import at_least, at_most, searched
from ....dye.color.kubelka_munk import palette
from ....dye.color.path import Path
from ....dye.color.steps import (
    Ladder,
    equal_percent_ladder,
    even_ladder,
    geometric_ladder,
    geometric_ratio,
)
from ....dye.pot_loads import days_at_rounds
from ....yarn.count import linear_density
from ....yarn.reel import mass_of_turns, whole_turns_for_length
from ....yarn.split import (
    full_skeins_for,
    margin_of_last,
    most_turns_for_count,
    small_skeins,
    usable_amount,
)
from ...sets import depths_added, dye_in_set, loads_of_set
from .asked import BY_COUNT, BY_TURNS, EVEN, RATIO, Dye, SetPlan

SampleDepths = tuple[tuple[Color, float, float, float], ...]  # sample, its depth, first, last


def answer(case: SetPlan) -> None:
    _find_small_skein(case)
    case.all_sets = case.sets + case.spare
    case.all_small = case.days * case.all_sets
    _find_full_skeins(case)
    _find_shades(case)
    case.shade_cut = case.all_sets * case.small_mass
    case.shade_whole = case.each_shade * case.skein_mass
    case.dye_cut = dye_in_set(case.shade_cut, case.depths)
    case.dye_whole = dye_in_set(case.shade_whole, case.depths)
    _find_loads(case)
    case.days_cut = _dye_days(case, case.loads_cut)
    case.days_whole = _dye_days(case, case.loads_whole)
    case.more_yarn = (case.dyed_whole - case.cut_first) * case.skein_cost
    case.tying = (case.all_small - case.dyed_whole) * case.tie


def _find_small_skein(case: SetPlan) -> None:
    case.usable = usable_amount(case.skein_length, case.loss_share)
    case.turns = _turns(case)
    case.small_length = case.turns * case.reel
    case.per = _small_from_one(case)
    if case.per < 1:
        raise Refused(
            "One full skein is not enough for one small skein of that size; ask for a smaller one.",
            f"wanted_{case.wanted_by}",
        )
    case.margin = margin_of_last(case.usable, case.per, case.small_length)
    case.tex = linear_density(case.skein_mass, case.skein_length)
    case.small_mass = mass_of_turns(case.turns, case.reel, case.tex)


def _turns(case: SetPlan) -> int:
    if case.wanted_by == BY_TURNS:
        return case.wanted_turns
    if case.wanted_by == BY_COUNT:
        turns = most_turns_for_count(float(case.usable), int(case.wanted_count), float(case.reel))
        if turns < 1:
            raise Refused(
                "How many from one skein: less than one turn of the reel would be left for each;"
                " ask for fewer.",
                SetPlan.wanted_count,
            )
        return searched(
            turns,
            lambda count: (at_most(case.wanted_count * count * case.reel, case.usable),),
            lambda: case.usable / case.wanted_count / case.reel,
        )
    case.length_for_weight = case.wanted_mass * case.skein_length / case.skein_mass
    return searched(
        whole_turns_for_length(float(case.length_for_weight), float(case.reel)),
        lambda count: (at_least(count * case.reel, case.length_for_weight),),
        lambda: case.length_for_weight / case.reel,
    )


def _small_from_one(case: SetPlan) -> int:
    if case.wanted_by == BY_COUNT:
        return case.wanted_count
    return searched(
        small_skeins(float(case.usable), float(case.small_length)),
        lambda count: (at_most(count * case.small_length, case.usable),),
        lambda: case.usable / case.small_length,
    )


def _find_full_skeins(case: SetPlan) -> None:
    case.cut_first = searched(
        full_skeins_for(int(case.all_small), int(case.per)),
        lambda count: (at_least(count * case.per, case.all_small),),
        lambda: case.all_small / case.per,
    )
    case.each_shade = searched(
        full_skeins_for(int(case.all_sets), int(case.per)),
        lambda count: (at_least(count * case.per, case.all_sets),),
        lambda: case.all_sets / case.per,
    )
    case.dyed_whole = case.days * case.each_shade
    case.over_cut = case.cut_first * case.per - case.all_small
    case.over_whole = case.dyed_whole * case.per - case.all_small
    case.over_each = case.each_shade * case.per - case.all_sets


def _find_shades(case: SetPlan) -> None:
    _find_ladder(case)
    for number, recipe in enumerate(case.ladder.recipes, 1):
        case.depth[str(number)] = sum(recipe)
    for at, dye in enumerate(case.dyes):
        dye.mean_depth = mean([recipe[at] for recipe in case.ladder.recipes])
    case.depths = depths_added(list(case.depth.values()))


def _find_ladder(case: SetPlan) -> None:
    """The shades by the wished kind of step, and the ratio where one dye steps by equal ratios."""
    dyes = tuple(
        (dye.sample, float(dye.percent), float(dye.first), float(dye.last)) for dye in case.dyes
    )
    case.ladder = _ladder(case.undyed, dyes, int(case.days), case.steps)
    if case.steps == RATIO and len(case.dyes) == 1:
        try:
            case.ratio = geometric_ratio(case.dyes[0].first, case.dyes[0].last, case.days)
        except OutOfRange as error:
            raise _no_shades(error) from None


@lru_cache(32)  # asked for again with every input that is moved within its roughness
def _ladder(undyed: Color, dyes: SampleDepths, days: int, steps: str) -> Ladder:
    try:
        mixer = palette(undyed, [(sample, percent) for sample, percent, _, _ in dyes])
    except OutOfRange as error:
        raise Refused(
            f"Dyes: {error.reason or 'a sample must be darker than the undyed yarn'}.",
            SetPlan.dyes.each(Dye.sample, row=1),
        ) from None
    firsts, lasts = tuple(dye[2] for dye in dyes), tuple(dye[3] for dye in dyes)
    try:
        if steps == RATIO:
            return geometric_ladder(mixer, firsts, lasts, days)
        path = Path(mixer, [firsts, lasts])
        return (even_ladder if steps == EVEN else equal_percent_ladder)(path, days)
    except OutOfRange as error:
        raise _no_shades(error) from None


def _no_shades(error: OutOfRange) -> Refused:
    why = error.reason or (
        "the first and the last must differ, and equal ratios need a depth above 0 at both ends"
    )
    return Refused(f"Shades: {why}.", SetPlan.dyes.each(Dye.first, row=1))


def _find_loads(case: SetPlan) -> None:
    # A load takes as much yarn cut small as whole.
    case.small_load = searched(
        max(int(case.load * case.skein_mass / case.small_mass + 1e-9), 1),
        lambda count: (at_most(count * case.small_mass, case.load * case.skein_mass),),
        lambda: case.load * case.skein_mass / case.small_mass,
    )
    case.loads_cut = loads_of_set(case.days, case.all_sets, case.small_load)
    case.loads_whole = loads_of_set(case.days, case.each_shade, case.load)


def _dye_days(case: SetPlan, loads: int) -> int:
    return searched(
        days_at_rounds(int(loads), 1, int(case.a_day)),
        lambda count: (at_least(count * case.a_day, loads),),
        lambda: loads / case.a_day,
    )
