"""How many turns of a reel for a wanted length or weight, and what a turn more or less comes to."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE, TRADE_MEMORY
from .asked import ReelTurns
from .onward import CARRY
from .said import notes, say
from .shown import neighbors, picture
from .worked import answer

CARD = Card(
    id="reel-turns",
    chapter="yarn",
    place=25,
    question="How many turns of my reel for this length?",
    case=ReelTurns,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(neighbors,),
    basis=Basis(
        MODEL,
        "A turn holds what it measures on the reel, less what the yarn was stretched; turns are"
        " whole, and rounded up so that none is short. Weight is proportional to length. A stretch"
        " of 1 to 3 % is usual (from memory, unverified).",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC, TRADE_MEMORY),
    cautions=(
        Caution(
            "One wrong turn length makes every skein short.",
            "Wind the first skein, let it rest, measure or weigh it, and only then wind the rest.",
        ),
    ),
    carry=CARRY,
)
