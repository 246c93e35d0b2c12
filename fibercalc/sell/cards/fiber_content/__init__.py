"""The fiber line of a label, as the law of the place asks: largest first, whole percents of 100."""

from __future__ import annotations

from ....core.card import STANDARD, Basis, Card, Carry, Caution
from ....sources import (
    CFR_16_303,
    CFR_16_303_3,
    COMMON_PRACTICE,
    EU_1007_2011,
    EU_1007_MEMORY,
    TEXTILE_LAW_OLDER,
    US_LABEL_MEMORY,
    WOOL_ACT,
)
from .asked import FiberContent
from .said import notes, say
from .shown import picture, table
from .worked import answer

CARD = Card(
    id="fiber-content",
    chapter="sell",
    place=90,
    question="What do I write for its fiber content?",
    case=FiberContent,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(table,),
    basis=Basis(
        STANDARD,
        "US: 16 CFR 303 and the Wool Act, sections read. EU and UK: Regulation 1007/2011, scope"
        " read, order and tolerance as quoted, small shares from memory. Names from memory.",
    ),
    sources=(
        CFR_16_303,
        CFR_16_303_3,
        WOOL_ACT,
        US_LABEL_MEMORY,
        EU_1007_2011,
        EU_1007_MEMORY,
        TEXTILE_LAW_OLDER,
        COMMON_PRACTICE,
    ),
    cautions=(
        Caution(
            "Not legal advice.",
            "Checked on 26 November 2026 for the US, the EU and the UK, some of it from memory. The"
            " law of the place of sale decides, and a label is a promise: never print a guess.",
        ),
    ),
    carry=(
        Carry(
            "label",
            "Put it on the label",
            {"fiber": FiberContent.content, "maker": FiberContent.maker},
        ),
        Carry("care-label", "What goes on the care label?", {}),
        Carry("net-contents", "Is there as much in it as it says?", {}),
    ),
)
