"""How thick a yarn is, from its count, by three models that answer three different questions."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Caution
from ....sources import (
    ARITHMETIC,
    ASHENHURST,
    MORTON_HEARLE_2008,
    PEIRCE_1937,
    TAYLOR_1909,
    TECHNICAL_FIBRES_HANDBOOK,
    TRADE_MEMORY,
    TRADE_PAGE_SPINNERS,
)
from .asked import YarnDiameter
from .onward import CARRY
from .said import notes, say
from .shown import by_model, picture
from .worked import answer

CARD = Card(
    id="yarn-diameter",
    chapter="yarn",
    place=50,
    question="How thick is this yarn, and by which model?",
    case=YarnDiameter,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(by_model,),
    basis=Basis(
        MODEL,
        "The solid model is the area of a circle with a known share of fiber in it. Peirce took"
        " cotton yarn of 1.1 cm³ a gram. Ashenhurst is a rule for setting cloth, one constant for"
        " each kind of yarn; the constants are printed a little differently in different books.",
    ),
    sources=(
        PEIRCE_1937,
        ASHENHURST,
        TAYLOR_1909,
        MORTON_HEARLE_2008,
        TECHNICAL_FIBRES_HANDBOOK,
        TRADE_PAGE_SPINNERS,
        ARITHMETIC,
        TRADE_MEMORY,
    ),
    cautions=(
        Caution(
            "Never use a hand wrap here.",
            "A relaxed hand wrap counts about half the diameters of these models. A sett taken from"
            " it makes cloth half as close as it should be, and a hand-wrap width put into a loop"
            " model asks for far too much yarn.",
        ),
    ),
    carry=CARRY,
)
