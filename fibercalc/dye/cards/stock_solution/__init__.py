"""A stock: made up to a volume, thinned, extended, or of an odd amount of powder; its label."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE, TRADE_MEMORY
from .asked import StockSolution
from .onward import CARRY, SAVES
from .said import notes, say
from .shown import PAPERS, label
from .worked import answer

CARD = Card(
    id="stock-solution",
    chapter="dye",
    place=20,
    handles=("powder", "heat"),
    question="How do I make up this stock?",
    case=StockSolution,
    answer=answer,
    say=say,
    notes=notes,
    tables=(label,),
    papers=PAPERS,
    basis=Basis(
        MODEL,
        "Strength is grams of dye in 100 mL of finished stock. How stocks weaken is from memory and"
        " wide.",
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE, TRADE_MEMORY),
    cautions=(
        Caution(
            "Powder and hot water.",
            "Weigh it still, over damp paper, no fan, mask and gloves on; wet the powder to a paste"
            " before hot water. A stock bottle is never a drinks bottle, and is labeled before it"
            " is filled. The maker’s safety data sheet comes first.",
        ),
    ),
    carry=CARRY,
    saves=SAVES,
)
