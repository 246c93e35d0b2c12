"""Wraps per inch, every class that matches, and the wide band of yards per pound that it allows."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import (
    CRAFT_YARN_COUNCIL,
    IUPAC_CONFIDENCE_LIMITS,
    TRADE_PAGE_PLY_TERMS,
    TRADE_PAGE_SPINNERS,
    TRADE_PAGE_WEAVERS,
)
from ...weight_class import COUNCIL, PLY_TERMS
from .asked import Wraps
from .onward import CARRY
from .said import notes, say
from .shown import conventions_table, overlap
from .worked import answer

CARD = Card(
    id="wraps",
    chapter="yarn",
    place=20,
    question="How many wraps per inch is it, and what weight do I call it?",
    case=Wraps,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(overlap(COUNCIL), overlap(PLY_TERMS)),
    tables=(conventions_table,),
    basis=Basis(
        MODEL,
        "Wraps go with the square root of yards per pound. The ratio depends on how tightly the"
        " wraps lie, and its published values leave a wide band.",
    ),
    sources=(
        CRAFT_YARN_COUNCIL,
        TRADE_PAGE_PLY_TERMS,
        TRADE_PAGE_SPINNERS,
        TRADE_PAGE_WEAVERS,
        IUPAC_CONFIDENCE_LIMITS,
    ),
    cautions=(
        Caution(
            "Never a sett.",
            "A hand-wrap count is about half the diameters per inch that a sett is reckoned from,"
            " and no two people wrap alike. Reckon a sett from yards per pound, or from a"
            " close-packed wrap that says it is one.",
        ),
    ),
    carry=CARRY,
)
