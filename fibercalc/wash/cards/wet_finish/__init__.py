"""What a first wash likely does to a knitted swatch, by the constants of plain knitting."""

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import ARITHMETIC, GATE_TEXTILE_2015, KNITTING_SCIENCE_NOTES, MUNDEN_1959
from .asked import WetFinish
from .onward import CARRY, SAVES
from .said import notes, say
from .shown import picture
from .worked import answer

CARD = Card(
    id="wet-finish",
    chapter="wash",
    place=30,
    question="What does the first wash do to my knitted swatch?",
    case=WetFinish,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        MODEL,
        "Width goes as 1/Kw and height as 1/Kc of the state of rest; the yarn in a stitch stays."
        " The constants are from memory; their ranges are those of their last digit.",
    ),
    sources=(MUNDEN_1959, GATE_TEXTILE_2015, KNITTING_SCIENCE_NOTES, ARITHMETIC),
    cautions=(
        Caution(
            "Your own washed swatch decides.",
            "The constants are of wool that is not superwash, in stocking stitch, from memory.",
        ),
    ),
    carry=CARRY,
    saves=SAVES,
)
