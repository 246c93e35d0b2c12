"""A weighed or measured sample beside its label: the US test, the EU and UK rule, thread laws."""

from __future__ import annotations

from ....core.card import STANDARD, Basis, Card, Carry, Caution
from ....sources import (
    DIRECTIVE_76_211,
    MA_94_285,
    NIST_HB_130,
    NIST_HB_133,
    NIST_HB_133_LENGTH,
    REGAIN_CURVES,
    RI_6_10,
    SI_2006_659,
    STUDENT_TABLE,
    UK_PACKAGED_GOODS,
)
from .asked import NetContents
from .said import notes, say
from .shown import picture, table
from .worked import answer

CARD = Card(
    id="net-contents",
    chapter="sell",
    place=80,
    tall_sheet=True,
    question="Is there as much in it as the label says?",
    case=NetContents,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(table,),
    basis=Basis(
        STANDARD,
        "NIST Handbook 133: a mean may be short by what chance does to it, one skein by an allowed"
        " variation (tables from memory; their factors agree with Student’s t). EU and UK average"
        " rule: Directive 76/211 and SI 2006/659, read. Two state thread laws, read.",
    ),
    sources=(
        NIST_HB_133,
        NIST_HB_133_LENGTH,
        NIST_HB_130,
        DIRECTIVE_76_211,
        SI_2006_659,
        UK_PACKAGED_GOODS,
        RI_6_10,
        MA_94_285,
        STUDENT_TABLE,
        REGAIN_CURVES,
    ),
    cautions=(
        Caution(
            "Not legal advice.",
            "Where it is sold decides. Tables were checked on 26 November 2026, some only from"
            " memory; ask your weights and measures office.",
        ),
    ),
    carry=(
        Carry(
            "true-weight",
            "It says 100 g and my scale says 103",
            {"weighed": NetContents.mean, "labelled": NetContents.label_mass},
        ),
        Carry("fiber-content", "What is in it, for the label", {}),
    ),
)
