"""A recipe at the pot: each stock, acid, salt and water, for a pot, a lot and a run."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import (
    ARITHMETIC,
    COMMON_PRACTICE,
    COTTON_DEPTH_2016,
    DYE_LAB_MANUAL,
    DYEING_TERMS_SLIDES,
    DYEING_TEXTBOOK,
    MORTON_HEARLE_2008,
    TEXTILE_PAGES_RECIPE,
    TRADE_PAGE_DYES,
)
from ...cautions import soda_in_aluminum
from .asked import SODA, DyeRecipe
from .onward import CARRY, SAVES
from .said import notes, say
from .shown import PAPERS, doses, picture, powder
from .worked import answer

CARD = Card(
    id="dye-recipe",
    chapter="dye",
    place=10,
    tall_sheet=True,
    handles=("powder", "acid", "alkali", "heat"),
    question="How much of each dye for this pot?",
    case=DyeRecipe,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(doses, powder),
    papers=PAPERS,
    basis=Basis(
        MODEL,
        "Dye is depth times dry weight; stock is dye over strength; water fills the bath up. Yarn"
        " raises the level by the volume of its fiber.",
    ),
    sources=(
        TEXTILE_PAGES_RECIPE,
        TRADE_PAGE_DYES,
        DYE_LAB_MANUAL,
        DYEING_TERMS_SLIDES,
        MORTON_HEARLE_2008,
        COTTON_DEPTH_2016,
        DYEING_TEXTBOOK,
        COMMON_PRACTICE,
        ARITHMETIC,
    ),
    cautions=(
        Caution(
            "Powder, acid, alkali and heat.",
            "Weigh powder still, damp paper under it, mask and gloves on; acid or soda into water,"
            " never water onto it, goggles on; lid away from you. The maker’s safety data sheet"
            " comes first.",
        ),
        soda_in_aluminum(lambda out: out.case.acid == SODA),
    ),
    carry=CARRY,
    link_version=2,
    # Alkali and salt for plant fiber came after all that was asked before.
    upgrades={1: lambda pairs: pairs},
    saves=SAVES,
)
