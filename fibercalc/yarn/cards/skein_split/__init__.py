"""Full skeins into small ones: how many, turns for each, what is left, and if the last is short."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE
from .asked import SkeinSplit
from .onward import CARRY, SAVES
from .said import notes, say
from .shown import other_ways, picture
from .worked import answer

CARD = Card(
    id="skein-split",
    chapter="yarn",
    place=15,
    question="How do I split this skein into small ones?",
    case=SkeinSplit,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(other_ways,),
    basis=Basis(
        MODEL,
        "Whole turns only. The chance that the last one is short comes from the roughness of the"
        " full skein’s length, the loss and the reel.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "Count the turns, weigh the first.",
            "A reel that has been mended, or yarn wound tighter than it was measured, makes every"
            " small skein short by the same share.",
        ),
    ),
    carry=CARRY,
    saves=SAVES,
)
