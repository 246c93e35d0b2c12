"""What washing did to marked samples: change by direction, area, several samples and washes."""

from ....core.card import STANDARD, Basis, Card, Carry, Caution, Constant, Save
from ....held import RECORD
from ....sources import ARITHMETIC, HAHN_1970, ISO_5077, TWC_TM31, WOOL_SHRINKAGE_LECTURE
from .asked import Shrinkage
from .said import notes, say
from .shown import picture, samples, washes
from .worked import answer

CARD = Card(
    id="shrinkage",
    chapter="wash",
    place=10,
    question="How much does it shrink in the wash?",
    case=Shrinkage,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(samples, washes),
    basis=Basis(
        STANDARD,
        "ISO 5077: percent of the size before, each direction apart. Ranges are Student’s t; washes"
        " multiply.",
    ),
    sources=(ISO_5077, WOOL_SHRINKAGE_LECTURE, TWC_TM31, HAHN_1970, ARITHMETIC),
    cautions=(
        Caution(
            "It holds for this cloth and this wash.",
            "Another temperature, dryer, sett or gauge is another sample.",
        ),
    ),
    carry=(
        Carry(
            "make-size",
            "What size to make?",
            {"length_percent": Shrinkage.length_lost, "width_percent": Shrinkage.width_lost},
        ),
    ),
    saves=(
        Save(
            RECORD.measurement,
            "An own measurement: this shrinkage",
            {
                RECORD.measurement.what: Constant("shrinkage"),
                RECORD.measurement.length_change: Shrinkage.length_lost,
                RECORD.measurement.width_change: Shrinkage.width_lost,
            },
        ),
    ),
)
