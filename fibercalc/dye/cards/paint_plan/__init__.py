"""Hand-painting: liquor for each section, how strong it must be, how long the steaming takes."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE
from .asked import PaintPlan
from .onward import CARRY
from .said import notes, say
from .shown import mixing, picture
from .worked import answer

CARD = Card(
    id="paint-plan",
    chapter="dye",
    place=50,
    handles=("acid", "heat"),
    question="How much liquor for each painted section?",
    case=PaintPlan,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(mixing,),
    basis=Basis(
        MODEL,
        "Damp yarn takes up what it holds when wet through, less what it holds already. Steam times"
        " are common practice, with no published source.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "Steam and acid.",
            "Open the lid away from you and let it cool before unwrapping; wet gloves hold heat."
            " Acid into water. No food pot is used for dye again. The maker’s safety data sheet"
            " comes first.",
        ),
    ),
    carry=CARRY,
)
