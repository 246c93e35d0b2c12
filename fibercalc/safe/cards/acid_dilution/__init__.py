"""Weaker acid from stronger: acetic, citric and formic only."""

from __future__ import annotations

from ....core.card import STANDARD, Basis, Card, Carry, Caution
from ....sources import ARITHMETIC, CLP_ANNEXES, CLP_MEMORY, DENSITY_TABLE, HANDBOOK_DENSITIES
from .asked import AcidDilution
from .said import notes, say
from .shown import picture
from .worked import answer

CARD = Card(
    id="acid-dilution",
    chapter="safe",
    place=10,
    tall_sheet=True,
    question="How do I make weaker acid from stronger?",
    case=AcidDilution,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        STANDARD,
        "The pure acid stays the same. Densities at 20 °C stand between tabled values; classes are"
        " by the regulation’s limits, % by weight.",
    ),
    sources=(CLP_ANNEXES, CLP_MEMORY, DENSITY_TABLE, HANDBOOK_DENSITIES, ARITHMETIC),
    cautions=(
        Caution(
            "Acid into water, slowly, stirring; never water into acid.",
            "Goggles and gloves on first, window open, cool water, away from children and food."
            " Strong acid in the eye or on skin: rinse at once, go on rinsing, get help.",
        ),
        Caution(
            "Nothing else into it.",
            "No bleach, no hydrosulfite, no peroxide. Label the bottle; never a drinks bottle. The"
            " data sheet decides.",
        ),
    ),
    carry=(
        Carry(
            "hazard-label",
            "What goes on the bottle?",
            {
                "contents": lambda out: [
                    {"what": out.case.acid, "strength": f"{out.case.wanted:.4g}%"}
                ]
            },
        ),
    ),
    handles=("acid",),
)
