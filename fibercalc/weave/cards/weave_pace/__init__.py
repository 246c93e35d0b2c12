"""Hours for a run of cloth from own speeds, the sittings they fill, and where the time goes."""

from ....core.card import BENCH_RULE, Basis, Card, Carry
from ....sources import ARITHMETIC, COMMON_PRACTICE
from .asked import WeavePace
from .said import notes, say
from .shown import picture, table
from .worked import answer

CARD = Card(
    id="weave-pace",
    chapter="weave",
    place=50,
    question="How long will the weaving take?",
    case=WeavePace,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(table,),
    basis=Basis(
        BENCH_RULE,
        "Your own timed stretches, carried on to the whole run. A run strays 15 % from what a short"
        " stretch says (common practice, 95 %): knots, mistakes and tired hands are in no timed"
        " stretch.",
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE),
    carry=(
        Carry("cloth-picture", "What will it look like?", {"ends": WeavePace.ends}),
        Carry(
            "weft-left",
            "What does the rest of a ball weave?",
            {"pieces": WeavePace.pieces, "piece_picks": WeavePace.piece_picks},
        ),
    ),
)
