"""A numbered set of small skeins: what to order, dye and wind, cut first beside dyed whole."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....core.paper import Paper
from ....sources import (
    ARITHMETIC,
    COMMON_PRACTICE,
    KM_APPLICATION_NOTE,
    SHARMA_2005,
    TEXTILE_PAGES_RECIPE,
)
from .asked import SetPlan
from .onward import CARRY
from .said import notes, say
from .shown import other_sizes, picture, plan_sheet, shades, side_by_side, strip
from .worked import answer

CARD = Card(
    id="set-plan",
    chapter="sell",
    place=20,
    tall_sheet=True,
    handles=("powder",),
    question="How do I plan a numbered set?",
    case=SetPlan,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture, strip),
    tables=(side_by_side, shades, other_sizes),
    papers=(Paper("Set plan, A4", "A4", plan_sheet),),
    basis=Basis(
        MODEL,
        "Whole turns and whole skeins only. Depths by the chosen kind of step; dye is depth times"
        " the yarn really dyed, spares and all.",
    ),
    sources=(TEXTILE_PAGES_RECIPE, KM_APPLICATION_NOTE, SHARMA_2005, COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "Many small doses of powder.",
            "Weigh them in one go, still air, mask and gloves on, or dose from stock. One short"
            " shade kills every set: wind and weigh the first of each before the rest. The maker’s"
            " safety data sheet comes first.",
        ),
    ),
    carry=CARRY,
)
