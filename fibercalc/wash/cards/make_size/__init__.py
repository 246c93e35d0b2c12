"""The size to knit or weave so that washing leaves the size wanted; a loss is divided out."""

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import (
    ARITHMETIC,
    COTTON_JERSEY_GRAPH,
    ISO_5077,
    MUNDEN_1959,
    TRADE_MEMORY,
    TRADE_PAGE_SHRINKAGE,
)
from .asked import MakeSize
from .said import notes, say
from .shown import picture, table
from .worked import answer

CARD = Card(
    id="make-size",
    chapter="wash",
    place=20,
    question="What size do I make it, so that it comes out right?",
    case=MakeSize,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(table,),
    basis=Basis(
        MODEL,
        "Size before = size after ÷ (1 − shrinkage), each direction apart (ISO 5077, solved for the"
        " size before). Published ranges are others’ cloths.",
    ),
    sources=(
        ISO_5077,
        ARITHMETIC,
        TRADE_PAGE_SHRINKAGE,
        COTTON_JERSEY_GRAPH,
        MUNDEN_1959,
        TRADE_MEMORY,
    ),
    cautions=(
        Caution(
            "Wash a sample before you make the piece.",
            "In the same yarn, structure and gauge, washed and dried as the piece will be.",
        ),
    ),
    carry=(Carry("shrinkage", "How much does it shrink?", {}),),
)
