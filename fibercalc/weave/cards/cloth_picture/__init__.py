"""The cloth before it is threaded: draw-down, colors, every piece, floats, and the pick list."""

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE, ISO_5077, TRADE_MEMORY
from .asked import ClothPicture
from .onward import CARRY
from .said import notes, say
from .shown import PAPERS, colors, drawdown, every_piece, picks, sheds, thread_by_thread, whole
from .worked import answer

CARD = Card(
    id="cloth-picture",
    chapter="weave",
    place=30,
    tall_sheet=True,
    question="What will the cloth look like, and how do I weave it?",
    case=ClothPicture,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(whole, thread_by_thread, drawdown),
    tables=(sheds, picks, every_piece, colors),
    papers=PAPERS,
    basis=Basis(
        MODEL,
        "The draw-down is the weave’s definition, and every float in it is counted, the weft as one"
        " thread that goes to and fro. Sizes are threads over threads per cm, less draw-in, less"
        " shrinkage, each divided out in its own place. Colors on a screen are an estimate.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC, ISO_5077, TRADE_MEMORY),
    cautions=(
        Caution(
            "A picture is no sample.",
            "Floats gather the cloth as it is washed: waffle takes far more than plain weave."
            " Weave, wash and measure a hand’s width before the run.",
        ),
    ),
    carry=CARRY,
)
