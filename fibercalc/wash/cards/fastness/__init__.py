"""The grade of a color after a wash or rub test: change of the piece, or staining of white."""

from ....core.card import STANDARD, Basis, Card, Caution
from ....sources import CIE_15, COMMON_PRACTICE, ISO_105_A02, ISO_105_A03, ISO_105_A04, ISO_105_A05
from .asked import Fastness
from .onward import CARRY, SAVES
from .said import notes, say
from .shown import picture, steps
from .worked import answer

CARD = Card(
    id="fastness",
    chapter="wash",
    place=40,
    question="How well does the color hold?",
    case=Fastness,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(steps,),
    basis=Basis(
        STANDARD,
        "Gray scales of ISO 105: steps for change were read (A02); those for staining (A03) and the"
        " formulas (A04, A05) are from memory and agree with one another. A grade at home is not a"
        " laboratory’s.",
    ),
    sources=(ISO_105_A02, ISO_105_A03, ISO_105_A04, ISO_105_A05, CIE_15, COMMON_PRACTICE),
    cautions=(
        Caution(
            "No color is fast to everything.",
            "Say what was tested and what was seen; wash new pieces apart.",
        ),
    ),
    carry=CARRY,
    saves=SAVES,
)
