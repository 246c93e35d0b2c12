"""Which size to knit at one's own gauge: from a swatch before and after washing."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution, Constant, Save
from ....held import RECORD
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
            RECORD.measurement,
            "An own measurement: this gauge",
            {
                RECORD.measurement.what: Constant("gauge"),
                RECORD.measurement.stitches: GaugeCheck.own_stitches,
                RECORD.measurement.rows: GaugeCheck.own_rows,
                RECORD.measurement.needle: GaugeCheck.needle,
                RECORD.measurement.state: Constant("wet"),
            },
        ),
    ),
)
