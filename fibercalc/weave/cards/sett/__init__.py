"""The sett: how closely to set a yarn for a weave and a use, and on which heddle."""

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import (
    ARITHMETIC,
    ASHENHURST,
    COMMON_PRACTICE,
    GATE_TEXTILE_2006,
    PEIRCE_1937,
    TAYLOR_1909,
    TRADE_MEMORY,
    TRADE_PAGE_SPINNERS,
    TRADE_PAGES_REEDS,
    TRADE_PAGES_SETT,
    WOVEN_CALCULATION_NOTES,
)
from .asked import Sett
from .said import notes, say
from .shown import closest_table, picture, ways_table
from .worked import answer

CARD = Card(
    id="sett",
    chapter="weave",
    place=10,
    tall_sheet=True,
    question="How closely do I set this yarn, and on which heddle?",
    case=Sett,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(ways_table, closest_table),
    basis=Basis(
        MODEL,
        "Closest sett = diameters × ends ÷ (ends + crossings) of a repeat (Ashenhurst), for the"
        " same yarn both ways; the share of it for a use is a trade rule. Cover and jamming after"
        " Peirce, for round cotton yarn.",
    ),
    sources=(
        ASHENHURST,
        TRADE_PAGES_SETT,
        PEIRCE_1937,
        WOVEN_CALCULATION_NOTES,
        GATE_TEXTILE_2006,
        TAYLOR_1909,
        TRADE_PAGE_SPINNERS,
        TRADE_PAGES_REEDS,
        TRADE_MEMORY,
        COMMON_PRACTICE,
        ARITHMETIC,
    ),
    cautions=(
        Caution(
            "Never from a hand wrap.",
            "A relaxed hand wrap counts about half the diameters that a sett is reckoned from: the"
            " cloth would be half as close as it should be.",
        ),
    ),
    carry=(
        Carry("warp-plan", "Plan the warp at this sett", {"sett": Sett.sett, "picks": Sett.picks}),
        Carry("yarn-diameter", "How thick is the yarn?", {"count": Sett.count}),
    ),
)
