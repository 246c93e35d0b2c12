"""How long yarn takes to dry on the rail, and when it may be weighed and labeled."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import ANTOINE_WATER, COMMON_PRACTICE, REGAIN_CURVES, TRADE_MEMORY
from .asked import Drying
from .said import notes, say
from .shown import picture
from .worked import answer

CARD = Card(
    id="drying",
    chapter="dye",
    place=100,
    handles=("heat",),
    question="When is it dry enough to weigh and label?",
    case=Drying,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        MODEL,
        "A steady pace by what vapor the air lacks, then a falling one down to the room’s regain."
        " The pace is common practice and wide until you weigh once on the way.",
    ),
    sources=(ANTOINE_WATER, REGAIN_CURVES, TRADE_MEMORY, COMMON_PRACTICE),
    cautions=(
        Caution(
            "No rushing with a heater.",
            "Yarn on or over a heater is a fire risk, and hot damp air feeds mildew: move the air"
            " instead. Never leave a heater or a fan heater on unwatched.",
        ),
    ),
    carry=(
        Carry("pots", "How long does the whole run take, drying and all?", {"drying": Drying.time}),
        Carry("true-weight", "It says 100 g, mine says 103", {}),
        Carry("skein-length", "Measure it for the label", {}),
    ),
)
