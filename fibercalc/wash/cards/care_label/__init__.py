"""Care words for a label: what the most delicate of fibers, dye, finish and trial allows."""

from ....core.card import BENCH_RULE, Basis, Card, Carry, Caution
from ....sources import COMMON_PRACTICE, DYEING_TEXTBOOK, ISO_3758
from .asked import CareLabel
from .said import notes, say
from .shown import table
from .worked import answer

CARD = Card(
    id="care-label",
    chapter="wash",
    place=60,
    question="What goes on the care label?",
    case=CareLabel,
    answer=answer,
    say=say,
    notes=notes,
    tables=(table,),
    basis=Basis(
        BENCH_RULE,
        "Each fiber, dye and finish allows a treatment up to a level (common practice); the lowest"
        " holds, and nothing is promised that no sample went through. Words follow ISO 3758 as"
        " quoted by others.",
    ),
    sources=(COMMON_PRACTICE, DYEING_TEXTBOOK, ISO_3758),
    cautions=(
        Caution(
            "A label is a promise.",
            "Test it. The law of the place of sale decides what a label must hold, not this card.",
        ),
    ),
    carry=(
        Carry("fastness", "How well does the color hold?", {}),
        Carry("shrinkage", "How much does it shrink?", {}),
    ),
)
