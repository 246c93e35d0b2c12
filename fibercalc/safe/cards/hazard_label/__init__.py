"""What hazard statements a bottle needs, from what is in it."""

from __future__ import annotations

from ....core.card import STANDARD, Basis, Card, Caution
from ....sources import (
    CLP_3_2_3,
    CLP_ACUTE,
    CLP_ANNEXES,
    CLP_MEMORY,
    CLP_SENSITIZERS,
    ECHA_FORMIC,
    ECHA_NOTIFIED,
    EURO_INDUSTRY_NAOH,
    GHS_MEMORY,
    GISCHEM_AMMONIA,
)
from .asked import HazardLabel
from .said import notes, say
from .shown import picture, statements
from .worked import answer

CARD = Card(
    id="hazard-label",
    chapter="safe",
    place=30,
    question="What hazards go on the bottle?",
    case=HazardLabel,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(statements,),
    basis=Basis(
        STANDARD,
        "Strength over limit, added up over the substances: from 1 the class applies; acute"
        " toxicity by the mixture’s estimate. What has no limit here is left to the data sheet, and"
        " until then counts.",
    ),
    sources=(
        CLP_ANNEXES,
        CLP_MEMORY,
        CLP_3_2_3,
        CLP_ACUTE,
        CLP_SENSITIZERS,
        EURO_INDUSTRY_NAOH,
        ECHA_NOTIFIED,
        ECHA_FORMIC,
        GISCHEM_AMMONIA,
        GHS_MEMORY,
    ),
    cautions=(
        Caution(
            "The supplier’s data sheet comes before this card.",
            "Name, strength, date and hazards on every bottle; never a drinks bottle; out of reach"
            " of children and pets.",
        ),
    ),
    handles=("acid", "alkali", "powder"),
)
