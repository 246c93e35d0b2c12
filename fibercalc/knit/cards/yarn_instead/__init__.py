"""A pattern's yarn replaced by another: by length, with the traps of put-ups and the tightness."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE, CRAFT_YARN_COUNCIL, MUNDEN_1959
from .asked import YarnInstead
from .said import notes, say
from .shown import odds, picture
from .worked import answer

CARD = Card(
    id="yarn-instead",
    chapter="knit",
    place=20,
    question="Can I use this yarn instead?",
    case=YarnInstead,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(odds,),
    basis=Basis(
        MODEL,
        "A project needs a length; skeins follow from the length that each holds. Tightness is √tex"
        " over the loop length in millimeters (Munden’s loop).",
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE, MUNDEN_1959, CRAFT_YARN_COUNCIL),
    cautions=(
        Caution(
            "The odds here are of the length alone.",
            "Whether your hands need more than the pattern’s is another question: ask “How many"
            " skeins do I need?” with a swatch.",
        ),
    ),
    carry=(
        Carry(
            "yarn-needed",
            "How many skeins with my own swatch?",
            {"skein_mass": YarnInstead.mine_mass, "skein_length": YarnInstead.mine_length},
        ),
    ),
)
