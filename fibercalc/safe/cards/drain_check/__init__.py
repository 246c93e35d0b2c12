"""A bath before the drain: pH, heat and metal against limits, and what brings the pH into range."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import (
    CFR_40_403_5,
    CORNELL_HAZARDOUS,
    GOLDBERG_2002,
    LOCAL_LIMITS_US,
    SPANA_HELP,
    UK_TRADE_EFFLUENT,
)
from .asked import DrainCheck
from .said import notes, say
from .shown import checked, picture
from .worked import answer

CARD = Card(
    id="drain-check",
    chapter="safe",
    place=50,
    question="May this bath go down the drain?",
    case=DrainCheck,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(checked,),
    basis=Basis(
        MODEL,
        "Exact charge balance with activities, from the pH as measured; carbon dioxide driven off"
        " or held gives the range. 6 to 9 is the aim (common practice).",
    ),
    sources=(
        CFR_40_403_5,
        LOCAL_LIMITS_US,
        UK_TRADE_EFFLUENT,
        CORNELL_HAZARDOUS,
        GOLDBERG_2002,
        SPANA_HELP,
    ),
    cautions=(
        Caution(
            "Soda into acid foams.",
            "Cool the bath first, small portions into a half-filled pot, goggles and gloves on."
            " Never mix in bleach or hydrosulfite.",
        ),
        Caution(
            "Metal, unknown dye, septic tank: ask first.",
            "The local authority and the data sheet come before this card.",
        ),
    ),
    handles=("acid", "alkali", "metal"),
)
