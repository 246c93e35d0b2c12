"""What a yarn count is in the other systems: from one, a put-up, or the singles of a plied yarn."""

from __future__ import annotations

from ....core.card import STANDARD, Basis, Card
from ....sources import (
    ARITHMETIC,
    ASTM_D2260,
    BROOKS,
    COUNT_CONVERSION_TABLE,
    TRADE_MEMORY,
    TRADE_PAGE_COUNTS,
)
from .asked import YarnCount
from .onward import CARRY
from .said import notes, say
from .shown import every_system, picture
from .worked import answer

CARD = Card(
    id="yarn-count",
    chapter="yarn",
    place=40,
    question="What is this yarn count in the other systems?",
    case=YarnCount,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(every_system,),
    basis=Basis(
        STANDARD,
        "Counts are defined by hanks of exact yards to the exact pound, or by grams to exact"
        " meters; each is turned into tex and from there into the others. In a plied yarn weights"
        " add up, and the length is shortened by the take-up.",
    ),
    sources=(
        ASTM_D2260,
        COUNT_CONVERSION_TABLE,
        TRADE_PAGE_COUNTS,
        BROOKS,
        ARITHMETIC,
        TRADE_MEMORY,
    ),
    carry=CARRY,
)
