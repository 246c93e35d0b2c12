"""Wraps per inch, every weight class that matches, and the wide band of yards per pound that a wrap count allows."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.picture import INDIGO, INDIGO_WASH, MADDER, SOFT, Drawing, Scale
from ...core.units import COUNT, LENGTH, LINEAR_DENSITY, NUMBER, PER_LENGTH
from ...sources import CRAFT_YARN_COUNCIL, TRADE_PAGE_PLY_TERMS, TRADE_PAGE_SPINNERS, TRADE_PAGE_WEAVERS
from ..count import tex_from_yards_per_pound
from ..sample import half_width_of_mean, mean, standard_deviation
from ..weight_class import COUNCIL, PLY_TERMS, agreed_classes, classes_by_grist, classes_by_wraps, weight_classes
from ..wraps import wrap_conventions, wraps_per_inch, yards_per_pound_from_wraps

RELAXED = "relaxed"
LIST_NAMES = {COUNCIL: "Council classes", PLY_TERMS: "Ply names (UK, AU, NZ)"}


def answer(w, convention, width, tries, grist):
    counts = [row.turns for row in tries]
    turns = w.step("turns", "mean(tries.turns)", mean(counts), NUMBER, label="Turns, mean of the tries")
    wraps = wraps_per_inch(turns, width)
    w.step("wraps", "turns * 0.0254 / width", wraps / 2.54, PER_LENGTH, "per in", label="Wraps per inch") if False else None
    w.step("wraps_per_inch", "turns / (width / 0.0254)", wraps, NUMBER, label="Wraps per inch")
    return {"wraps": wraps / 2.54}
