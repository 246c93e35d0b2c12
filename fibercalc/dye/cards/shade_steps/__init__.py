"""Skeins from light to dark, or from color to color, in even steps, as dye can be weighed."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE, KM_APPLICATION_NOTE, SHARMA_2005
from .asked import ShadeSteps
from .onward import CARRY
from .said import notes, say
from .shown import compared, skeins, strip
from .worked import answer

CARD = Card(
    id="shade-steps",
    chapter="dye",
    place=25,
    handles=("powder",),
    question="How do I step from light to dark evenly?",
    case=ShadeSteps,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(strip, compared),
    tables=(skeins,),
    link_version=2,
    upgrades={1: lambda pairs: pairs},  # the gray card came after all that was asked before
    basis=Basis(
        MODEL,
        "Dye absorbs in proportion to its amount (Kubelka-Munk, in three channels); steps are even"
        " by CIEDE2000. “Off by” is the step farthest from the mean.",
    ),
    sources=(KM_APPLICATION_NOTE, SHARMA_2005, COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "Many small doses of powder.",
            "Weigh them in one go, still air, mask and gloves on, or dose from stock and weigh"
            " once. The maker’s safety data sheet comes first.",
        ),
    ),
    carry=CARRY,
)
