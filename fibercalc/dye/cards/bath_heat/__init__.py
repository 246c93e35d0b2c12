"""Heating a bath: energy, time, cost, ramps and holds with clock times, and when it has cooled."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import (
    ANTOINE_WATER,
    COMMON_PRACTICE,
    CPSC_CARBON_MONOXIDE,
    HEAT_HANDBOOK,
    MORTON_HEARLE_2008,
    MORTON_HEARLE_HEAT,
    POCKET_REF_BOILING,
    STANDARD_ATMOSPHERE,
)
from ...cautions import gas_indoors, one_circuit, soda_in_aluminum
from .asked import BathHeat
from .onward import until_hold
from .said import notes, say
from .shown import clock, picture
from .worked import answer

CARD = Card(
    id="bath-heat",
    chapter="dye",
    place=40,
    handles=("heat",),
    tall_sheet=True,
    question="When will it be hot, and when can I lift it out?",
    case=BathHeat,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(clock,),
    link_version=2,
    upgrades={1: lambda pairs: pairs},  # the wait on the way came after all that was asked before
    basis=Basis(
        MODEL,
        "Heat capacity times rise; losses in proportion to how much hotter than the room it is"
        " (Newton). Efficiencies and losses are from memory or common practice, and wide.",
    ),
    sources=(
        HEAT_HANDBOOK,
        ANTOINE_WATER,
        STANDARD_ATMOSPHERE,
        POCKET_REF_BOILING,
        MORTON_HEARLE_2008,
        MORTON_HEARLE_HEAT,
        CPSC_CARBON_MONOXIDE,
        COMMON_PRACTICE,
    ),
    cautions=(
        Caution(
            "Hot bath, steam, heater.",
            "Stay with it. Open the lid away from you; do not carry a hot pot: let it cool, bail or"
            " drain it. Handles turned in, cables dry, no heater left on unwatched.",
        ),
        gas_indoors(lambda out: out.case.heater == "gas"),
        one_circuit(lambda out: out.case.heater != "gas"),
        soda_in_aluminum(lambda out: out.case.pot == "aluminum"),
    ),
    carry=(
        Carry("scald", "How hot is too hot to touch?", {"temperature": BathHeat.top}),
        Carry(
            "pots",
            "How long does the whole run take?",
            {"steps.3.minutes": until_hold, "steps.4.minutes": BathHeat.hold},
        ),
        Carry(
            "drain-check",
            "May it go down the drain, cooled?",
            {"volume": BathHeat.bath, "temperature": BathHeat.touch},
        ),
        Carry("lift", "May I lift it?", {}),
    ),
)
