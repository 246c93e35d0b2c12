"""What a leftover ball still weaves, and leftovers dealt into stripes that come out even."""

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE, ISO_5077
from .asked import WeftLeft
from .said import notes, say
from .shown import balls_table, order, picture
from .worked import answer

CARD = Card(
    id="weft-left",
    chapter="weave",
    place=40,
    question="What does the rest of a shuttle or ball still weave?",
    case=WeftLeft,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(balls_table, order),
    basis=Basis(
        MODEL,
        "Length by weight and count; a pick takes the width in the heddle over (1 − take-up)."
        " Dealing is our own: pairs of picks, every stripe of a color alike, from the low end of"
        " what its ball weaves.",
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE, ISO_5077),
    cautions=(
        Caution(
            "Weigh before the last piece, too.",
            "A ball’s count may differ from its band’s. What the first half used tells your own"
            " weft in a pick.",
        ),
    ),
    carry=(
        Carry("cloth-picture", "See it as cloth", {"beat": WeftLeft.beat, "hem": WeftLeft.hem}),
        Carry(
            "weave-pace",
            "How long will it take?",
            {"pieces": WeftLeft.pieces, "piece_picks": WeftLeft.piece_picks},
        ),
    ),
)
