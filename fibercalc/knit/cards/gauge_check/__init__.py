"""Which size to knit at one's own gauge: from a swatch before and after washing."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution, Save
from ....sources import ARITHMETIC, COMMON_PRACTICE, TRADE_PAGE_NEEDLES
from .asked import GaugeCheck
from .said import notes, say
from .shown import picture, table
from .worked import answer

CARD = Card(
    id="gauge-check",
    chapter="knit",
    place=30,
    question="Which size comes out right at my gauge?",
    case=GaugeCheck,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(table,),
    basis=Basis(
        MODEL,
        "The stitches of a size stay, their width changes. What the swatch leaves open (a quarter"
        " of a stitch, a millimeter and a half of tape) is carried to the chest. Needle and stitch"
        " width in proportion is common practice, for a first try.",
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE, TRADE_PAGE_NEEDLES),
    cautions=(
        Caution(
            "Measure a washed swatch.",
            "Superwash yarn grows, felting yarn shrinks; what hangs from your shoulders grows in"
            " length besides.",
        ),
    ),
    carry=(
        Carry(
            "yarn-needed",
            "How many skeins at this gauge?",
            {"stitches": GaugeCheck.own_stitches, "rows": GaugeCheck.own_rows},
        ),
    ),
    saves=(
        Save(
            "measurement",
            "An own measurement: this gauge",
            {
                "what": "'gauge'",
                "stitches": GaugeCheck.own_stitches,
                "rows": GaugeCheck.own_rows,
                "needle": GaugeCheck.needle,
                "state": "'wet'",
            },
        ),
    ),
)
