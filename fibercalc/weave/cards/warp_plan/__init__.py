"""A whole run of pieces on one warp: ends, width, length, picks and yarn, and whether it fits."""

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import (
    ARITHMETIC,
    COMMON_PRACTICE,
    ISO_5077,
    MAGAZINE_TOWELS,
    TRADE_MEMORY,
    TRADE_PAGE_SHRINKAGE,
    TRADE_PAGES_WARP,
)
from .asked import WarpPlan
from .onward import CARRY
from .said import notes, say
from .shown import PAPERS, along, changes, order, sizes_picture, warp_picture, yarns
from .worked import answer

CARD = Card(
    id="warp-plan",
    chapter="weave",
    place=20,
    tall_sheet=True,
    question="How do I plan a whole run of pieces on one warp?",
    case=WarpPlan,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(sizes_picture, warp_picture),
    tables=(changes, along, yarns, order),
    basis=Basis(
        MODEL,
        "Each loss is divided out in its own place: shrinkage of the cloth, draw-in of the width in"
        " the heddle, take-up of the yarn. Ranges are those of one plan: lengths to weave and ends"
        " are settled first.",
    ),
    sources=(
        TRADE_PAGES_WARP,
        TRADE_PAGE_SHRINKAGE,
        MAGAZINE_TOWELS,
        ISO_5077,
        TRADE_MEMORY,
        COMMON_PRACTICE,
        ARITHMETIC,
    ),
    cautions=(
        Caution(
            "A warp is cut once.",
            "Weave and wash a sample first; its shrinkage decides every length here. Buy all of a"
            " color from one lot.",
        ),
    ),
    carry=CARRY,
    papers=PAPERS,
)
