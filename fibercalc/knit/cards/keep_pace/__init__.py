"""Keeping pace with a project in parts: when each is done, and where it falls behind."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Constant, Save
from ....held import RECORD
from ....sources import ARITHMETIC, COMMON_PRACTICE
from .asked import KeepPace
from .said import notes, say
from .shown import picture, plan
from .worked import answer

CARD = Card(
    id="keep-pace",
    chapter="knit",
    place=70,
    question="Can I keep up with a project in parts?",
    case=KeepPace,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(plan,),
    basis=Basis(
        MODEL, "Stitches divided by your own speed; knitting time spread evenly over the week."
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE),
    carry=(
        Carry(
            "enough-left",
            "Is what is left enough?",
            {"first": KeepPace.first, "grow": KeepPace.grow},
        ),
    ),
    saves=(
        Save(
            RECORD.measurement,
            "An own measurement: your speed",
            {
                RECORD.measurement.what: Constant("speed"),
                RECORD.measurement.made: KeepPace.speed_stitches,
                RECORD.measurement.in_minutes: KeepPace.speed_minutes,
            },
        ),
    ),
)
