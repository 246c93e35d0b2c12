"""Color left in the bath and in the rinses: how much, how many rinses to come, the cause."""

from __future__ import annotations

from ....core.card import BENCH_RULE, Basis, Card, Carry, Caution, Save
from ....held import RECORD
from ....sources import ARITHMETIC, COMMON_PRACTICE, DYEING_TEXTBOOK
from .asked import BleedCheck
from .said import notes, say
from .shown import causes, picture
from .worked import answer

CARD = Card(
    id="bleed-check",
    chapter="dye",
    place=90,
    tall_sheet=True,
    handles=("heat", "acid"),
    question="Why does color come off, and how many rinses still?",
    case=BleedCheck,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(causes,),
    basis=Basis(
        BENCH_RULE,
        "A jar ladder halves the color each time; each rinse leaves the same share. Causes are"
        " ordered by our own points for what you saw.",
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE, DYEING_TEXTBOOK),
    cautions=(
        Caution(
            "Let the bath cool first.",
            "Look in a white cup, gloves on; more acid goes in with the yarn lifted out. The"
            " maker’s safety data sheet comes first.",
        ),
    ),
    carry=(
        Carry("bath-acid", "Is it sour enough?", {}),
        Carry("drain-check", "May this bath go down the drain?", {}),
    ),
    saves=(
        Save(
            RECORD.dye_lot,
            "A dye lot: dye left in its bath",
            {RECORD.dye_lot.left: BleedCheck.left},
        ),
    ),
)
