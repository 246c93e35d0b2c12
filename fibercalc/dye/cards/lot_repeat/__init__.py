"""A recipe nudged toward an old lot from two colors, and what difference is likely seen."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE, KM_APPLICATION_NOTE, SHARMA_2005
from .asked import LotRepeat
from .onward import CARRY
from .said import notes, say
from .shown import changes, picture
from .worked import answer

CARD = Card(
    id="lot-repeat",
    chapter="dye",
    place=80,
    handles=("powder",),
    question="Does this lot match the old one?",
    case=LotRepeat,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(changes,),
    link_version=2,
    upgrades={1: lambda pairs: pairs},  # the gray card came after all that was asked before
    basis=Basis(
        MODEL,
        "CIEDE2000 between the two; the recipe is moved by Kubelka-Munk toward the old color. What"
        " is likely seen has edges of our own.",
    ),
    sources=(SHARMA_2005, KM_APPLICATION_NOTE, COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "A nudge is a guess until it is dipped.",
            "Dye a test skein with it first, with mask and gloves. The maker’s safety data sheet"
            " comes first.",
        ),
    ),
    carry=CARRY,
)
