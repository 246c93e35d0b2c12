"""A fair: how many must sell, how many to bring when past fairs sold out, crates and float."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....core.paper import Paper
from ....sources import ARITHMETIC, CACHON_TERWIESCH, COHEN_1991, COMMON_PRACTICE, TOBIN_1958
from .asked import FairStock
from .said import notes, say
from .shown import floats, odds, pace, packing, packing_list, picture
from .worked import answer

CARD = Card(
    id="fair-stock",
    chapter="sell",
    place=70,
    handles=("load",),
    tall_sheet=True,
    question="How many must I sell at the fair, and what do I load?",
    case=FairStock,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(packing, pace, odds, floats),
    papers=(Paper("Fair packing list, A5", "A5", packing_list),),
    basis=Basis(
        MODEL,
        "Break-even is arithmetic. What to bring: the newsvendor’s number, from past sales in which"
        " a sold-out fair counts as “at least” (normal demand, censored). Few fairs say little, and"
        " it says so.",
    ),
    sources=(ARITHMETIC, CACHON_TERWIESCH, COHEN_1991, TOBIN_1958, COMMON_PRACTICE),
    cautions=(
        Caution(
            "Crates are heavy by evening.",
            "Fill them to what you lift without strain, twist with your feet, share the load; tie"
            " down what is in the car, and fix shelves so that they cannot tip.",
        ),
    ),
    carry=(
        Carry("price", "What must this skein sell at?", {}),
        Carry("lift", "May I lift that crate?", {"mass": FairStock.crate_mass}),
        Carry("label", "Price cards for the table", {"price": FairStock.price}),
        Carry("count-to-dye", "How many do I dye?", {}),
    ),
)
