"""Whether what is left on the ball is enough: from two weighings, straight or growing."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE, MUNDEN_1959
from .asked import EnoughLeft
from .said import notes, say
from .shown import picture
from .worked import answer

CARD = Card(
    id="enough-left",
    chapter="knit",
    place=40,
    question="Is what is left enough to finish?",
    case=EnoughLeft,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        MODEL,
        "Every stitch takes the same yarn; a row takes its number of them. The rest may stray 4 %"
        " from what was knitted so far, and binding off takes 3 to 4 widths of the edge: both"
        " common practice.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC, MUNDEN_1959),
    cautions=(
        Caution(
            "The odds are of this scale and this hand.",
            "A pattern that changes (lace, beads, a denser border) changes the yarn in a row: weigh"
            " again after the first repeat of it.",
        ),
    ),
    carry=(Carry("yarn-needed", "How many skeins would the next one take?", {}),),
)
