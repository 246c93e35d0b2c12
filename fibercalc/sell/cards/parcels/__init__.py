"""Good skeins shared out by lot, and what each parcel weighs against the post's own bands."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....core.paper import Paper
from ....sources import ARITHMETIC, COMMON_PRACTICE
from .asked import Parcels
from .said import notes, say
from .shown import lots_table, parcels_table, picking_list, picture, scale
from .worked import answer

CARD = Card(
    id="parcels",
    chapter="sell",
    place=60,
    tall_sheet=True,
    question="What goes into which parcel?",
    case=Parcels,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture, scale),
    tables=(lots_table, parcels_table),
    papers=(Paper("Picking list, A5", "A5", picking_list),),
    basis=Basis(
        MODEL,
        "Kits first, each color of a kit from one lot; then the club; the rest is the shop’s."
        " Parcels by adding up, with the damp of yarn as a range.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "Weigh the first parcel, packed and closed.",
            "Two grams over a band cost the next one. Whoever lifts many boxes tires: see “May I"
            " lift this?”.",
        ),
    ),
    carry=(Carry("lift", "May I lift this?", {}), Carry("back-plan", "By when must I post?", {})),
)
