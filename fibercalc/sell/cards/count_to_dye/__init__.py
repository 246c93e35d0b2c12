"""How many to dye for a release: the count that pays best, seconds, spares and club places."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import (
    ABRAMOWITZ_STEGUN,
    ARITHMETIC,
    CACHON_TERWIESCH,
    COHEN_1991,
    COMMON_PRACTICE,
    TOBIN_1958,
)
from .asked import CountToDye
from .said import notes, say
from .shown import other_counts, picture
from .worked import answer

CARD = Card(
    id="count-to-dye",
    chapter="sell",
    place=15,
    question="How many should I dye?",
    case=CountToDye,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(other_counts,),
    basis=Basis(
        MODEL,
        "Demand is taken as normal; a sold-out release is a censored value. The count is the point"
        " of demand at which one more no longer pays (newsvendor). Seconds and losses are"
        " binomial.",
    ),
    sources=(
        CACHON_TERWIESCH,
        COHEN_1991,
        TOBIN_1958,
        ABRAMOWITZ_STEGUN,
        COMMON_PRACTICE,
        ARITHMETIC,
    ),
    cautions=(
        Caution(
            "Three releases are thin data.",
            "The range says so: half of what decides the count is a guess. Write down every"
            " release, what was left, and when it sold out.",
        ),
    ),
    carry=(
        Carry("release-plan", "What does this release take?", {}),
        Carry("price", "What must it sell at?", {}),
        Carry("fair-stock", "What to bring to a fair", {}),
    ),
)
