"""Labels, laid out to the millimeter: promises are rounded down, and what does not fit is said."""

from __future__ import annotations

from ....core.card import BENCH_RULE, Basis, Card, Carry, Caution
from ....core.paper import Labels, Paper
from ....sources import (
    ARITHMETIC,
    CFR_16_303,
    CLP_ANNEXES,
    COMMON_PRACTICE,
    EU_1007_2011,
    GHS_MEMORY,
    NIST_HB_130,
    RI_6_10,
    WOOL_ACT,
)
from .asked import Label
from .said import notes, say
from .shown import asked_for, lot_paper, picture, sheets
from .worked import answer

CARD = Card(
    id="label",
    chapter="sell",
    place=100,
    handles=("powder", "acid", "alkali"),
    question="What goes on the label, and does it fit?",
    case=Label,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(asked_for,),
    papers=(Labels("These labels", sheets), Paper("Lot card, A6", "A6", lot_paper)),
    basis=Basis(
        BENCH_RULE,
        "Each unit is rounded down by itself, so that none promises more than there is. Letters are"
        " laid out by the widths of the book’s own face; nothing is under 6 pt.",
    ),
    sources=(
        COMMON_PRACTICE,
        ARITHMETIC,
        CFR_16_303,
        WOOL_ACT,
        EU_1007_2011,
        NIST_HB_130,
        RI_6_10,
        CLP_ANNEXES,
        GHS_MEMORY,
    ),
    cautions=(
        Caution(
            "A label is a promise, and on a bottle a warning.",
            "The law of the place of sale decides what it must say; the maker’s safety data sheet"
            " decides a bottle’s hazards.",
        ),
    ),
    carry=(
        Carry("fiber-content", "What do I write for its fiber content?", {"maker": Label.maker}),
        Carry("care-label", "What goes on the care label?", {}),
        Carry("hazard-label", "What hazards go on the bottle?", {}),
        Carry("skein-length", "How much is in this skein?", {}),
    ),
)
