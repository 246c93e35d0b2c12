"""How a step of a working is written: in words, and beside it with the numbers filled in."""

from fibercalc.core.asked import Input
from fibercalc.core.case import Between, Case, recording, steps_of
from fibercalc.core.settings import Settings
from fibercalc.core.steps import at_least, searched
from fibercalc.core.units import COUNT, LENGTH
from fibercalc.core.written import written


class Reel(Case):
    """One reel and a wanted length."""

    turn = Input[float](LENGTH, "Turn", default="1.5 m", allowed=("0.1 m", "10 m"))
    wanted = Input[float](LENGTH, "Wanted", default="84 m", allowed=("1 m", "500 m"))
    turns = Between[int](COUNT, "Whole turns")


def test_what_was_searched_for_is_written_in_words_and_in_numbers():
    case = recording(Reel)({"turn": 1.5, "wanted": 83.5})
    case.turns = searched(
        56,
        lambda turns: (at_least(turns * case.turn, case.wanted),),
        lambda: case.wanted / case.turn,
    )
    (step,) = written(steps_of(case), Settings())
    assert step["formula"] == "turns × turn ≥ wanted"
    assert step["filled"].replace("\xa0", " ") == "56 × 1.5 m ≥ 83.5 m"
