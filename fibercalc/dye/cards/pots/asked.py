"""What is asked of a run to be planned, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, TEXT, Between, Case, Input, Option, Plain, Result, Row, Rows
from ....core.units import COUNT, MASS, NUMBER, TIME, VOLUME
from ...inputs import (
    DRIES_IN,
    DRYING_DAYS,
    DYE_DAYS,
    DYED_SKEIN,
    LIQUOR_RATIO,
    LOADS,
    POT_FILL,
    RAIL,
)
from ...schedule.plan import Plan


class Recipe(Row):
    """Skeins of one color."""

    name = Input[str](TEXT, "Name", default="another", longest=40, lent=False)
    skeins = Input[int](COUNT, "Skeins", default="6", allowed=("1", "400"))

    least = Between[int](COUNT, "Loads at least")


class Pot(Row):
    """One pot."""

    fill = replace(POT_FILL)


class Step(Row):
    """One thing done to a load."""

    name = Input[str](TEXT, "Name", default="step", longest=14, lent=False)
    minutes = Input[float](
        TIME,
        "Takes",
        default="15 min",
        allowed=("0 min", "48 h"),
        rough="10 %",
        units=("min", "h"),
        instrument="clock",
    )
    needs = Input[str](
        CHOICE,
        "and needs",
        default="hands",
        options=(
            Option("nothing", "nothing"),
            Option("pot", "the pot"),
            Option("pot-hands", "the pot and hands"),
            Option("burner", "the pot on a burner"),
            Option("burner-hands", "the pot on a burner, and hands"),
            Option("hands", "hands"),
        ),
    )


class Pots(Case):
    """Recipes to dye, a room to dye them in, and the steps that each load goes through."""

    recipes = Rows(
        Recipe,
        "Recipes",
        "recipe",
        least=1,
        most=40,
        measure="No two share a pot.",
        default=(
            {"name": "A", "skeins": "36"},
            {"name": "B", "skeins": "18"},
            {"name": "C", "skeins": "18"},
        ),
    )
    skein_mass = replace(DYED_SKEIN, usual=("5 g", "250 g"), rough="")
    liquor_ratio = replace(LIQUOR_RATIO)
    pots = Rows(Pot, "Pots", "pot", least=1, most=8, default=({"fill": "9 L"}, {"fill": "9 L"}))
    burners = Input[int](
        COUNT, "Plates or burners", default="2", allowed=("1", "8"), usual=("1", "4")
    )
    hands = Input[int](COUNT, "People", default="1", allowed=("1", "6"), usual=("1", "2"))
    steps = Rows(
        Step,
        "Steps of a load, in order",
        "step",
        least=1,
        most=12,
        default=(
            {"name": "wet out", "minutes": "30 min", "needs": "nothing"},
            {"name": "fill", "minutes": "10 min", "needs": "pot-hands"},
            {"name": "heat", "minutes": "43 min", "needs": "burner"},
            {"name": "hold", "minutes": "45 min", "needs": "burner"},
            {"name": "cool", "minutes": "50 min", "needs": "pot"},
            {"name": "rinse", "minutes": "15 min", "needs": "hands"},
        ),
    )
    day = Input[float](
        TIME,
        "Working hours of a day",
        default="8 h",
        allowed=("1 h", "24 h"),
        usual=("4 h", "12 h"),
        units=("h", "min"),
    )
    opens = Input[str](TEXT, "The day begins at", default="8:00", longest=5, lent=False)
    rail = replace(RAIL)
    drying = replace(DRIES_IN, measure="0 to leave drying out; see “When is it dry enough”.")

    all_skeins = Between[float](COUNT, "Skeins in all")
    largest_fill = Between[float](VOLUME, "The largest pot, filled", unit="L")
    fit = Between[int](COUNT, "Skeins in the largest pot")
    opened = Plain[int]()  # minutes after midnight at which a day opens
    chosen = Plain[Plan](fixed=True)  # the plan that is done first, with the minutes as given
    plan = Plain[Plan]()  # that one, with the minutes as they may be
    fullest = Between[int](COUNT, "Skeins in the fullest load")
    yarn_of_load = Between[float](MASS, "Yarn of the fullest load")
    bath_of_load = Between[float](VOLUME, "Bath of the fullest load", unit="L")

    loads = replace(LOADS)
    dye_days = replace(DYE_DAYS)
    drying_days = replace(DRYING_DAYS)
    work = Result[float](
        TIME,
        "Until the last load is rinsed, nights and all",
        units=("h", "day"),
        finest=(0.1, 0.01),
        rounding="up",
        floor=0.0,
    )
    bound = Result[float](
        TIME,
        "No plan is faster than",
        units=("h", "day"),
        finest=(0.1, 0.01),
        rounding="down",
        floor=0.0,
    )
    over = Result[float](NUMBER, "Over that, percent", finest=(1,), floor=0.0)
