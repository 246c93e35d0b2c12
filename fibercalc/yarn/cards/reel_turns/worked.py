"""How the turns, and what they hold, follow from what is asked."""

from __future__ import annotations

from ....core.problem import Refused
from ....core.steps import at_least, searched
from ...reel import mass_of_turns, turns_for_length, whole_turns_for_length
from ...skein import length_by_turns, relaxed_circumference
from .asked import BY_LENGTH, BY_TURNS, ReelTurns

MOST_TURNS = 100_000  # more than a day of winding: a unit was mistaken


def answer(case: ReelTurns) -> None:
    case.rested_turn = relaxed_circumference(case.turn, case.stretch)
    if case.wanted_by == BY_TURNS:
        turns = case.turns = case.wanted_turns
    else:
        case.wanted = _wanted(case)
        turns = _whole_turns(case)
    case.length = length_by_turns(turns, case.rested_turn)
    if case.wanted_by != BY_TURNS:
        case.margin = case.length - case.wanted
    if case.count is not None:
        case.mass = mass_of_turns(turns, case.rested_turn, case.count)
        case.turn_mass = case.mass / turns


def _wanted(case: ReelTurns) -> float:
    """The wanted length, if need be from the weight."""
    if case.wanted_by == BY_LENGTH:
        return case.wanted_length
    if case.count is None:
        raise Refused(
            "Count of the yarn: nothing given; a weight can be turned into a length only by the"
            " count.",
            ReelTurns.count,
        )
    case.length_for_weight = 1000 * case.wanted_mass / case.count
    return case.length_for_weight


def _whole_turns(case: ReelTurns) -> int:
    """The fewest turns of which none is short."""
    case.need = turns_for_length(case.wanted, case.rested_turn)
    if case.need > MOST_TURNS:
        raise Refused(
            f"That would be {case.need:,.0f} turns of this reel; look at the units, or ask"
            " for less.",
            f"wanted_{case.wanted_by}",
        )
    case.turns = searched(
        whole_turns_for_length(float(case.wanted), float(case.rested_turn)),
        lambda turns: (at_least(turns * case.rested_turn, case.wanted),),
        lambda: case.wanted / case.rested_turn,
    )
    return case.turns
