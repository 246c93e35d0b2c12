"""Where the colors of a hand-painted skein fall in the fabric."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry
from ....sources import ARITHMETIC, COMMON_PRACTICE, GATE_TEXTILE_2015, MUNDEN_1959
from .asked import PoolPicture
from .said import notes, say
from .shown import cloth, counts, turn
from .worked import answer

CARD = Card(
    id="pool-picture",
    chapter="knit",
    place=80,
    question="Will this hand-painted skein pool?",
    case=PoolPicture,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(cloth, turn),
    tables=(counts,),
    link_version=2,
    # What skeins in turn weigh came after all that was asked before.
    upgrades={1: lambda pairs: pairs},
    basis=Basis(
        MODEL,
        "The yarn is walked stitch by stitch, with the loop length of plain knitting (Munden),"
        " modulo one turn of the skein. The words and their edges are our own; the picture is one"
        " likely outcome.",
    ),
    sources=(MUNDEN_1959, GATE_TEXTILE_2015, COMMON_PRACTICE, ARITHMETIC),
    carry=(
        Carry(
            "yarn-needed",
            "How many skeins do I need?",
            {
                "stitches": PoolPicture.stitches,
                "rows": PoolPicture.rows,
                "state": PoolPicture.state,
            },
        ),
    ),
)
