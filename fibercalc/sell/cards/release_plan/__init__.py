"""A release: products and quantities to base, dye, loads, days, labels, money; what is short."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....core.paper import Paper
from ....sources import ARITHMETIC, COMMON_PRACTICE, TEXTILE_PAGES_RECIPE
from .asked import ReleasePlan
from .onward import CARRY
from .said import notes, say
from .shown import (
    colors_table,
    loads_table,
    money_table,
    order_table,
    packing_table,
    picture,
    plan_sheet,
    what_if_table,
)
from .worked import answer

CARD = Card(
    id="release-plan",
    chapter="sell",
    place=10,
    tall_sheet=True,
    handles=("powder",),
    question="What does this release take?",
    case=ReleasePlan,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(colors_table, order_table, loads_table, packing_table, money_table, what_if_table),
    papers=(Paper("Release plan, A4", "A4", plan_sheet),),
    basis=Basis(
        MODEL,
        "A bill of materials: products to skeins, skeins to base, packs and dye. Whole packs, whole"
        " loads, no two colors in a pot, and what goes into one kit in one color from one pot.",
    ),
    sources=(TEXTILE_PAGES_RECIPE, COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "Powder, acid and heat.",
            "Weigh powder still, mask and gloves on; acid into water. A plan this long tires: stop"
            " a round early. The maker’s safety data sheet comes first.",
        ),
    ),
    carry=CARRY,
)
