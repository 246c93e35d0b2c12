"""What to order: what open plans need less what is on hand, in the cheapest packs, landed, and by
when.
"""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....core.paper import Paper
from ....sources import ARITHMETIC, COMMON_PRACTICE, INVENTORY_TEXTBOOK
from .asked import BaseOrder
from .onward import CARRY
from .said import notes, say
from .shown import lines_table, order_sheet, picture
from .worked import answer

CARD = Card(
    id="base-order",
    chapter="sell",
    place=50,
    tall_sheet=True,
    question="What must I order, and by when?",
    case=BaseOrder,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(lines_table,),
    papers=(Paper("Order, A5", "A5", order_sheet),),
    basis=Basis(
        MODEL,
        "Spoken for, and to be kept, less what is on hand; the cheapest whole packs. Stock to keep:"
        " use over the lead time, and a margin for both (textbook formula, from memory).",
    ),
    sources=(INVENTORY_TEXTBOOK, COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "Jar and bottle both carry name, strength, date and lot.",
            "Never a drinks bottle. What nobody can name is not stock: ask the maker’s safety data"
            " sheet how to be rid of it.",
        ),
    ),
    carry=CARRY,
)
