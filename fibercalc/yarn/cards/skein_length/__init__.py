"""How many yards are in a skein: by turns of the reel and by a weighed sample, and what may be
printed for several skeins.
"""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import COMMON_PRACTICE, DIRECTIVE_76_211, IUPAC_CONFIDENCE_LIMITS, TRADE_MEMORY
from .asked import SkeinLength
from .onward import CARRY, SAVES
from .said import notes, say
from .shown import picture
from .worked import answer

CARD = Card(
    id="skein-length",
    chapter="yarn",
    place=10,
    question="How many yards are in this skein?",
    case=SkeinLength,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        MODEL,
        "Length is turns times the length of one turn; or weight is proportional to length. The"
        " limit to print is a one-sided 95 % confidence limit of the average, since packages are"
        " judged by their average.",
    ),
    sources=(COMMON_PRACTICE, IUPAC_CONFIDENCE_LIMITS, DIRECTIVE_76_211, TRADE_MEMORY),
    cautions=(
        Caution(
            "Weigh it rested and dry.",
            "Yarn straight from the dye pot or a damp room is heavy, and yarn under tension is"
            " long: both print too many yards.",
        ),
    ),
    carry=CARRY,
    saves=SAVES,
)
