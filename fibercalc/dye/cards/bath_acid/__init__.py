"""How sour a bath is, how much acid brings it to a pH, and one acid for another at the same pH."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import (
    ATOMIC_WEIGHTS,
    COMMON_PRACTICE,
    GOLDBERG_2002,
    HANDBOOK_DENSITIES,
    PH_TABLE,
    SPANA_HELP,
)
from ...cautions import soda_in_aluminum
from .asked import ALKALIS, SWAP, BathAcid
from .onward import diluted_as, holds, strong, thinned, wanted
from .said import notes, say
from .shown import curve, equal
from .worked import answer

CARD = Card(
    id="bath-acid",
    chapter="dye",
    place=30,
    handles=("acid", "alkali"),
    question="How sour is the bath?",
    case=BathAcid,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(curve,),
    tables=(equal,),
    basis=Basis(
        MODEL,
        "All charges cancel, with activities (Davies), at 25 °C. Water alone: fiber, dye and heat"
        " shift it. A strip in the cooled bath decides.",
    ),
    sources=(
        GOLDBERG_2002,
        SPANA_HELP,
        ATOMIC_WEIGHTS,
        HANDBOOK_DENSITIES,
        PH_TABLE,
        COMMON_PRACTICE,
    ),
    cautions=(
        Caution(
            "Acid into water.",
            "Never water into acid; goggles and gloves, stir slowly. No bleach near any acid. Soda"
            " into a sour bath foams. The maker’s safety data sheet comes first.",
        ),
        soda_in_aluminum(
            lambda out: (
                out.case.chemical in ALKALIS
                or out.case.do == SWAP
                and out.case.maybe(BathAcid.other) in ALKALIS
            )
        ),
    ),
    carry=(
        Carry("bath-heat", "How long does it take to heat?", {"bath": BathAcid.liters}),
        Carry(
            "acid-dilution",
            "Thin a strong acid first",
            {"acid": diluted_as, "have": strong, "wanted": wanted, "volume": thinned},
        ),
        Carry("pots", "How long does the whole run take?", {}),
        Carry(
            "drain-check",
            "May it go down the drain?",
            {
                "volume": BathAcid.liters,
                "ph": BathAcid.ph,
                "holds": holds,
                "alkalinity": BathAcid.alkaline,
            },
        ),
    ),
)
