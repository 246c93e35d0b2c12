"""Whether a cold, closed load may be lifted: the NIOSH equation. No hot pot is carried."""

from __future__ import annotations

from ....core.card import STANDARD, Basis, Card, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE, NIOSH_94_110, NIOSH_RWL_TEXT
from .asked import Lift
from .said import notes, say
from .shown import picture
from .worked import answer

CARD = Card(
    id="lift",
    chapter="safe",
    place=70,
    question="May I lift this?",
    case=Lift,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        STANDARD,
        "NIOSH lifting equation, revised 1991: 23 kg times six multipliers, the worse end of the"
        " lift for the height. Between rows of a table the stricter one.",
    ),
    sources=(NIOSH_94_110, NIOSH_RWL_TEXT, COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "Never carry a hot or open pot.",
            "Cool, bail or drain it where it stands. A wet floor is outside the equation: dry it"
            " first.",
        ),
        Caution(
            "Pain decides before any figure.",
            "After a back injury, in pregnancy or when it hurts: do not lift, ask a doctor.",
        ),
    ),
    handles=("load", "heat"),
)
