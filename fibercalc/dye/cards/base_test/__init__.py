"""A new base against the usual one: depth factors, what wet and heat do to it, go or no-go."""

from __future__ import annotations

from ....core.card import BENCH_RULE, Basis, Card, Carry, Caution
from ....sources import ARITHMETIC, COMMON_PRACTICE
from .asked import BaseTest
from .said import notes, say
from .shown import picture, recipes
from .worked import answer

CARD = Card(
    id="base-test",
    chapter="dye",
    place=60,
    handles=("powder", "heat"),
    question="Will my colors come out on this base?",
    case=BaseTest,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(recipes,),
    basis=Basis(
        BENCH_RULE,
        "The depth that matches by eye on the new base, over the usual depth. The edges between go"
        " and no-go are our own.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "A test skein is dyeing too.",
            "The same mask, gloves and fixed lid. Superwash and nylon grab first, silk and alpaca"
            " lag; plant fiber does not take acid dye. The maker’s safety data sheet comes first.",
        ),
    ),
    carry=(
        Carry(
            "dye-recipe",
            "The recipe for a pot of it",
            {
                "dyes": lambda out: [
                    {"name": dye.name, "depth": f"{dye.new:.4g}%"} for dye in out.case.dyes
                ]
            },
        ),
    ),
)
