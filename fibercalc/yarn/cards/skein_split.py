"""Full skeins into small ones: how many, how many turns each, what is left, and whether the last one comes out short."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Input, Option, Result
from ...core.picture import INDIGO, INDIGO_WASH, INK, SOFT, Drawing, Scale
from ...core.problem import Refused
from ...core.units import COUNT, LENGTH, MASS, NUMBER, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..count import linear_density
from ..putup import printed_grams, printed_meters, printed_yards
from ..reel import mass_of_turns, whole_turns_for_length
from ..split import full_skeins_for, left_over, margin_of_last, most_turns_for_count, small_skeins, usable_amount

BY_MASS, BY_LENGTH, BY_TURNS, BY_COUNT = "mass", "length", "turns", "count"


def answer(w, skein_mass, skein_length, loss_share, wanted_by, wanted_mass, wanted_length, wanted_turns, wanted_count, reel, loss_per_cut, total):
    usable = usable_amount(skein_length, loss_share)
    w.step("usable", "skein_length * (1 - loss_share / 100)", usable, LENGTH, label="Length that can be wound")
    turns = w.decide("turns", _turns(w, skein_mass, skein_length, usable, wanted_by, wanted_mass, wanted_length, wanted_turns, wanted_count, reel, loss_per_cut))
    if turns < 1:
        raise Refused("How many from one skein: that leaves less than one turn of the reel for each; ask for fewer small skeins.", "wanted_count")
    small = w.step("small_length", "turns * reel", turns * reel, LENGTH, label="Length of a small skein")
    count = w.decide("count", wanted_count if wanted_by == BY_COUNT else small_skeins(usable, small, loss_per_cut))
    if count < 1:
        raise Refused("One skein is not enough for one small skein of that size; ask for a smaller one.", f"wanted_{wanted_by}")
    w.step("count", f"floor(usable / (small_length + loss_per_cut) + {1e-9})" if False else "floor(usable / (small_length + loss_per_cut))", count, COUNT,
           label="Small skeins from one skein") if wanted_by != BY_COUNT else None
    rest = left_over(usable, count, small, loss_per_cut)
    return {"turns": turns, "small_length": small}
