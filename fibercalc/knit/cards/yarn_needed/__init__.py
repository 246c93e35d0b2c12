"""How much yarn a project takes, and how many skeins to buy to be so sure of not running out."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution, Constant
from ....sources import (
    ARITHMETIC,
    COMMON_PRACTICE,
    CRAFT_YARN_COUNCIL,
    CRAFT_YARN_COUNCIL_SIZES,
    GATE_TEXTILE_2015,
    HEAD_GIRTHS_ADULTS,
    HEAD_GIRTHS_GIRLS,
    MUNDEN_1959,
    TRADE_PAGE_YARDAGE,
)
from .asked import YarnNeeded
from .said import notes, say
from .shown import odds, odds_table, outline
from .worked import answer


def _renamed_head(pairs: dict[str, str]) -> dict[str, str]:
    """Links of version 1 knew one baby, of 14 in around: a newborn one, not one of 12 months."""
    return pairs | ({"o": "newborn"} if pairs.get("o") == "baby" else {})


CARD = Card(
    id="yarn-needed",
    chapter="knit",
    place=10,
    question="How many skeins do I need?",
    case=YarnNeeded,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(odds, outline),
    tables=(odds_table,),
    link_version=2,
    upgrades={1: _renamed_head},
    basis=Basis(
        MODEL,
        "Cloth from its outline; yarn from a weighed swatch, or the loops of plain knitting"
        " (Munden). Odds from the ranges of all measures and of the model: a garment strays 9 %"
        " from its swatch, hand gauges 10 % from the model (common practice, 95 %).",
    ),
    sources=(
        MUNDEN_1959,
        GATE_TEXTILE_2015,
        CRAFT_YARN_COUNCIL,
        CRAFT_YARN_COUNCIL_SIZES,
        HEAD_GIRTHS_GIRLS,
        HEAD_GIRTHS_ADULTS,
        TRADE_PAGE_YARDAGE,
        COMMON_PRACTICE,
        ARITHMETIC,
    ),
    cautions=(
        Caution(
            "Buy all of it from one lot.",
            "A second dye lot seldom matches. Wash the swatch before it is weighed: superwash yarn"
            " changes most.",
        ),
    ),
    carry=(
        Carry("enough-left", "Will what is left be enough?", {}),
        Carry(
            "yarn-instead",
            "Use another yarn for it",
            {
                "theirs_mass": YarnNeeded.skein_mass,
                "theirs_length": YarnNeeded.skein_length,
                "need_by": Constant("length"),
                "need_length": YarnNeeded.need,
                "stitches": YarnNeeded.stitches,
                "rows": YarnNeeded.rows,
            },
        ),
    ),
)
