"""How a step of a working is written: in words, and beside it with the numbers filled in."""

from fibercalc.core.asked import Input
from fibercalc.core.case import Between, Case, recording, steps_of
from fibercalc.core.settings import Settings
from fibercalc.core.steps import at_least, searched
from fibercalc.core.units import COUNT, LENGTH, NUMBER
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


class Dish(Case):
    """A dish and the shares of what is in it."""

    across = Input[float](LENGTH, "Across", default="3 cm", allowed=("1 cm", "1 m"), unit="cm")
    change = Input[float](NUMBER, "Change", default="-2", allowed=("-9", "9"))
    cube = Between[float](NUMBER, "Cube")
    after = Between[float](NUMBER, "After")
    below = Between[float](NUMBER, "Below")


def test_signs_and_units_are_filled_in_as_a_worker_writes_them():
    case = recording(Dish)({"across": 3.0, "change": -2.0})
    case.cube = case.across**3
    case.after = 2 - case.change
    case.below = case.change - 2
    cube, after, below = written(steps_of(case), Settings())
    assert cube["filled"].replace("\xa0", " ") == "(3 cm)³"
    assert (cube["formula"], after["formula"]) == ("across³", "2 − change")
    assert after["filled"] == "2 − (−2)"
    assert (below["filled"], below["text"]) == ("−2 − 2", "−4")
