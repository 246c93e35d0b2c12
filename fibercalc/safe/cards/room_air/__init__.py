"""What vapor or dye dust does to the air of the room: controls first, then a rough figure."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import (
    CAL_AC1,
    CDC_2003,
    COMMON_PRACTICE,
    HSE_DYES,
    NIOSH_LIMITS,
    OSHA_1910_1000,
    SANDER_2023,
    TRADE_MEMORY,
    UK_EH40,
)
from .asked import RoomAir
from .said import notes, say
from .shown import picture, table
from .worked import answer

CARD = Card(
    id="room-air",
    chapter="safe",
    place=20,
    tall_sheet=True,
    question="What does the pot do to the air?",
    case=RoomAir,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(table,),
    basis=Basis(
        MODEL,
        "Vapor by Henry’s law over a bath with all acid free, let off at a guessed speed into a"
        " well-mixed room; exposures added up as 29 CFR 1910.1000(d) has it. An order of"
        " magnitude.",
    ),
    sources=(
        OSHA_1910_1000,
        NIOSH_LIMITS,
        UK_EH40,
        CAL_AC1,
        CDC_2003,
        SANDER_2023,
        HSE_DYES,
        TRADE_MEMORY,
        COMMON_PRACTICE,
    ),
    cautions=(
        Caution(
            "Not for: pregnancy, asthma, dye allergy, children, pets, food kitchens.",
            "Burning eyes, a cough or a tight chest: out, into fresh air, and get help. Odor is no"
            " gauge. A dust mask stops no vapor.",
        ),
    ),
    carry=(Carry("scald", "How fast does the bath burn?", {}),),
    handles=("acid", "powder", "heat"),
)
