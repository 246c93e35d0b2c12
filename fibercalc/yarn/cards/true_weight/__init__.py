"""How much of a yarn's weight is yarn: the water taken out, and put back as trade agrees on it."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import (
    ASTM_D1909,
    ASTM_D1909_EXTRACT,
    BIORESOURCES_2020,
    EC_ALLOWANCES_1998,
    HORIKITA_1989,
    ISO_139,
    NRC_2001,
    REGAIN_CURVES,
    TRADE_MEMORY,
)
from .asked import BY_REGAIN, TrueWeight
from .onward import CARRY
from .said import notes, say
from .shown import picture, weights
from .worked import answer

CARD = Card(
    id="true-weight",
    chapter="yarn",
    place=30,
    question="It says 100 g and my scale says 103: how much yarn is it really?",
    case=TrueWeight,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(weights,),
    basis=Basis(
        MODEL,
        "Only the oven-dry weight is yarn. Regain is water as a percentage of it; a blend's regain"
        " is that of its fibers by their dry shares. The standard atmosphere is 20 °C and 65 %"
        " relative humidity. Regain against humidity is a curve from memory, unverified; allowances"
        " are those the EU and the US agreed on.",
    ),
    sources=(
        EC_ALLOWANCES_1998,
        ASTM_D1909,
        ASTM_D1909_EXTRACT,
        ISO_139,
        BIORESOURCES_2020,
        NRC_2001,
        HORIKITA_1989,
        REGAIN_CURVES,
        TRADE_MEMORY,
    ),
    cautions=(
        Caution(
            "No proof against a seller.",
            "The curve is unverified and room meters are rough. Before you complain, let the yarn"
            " rest open for two days at about 65 % humidity and weigh again, or have a sample dried"
            " by someone who does it for a living. Oil and spinning grease weigh as well, and wash"
            " out.",
        ),
        Caution(
            "Drying a sample.",
            "About 105 °C until it loses no more (from memory, unverified). Stay with the oven:"
            " yarn scorches and can catch fire, and plastic fibers soften. Never use a microwave"
            " oven, and use no oven or pan that food goes into if the yarn is dyed.",
            when=lambda out: out.case.dampness == BY_REGAIN,
        ),
    ),
    carry=CARRY,
)
