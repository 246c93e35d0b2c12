"""How the small skeins follow from the full one and the reel."""

from __future__ import annotations

from ....core.problem import Refused
from ....core.steps import at_least, at_most, searched
from ...count import linear_density
from ...reel import mass_of_turns, whole_turns_for_length
from ...split import (
    full_skeins_for,
    left_over,
    margin_of_last,
    most_turns_for_count,
    small_skeins,
    usable_amount,
)
from .asked import BY_COUNT, BY_LENGTH, BY_TURNS, SkeinSplit


def answer(case: SkeinSplit) -> None:
    case.usable = usable_amount(case.skein_length, case.loss_share)
    turns = _turns(case)
    case.small_length = turns * case.reel
    count = _count(case)
    case.left = left_over(case.usable, count, case.small_length, case.loss_per_cut)
    case.margin = margin_of_last(case.usable, count, case.small_length, case.loss_per_cut)
    case.yarn_count = linear_density(case.skein_mass, case.skein_length)
    case.small_mass = mass_of_turns(turns, case.reel, case.yarn_count)
    case.left_mass = case.left * case.yarn_count / 1000
    total = case.total
    if total is not None:
        case.full_skeins = searched(
            full_skeins_for(int(total), int(count)),
            lambda full: (at_least(full * count, total),),
            lambda: total / count,
        )


def _turns(case: SkeinSplit) -> int:
    """Turns of the reel for each small skein."""
    if case.wanted_by == BY_TURNS:
        case.turns = case.wanted_turns
        return case.wanted_turns
    if case.wanted_by == BY_COUNT:
        return _turns_for_count(case)
    wanted = case.wanted_length if case.wanted_by == BY_LENGTH else _length_for_weight(case)
    case.turns = searched(
        whole_turns_for_length(float(wanted), float(case.reel)),
        lambda turns: (at_least(turns * case.reel, wanted),),
        lambda: wanted / case.reel,
    )
    return case.turns


def _turns_for_count(case: SkeinSplit) -> int:
    """The most turns that leave enough for as many small skeins as are wanted."""
    count, usable, reel, loss = case.wanted_count, case.usable, case.reel, case.loss_per_cut
    turns = most_turns_for_count(float(usable), int(count), float(reel), float(loss))
    if turns < 1:
        raise Refused(
            "How many from one skein: less than one turn of the reel would be left for each;"
            " ask for fewer.",
            SkeinSplit.wanted_count,
        )
    case.turns = searched(
        turns,
        lambda turns: (at_most(count * (turns * reel + loss), usable),),
        lambda: (usable / count - loss) / reel,
    )
    return case.turns


def _length_for_weight(case: SkeinSplit) -> float:
    case.length_for_weight = case.wanted_mass * case.skein_length / case.skein_mass
    return case.length_for_weight


def _count(case: SkeinSplit) -> int:
    """Small skeins out of one."""
    if case.wanted_by == BY_COUNT:
        case.count = case.wanted_count
        return case.wanted_count
    small, loss, usable = case.small_length, case.loss_per_cut, case.usable
    case.count = searched(
        small_skeins(float(usable), float(small), float(loss)),
        lambda count: (at_most(count * (small + loss), usable),),
        lambda: usable / (small + loss),
    )
    if case.count < 1:
        raise Refused(
            "One full skein is not enough for one small skein of that size; ask for a smaller one.",
            f"wanted_{case.wanted_by}",
        )
    return case.count
