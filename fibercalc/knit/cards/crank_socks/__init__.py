"""Counts for a pair of socks on a sock machine, its yarn, and whether it goes over the heel."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE, GATE_TEXTILE_2015, MUNDEN_1959, TRADE_MEMORY
from .asked import CrankSocks
from .said import notes, say
from .shown import feet, picture
from .worked import answer

CARD = Card(
    id="crank-socks",
    chapter="knit",
    place=60,
    tall_sheet=True,
    question="How many rounds for socks on the machine?",
    case=CrankSocks,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(feet,),
    basis=Basis(
        MODEL,
        "Counts are lengths times the washed gauge. Yarn is stitches times the loop length of plain"
        " knitting (Munden), good to 5 % on a machine (common practice).",
    ),
    sources=(COMMON_PRACTICE, MUNDEN_1959, GATE_TEXTILE_2015, TRADE_MEMORY, ARITHMETIC),
    cautions=(
        Caution(
            "Work a sample tube first.",
            "Forty rounds, washed and rested, tell the gauge; a tube measured on the machine or"
            " fresh off it makes every sock too short.",
        ),
    ),
    carry=(
        Carry(
            "yarn-needed",
            "Yarn for something else from this base",
            {"skein_mass": CrankSocks.skein_mass, "skein_length": CrankSocks.skein_length},
        ),
    ),
)
