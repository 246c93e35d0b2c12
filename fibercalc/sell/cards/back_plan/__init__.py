"""A release planned backward from its start: the last day for each step, what is late first."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution
from ....core.paper import Paper
from ....sources import ARITHMETIC, COMMON_PRACTICE
from ...plans import ways
from .asked import BackPlan
from .said import notes, say
from .shown import date_sheet, last_days, picture
from .worked import answer

CARD = Card(
    id="back-plan",
    chapter="sell",
    place=30,
    tall_sheet=True,
    question="By when must I do what?",
    case=BackPlan,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(last_days,),
    papers=(Paper("Dates, A5", "A5", date_sheet),),
    basis=Basis(
        MODEL,
        "Each step begins as late as the next one allows, on a day on which you work. Post and"
        " supplier at their slowest, their usual and their quickest.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "See that the weekday is the one you mean.",
            "A date in the wrong month looks like any other. Post slows before holidays, and a"
            " border adds days that no table knows.",
        ),
    ),
    carry=(
        Carry(
            "base-order",
            "What to order",
            {
                "needed_by": ways.first_dye_day,
                "check": BackPlan.check,
                "lead_low": BackPlan.supplier_quick,
                "lead": BackPlan.supplier,
                "lead_high": BackPlan.supplier_slow,
                "closed": ways.closed_days,
                "today": BackPlan.today,
            },
        ),
        Carry("keep-pace", "Can knitters keep pace with the parts?", {"start": BackPlan.start}),
        Carry("release-plan", "What does the release take?", {}),
    ),
)
