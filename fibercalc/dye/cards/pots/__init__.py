"""A run planned: pots, burners, hands and the rail hour by hour, beside a bound no plan beats."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE, CPSC_CARBON_MONOXIDE
from ...cautions import gas_indoors, one_circuit
from .asked import Pots, Recipe, Step
from .said import notes, say
from .shown import first_day, picture, timetable
from .worked import answer

CARD = Card(
    id="pots",
    chapter="dye",
    place=110,
    handles=("heat",),
    tall_sheet=True,
    question="How long does the whole run take?",
    case=Pots,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(timetable, first_day),
    basis=Basis(
        MODEL,
        "Nothing is booked twice: pots, burners, hands, rail. A few orders are tried and the one"
        " that is done first is kept; the bound is what the scarcest thing needs.",
    ),
    sources=(ARITHMETIC, CPSC_CARBON_MONOXIDE, COMMON_PRACTICE),
    cautions=(
        Caution(
            "No heater unwatched.",
            "Two pots at once are two to watch. Nothing stays on a burner when you leave the room;"
            " a tired person spills: plan the last load early.",
        ),
        gas_indoors(),
        one_circuit(lambda out: out.case.burners > 1),
    ),
    carry=(
        Carry(
            "bath-heat",
            "How long does heating take?",
            {
                "bath": Pots.bath_of_load,
                "fiber_mass": Pots.yarn_of_load,
                "hold": Pots.steps.each(Step.minutes, row=4),
            },
        ),
        Carry(
            "dye-recipe",
            "The recipe for the first of them",
            {
                "skeins": Pots.recipes.each(Recipe.skeins, row=1),
                "skein_mass": Pots.skein_mass,
                "liquor_ratio": Pots.liquor_ratio,
                "fill": Pots.largest_fill,
            },
        ),
        Carry("drying", "How long do they dry?", {"skeins": Pots.all_skeins}),
        Carry("drain-check", "May each bath go down the drain?", {"volume": Pots.bath_of_load}),
    ),
)
